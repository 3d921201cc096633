#pragma once

#include <cstddef>

#include "engine/solve/results.h"

/// Where top and bottom rows of a panel are made to stop. A stop is measured along their edge from
/// the hinge side, where a tape hooks; on an arc, along the arc of the edge. The row on its own
/// line, farther in, ends square in from there.
namespace pouncemark::solve {

/// An edge as a tape from the hinge side meets it, and the line of the row along it.
struct StopEdge {
  Um before_um = 0;  ///< edges between the hinge side and this one
  Um edge_um = 0;
  Um line_um = 0;  ///< as long as the edge, but for an arc

  /// The last whole micrometre of the line not beyond a stop; below 0 where it lies before.
  Um station_of(Um stop_um) const;
  /// Where a place of the line stands along the edge, from the hinge side: no farther than it does.
  Um from_hinge_of(Um station_um) const;
};

/// The edge with this index and a row's line along it; `line` is walked from the edge's datum end.
StopEdge stop_edge(const piece::Outline& outline, std::size_t edge, const Segment& line);

/// The row runs along a top or bottom edge of a panel, so a stop is about it.
bool can_stop(const Piece& piece, const Row& row);

/// How far from the hinge side, along its edge, the last point of such a row stands.
Um ends_from_hinge_um(const Piece& piece, const Row& row);

}  // namespace pouncemark::solve
