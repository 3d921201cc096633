#pragma once

#include "web/panels/page.h"
#include "web/widgets/tag.h"

namespace pouncemark::web {

TagKind kind_of(solve::Severity severity);

/// Height at which the first finding stands there in full and the next on one line.
float wanted_by_findings(const Page& page, float width);

/// What was found, nearest first, with what can be done about it: the first ones and the open one
/// in full, the others on one line each, and a line that leads on where not all have room. The open
/// one always shows its sum.
void findings_list(Page& page, const Area& area);

}  // namespace pouncemark::web
