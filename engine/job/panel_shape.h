#pragma once

#include "engine/base/result.h"
#include "engine/job/job.h"
#include "engine/piece/outline.h"

namespace pouncemark::job {

/// The panel's outline in millimetres with its lower left extent at 0, 0, from its rectangle or its
/// written edges. Problems: those of piece::panel_outline.
Result<piece::Outline> outline_of(const Panel& panel);

/// The role a word of the job file stands for; `word` is one of words::kPanelEdge.
piece::EdgeRole role_of(const std::string& word);

}  // namespace pouncemark::job
