#pragma once

#include "engine/job/job.h"

namespace pouncemark::solve {

/// Side and joining rows of sections, their holes and their length together.
struct SeamCount {
  std::int64_t rows = 0;
  std::int64_t stitch_holes = 0;
  Um row_um = 0;
  std::int64_t staples = 0;
};

/// The rows of one section, or of all sections of a job, were their side seams kept in this way:
/// to lay both choices side by side. Separate seams can be opened one sleeve at a time; a shared
/// one opens two sleeves. Laps that cannot be sewn (round sleeves) count nothing.
SeamCount count_seams(const job::Job& job, const job::Section& section, job::SideSeams seams);
SeamCount count_seams(const job::Job& job, job::SideSeams seams);

}  // namespace pouncemark::solve
