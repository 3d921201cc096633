#include <algorithm>
#include <array>

#include "web/panels/curve_parts.h"
#include "web/widgets/slip.h"

namespace pouncemark::web {
namespace {

Area slip_area(const Page& page) {
  const Area& middle = page.layout.middle;
  return {middle.left - 6, middle.top + button_height() + 6, middle.right + 3, middle.bottom};
}

void put_away(Page& page) {
  page.hand.focus("bay.all");
  page.later([&curve = page.state.curve] { curve.lists_bays = false; });
}

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
    curve.lists_bays = false;
  });
}

}  // namespace

void cover_for_bays(Page& page) {
  if (page.state.curve.lists_bays) page.hand.set_cover(slip_area(page));
}

void bays_slip(Page& page) {
  CurveStage& curve = page.state.curve;
  if (!curve.lists_bays) return;
  page.hand.set_cover({});
  const Area area = slip_area(page);
  const Brush& brush = page.brush;
  slip_paper(brush, area);
  brush.frame(area, kSoft, 1.5f);
  rank_switch(page, area.left + 24, area.top + 8);
  const float wide = button_width(brush, "Close");
  const Area shut = area_at(area.right - 21 - wide, area.top + 8, wide, button_height());
  if (button(brush, page.hand, "bays.close", shut, "Close")) put_away(page);
  const float high = button_height();
  const Area head = area_at(area.left + 24, shut.bottom + 6, area.width() - 45, high);
  row_words(page, head, {"Bay", "holds", "radius", "push", "people"}, Role::second_line, true);
  brush.line({head.left, head.bottom}, {head.right, head.bottom}, kInk, 1.5f);
  const auto room =
      static_cast<std::size_t>(std::max(1.0f, (area.bottom - 8 - head.bottom) / high));
  const std::size_t all = curve.ranked.size();
  const int by = page.hand.lines_on(area, high);
  if (by != 0 && all > room) {
    const auto most = static_cast<int>(all - room);
    page.later([&curve, by, most] {
      curve.first =
          static_cast<std::size_t>(std::clamp(static_cast<int>(curve.first) + by, 0, most));
    });
  }
  const bool is_part = all > room;
  const std::size_t shown = is_part ? room - 1 : all;
  float top = head.bottom;
  for (std::size_t i = curve.first; i < std::min(all, curve.first + shown); ++i, top += high) {
    bay_row(page, area_at(head.left, top, head.width(), high), curve.ranked[i]);
  }
  if (is_part) {
    const Area more =
        area_at(head.left, area.bottom - 6 - high, button_width(brush, "More bays"), high);
    if (button(brush, page.hand, "bays.more", more, "More bays")) {
      page.later([&curve, shown, all] {
        curve.first = curve.first + shown < all ? curve.first + shown : 0;
      });
    }
  }
  if (page.hand.escape() && !page.hand.is_typing()) put_away(page);
}

}  // namespace pouncemark::web
