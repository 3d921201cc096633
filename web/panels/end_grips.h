#pragma once

#include "web/panels/end_closeup.h"

namespace pouncemark::web {

// Everything of one end of a sleeve that can be pulled. What comes later lies on top.

/// The long edge, the end of the sheet, the flange or the fold.
void sheet_grips(Page& page, const EndCloseup& end);

/// The staple rows and stitch rows across, the rule stop with its kept-clear line, and the ends of
/// stitch rows that have their own.
void row_grips(Page& page, const EndCloseup& end);

}  // namespace pouncemark::web
