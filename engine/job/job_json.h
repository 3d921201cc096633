#pragma once

#include <string>
#include <string_view>

#include "engine/base/result.h"
#include "engine/job/job.h"

namespace pouncemark::job {

/// A job as opened. `look_only` with `note` when a newer version wrote it and all we need was read.
struct OpenedJob {
  Job job;
  bool look_only = false;
  std::string note;
};

/// Reads a job file. Five refusals, each its own problem: job_unreadable, job_not_ours,
/// job_damaged, job_out_of_range, job_too_new. Unknown members are kept and written back.
Result<OpenedJob> open_job(std::string_view text);

/// The job as it is saved: UTF-8, one line end at the end. Opening and saving again gives the same
/// bytes.
std::string save_job(const Job& job);

/// First 12 hex digits of the SHA-256 over the job as saved.
std::string checksum(const Job& job);

}  // namespace pouncemark::job
