#pragma once

#include "engine/job/job.h"
#include "engine/solve/results.h"

namespace pouncemark::web {

/// A job and everything that follows from it, worked out once after an edit.
struct Solved {
  job::Job job;
  solve::Results results;
};

/// Solves the job. Never called while drawing.
Solved solved(job::Job job);

}  // namespace pouncemark::web
