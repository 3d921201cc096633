#pragma once

#include <string>
#include <vector>

#include "engine/base/result.h"
#include "engine/geometry/segment.h"

/// Floor 3, piece: outlines whose edges have roles. Knows no row, no page and no job.
namespace pouncemark::piece {

/// What an edge is for. A fly side stays unsewn, so that cloth and sheet can slip when curved.
enum class EdgeRole { side, end, hinge_side, fly_side, top, bottom };

/// One named edge, walked anticlockwise with the piece at its left.
struct Edge {
  std::string name;  ///< "left", "right", "hinge", "fly", "top", "bottom"
  EdgeRole role = EdgeRole::side;
  Segment line;
  bool datum_at_end = false;  ///< stations are measured from `line.to` instead of `line.from`
};

/// A closed run of edges, anticlockwise, any number of them.
struct Outline {
  std::vector<Edge> edges;
};

/// A sleeve: left and right side, bottom and top end, lower left corner at `left`, 0. Stations of
/// the sides run from BOTTOM.
Outline sleeve_outline(double left, double width, double length);

/// A rectangular panel; stations of hinge and fly side run from BOTTOM, of top and bottom from the
/// hinge side.
Outline panel_outline(double width, double length, bool hinge_at_left);

/// A panel written out edge by edge. Sets each edge's datum end: the hinge side's is where it meets
/// an edge of role bottom (else its first end), every other edge's the end toward the hinge side,
/// walking away from it to the first fly side.
/// Problems: panel_without_hinge_side, panel_without_fly_side, outline_*.
Result<Outline> panel_outline(std::vector<Edge> edges);

/// The edge as a line walked from its datum end.
Segment from_datum(const Edge& edge);

/// Exactly what the rows need of an outline: at least three edges, none
/// shorter than 0.001, each arc at most a half circle deep, walked anticlockwise, not crossing
/// itself.
Result<bool> validate(const Outline& outline);

/// The upright rectangle that just holds the outline, arcs included.
struct Extent {
  Vec2 low;
  Vec2 high;
};
Extent extent(const Outline& outline);

/// Which way a panel hangs: true where its first hinge side lies right of its middle, seen from the
/// front. False without a hinge side.
bool hinge_at_right(const Outline& outline);

/// The outline moved by `by`.
Outline moved(Outline outline, Vec2 by);

/// Area in mm², arcs included; negative when walked clockwise.
double area_mm2(const Outline& outline);

}  // namespace pouncemark::piece
