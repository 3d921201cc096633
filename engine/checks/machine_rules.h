#pragma once

#include <optional>

#include "engine/checks/finding.h"
#include "engine/takeoff/under_arm.h"

/// Rules about what the machine and the stapler reach, each in a file of its own.
namespace pouncemark::checks {

/// Caution 21, stop: a row whose smaller side `side_um` is wider than the throat and whose roll,
/// `roll_um` across, does not go under the arm either.
std::optional<Finding> row_out_of_reach(Um side_um, Um roll_um, const takeoff::Arm& arm);

/// Caution 13, warn: a staple row `side_um` from the nearer free edge, where the stapler reaches
/// `reach_um` in. Exactly as far passes.
std::optional<Finding> beyond_stapler(Um side_um, Um reach_um);

}  // namespace pouncemark::checks
