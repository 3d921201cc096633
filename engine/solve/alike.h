#pragma once

#include <vector>

#include "engine/solve/results.h"

namespace pouncemark::solve {

/// The findings of a job for a list to read: those that say the same of several sections, or of
/// several panels, are one, with all their places in its `place` ("sections 1 to 60, all 23 laps
/// each"). One whose sentence, remedy or sum differs stands alone. In their order, the first of
/// each; `piece`, `part` and `at` are those of that first one.
std::vector<Finding> alike_as_one(const Results& results);

}  // namespace pouncemark::solve
