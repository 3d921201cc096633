#pragma once

#include <array>

#include "web/panels/end_closeup.h"
#include "web/panels/lying_marks.h"

/// Findings as tags at their place: the same tag as in the list, what was found and needed beside
/// it, and a line that leads to the row itself. Pressed, it opens that finding's sum in the list.
namespace pouncemark::web {

/// Where tags may stand, and the piece as it is drawn there. A tag stands without words where those
/// do not fit in its room, and not at all where it does not.
struct TagRooms {
  LyingPart part;
  std::array<Area, 2> rooms;
  float until = 0;  ///< lines lead to rows no farther right than this
  int lap = -1;     ///< the lap that is shown; -1: what lies on the bench, a sleeve or a panel
};

/// Stops and warnings about what is shown, nearest first, each in a room of its own.
void place_tags(Page& page, const TagRooms& rooms);

/// Those about the sleeve on the bench, between its rows at one end.
void tags_at_end(Page& page, const EndCloseup& end);

/// Those about the panel on the bench, on its cloth.
void tags_on_panel(Page& page, const LyingPart& part, const Area& sheet);

}  // namespace pouncemark::web
