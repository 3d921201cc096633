#pragma once

#include "web/panels/page.h"

namespace pouncemark::web {

/// A small drawing of what an answer means: from what to what a spacing is measured, how two rows
/// meet at a corner. Nothing for other questions.
void how_picture(Page& page, Question question, int answer, const Area& area);

}  // namespace pouncemark::web
