#pragma once

#include <string>
#include <vector>

#include "web/model/pick.h"
#include "web/model/pull.h"
#include "web/widgets/area.h"

namespace pouncemark::web {

struct Page;

/// A thing on the bench that can be taken hold of and pulled, or moved with the arrow keys while it
/// has the focus.
struct PullHandle {
  std::string id;     ///< "stop.bottom"
  std::string words;  ///< what it is called aloud: "rule stop at the bottom end"
  Place place;
  Measure measure = Measure::length;
  PullAxis axis = PullAxis::level;
  int sign = 1;  ///< +1: the figure grows towards the right, or downwards; -1 the other way
  double px_per_mm = 1;
  Area line;            ///< as it is drawn, without width: in pen while it moves
  Area block;           ///< what else can be taken hold of, and says which figure moves; or empty
  Area dots;            ///< the part of the line that shows where it was; empty: all of it
  bool always = false;  ///< the line is drawn while nothing moves, too
  bool by_tab = true;   ///< false: another handle of the same figure stands for it at the keys
  std::string refuses;  ///< why it cannot be pulled at all; empty: it can
};

/// What is in the hand, and what resists.
struct PullState {
  std::string id;  ///< the handle that is held; empty: none
  Pull pull;
  Place bench_place;   ///< what lay on the bench when it was taken hold of
  Um asked_um = 0;     ///< the figure the hand asked for last
  std::string reason;  ///< why the handle `reason_of` went no further
  std::string reason_of;
  std::vector<PullHandle> handles;  ///< those of this frame
  bool is_there = false;            ///< the held one is among them
};

/// Stands a handle on the bench and draws its line: dashed in pen while it moves, with dots where
/// it was. The hand takes what is pressed first, then the nearest handle within 9 mm.
void pull_handle(Page& page, PullHandle handle);

/// Lets the hand take hold of this frame's handles, pull one and let it go; the slip beside the
/// hand shows the figure and why it resists. Once a frame, after all handles.
void pull_handles(Page& page);

/// Puts back what was held where it does not stand on the bench any more. Last in a frame.
void drop_lost_pull(Page& page);

}  // namespace pouncemark::web
