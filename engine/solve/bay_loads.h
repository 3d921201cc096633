#pragma once

#include "engine/job/job.h"
#include "engine/solve/bays.h"
#include "engine/solve/results.h"

/// Inside of solve: what hangs in a bay weighs, and what hangs on its stitches and fixings. Only
/// solve's own files include this.
namespace pouncemark::solve {

/// Needs a piece; `result` has its fixings already.
BayLoads loads_of(const job::Job& job, const Results& results, const BayResult& result);

/// How weight and loads were worked out.
Sum load_sum(const job::Job& job, const Results& results, int bay, BayFigure figure);

}  // namespace pouncemark::solve
