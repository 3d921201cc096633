#include "web/panels/how_slip.h"

#include <algorithm>
#include <cstddef>

#include "web/model/words.h"
#include "web/panels/how_layout.h"
#include "web/panels/how_pictures.h"
#include "web/widgets/slip.h"

namespace pouncemark::web {
namespace {

constexpr float kInside = 18;
constexpr const char* kOpener = "How it is made";

float head_height() { return button_height() + 14; }

/// The questions on the slip now, and the slip itself, down to the foot of the middle area.
struct SlipNow {
  Area area;
  std::size_t first = 0;
  std::size_t count = 0;
};

SlipNow slip_now(const Page& page, const HowTops& tops) {
  const Area& middle = page.layout.middle;
  const HowSlip& how = page.state.how;
  SlipNow now;
  const float width = middle.width() - 2 * kInside;
  const float room = middle.bottom - tops.highest - head_height() - 6;
  now.first = how.first < how.asked.size() ? how.first : 0;
  now.count = questions_shown(page.brush, how.asked, now.first, width, room);
  float height = head_height() + 6;
  for (std::size_t i = now.first; i < now.first + now.count; ++i) {
    height += place_question(page.brush, how.asked[i], width).height;
  }
  const float top = tops.snug + height <= middle.bottom ? tops.snug : tops.highest;
  now.area = {middle.left - 3, top, middle.right, middle.bottom};
  return now;
}

void close(Page& page) {
  page.hand.focus("how");
  page.later([&how = page.state.how] { how = {}; });
}

void choose(Page& page, const Asked& asked, const Answer& one) {
  const Place place = page.bench.place();
  page.later([&bench = page.bench, place, question = asked.question, answer = one.number] {
    const Solved& now = bench.now();
    if (answer_at(now.job, now.results, place, question) == answer) return;
    bench.edit(with_answer(now.job, now.results, place, question, answer),
               answered_words(now.job, now.results, place, question, answer));
  });
}

Area moved(const Area& area, Spot corner) {
  return area_at(corner.x + area.left, corner.y + area.top, area.width(), area.height());
}

std::string_view box_id(Measure measure) {
  if (measure == Measure::fold_radius) return "box.fold_radius";
  return measure == Measure::flange ? "box.flange" : "box.corner_clear";
}

/// A figure that belongs to the answer, with the words of what it measures below it.
void box_at_place(Page& page, Measure measure, const AnswerPlace& place, Spot corner) {
  const Solved& now = page.bench.now();
  const Held held = held_between(now.job, now.results, page.bench.place(), measure);
  const Area box = moved(place.button, corner);
  if (page.bench.is_look_only()) {
    const Um um = measured(now.job, now.results, page.bench.place(), measure);
    page.brush.centred(box, box_text(um), {Role::box_figure, true, kInk});
  } else {
    measure_box(page, {box_id(measure),
                       measure,
                       box,
                       box_words(measure),
                       {held.least, std::max(held.least, held.most)}});
  }
  const float pitch = page.brush.pitch(Role::second_line);
  float base = corner.y + place.lines_top + pitch - 2;
  for (const std::string& line : place.lines) {
    page.brush.words({box.left + 1, base}, line, {Role::second_line, false, kInk});
    base += pitch;
  }
}

void answer_at_place(Page& page, const Asked& asked, const Answer& one, const AnswerPlace& place,
                     Spot corner) {
  const Brush& brush = page.brush;
  ButtonLook look{one.is_chosen ? ButtonKind::chosen : ButtonKind::plain};
  look.is_idle = !one.can_be_had || (page.bench.is_look_only() && !one.is_chosen);
  const Area area = moved(place.button, corner);
  const bool pressed = button(brush, page.hand, one.id, area, one.words, look);
  if (pressed && !page.bench.is_look_only()) choose(page, asked, one);
  if (place.picture.width() > 0) {
    how_picture(page, asked.question, one.number, moved(place.picture, corner));
  }
  const float pitch = brush.pitch(Role::second_line);
  const float left = area.left + 1;
  float base = corner.y + place.lines_top + pitch - 2;
  for (const std::string& line : place.lines) {
    brush.words({left, base}, line, {Role::second_line, one.is_chosen, kInk});
    base += pitch;
  }
  for (const std::string& line : place.stop_lines) {
    brush.words({left, base}, line, {Role::second_line, true, kStop});
    base += pitch;
  }
  std::string all;
  for (const std::string& words : one.follows) all += (all.empty() ? "" : "; ") + words;
  if (!one.stop.empty()) all += (all.empty() ? "" : "; ") + ("STOP: " + one.stop);
  page.hand.note(one.id + ".follows",
                 {left, area.bottom, left + place.button.width(), base - pitch + 4}, all);
}

void question_at(Page& page, const Asked& asked, const QuestionPlace& place, Spot corner) {
  const Brush& brush = page.brush;
  const float right = page.layout.middle.right - kInside;
  brush.line({corner.x, corner.y}, {right, corner.y}, kPale, 1);
  float base = corner.y + 8 + button_height() / 2 + brush.rise(Role::text) / 2;
  for (const std::string& line : place.words) {
    brush.words({corner.x, base}, line, {Role::text, true, kInk});
    base += brush.pitch(Role::text);
  }
  for (const std::string& line : place.of) {
    brush.words({corner.x, base}, line, {Role::second_line, false, kSoft});
    base += brush.pitch(Role::second_line);
  }
  for (std::size_t i = 0; i < place.answers.size(); ++i) {
    answer_at_place(page, asked, asked.answers[i], place.answers[i], corner);
  }
  for (std::size_t i = 0; i < place.boxes.size(); ++i) {
    box_at_place(page, asked.boxes[i], place.boxes[i], corner);
  }
}

/// Title, the button that closes the slip, and where not all has room the one that turns to the
/// other questions.
void head(Page& page, const SlipNow& now) {
  const Brush& brush = page.brush;
  const HowSlip& how = page.state.how;
  const float height = button_height();
  const float top = now.area.top + 8;
  const float base = top + height / 2 + brush.rise(Role::figure) / 2;
  const float left = now.area.left + kInside + 3;
  const float title = brush.words({left, base}, kOpener, {Role::figure, true, kInk});
  brush.words({left + title + 12, base},
              "for " + name_of(page.bench.now().results, page.bench.place()),
              {Role::second_line, false, kSoft});
  float right = now.area.right - kInside;
  const float close_width = button_width(brush, "Close");
  const Area shut = area_at(right - close_width, top, close_width, height);
  right = shut.left - 8;
  if (now.count < how.asked.size()) {
    const bool is_last = now.first + now.count >= how.asked.size();
    const std::string words = is_last ? "First questions" : "More questions";
    const float wide = button_width(brush, words);
    const Area more = area_at(right - wide, top, wide, height);
    const std::size_t next = is_last ? 0 : now.first + now.count;
    if (button(brush, page.hand, "how.more", more, words)) {
      page.later([&state = page.state, next] { state.how.first = next; });
    }
  }
  if (button(brush, page.hand, "how.close", shut, "Close")) close(page);
}

}  // namespace

void ask_how(const Bench& bench, HowSlip& how) {
  if (!how.is_open || !bench.has_job() || how.turn == bench.turn()) return;
  how.asked = asked_at(bench.now(), bench.place());
  how.turn = bench.turn();
  if (how.first >= how.asked.size()) how.first = 0;
}

float how_opener(Page& page, float x, float top, Side side) {
  const bool is_open = page.state.how.is_open;
  const float width = button_width(page.brush, kOpener);
  const Area area = area_at(side == Side::right ? x - width : x, top, width, button_height());
  const ButtonLook look{is_open ? ButtonKind::chosen : ButtonKind::plain};
  if (button(page.brush, page.hand, "how", area, kOpener, look)) {
    page.later([&how = page.state.how] {
      const bool opens = !how.is_open;
      how = {};
      how.is_open = opens;
    });
  }
  return side == Side::right ? area.left : area.right;
}

void cover_for_how(Page& page, const HowTops& tops) {
  if (page.state.how.is_open) page.hand.set_cover(slip_now(page, tops).area);
}

void how_slip(Page& page, const HowTops& tops) {
  page.hand.set_cover({});
  if (!page.state.how.is_open) return;
  const SlipNow now = slip_now(page, tops);
  // A press that ends on bare paper goes nowhere.
  slip_paper(page.brush, now.area);
  page.brush.frame(now.area, kSoft, 1.5f);
  head(page, now);
  const float width = page.layout.middle.width() - 2 * kInside;
  float y = now.area.top + head_height();
  page.brush.start_window(now.area);
  for (std::size_t i = now.first; i < now.first + now.count; ++i) {
    const Asked& asked = page.state.how.asked[i];
    const QuestionPlace place = place_question(page.brush, asked, width);
    question_at(page, asked, place, {page.layout.middle.left + kInside, y});
    y += place.height;
  }
  page.brush.end_window();
  if (page.hand.escape() && !page.hand.is_typing()) close(page);
}

}  // namespace pouncemark::web
