#include "web/panels/lying_marks.h"

#include <algorithm>
#include <cmath>

#include "engine/material/assumed.h"

namespace pouncemark::web {
namespace {

Window window_of(const Page& page, const Area& area) {
  const float ratio = page.brush.ratio();
  return {area.left * ratio, area.top * ratio, area.right * ratio, area.bottom * ratio};
}

Spot screen(const LyingPart& part, solve::PlaceUm place) {
  return {part.lying.x(place.y), part.lying.y(place.x - part.sleeve_left_um)};
}

Stroke stroke(const Page& page, Spot from, Spot to) {
  const float ratio = page.brush.ratio();
  return {from.x * ratio, from.y * ratio, to.x * ratio, to.y * ratio};
}

bool lies_along(const solve::Row& row) {
  return is_straight(row.guide) && row.guide.from.x == row.guide.to.x;
}

/// The points of a row that can be seen; of a row that does not lie along the piece, all of them.
IndexSpan seen(const LyingPart& part, const solve::Row& row, float spare_px) {
  if (!lies_along(row)) return {0, row.run.points() - 1};
  const bool upward = row.guide.to.y > row.guide.from.y;
  const Um origin = to_um(row.guide.from.y);
  const Um low = part.lying.along(part.window.left - spare_px);
  const Um high = part.lying.along(part.window.right + spare_px);
  return upward ? points_between(row.run, low - origin, high - origin)
                : points_between(row.run, origin - high, origin - low);
}

/// From the first point to the last, straight or along the arc in short pieces.
std::vector<Stroke> course(const Page& page, const LyingPart& part, const solve::Row& row) {
  std::vector<Stroke> strokes;
  const std::int64_t pieces = is_straight(row.guide) ? 1 : 48;
  const std::int64_t last = row.run.points() - 1;
  Spot from = screen(part, solve::point_um(row, 0));
  for (std::int64_t i = 1; i <= pieces; ++i) {
    const std::int64_t index = last * i / pieces;
    const Spot to = screen(part, solve::point_um(row, index));
    strokes.push_back(stroke(page, from, to));
    from = to;
  }
  return strokes;
}

void draw_stitches(Page& page, const LyingPart& part, const solve::Row& row, const RowLook& look) {
  if (row.run.points() < 2) return;
  const float ratio = page.brush.ratio();
  const float stitch =
      static_cast<float>(from_um(row.run.spacing_um()) * part.lying.px_per_mm) * ratio;
  StrokeLook pen;
  pen.colour = look.colour;
  pen.width = look.line_px * ratio;
  // Under 4 px a stitch cannot be seen as one: an even dash says "stitched" without claiming a
  // count.
  const bool close = stitch < static_cast<float>(kBandBelowPx) * ratio;
  const float gap = std::min(3.0f * ratio, stitch * 0.35f);
  pen.on = close ? 5 * ratio : stitch - gap;
  pen.off = close ? 2 * ratio : gap;
  page.scene.strokes(page.brush.list(), course(page, part, row), pen, window_of(page, part.window));
}

/// Too close to be seen one by one: a band with a tick at each end.
void draw_band(Page& page, const LyingPart& part, const solve::Row& row, float half) {
  const float ratio = page.brush.ratio();
  StrokeLook pen;
  pen.colour = kStaple;
  pen.width = half * ratio;
  page.scene.strokes(page.brush.list(), course(page, part, row), pen, window_of(page, part.window));
}

void draw_points(Page& page, const LyingPart& part, const solve::Row& row, const RowLook& look) {
  const float ratio = page.brush.ratio();
  const auto k = static_cast<float>(part.lying.px_per_mm);
  const bool is_staple = row.kind == solve::RowKind::staple;
  const float small_half = std::clamp(k * 7, 1.5f, 4.0f);
  if (is_band(row.run, part.lying.px_per_mm)) return draw_band(page, part, row, small_half);
  MarkLook mark;
  mark.colour = is_staple ? kStaple : kInk;
  if (look.is_small) {
    mark.kind = MarkKind::tick;
    mark.half = small_half * ratio;
    mark.line = std::clamp(k * 4, 1.2f, 2.2f) * ratio;
  } else if (is_staple) {
    const auto crown = static_cast<float>(
        from_um(page.bench.now().job.crown_um.value_or(material::kAssumedCrownUm)));
    mark.half = crown * k / 2 * ratio;
    mark.line = std::max(2.0f, 1.3f * k) * ratio;
  } else {
    mark.kind = MarkKind::guide_point;
    mark.half = 5 * ratio;
    mark.line = 1.6f * ratio;
  }
  const IndexSpan span = seen(part, row, 30);
  std::vector<MarkSpot> spots;
  spots.reserve(static_cast<std::size_t>(std::max<std::int64_t>(span.count(), 0)));
  for (std::int64_t i = span.first; i <= span.last; ++i) {
    const Spot at = screen(part, solve::point_um(row, i));
    const Vec2 along = direction_at(row.guide, from_um(row.run.station_um(i)));
    const double flip = part.lying.face_down ? -1.0 : 1.0;
    spots.push_back({at.x * ratio, at.y * ratio, static_cast<float>(along.y),
                     static_cast<float>(along.x * flip)});
  }
  page.scene.marks(page.brush.list(), std::move(spots), mark, window_of(page, part.window));
}

}  // namespace

void draw_cloth(Page& page, const LyingPart& part, const Area& area, float weave_px) {
  const Area cloth = {std::max(area.left, part.window.left), std::max(area.top, part.window.top),
                      std::min(area.right, part.window.right),
                      std::min(area.bottom, part.window.bottom)};
  if (cloth.width() <= 0 || cloth.height() <= 0) return;
  page.brush.fill(cloth, kCloth);
  std::vector<Stroke> strokes;
  for (float y = area.top + weave_px; y < area.bottom - 1; y += weave_px) {
    if (y < cloth.top || y > cloth.bottom) continue;
    strokes.push_back(stroke(page, {cloth.left, y}, {cloth.right, y}));
  }
  const float ratio = page.brush.ratio();
  StrokeLook pen;
  pen.colour = kWeave;
  pen.width = 0.8f * ratio;
  pen.on = weave_px * ratio;
  pen.off = weave_px * 0.7f * ratio;
  page.scene.strokes(page.brush.list(), strokes, pen, window_of(page, cloth));
}

void draw_sheet(Page& page, const LyingPart& part, const SheetLook& look) {
  const Lying& lying = part.lying;
  const float y0 = std::min(lying.y(look.across_from), lying.y(look.across_to));
  const float y1 = std::max(lying.y(look.across_from), lying.y(look.across_to));
  const Area sheet = {lying.x(0), y0, lying.x(look.length_um), y1};
  page.brush.start_window(part.window);
  page.brush.fill(sheet, kSheet);
  page.brush.end_window();
  const float in = lying.px(look.cloth_in_um);
  draw_cloth(page, part, sheet.inset(in), look.weave_px);
  page.brush.start_window(part.window.inset(-look.edge_px));
  page.brush.frame(sheet, kSheetEdge, look.edge_px);
  page.brush.end_window();
}

void draw_row(Page& page, const LyingPart& part, const solve::Row& row, const RowLook& look) {
  if (row.run.is_empty) return;
  if (row.kind == solve::RowKind::stitch)
    draw_stitches(page, part, row, look);
  else
    draw_points(page, part, row, look);
}

}  // namespace pouncemark::web
