#include "web/model/solved.h"

#include <utility>

#include "engine/solve/solve.h"

namespace pouncemark::web {

Solved solved(job::Job job) {
  Solved result;
  result.results = solve::solve(job);
  result.job = std::move(job);
  return result;
}

}  // namespace pouncemark::web
