#pragma once

#include "web/model/view.h"
#include "web/panels/page.h"

namespace pouncemark::web {

/// One lap of a section at its bottom end, opened out.
struct LapView {
  int lap = -1;  ///< the index of the sleeve at its left; -1: there is none to show
  Area window;
  Lying lying;
  Um middle_um = 0;
  Um lap_um = 0;
  float upper = 0;  ///< the lap's edges on the screen
  float lower = 0;
};

/// The chosen lap of the section on the bench at true scale in `area`.
LapView lap_view(const Page& page, const Area& area);

/// Draws it: which sleeve lies over which, the joining row, the side rows beside it, what is found
/// there; the lap's measure, the edge that is pulled, and the steps to its neighbours.
void lap_closeup(Page& page, const LapView& view);

/// Chooses a lap by the index of the sleeve at its left.
void choose_lap(Page& page, int lap);

}  // namespace pouncemark::web
