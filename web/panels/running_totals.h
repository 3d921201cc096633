#pragma once

#include "web/panels/page.h"

namespace pouncemark::web {

/// The run across a section: each sleeve, the running totals to its right edge, and how far out the
/// whole could be.
void running_totals(Page& page, const Area& area);

}  // namespace pouncemark::web
