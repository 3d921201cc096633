#pragma once

#include "engine/geometry/segment.h"
#include "engine/solve/results.h"

/// Fixings put into a bay by hand, so that paper can be looked at by itself.
namespace pouncemark::tests {

/// A row along edge `edge` of the outline of what hangs in a bay: `gaps` gaps between 30 from
/// either end, 10 in; fixing `tight` of it is the tight one, or none (-1) where the tight one
/// stands in the bay's first row.
inline solve::BayFixings fixings_along(const solve::Piece& piece, int edge, int gaps, int tight) {
  const piece::Edge& of = piece.outline.edges[static_cast<std::size_t>(edge)];
  const Segment line = piece::from_datum(of);
  const Vec2 along = direction_at(line, 0);
  const Vec2 in = left_of(along) * (of.datum_at_end ? -1.0 : 1.0);
  solve::BayFixings row;
  row.edge = of.name == "hinge" ? "hinge side" : of.name;
  row.outline_edge = edge;
  row.tight = tight;
  row.tight_row = tight < 0 ? 0 : -1;
  for (int i = 0; i <= gaps; ++i) {
    const double at = 30 + (length(line) - 60) * i / gaps;
    const Vec2 place = line.from + along * at + in * 10.0;
    solve::BayFixing fixing;
    fixing.station_um = to_um(at);
    fixing.x_um = to_um(place.x);
    fixing.y_um = to_um(place.y);
    fixing.is_tight = i == tight;
    fixing.slot_shown_um = fixing.is_tight ? 0 : 8'000 + 500 * i;
    fixing.screw_today_um = fixing.is_tight ? 0 : 1'000;
    row.fixings.push_back(fixing);
  }
  return row;
}

/// The index of the edge of this name.
inline int edge_called(const solve::Piece& piece, std::string_view name) {
  for (std::size_t i = 0; i < piece.outline.edges.size(); ++i) {
    if (piece.outline.edges[i].name == name) return static_cast<int>(i);
  }
  return -1;
}

}  // namespace pouncemark::tests
