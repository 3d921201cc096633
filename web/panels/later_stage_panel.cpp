#include <algorithm>
#include <array>

#include "web/panels/page.h"

namespace pouncemark::web {
namespace {

/// What each stage that is not built yet will hold, in one sentence.
constexpr std::array<const char*, kStages> kWillHold = {
    "Here the tape measurements will be entered: bays, chords and rises, diagonals, old holes.",
    "",
    "",
    "",
    "Here the take-off will stand: sheets to cut, thread, staples, bobbins and weights.",
    "",
    "Here the order of hanging will stand: the plan, the lifts and a card for each bay.",
    "Here the record will be kept: what was planned, what was done, and who signed for it."};

}  // namespace

void later_stage_panel(Page& page) {
  const Area& middle = page.layout.middle;
  const auto stage = static_cast<std::size_t>(page.state.stage);
  const Brush& brush = page.brush;
  const float y = middle.top + brush.rise(Role::headline) + 24;
  brush.words({middle.left, y}, stage_verb(page.state.stage), {Role::headline, true, kInk});
  const float after = brush.paragraph({middle.left, y + 44}, kWillHold[stage],
                                      std::min(middle.width(), 720.0f), {Role::verb, false, kInk});
  brush.words({middle.left, after + 4}, "This stage is not built yet.", {Role::text, false, kSoft});
  page.hand.note("later_stage", {middle.left, y - 30, middle.right, after}, kWillHold[stage]);
  const Area back =
      area_at(middle.left, after + 32, button_width(brush, "Back to Make"), button_height());
  if (button(brush, page.hand, "later.make", back, "Back to Make")) {
    page.later([&state = page.state] { state.stage = Stage::make; });
  }
}

}  // namespace pouncemark::web
