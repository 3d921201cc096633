#pragma once

#include "engine/job/job.h"
#include "engine/solve/results.h"

namespace pouncemark::solve {

/// Everything that follows from the job: pieces, rows, findings, totals. Pure: same job, same
/// results; no state, no clock, no file. A row that cannot be laid is left out and becomes a
/// finding.
Results solve(const job::Job& job);

}  // namespace pouncemark::solve
