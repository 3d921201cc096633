#pragma once

#include <string>
#include <vector>

#include "engine/solve/results.h"

/// Inside of plan: which findings a card has to tell.
namespace pouncemark::plan {

/// The open stops and warns that hold at a row, stops first: those of the row, its lap, its sleeve,
/// its piece, and of the whole job as far as they are about sewing.
std::vector<const solve::Finding*> findings_at(const solve::Results& results, int row);

/// Those of the whole job alone, as far as they are about sewing; stops first.
std::vector<const solve::Finding*> findings_of_the_job(const solve::Results& results);

/// The sentence of a finding up to its first full stop (a figure's point is none), and without how
/// much is short: what was found and what is needed say it.
std::string in_short(const solve::Finding& finding);

}  // namespace pouncemark::plan
