#include <algorithm>
#include <array>
#include <utility>

#include "engine/base/problem.h"
#include "web/model/words.h"
#include "web/panels/print_parts.h"

namespace pouncemark::web {
namespace {

/// Puts things side by side, and on the next line where one has no room.
struct Flow {
  Area area;
  float line_height = 0;
  float x = 0;
  float y = 0;

  Area next(float width, float height) {
    if (x > area.left && x + width > area.right) {
      x = area.left;
      y += line_height + 8;
    }
    const Area place = area_at(x, y + (line_height - height) / 2, width, height);
    x += width + 8;
    return place;
  }
};

void take(Page& page, std::string (*change)(PaperChoice& choice, const std::string& name),
          const std::string& name) {
  page.later([&bench = page.bench, &state = page.state, change, name] {
    state.open_box = {};
    state.printing.sentence.clear();
    bench.say(change(state.paper, name));
  });
}

struct NamedPaper {
  const char* id;
  const char* name;
};
constexpr std::array kNamed = {NamedPaper{"paper.a4", "A4"}, NamedPaper{"paper.a3", "A3"},
                               NamedPaper{"paper.letter", "Letter"},
                               NamedPaper{"paper.tabloid", "Tabloid"}};

void paper_buttons(Page& page, Flow& flow) {
  const PaperChoice& choice = page.state.paper;
  const auto press = [&](const char* id, const char* words, bool chosen) {
    const Area area = flow.next(button_width(page.brush, words), button_height());
    return button(page.brush, page.hand, id, area, words,
                  {chosen ? ButtonKind::chosen : ButtonKind::plain});
  };
  for (const NamedPaper& paper : kNamed) {
    const bool chosen = !choice.is_another_size && choice.paper.name == paper.name;
    if (press(paper.id, paper.name, chosen) && !chosen) take(page, take_named_paper, paper.name);
  }
  if (press("paper.other", "Another size", choice.is_another_size) && !choice.is_another_size) {
    take(page, [](PaperChoice& to, const std::string&) { return take_another_size(to); }, {});
  }
}

struct SideBox {
  std::string_view id;
  const char* words;
  PaperSide side;
};

/// The box stays open with its text as typed, and says why.
void refuse(OpenBox& open, std::string_view id, const Problem& problem) {
  open.id = std::string(id);
  open.is_fresh = true;
  open.sentence = with_capital(problem_sentence(problem));
}

/// What was typed into the box and kept in this frame, inches as well.
std::optional<Um> typed_side(Page& page, const SideBox& side, const Area& area) {
  OpenBox& open = page.state.open_box;
  BoxLook look;
  look.um = side_of(page.state.paper.paper, side.side);
  look.figure = box_text(look.um);
  look.name = std::string("paper, ") + side.words;
  // The engine says which sizes are refused, so that page and program say the same.
  look.limits = {0, kMostLengthUm};
  const std::string sentence = open.sentence;
  const auto kept = length_box(page.brush, page.hand, open, side.id, area, look);
  if (kept || open.id != side.id || open.sentence.empty() || open.sentence == sentence) return kept;
  const Result<Um> read = read_side(open.text.data());
  if (!read) return std::nullopt;
  open.id.clear();
  open.sentence.clear();
  return *read;
}

void side_box(Page& page, const SideBox& side, const Area& area) {
  OpenBox& open = page.state.open_box;
  const bool was_open = open.id == side.id;
  const auto kept = typed_side(page, side, area);
  if (!open.sentence.empty() && open.id == side.id) {
    page.hand.note("paper.refused", open.area, open.sentence);
  }
  if (!kept) return;
  const Result<sheets::Paper> paper = with_side(page.state.paper.paper, side.side, *kept);
  if (!paper) {
    // Steps of the arrow keys over a closed box end where the paper does.
    if (was_open) refuse(open, side.id, paper.problem());
    return;
  }
  page.later([&bench = page.bench, &state = page.state, is = *paper] {
    state.printing.sentence.clear();
    bench.say(take_paper(state.paper, is));
  });
}

void side_boxes(Page& page, Flow& flow) {
  constexpr std::array<SideBox, 2> kSides = {
      SideBox{"box.paper_width", "wide", PaperSide::wide},
      SideBox{"box.paper_length", "long", PaperSide::long_way}};
  const Brush& brush = page.brush;
  const float box = text_size() == TextSize::large ? 124.0f : 104.0f;
  for (const SideBox& side : kSides) {
    const float words = brush.width_of(side.words, Role::text, false) + 8;
    const Area place = flow.next(words + box + 8, box_height());
    brush.words({place.left, place.mid_y() + brush.rise(Role::text) / 2}, side.words, {});
    side_box(page, side, area_at(place.left + words, place.top, box, place.height()));
  }
}

}  // namespace

float paper_row(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  const bool has_boxes = page.state.paper.is_another_size;
  Flow flow{area, has_boxes ? box_height() : button_height(), area.left, area.top};
  const float base = flow.y + flow.line_height / 2 + brush.rise(Role::figure) / 2;
  flow.x += brush.words({area.left, base}, "Paper", {Role::figure, true, kInk}) + 16;
  paper_buttons(page, flow);
  flow.x += 8;
  if (has_boxes) side_boxes(page, flow);
  return flow.y + flow.line_height;
}

}  // namespace pouncemark::web
