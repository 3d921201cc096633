#include <algorithm>
#include <array>

#include "web/panels/curve_parts.h"
#include "web/widgets/slip.h"

namespace pouncemark::web {
namespace {

/// Two buttons of which one is chosen: by what the bays are ranked.
void rank_switch(Page& page, float left, float top) {
  const CurveStage& curve = page.state.curve;
  for (const bool by_force : {false, true}) {
    const char* words = by_force ? "Most force first" : "Tightest first";
    const float width = button_width(page.brush, words);
    const Area area = area_at(left, top, width, button_height());
    const bool is_chosen = curve.by_force == by_force;
    if (button(page.brush, page.hand, by_force ? "bays.by_force" : "bays.by_radius", area, words,
               {is_chosen ? ButtonKind::chosen : ButtonKind::plain})) {
      page.later([&stage = page.state.curve, by_force] {
        stage.by_force = by_force;
        stage.first = 0;
        stage.turn = -1;
      });
    }
    left = area.right + 8;
  }
}

/// One more bay, and this one away, from the right.
void acts_of_bays(Page& page, float right, float top) {
  const ButtonLook plain{ButtonKind::plain, page.bench.is_look_only()};
  const std::string away = "Take " + shortened(page.state.curve.view.code, 8) + " away";
  const auto act = [&](const char* id, const std::string& words) {
    const float width = button_width(page.brush, words);
    const Area area = area_at(right - width, top, width, button_height());
    right = area.left - 8;
    return button(page.brush, page.hand, id, area, words, plain);
  };
  if (act("bay.away", away)) {
    curve_act(page, without_bay(page.bench.now().job, page.state.curve.view.bay));
  }
  if (act("bay.add", "Add a bay")) curve_act(page, with_new_bay(page.bench.now()));
}

/// Right edges of the columns after the first, as shares of the width.
constexpr std::array<float, 4> kColumns = {0.36f, 0.56f, 0.8f, 0.97f};

void row_words(const Page& page, const Area& row, const std::array<std::string, 5>& words,
               Role role, bool is_bold) {
  const float base = row.mid_y() + page.brush.rise(role) / 2;
  page.brush.words({row.left + 12, base}, words[0], {role, is_bold, kInk});
  for (std::size_t i = 0; i < kColumns.size(); ++i) {
    page.brush.words({row.left + row.width() * kColumns[i], base}, words[i + 1],
                     {role, false, kInk, Side::right});
  }
}

void bay_row(Page& page, const Area& row, const RankedBay& bay) {
  const std::string force = bay.people.empty() ? bay.push : bay.push + " N";
  const Touch touch = page.hand.touch(
      "bays." + bay.code, row,
      "bay " + bay.code + ", holds " + (bay.holds.empty() ? "nothing" : bay.holds) + ", radius " +
          bay.radius + ", push " + force + (bay.people.empty() ? "" : ", people " + bay.people));
  if (touch.over) page.brush.fill(row, kMat);
  row_words(page, row, {bay.code, bay.holds, bay.radius, force, bay.people}, Role::text, true);
  page.brush.line({row.left, row.bottom}, {row.right, row.bottom}, kPale, 1);
  focus_ring(page.brush, page.hand, row.inset(3), touch.focused);
  if (!touch.clicked) return;
  page.later([&curve = page.state.curve, at = bay.bay] {
    curve.bay = at;
    curve.slip = CurveSlip::none;
  });
}

}  // namespace

void bays_slip(Page& page, const Area& area) {
  CurveStage& curve = page.state.curve;
  const Brush& brush = page.brush;
  const float high = button_height();
  rank_switch(page, area.left, area.top);
  acts_of_bays(page, area.right, area.top);
  const Area head = area_at(area.left, area.top + high + 4, area.width(), high);
  row_words(page, head, {"Bay", "holds", "radius", "push", "people"}, Role::second_line, true);
  brush.line({head.left, head.bottom}, {head.right, head.bottom}, kInk, 1.5f);
  const Area list = {area.left, head.bottom, area.right, area.bottom};
  const ListPart part = list_part(page, list, high, curve.ranked.size(), "bays.more", "More bays");
  float top = list.top;
  for (std::size_t i = part.first; i < part.first + part.shown; ++i, top += high) {
    bay_row(page, area_at(head.left, top, head.width(), high), curve.ranked[i]);
  }
}

}  // namespace pouncemark::web
