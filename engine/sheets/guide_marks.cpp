#include <algorithm>

#include "engine/base/number_text.h"
#include "engine/drawing/symbols.h"
#include "engine/material/assumed.h"
#include "engine/sheets/marks.h"
#include "engine/sheets/page_view.h"

namespace pouncemark::sheets {
namespace {

using drawing::Pen;
using drawing::Spot;

const Pen kEdgePen{700, {}, 0};
const Pen kThinPen{kThinPenUm, {}, 0};

/// The row's direction at one of its points, long enough to be a direction in whole micrometres.
Spot way_at(const solve::Row& row, std::int64_t index) {
  const Vec2 way = direction_at(row.guide, from_um(row.run.station_um(index)));
  return {to_um(way.x * 1000.0), to_um(way.y * 1000.0)};
}

Um crown_of(const PageView& view) {
  return view.set.job.crown_um.value_or(material::kAssumedCrownUm);
}

Spot spot_of(const PageView& view, const solve::Row& row, std::int64_t index) {
  const solve::PlaceUm place = solve::point_um(row, index);
  return view.on_paper(place.x, place.y);
}

/// One dashed stroke from hole `first` to hole `last`, so that every dash begins at a hole.
void add_stitches(const PageView& view, const solve::Row& row, const PointRange& seen,
                  drawing::Drawing* picture) {
  const std::int64_t first = std::max<std::int64_t>(seen.first - 1, 0);
  const std::int64_t last = std::min(seen.last + 1, row.run.points() - 1);
  if (last <= first) return;
  const Um stitch = row.run.spacing_um();
  const Um ink = stitch * kStitchInkTenths / 10;
  const Pen pen{kStitchPenUm, {ink, stitch - ink}, 0};
  std::vector<drawing::PathStep> steps;
  const Spot start = spot_of(view, row, first);
  steps.push_back({drawing::Step::move, start, {}, {}});
  if (is_straight(row.guide)) {
    steps.push_back({drawing::Step::line, spot_of(view, row, last), {}, {}});
  } else {
    drawing::append_arc(steps, {start, spot_of(view, row, last), view.on_paper(centre(row.guide)),
                                row.guide.rise > 0});
  }
  drawing::add_stroke(*picture, pen, std::move(steps));
}

void add_row_ends(const PageView& view, const solve::Row& row, drawing::Drawing* picture) {
  for (const std::int64_t index : {std::int64_t{0}, row.run.points() - 1}) {
    if (index == 0 && row.first_is_shared) continue;
    if (!view.sees(solve::point_um(row, index))) continue;
    const Spot at = spot_of(view, row, index);
    const Um half = kRowEndSquareUm / 2;
    drawing::add_rectangle(*picture, {{at.x - half, at.y - half}, {at.x + half, at.y + half}},
                           kThinPen);
    if (row.run.points() == 1) return;
  }
}

void add_points(const PageView& view, const solve::Row& row, const PointRange& seen,
                drawing::Drawing* picture) {
  for (std::int64_t i = std::max<std::int64_t>(seen.first, 0); i <= seen.last; ++i) {
    if (i == 0 && row.first_is_shared) continue;
    if (!view.sees(solve::point_um(row, i))) continue;
    const Spot at = spot_of(view, row, i);
    if (row.kind == solve::RowKind::staple) {
      drawing::add_staple_mark(*picture, at, way_at(row, i), crown_of(view));
    } else {
      drawing::add_guide_point(*picture, at, way_at(row, i));
    }
  }
}

void add_edge(const PageView& view, const piece::Edge& edge, drawing::Drawing* picture) {
  const Spot from = view.on_paper(edge.line.from);
  const Spot to = view.on_paper(edge.line.to);
  if (!is_straight(edge.line)) {
    std::vector<drawing::PathStep> steps;
    steps.push_back({drawing::Step::move, from, {}, {}});
    drawing::append_arc(steps, {from, to, view.on_paper(centre(edge.line)), edge.line.rise > 0});
    drawing::add_stroke(*picture, kEdgePen, std::move(steps));
  } else if (edge.role == piece::EdgeRole::hinge_side) {
    drawing::add_hinge_edge(*picture, from, to);
  } else if (edge.role == piece::EdgeRole::fly_side) {
    drawing::add_fly_edge(*picture, from, to);
  } else {
    drawing::add_line(*picture, from, to, kEdgePen);
  }
}

/// A fold is a second line close inside the edge; where a flange begins is a line of its own.
void add_make_lines(const PageView& view, drawing::Drawing* picture) {
  const job::Section* section = view.section();
  if (section == nullptr || section->make == job::Make::two_leaf) return;
  const Pen fold{400, {}, 0};
  const Pen flange{300, {6'000, 1'500, 1'500, 1'500}, 0};
  const bool folded = section->make == job::Make::folded;
  for (const solve::Sleeve& sleeve : view.piece().sleeves) {
    const Um x = drawn_make_line_um(*section, sleeve);
    drawing::add_line(*picture, view.on_paper(x, 0), view.on_paper(x, view.piece().length_um),
                      folded ? fold : flange);
  }
}

}  // namespace

void add_piece_edges(const PageView& view, drawing::Drawing* picture) {
  for (const piece::Edge& edge : view.piece().outline.edges) add_edge(view, edge, picture);
  const Pen over{400, {}, 0};
  const Pen under{300, {3'000, 2'000}, 0};
  const std::vector<solve::Sleeve>& sleeves = view.piece().sleeves;
  const Um length = view.piece().length_um;
  for (std::size_t i = 0; i + 1 < sleeves.size(); ++i) {
    const Um right = sleeves[i].left_um + sleeves[i].width_um;
    const Um next_left = sleeves[i + 1].left_um;
    drawing::add_line(*picture, view.on_paper(right, 0), view.on_paper(right, length), over);
    drawing::add_line(*picture, view.on_paper(next_left, 0), view.on_paper(next_left, length),
                      under);
  }
  add_make_lines(view, picture);
}

void add_rows(const PageView& view, drawing::Drawing* picture) {
  for (const solve::Row* row : view.rows()) {
    const PointRange seen = view.points_seen(*row);
    if (row->kind != solve::RowKind::stitch) {
      add_points(view, *row, seen, picture);
      continue;
    }
    const bool passes = seen.last >= seen.first || runs_along(*row) || runs_across(*row);
    if (passes) add_stitches(view, *row, seen, picture);
    if (row->run.points() > 0) add_row_ends(view, *row, picture);
  }
}

}  // namespace pouncemark::sheets
