#include "web/panels/making_slip.h"

#include <algorithm>
#include <utility>

#include "web/model/words.h"
#include "web/widgets/slip.h"

namespace pouncemark::web {
namespace {

constexpr float kInside = 18;

float head_height() { return button_height() + 18; }

std::string title_of(const Page& page) {
  const MakingAsk ask = page.state.making.ask;
  if (ask == MakingAsk::piece) return "This piece";
  if (ask == MakingAsk::panel) return "Add a panel";
  const Solved& now = page.bench.now();
  const job::Section* section = section_at(now.job, now.results, page.bench.place());
  return section != nullptr && section->count > 1 ? "Count, widths, lap" : "Make it a section";
}

float wanted_height(const Page& page) {
  const float pitch = page.brush.pitch(Role::second_line);
  const float box = box_height() + 10;
  switch (page.state.making.ask) {
    case MakingAsk::piece:
      return head_height() + box + 2 * (button_height() + 8) + 2 * pitch + 30;
    case MakingAsk::section:
      return head_height() + box + 6 * pitch + button_height() + 34;
    default:
      return page.layout.middle.height() - (page.layout.is_compact ? 0.0f : 92.0f);
  }
}

Area slip_area(const Page& page) {
  const Area& middle = page.layout.middle;
  // Below the two rows that say where you are, or below the first: never half over one.
  const float one = button_height() + 7;
  const float both = page.layout.is_compact ? one + box_height() + 17 : 92.0f;
  const float wanted = wanted_height(page);
  const bool has_room = wanted <= middle.height() - both;
  const float top =
      has_room ? std::max(middle.top + both, middle.bottom - wanted) : middle.top + one;
  return {middle.left - 6, top, middle.right + 3, middle.bottom};
}

void close(Page& page) {
  page.hand.focus("piece");
  page.later([&state = page.state] {
    state.making = {};
    state.open_box = {};
  });
}

}  // namespace

void foretell_making(const Bench& bench, MakingSlip& making) {
  if (!bench.has_job()) return;
  const bool has_piece = !bench.now().results.pieces.empty() && !is_whole_hanging(bench.place());
  const bool is_elsewhere = making.ask == MakingAsk::section && !(making.place == bench.place());
  if ((!has_piece && making.ask != MakingAsk::panel) || is_elsewhere) making = {};
  if (making.ask != MakingAsk::section || !making.is_stale) return;
  making.is_stale = false;
  making.would = foretold(bench.now().job, bench.place().piece, making.plan);
}

void do_making(Page& page, Made made) {
  // The act is a copy that can be called: a job moves in and out of it once.
  page.later([&bench = page.bench, &state = page.state, made = std::move(made)] {
    state.making.sentence = made.refused;
    use_signs(made.refused);
    use_signs(made.action);
    use_signs(made.job.name);
    if (!made.refused.empty()) return;
    bench.edit(made.job, made.action);
    bench.go(first_look(bench.now().results, made.piece));
    if (state.making.ask != MakingAsk::piece) state.making = {};
  });
}

void open_making(Page& page, MakingAsk ask) {
  page.later([&bench = page.bench, &state = page.state, ask] {
    const bool closes = state.making.ask == ask;
    state.making = {};
    state.how = {};
    state.open_box = {};
    state.shows_all_follows = false;
    if (closes) return;
    state.making.ask = ask;
    state.making.place = bench.place();
    const Solved& now = bench.now();
    if (ask != MakingAsk::section) return;
    const job::Section* section = section_at(now.job, now.results, bench.place());
    if (section == nullptr)
      state.making.ask = MakingAsk::nothing;
    else
      state.making.plan = plan_of(*section);
  });
}

float make_section_button(Page& page, float left, float right, float top) {
  const Solved& now = page.bench.now();
  const job::Section* section = section_at(now.job, now.results, page.bench.place());
  const char* words = page.layout.is_compact ? "Make a section" : "Make it a section";
  const float width = button_width(page.brush, words);
  if (section == nullptr || section->count > 1 || right - left < width) return right;
  const bool is_open = page.state.making.ask == MakingAsk::section;
  const Area area = area_at(right - width, top, width, button_height());
  const ButtonLook look{is_open ? ButtonKind::chosen : ButtonKind::plain,
                        page.bench.is_look_only()};
  if (button(page.brush, page.hand, "make.section", area, words, look)) {
    open_making(page, MakingAsk::section);
  }
  return area.left;
}

void cover_for_making(Page& page) {
  if (page.state.making.ask != MakingAsk::nothing) page.hand.set_cover(slip_area(page));
}

void making_slip(Page& page) {
  const MakingSlip& making = page.state.making;
  if (making.ask == MakingAsk::nothing) return;
  page.hand.set_cover({});
  const Area area = slip_area(page);
  const Brush& brush = page.brush;
  slip_paper(brush, area);
  brush.frame(area, kSoft, 1.5f);
  const float top = area.top + 8;
  const float left = area.left + kInside + 6;
  const float right = area.right - kInside - 3;
  const float base = top + button_height() / 2 + brush.rise(Role::figure) / 2;
  const float wide = brush.words({left, base}, title_of(page), {Role::figure, true, kInk});
  if (making.ask != MakingAsk::panel) {
    brush.words({left + wide + 12, base}, name_of(page.bench.now().results, page.bench.place()),
                {Role::second_line, false, kSoft});
  }
  const float close_width = button_width(brush, "Close");
  const Area shut = area_at(right - close_width, top, close_width, button_height());
  if (button(brush, page.hand, "making.close", shut, "Close")) close(page);
  const Area inside = {left, area.top + head_height(), right, area.bottom - 12};
  if (making.ask == MakingAsk::piece) piece_boxes(page, inside);
  if (making.ask == MakingAsk::section) plan_boxes(page, inside);
  if (making.ask == MakingAsk::panel) panel_boxes(page, inside);
  if (!making.sentence.empty()) {
    const float foot = area.bottom - 12;
    brush.fill({area.left, foot - brush.pitch(Role::text), area.left + 4, foot + 4}, kStop);
    brush.words({left, foot - 4}, making.sentence, {});
    page.hand.note("making.refused", {left, foot - 24, right, foot}, making.sentence);
  }
  if (page.hand.escape() && !page.hand.is_typing()) close(page);
}

}  // namespace pouncemark::web
