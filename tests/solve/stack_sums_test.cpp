#include "engine/solve/solve.h"
#include "engine/solve/sums.h"
#include "tests/support/rows.h"
#include "tests/support/stacks.h"
#include "tests/support/sum_reading.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using namespace pouncemark::solve;
using pouncemark::material::Field;
using pouncemark::tests::enter;
using pouncemark::tests::fault_in_line;
using pouncemark::tests::one_panel;
using pouncemark::tests::row_of;
using pouncemark::tests::two_sleeves;

TEST_CASE("the sum of a stack names its plies, and what no one entered") {
  struct Case {
    const char* what;
    job::Job job;
    const char* code;
    const char* figure;
    const char* last;
    bool assumed;
  };
  job::Job typed = two_sleeves();
  typed.sections[0].side_rows.stack_from_plies = false;
  job::Job plain = two_sleeves();
  plain.sections[0].cloth.emplace().in_from_edge_um = 12'000;
  plain.sections[0].cloth->in_from_end_um = 10'000;
  job::Job clothed = two_sleeves();
  enter(&clothed, Field::sleeve_cloth_thickness, 600);
  job::Job filmed = plain;
  enter(&filmed, Field::film_left_on, 1);
  const Case cases[] = {
      {"typed", typed, "1-01 left", "1.10", "1.10", false},
      {"lap", plain, "1-01+02", "1.00", "4 × 0.25 leaf = 1.00", false},
      {"side", clothed, "1-01 left", "1.10", "2 × 0.25 leaf + 0.6 cloth = 1.10", true},
      {"film", filmed, "1-01+02", "1.48", "8 × 0.06 assumed film left on + 4 × 0.25 leaf = 1.48",
       true},
      {"panel", one_panel(), "P1 top", "2.60", "0.8 cloth + 0.8 hem + 1 backing = 2.60", true},
      {"not known", plain, "1-01 left", "not known",
       "the thickness of the cloth in sleeves: not known", false},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.what);
    const Results results = solve::solve(one.job);
    const Row row = row_of(results, one.code, RowKind::stitch);
    REQUIRE(row.code == one.code);
    const Sum sum = stack_sum(one.job, results, row);
    CHECK(sum.figure == one.figure);
    REQUIRE(!sum.numbers.empty());
    CHECK(sum.numbers.back() == one.last);
    CHECK(sum.rests_on_assumed == one.assumed);
    CHECK(fault_in_line(sum.numbers.back()) == "");
    CHECK_FALSE(sum.source.empty());
    ++seen;
  }
  CHECK(seen == 6);
}
