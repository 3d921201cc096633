#pragma once

#include "web/panels/page.h"

namespace pouncemark::web {

/// Works the questions out anew when the bench has changed since; never while drawing.
void ask_how(const Bench& bench, HowSlip& how);

/// The button that opens and closes the slip "How it is made", with `x` at its left or right edge;
/// gives its other edge.
float how_opener(Page& page, float x, float top, Side side);

/// Where the slip may begin: under the headline, or lower, where a picture ends, when all of it has
/// room below.
struct HowTops {
  float highest = 0;
  float snug = 0;
};

/// Before the lower part of a piece is drawn: what the slip will lie over can no longer be touched.
void cover_for_how(Page& page, const HowTops& tops);

/// The slip over the lower part of the middle area, with its questions, answers and what would
/// follow from each; nothing when it is not open. Esc or its own button closes it.
void how_slip(Page& page, const HowTops& tops);

}  // namespace pouncemark::web
