#pragma once

#include "web/panels/end_closeup.h"

namespace pouncemark::web {

/// The figures of the sleeve on the bench that its ends are drawn by, micrometres.
struct Ends {
  Um length = 0;
  Um width = 0;
  Um bottom = 0;  ///< kept clear at the bottom end
  Um top = 0;
  Um spacing = 0;  ///< as wanted
};
Ends ends_of(const Solved& solved, Place place);

// The measures that stand on one end of a sleeve: each an arrow from one real thing to another, and
// its figure in a box where it can be typed.

/// From the end of the sheet to the first point of the staple rows.
void kept_clear_box(Page& page, const EndCloseup& end, const Ends& ends);
/// From the first point to the second (from the last but one to the last): what spacing means, from
/// centre to centre or from crown to crown.
void spacing_arrow(Page& page, const EndCloseup& end);
/// Between the kept-clear line and the point nearest to it: what an exact row leaves over.
void left_over_arrow(Page& page, const EndCloseup& end);
/// Why a sleeve without side rows of its own has none.
void shared_words(Page& page, const EndCloseup& end);
/// From the long edges to the staple row and to the stitch row, beside the bottom end.
void edge_boxes(Page& page, const EndCloseup& end, const Ends& ends);
/// How far the stitch rows are kept clear, below the rule, where the staple rows are not so.
void stitch_end_box(Page& page, const EndCloseup& end);
/// From edge to edge, beside the top end.
void width_box(Page& page, const EndCloseup& end);
/// Which neighbour lies over, which under.
void lap_words(Page& page, const EndCloseup& end);

}  // namespace pouncemark::web
