#include "web/model/solved.h"

#include <utility>

#include "engine/output/output.h"
#include "engine/solve/solve.h"

namespace pouncemark::web {

Solved solved(job::Job job) {
  Solved result;
  result.results = solve::solve(job);
  for (const solve::Piece& piece : result.results.pieces) {
    const Result<std::int64_t> pages = output::full_face_pages(piece, "A4");
    result.a4_pages.push_back(pages ? *pages : 0);
  }
  result.job = std::move(job);
  return result;
}

}  // namespace pouncemark::web
