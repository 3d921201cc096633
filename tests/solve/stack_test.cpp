#include "engine/solve/stack.h"

#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "tests/support/rows.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using namespace pouncemark::solve;
using pouncemark::tests::demo_job;

TEST_CASE("a typed stack is one step from the first hole to the last and says that it was typed") {
  const job::Job job = demo_job("marsh-lights");
  const Results results = solve::solve(job);
  int seen = 0;
  for (const Row& row : results.rows) {
    if (row.kind != RowKind::stitch) {
      CHECK(row.stack_um == 0);
      CHECK(row.stitch_um == 0);
      continue;
    }
    const Um typed = row.place == RowPlace::panel ? 3'900
                     : row.place == RowPlace::lap ? 1'000
                                                  : 1'100;
    CHECK(row.stack_um == typed);
    CHECK(row.stack_is_typed);
    const Stack stack = stack_of(job, results, row);
    CHECK(stack.is_typed);
    CHECK(stack.is_known);
    REQUIRE(stack.steps.size() == 1);
    CHECK(stack.thickest_um() == typed);
    CHECK(stack.thinnest_um() == typed);
    CHECK(stack.at(0).from_um == row.run.first_um());
    CHECK(stack.at(0).to_um == row.run.last_um());
    CHECK(stack.at(0).plies.empty());
    CHECK(stack.rise_um == 0);
    ++seen;
  }
  CHECK(seen == 18 + 8 + 3);
}
