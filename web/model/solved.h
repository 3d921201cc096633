#pragma once

#include <cstdint>
#include <vector>

#include "engine/job/job.h"
#include "engine/solve/results.h"

namespace pouncemark::web {

/// A job and everything that follows from it, worked out once after an edit.
struct Solved {
  job::Job job;
  solve::Results results;
  std::vector<std::int64_t>
      a4_pages;  ///< full-face pages of each piece; 0: a paper cannot carry it
};

/// Solves the job and counts its pages. Never called while drawing.
Solved solved(job::Job job);

}  // namespace pouncemark::web
