#pragma once

#include <cstddef>

#include "web/panels/page.h"

namespace pouncemark::web {

/// What hangs on a door's card: the small job, the sleeve with its four measures, a job's docket.
void door_picture(Page& page, std::size_t door, const Area& area);

}  // namespace pouncemark::web
