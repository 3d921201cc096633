#pragma once

#include "web/panels/page.h"

namespace pouncemark::web {

/// One lap of a section at its bottom end, opened out: which sleeve lies over which, the joining
/// row, the side rows beside it. Draws the middle lap of the section.
void lap_closeup(Page& page, const Area& area);

}  // namespace pouncemark::web
