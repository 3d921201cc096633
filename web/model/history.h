#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "engine/job/job.h"

namespace pouncemark::web {

/// The job after every action, so that undo gives the same job again, byte for byte. A job is
/// rules, not points: a copy is small.
class History {
 public:
  /// Forgets everything and begins with this job.
  void start(job::Job job);
  /// Keeps the job an action led to; what had been undone is forgotten. `is_another_job`: the
  /// action put another job on the bench (undo then brings the former one back).
  void keep(job::Job job, std::string action, bool is_another_job = false);

  bool can_undo() const { return at_ > 0; }
  bool can_redo() const { return at_ + 1 < steps_.size(); }
  /// The action that undo would take back; empty when there is none.
  std::string undo_words() const;
  /// The action that redo would do again; empty when there is none.
  std::string redo_words() const;
  bool undo_brings_another_job() const { return can_undo() && steps_[at_].is_another_job; }
  bool redo_brings_another_job() const { return can_redo() && steps_[at_ + 1].is_another_job; }
  /// Steps back or forward and gives the job there; the job as it stands when there is no step.
  const job::Job& undo();
  const job::Job& redo();
  const job::Job& job() const { return steps_[at_].job; }

 private:
  struct Step {
    job::Job job;
    std::string action;  ///< what led here
    bool is_another_job = false;
  };
  std::vector<Step> steps_{Step{}};
  std::size_t at_ = 0;
};

}  // namespace pouncemark::web
