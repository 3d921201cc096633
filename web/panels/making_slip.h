#pragma once

#include "web/panels/page.h"

namespace pouncemark::web {

/// Works out what would follow from the plan on the slip, after it was changed; never while
/// drawing.
void foretell_making(const Bench& bench, MakingSlip& making);

/// Does what was made, as one action, and goes to it; a refusal stands on the slip as a sentence.
void do_making(Page& page, Made made);

/// On a lone sleeve the button "Make it a section", where it has room from `left` to `right`; gives
/// its left edge, else `right`.
float make_section_button(Page& page, float left, float right, float top);

/// Opens a slip of making, or closes it when it is the open one.
void open_making(Page& page, MakingAsk ask);

/// Before the piece is drawn: what the slip lies over can no longer be touched.
void cover_for_making(Page& page);
/// The slip itself, over the lower part of the middle area. Esc or its own button closes it.
void making_slip(Page& page);

/// The fly side of a panel that stands upright: a zigzag, never a straight line.
void fly_zigzag(const Brush& brush, float x, float top, float bottom);

/// Inside of the slip: what is asked on it, between its title and its foot.
void piece_boxes(Page& page, const Area& area);
void plan_boxes(Page& page, const Area& area);
void panel_boxes(Page& page, const Area& area);

}  // namespace pouncemark::web
