#include "web/model/solved.h"

#include <utility>

namespace pouncemark::web {

Solved solved(job::Job job) { return solved(std::move(job), {}); }

Solved solved(job::Job job, const Solved& was) {
  Solved result;
  result.pieces = solve::solve_pieces(job, was.job, was.pieces);
  result.results = solve::put_together(job, result.pieces);
  result.job = std::move(job);
  return result;
}

}  // namespace pouncemark::web
