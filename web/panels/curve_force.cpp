#include <string>

#include "web/panels/curve_parts.h"

namespace pouncemark::web {
namespace {

/// Thickness of the facing in its box; gives where the next may begin.
float facing_box(Page& page, const Area& area) {
  const ForceView& view = page.state.curve.force;
  if (!view.holds_panel) return area.top;
  CurveBox box;
  box.id = "facing";
  box.area = area_at(area.left, area.top, 100, box_height());
  box.shown = view.facing;
  box.name = "thickness of the facing, the clear front sheet";
  const float base = box.area.mid_y() + page.brush.rise(Role::text) / 2;
  page.brush.words({box.area.right + 10, base},
                   cut_short(page.brush, "facing, the clear front sheet; empty: none",
                             area.right - box.area.right - 10, Role::text, false),
                   {});
  const TextEvent event = curve_box(page, box);
  if (event.finished && *event.finished == view.facing) close_box(page.state.open_box);
  if (event.finished && *event.finished != view.facing) {
    keep_curve(page, with_facing(page.bench.now(), page.state.curve.view.bay, *event.finished));
  }
  return box.area.bottom + 10;
}

void force_line(Page& page, const Area& row, const ForceLine& line, bool is_exact,
                const std::string& id) {
  const Brush& brush = page.brush;
  const float base = row.mid_y() + brush.rise(Role::text) / 2;
  constexpr float kRight[] = {0, 0.56f, 0.78f, 1.0f};
  brush.words({row.left, base}, line.words[0], {Role::text, line.is_shown, kInk});
  std::string aloud = line.words[0];
  for (std::size_t i = 1; i < 4; ++i) {
    const bool is_bold = line.is_shown && i == (is_exact ? 3 : 2);
    brush.words({row.left + row.width() * kRight[i], base}, line.words[i],
                {Role::text, is_bold, kInk, Side::right});
    if (!line.words[i].empty()) aloud += ", " + line.words[i];
  }
  brush.line({row.left, row.bottom}, {row.right, row.bottom}, kPale, 1);
  page.hand.note(id, row, aloud);
}

}  // namespace

void force_slip(Page& page, const Area& area) {
  const ForceView& view = page.state.curve.force;
  const Brush& brush = page.brush;
  const float high = brush.pitch(Role::text) + 8;
  Area row = area_at(area.left, facing_box(page, area), area.width(), high);
  if (!view.lines.empty()) {
    force_line(page, row, {{"", "thick", "small bend", "exact"}}, false, "force.head");
    std::size_t i = 0;
    for (const ForceLine& line : view.lines) {
      row = area_at(area.left, row.bottom, area.width(), high);
      force_line(page, row, line, view.is_exact, "force." + std::to_string(i++));
    }
  }
  float y = row.bottom + 10;
  for (std::size_t i = 0; i < view.said.size(); ++i) {
    const auto lines = broken(brush, view.said[i], area.width(), Role::text, i == 0);
    const float tall = static_cast<float>(lines.size()) * brush.pitch(Role::text);
    if (y + tall > area.bottom) break;
    brush.paragraph({area.left, y + brush.rise(Role::text) + 4}, view.said[i], area.width(),
                    {Role::text, i == 0, kInk});
    page.hand.note("force.said." + std::to_string(i), {area.left, y, area.right, y + tall},
                   view.said[i]);
    y += tall + 6;
  }
}

}  // namespace pouncemark::web
