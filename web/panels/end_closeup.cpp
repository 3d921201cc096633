#include "web/panels/end_closeup.h"

#include <algorithm>
#include <array>

#include "web/panels/end_grips.h"
#include "web/panels/end_measures.h"
#include "web/panels/lying_marks.h"
#include "web/panels/make_marks.h"
#include "web/panels/place_tags.h"
#include "web/widgets/steel_rule.h"

namespace pouncemark::web {
namespace {

constexpr float kUnderRule = 50;
constexpr Um kInFromEnds = 12'000;

float gutter_width() { return text_size() == TextSize::large ? 124.0f : 98.0f; }

double scale_for(const Page& page, const Ends& ends, float width, float height) {
  const double wide = from_um(std::max<Um>(ends.width, 1));
  const double reach = from_um(std::max(ends.bottom, ends.top) + ends.spacing) + 24;
  const double largest = page.layout.height > 900 ? 3.6 : 2.6;
  const double fits =
      std::min({largest, static_cast<double>(height) / wide, static_cast<double>(width) / reach});
  return std::max(fits, 0.2);
}

/// Both kept-clear ends and the first spacing are seen, so that their arrows can be drawn.
bool reach_fits(const Ends& ends, Um shown) {
  return std::max(ends.bottom, ends.top) + ends.spacing <= shown;
}

/// The torn edge where the close-up stops.
void torn(Page& page, float x, float y0, float y1, float side) {
  const int count = std::max(2, static_cast<int>((y1 - y0) / 9));
  const float step = (y1 - y0 + 6) / static_cast<float>(count);
  page.brush.fill({std::min(x, x + side * 4), y0 - 3, std::max(x, x + side * 4), y1 + 3}, kMat);
  for (int i = 0; i < count; ++i) {
    const float y = y0 - 3 + step * static_cast<float>(i);
    const std::array<Spot, 3> tooth = {Spot{x + side, y}, Spot{x - side * 5, y + step / 2},
                                       Spot{x + side, y + step}};
    page.brush.shape(tooth, kMat);
  }
}

void sheet_and_rows(Page& page, const EndCloseup& end, const Ends& ends) {
  const Solved& now = page.bench.now();
  const Place place = page.bench.place();
  LyingPart part;
  part.lying = end.lying;
  part.window = end.sleeve;
  const auto& piece = now.results.pieces[static_cast<std::size_t>(place.piece)];
  const auto& sleeve = piece.sleeves[static_cast<std::size_t>(place.sleeve)];
  part.sleeve_left_um = sleeve.left_um;
  const Brush& brush = page.brush;
  const job::Section* section = section_at(now.job, now.results, place);
  brush.start_window(end.sleeve.inset(-3));
  brush.fill(end.sleeve, kSheet);
  const float lap = end.lying.px(section->lap_um);
  const auto sleeves = static_cast<int>(piece.sleeves.size());
  const bool lap_up = end.lying.face_down ? place.sleeve + 1 < sleeves : place.sleeve > 0;
  const bool lap_down = end.lying.face_down ? place.sleeve > 0 : place.sleeve + 1 < sleeves;
  const Area& seen = end.sleeve;
  if (lap_up) brush.fill({seen.left, seen.top, seen.right, seen.top + lap}, kLap);
  const float foot = seen.top + end.lying.px(ends.width);
  if (lap_down) brush.fill({seen.left, foot - lap, seen.right, foot}, kLap);
  const float in = end.lying.px(kInFromEnds);
  draw_cloth(
      page, part,
      {end.lying.x(kInFromEnds), seen.top + in, end.lying.x(ends.length - kInFromEnds), foot - in},
      7);
  brush.line({seen.left, seen.top}, {seen.right, seen.top}, kSheetEdge, 2.5f);
  const bool is_whole = end.lying.px(ends.width) <= seen.height() + 1;
  if (is_whole) brush.line({seen.left, seen.bottom}, {seen.right, seen.bottom}, kSheetEdge, 2.5f);
  const float edge = end.lying.x(end.is_bottom ? 0 : ends.length);
  const bool sees_edge = edge > seen.left - 1 && edge < seen.right + 1;
  if (sees_edge) brush.line({edge, seen.top - 1}, {edge, seen.bottom + 1}, kSheetEdge, 3);
  if (end.is_at_end) draw_make(page, {*section, sleeve, end.lying, seen}, end.is_bottom);
  brush.end_window();
  for (const solve::Row* row : shared_rows(now, place)) draw_row(page, part, *row, {});
  for (const solve::Row* row : rows_at(now.results, place, solve::RowKind::stitch)) {
    draw_row(page, part, *row, {});
  }
  for (const solve::Row* row : rows_at(now.results, place, solve::RowKind::staple)) {
    draw_row(page, part, *row, {});
  }
  const bool sees_bottom = sees_edge && end.is_bottom;
  const bool sees_top = sees_edge && !end.is_bottom;
  if (!sees_bottom) torn(page, seen.left, seen.top, seen.bottom, -1);
  if (!sees_top) torn(page, seen.right, seen.top, seen.bottom, 1);
}

void rule_along(Page& page, const EndCloseup& end) {
  const Area& seen = end.sleeve;
  const Area rule = {seen.left, seen.bottom + kRuleGap, seen.right,
                     seen.bottom + kRuleGap + kRuleHeight};
  RuleLook look;
  look.px_per_mm = end.lying.px_per_mm;
  look.from_mm = from_um(end.lying.along(seen.left));
  look.figure_every = look.px_per_mm > 1.7 ? 50 : look.px_per_mm > 0.6 ? 100 : 500;
  look.tick_every = look.px_per_mm > 1.0 ? 5 : look.px_per_mm > 0.4 ? 10 : 50;
  steel_rule(page.brush, rule, look);
}

}  // namespace

EndPair end_pair(const Page& page, const Area& area) {
  // While something is pulled the close-ups keep their size and place: the hand stays on the thing.
  const Ends ends = ends_of(page.bench.at_rest(), page.bench.place());
  const float gap = 22;
  const float width = (area.width() - gap) / 2;
  const float gutter = gutter_width();
  const float head = 24 + box_height() + 14;
  const float tall = area.height() - head - kRuleGap - kRuleHeight - kUnderRule - 6;
  EndPair pair;
  const CloseupView& view = page.state.closeups;
  pair.px_per_mm = scale_for(page, ends, width - gutter, std::max(tall, 30.0f)) * view.scale;
  const double half_mm = from_um(ends.length) / 2;
  const float seen = std::min(width - gutter, static_cast<float>(half_mm * pair.px_per_mm));
  const auto high = static_cast<float>(from_um(ends.width) * pair.px_per_mm);
  const Um shown = to_um(static_cast<double>(seen) / pair.px_per_mm);
  const float top = area.top + head + std::max(0.0f, (tall - high) / 2);
  const Ends now = ends_of(page.bench.now(), page.bench.place());
  const auto px = [&pair](Um um) { return static_cast<float>(from_um(um) * pair.px_per_mm); };
  const auto end_at = [&](bool is_bottom) {
    EndCloseup end;
    end.is_bottom = is_bottom;
    end.gutter = gutter;
    end.mat = is_bottom ? Area{area.left - 3, area.top, area.left + width, area.bottom}
                        : Area{area.right - width, area.top, area.right + 3, area.bottom};
    const float left = is_bottom ? area.left + gutter : area.right - gutter - seen;
    const Um away = held_on_piece(view.from_end(is_bottom), ends.length, shown);
    const float longer = is_bottom || away != 0 ? 0 : px(now.length - ends.length);
    // At its own size the measures always stand, whatever they come to; enlarged where they fit.
    const bool fits = high <= std::max(tall, 30.0f) + 1 && reach_fits(ends, shown);
    end.is_at_end = away == 0 && (view.scale == 1 || fits);
    end.sleeve = {left, top, left + seen + longer,
                  end.is_at_end ? top + px(now.width) : top + std::min(px(now.width), tall)};
    end.lying.left_px = static_cast<double>(left);
    end.lying.top_px = static_cast<double>(top);
    end.lying.px_per_mm = pair.px_per_mm;
    end.lying.width_um = now.width;
    end.lying.face_down = page.state.is_face_down;
    end.lying.from_um = is_bottom ? away : ends.length - shown - away;
    return end;
  };
  pair.bottom_end = end_at(true);
  pair.top_end = end_at(false);
  return pair;
}

bool has_own_rows(const Page& page) {
  const solve::Sleeve* sleeve = sleeve_at(page.bench.now().results, page.bench.place());
  return sleeve != nullptr && (sleeve->has_left_rows || sleeve->has_right_rows);
}

void draw_end(Page& page, const EndCloseup& end) {
  const Ends ends = ends_of(page.bench.now(), page.bench.place());
  sheet_and_rows(page, end, ends);
  if (!end.is_at_end) return rule_along(page, end);
  lap_words(page, end);
  sheet_grips(page, end);
  if (has_own_rows(page)) {
    spacing_arrow(page, end);
    left_over_arrow(page, end);
    rule_along(page, end);
    kept_clear_box(page, end, ends);
    if (end.is_bottom) edge_boxes(page, end, ends);
    stitch_end_box(page, end);
    row_grips(page, end);
  } else {
    rule_along(page, end);
    shared_words(page, end);
  }
  if (!end.is_bottom) width_box(page, end);
  if (!end.is_bottom) tags_at_end(page, end);
}

}  // namespace pouncemark::web
