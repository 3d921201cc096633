#pragma once

#include "engine/job/job.h"
#include "engine/solve/results.h"
#include "engine/solve/solve.h"

namespace pouncemark::web {

/// A job and everything that follows from it, worked out once after an edit.
struct Solved {
  job::Job job;
  solve::Results results;
  solve::SolvedPieces pieces;  ///< what `results` was put together from
};

/// Solves the job. Never called while drawing.
Solved solved(job::Job job);

/// The same, taking over from `was` the pieces that are as they were there.
Solved solved(job::Job job, const Solved& was);

}  // namespace pouncemark::web
