#pragma once

#include "web/model/bench.h"
#include "web/panels/sew_state.h"

namespace pouncemark::web {

/// Works the stage out anew when the bench or the kind of row has changed since; never while
/// drawing.
void ask_sew(const Bench& bench, SewStage& sew);

}  // namespace pouncemark::web
