#include "web/model/history.h"

#include <utility>

namespace pouncemark::web {

namespace {
/// More steps than an afternoon holds; the oldest are forgotten first.
constexpr std::size_t kMostSteps = 500;
}  // namespace

void History::start(job::Job job) {
  steps_.clear();
  steps_.push_back(Step{std::move(job), {}, false});
  at_ = 0;
}

void History::keep(job::Job job, std::string action, bool is_another_job) {
  steps_.resize(at_ + 1);
  steps_.push_back(Step{std::move(job), std::move(action), is_another_job});
  if (steps_.size() > kMostSteps) steps_.erase(steps_.begin());
  at_ = steps_.size() - 1;
}

std::string History::undo_words() const { return can_undo() ? steps_[at_].action : std::string(); }

std::string History::redo_words() const {
  return can_redo() ? steps_[at_ + 1].action : std::string();
}

const job::Job& History::undo() {
  if (can_undo()) --at_;
  return steps_[at_].job;
}

const job::Job& History::redo() {
  if (can_redo()) ++at_;
  return steps_[at_].job;
}

}  // namespace pouncemark::web
