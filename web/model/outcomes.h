#pragma once

#include <string>
#include <vector>

#include "web/model/choices.h"

/// Inside of the model: what would follow from one answer, in words.
namespace pouncemark::web {

/// The piece on the bench as a job of its own: what follows is worked out on it alone, however
/// large the job is.
struct Alone {
  job::Job job;
  solve::Results results;
  Place place;
};

/// The piece on the bench, solved by itself.
Alone alone_of(const Solved& now, Place place);

/// The piece with one answer given.
struct Would {
  const Alone& alone;
  const job::Job& job;
  const solve::Results& results;
  int answer = 0;
};

/// What would follow, a line each, and what would stand in the way.
struct Outcome {
  std::vector<std::string> follows;
  std::string stop;
};

/// `now` is the whole job as it stands, for what concerns all of its sections.
Outcome outcome_of(const Would& would, Question question, const Solved& now);

}  // namespace pouncemark::web
