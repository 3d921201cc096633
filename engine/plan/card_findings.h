#pragma once

#include <vector>

#include "engine/solve/results.h"

/// Inside of plan: which findings a card has to tell.
namespace pouncemark::plan {

/// The open stops and warns that hold at a row, stops first: those of the row, its lap, its sleeve,
/// its piece, and of the whole job as far as they are about sewing.
std::vector<const solve::Finding*> findings_at(const solve::Results& results, int row);

}  // namespace pouncemark::plan
