#pragma once

#include "web/panels/end_closeup.h"
#include "web/panels/whole_strip.h"

namespace pouncemark::web {

/// The frames on the strip round what stands below as close-ups: they can be pulled along, and the
/// arrow keys move the one that has the focus.
void closeup_frames(Page& page, const WholeStrip& strip, const EndPair& ends);

/// Wheel, fingers and keys that move and scale the close-ups; words that say where they stand, and
/// the button that puts them back. After everything that can be pressed on them.
void closeup_moves(Page& page, const EndPair& ends);

}  // namespace pouncemark::web
