#include "engine/solve/arm.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "tests/support/sum_reading.h"

using namespace pouncemark;
using solve::Row;
using takeoff::UnderArm;

namespace {

job::Job harbour() { return tests::demo_job("harbour-ledger"); }

const Row& row_called(const solve::Results& results, const std::string& code) {
  for (const Row& row : results.rows) {
    if (row.code == code && row.kind == solve::RowKind::stitch) return row;
  }
  FAIL("no row " << code);
  return results.rows.front();
}

}  // namespace

TEST_CASE("what lies right of the needle follows from the row and the moment it is sewn") {
  const job::Job job = harbour();
  const solve::Results results = solve::solve(job);
  struct Case {
    std::string code;
    Um work_um;
    Um side_um;
  };
  const std::vector<Case> cases = {{"1-05 left", 128'000, 16'000},
                                   {"2-07+08", 586'000, 63'000},
                                   {"2-01+02", 118'000, 55'000},
                                   {"P2 hinge", 940'000, 18'000},
                                   {"P2 top", 2'280'000, 18'000}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.code);
    const solve::RowArm arm = solve::row_arm(job, results, row_called(results, one.code));
    CHECK(arm.work_um == one.work_um);
    CHECK(arm.side_um == one.side_um);
    CHECK(arm.how == UnderArm::not_known);
    ++ran;
  }
  CHECK(ran == 5);
}

TEST_CASE("a machine that was measured takes the row flat, rolled or not at all") {
  job::Job job = harbour();
  job.materials.values[material::Field::machine_throat].thousandths = 62'000;
  const solve::Results results = solve::solve(job);
  const Row& row = row_called(results, "2-07+08");
  // 0.25 × 150 turns no tighter than 37.5: the roll is wider than the throat.
  CHECK(solve::row_arm(job, results, row).how == UnderArm::does_not_fit);
  job.materials.values[material::Field::machine_throat].thousandths = 63'000;
  CHECK(solve::row_arm(job, results, row).how == UnderArm::flat);
}

TEST_CASE("rows out of reach are findings of their own section, said once for one cause") {
  job::Job job = harbour();
  job.materials.values[material::Field::machine_throat].thousandths = 110'000;
  job.materials.values[material::Field::machine_under_arm].thousandths = 70'000;
  job.materials.values[material::Field::staple_reach].thousandths = 110'000;
  const auto count = [](const job::Job& at, const std::string& code) {
    const solve::Results results = solve::solve(at);
    std::vector<std::string> places;
    for (const auto& finding : results.findings) {
      if (finding.code == code) places.push_back(finding.place);
    }
    return places;
  };
  // Only sleeves 128 wide are joined with more than 110 at their side: 128 less half a lap is 119.
  const auto places = count(job, "row_out_of_reach");
  CHECK(places.size() == 6);
  CHECK(std::find(places.begin(), places.end(), "section 2, 2 rows") != places.end());
  CHECK(count(job, "beyond_stapler").size() == 6);
  job.materials.values[material::Field::machine_throat].thousandths = 119'000;
  job.materials.values[material::Field::staple_reach].thousandths = 119'000;
  CHECK(count(job, "row_out_of_reach").empty());
  CHECK(count(job, "beyond_stapler").empty());
}

TEST_CASE("the sums of side and roll are true as they are written") {
  const job::Job job = harbour();
  const solve::Results results = solve::solve(job);
  int lines = 0;
  for (const char* code : {"2-07+08", "1-05 left", "P1 top"}) {
    const Row& row = row_called(results, code);
    for (const solve::Sum& sum :
         {solve::side_sum(job, results, row), solve::roll_sum(job, results, row)}) {
      CHECK_FALSE(sum.source.empty());
      for (const std::string& line : sum.numbers) {
        if (line.find('=') == std::string::npos) continue;
        CAPTURE(line);
        CHECK(tests::fault_in_line(line).empty());
        ++lines;
      }
    }
  }
  CHECK(lines == 7);
}
