#pragma once

#include <vector>

#include "engine/base/result.h"
#include "engine/geometry/segment.h"
#include "engine/geometry/units.h"
#include "engine/piece/outline.h"

namespace pouncemark::layout {

/// The line a row runs on, walked from the datum end of its edge, and how much of it is kept clear
/// at either end. Millimetres of the piece; lengths along it whole micrometres.
struct GuideLine {
  Segment line;
  Um length_um = 0;
  Um clear_start_um = 0;
  Um clear_end_um = 0;
  bool first_is_shared = false;  ///< its first place belongs to the row of the neighbouring edge
  bool is_passed_over = false;   ///< no row: those of the neighbouring edges meet before it
};

/// The line `in_um` in from an edge. Problems: row_on_fly_side (a fly side never takes a row),
/// row_off_the_piece (an arc too tight for it).
Result<GuideLine> guide_along(const piece::Edge& edge, Um in_um);

/// Lines for one seam round a piece, `in_um` in from every edge: for each edge index in
/// `takes_row`, its line from corner to corner, a corner being where it meets its neighbour's line.
/// Edges that run smoothly into one another have the corner where they touch. At a corner that
/// turns inward the line reaches beyond its own edge: it starts at a negative station. A corner of
/// two rows belongs to the one toward the first hinge side; the other's `first_is_shared` is set,
/// or, where `stop_short_um` is above 0, it begins at the first whole micrometre that far from that
/// row and shares nothing (a row with no such place keeps more clear than it is long).
/// An edge too short for a row so far in (a small chamfer, a rounded corner) is passed over: its
/// neighbours' rows meet one another and it gets a line without length.
/// Problems: row_on_fly_side, row_off_the_piece (an arc too tight for it, lines that do not meet,
/// or a corner beyond the piece), each naming the edge in `where`.
Result<std::vector<GuideLine>> guides_round(const piece::Outline& outline, Um in_um,
                                            const std::vector<std::size_t>& takes_row,
                                            Um stop_short_um = 0);

}  // namespace pouncemark::layout
