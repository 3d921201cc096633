#include "engine/solve/sewing.h"
#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "tests/support/rows.h"
#include "tests/support/sum_reading.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using namespace pouncemark::solve;
using pouncemark::material::Field;
using pouncemark::material::Standing;
using pouncemark::tests::demo_job;
using pouncemark::tests::fault_in_line;
using pouncemark::tests::last_number;
using pouncemark::tests::row_of;

namespace {

void enter(job::Job* job, Field field, std::int64_t thousandths) {
  job->materials.values[field] = {thousandths, {}, Standing::measured_here, "by rule"};
}

/// Faults of a sum, in words; empty when it is true and ends in its figure.
std::string fault_of(const Sum& sum) {
  for (const std::string& line : sum.numbers) {
    if (!fault_in_line(line).empty()) return fault_in_line(line);
  }
  if (sum.rule.empty() || sum.source.empty() || sum.numbers.empty()) return "not all is said";
  return last_number(sum.numbers.back()) == sum.figure ? "" : "ends elsewhere";
}

}  // namespace

TEST_CASE("thread and bobbins of the demo jobs") {
  struct Case {
    const char* name;
    Um thread_um;
    std::int64_t rows;
    std::int64_t side;
    std::int64_t lap;
    std::int64_t panel;
  };
  // derived: each thread of a row is run + stitches × stack + tails; bobbins of 25 m less a tenth.
  const Case cases[] = {{"marsh-lights", 55'265'500, 11, 2, 1, 1},
                        {"harbour-ledger", 836'769'600, 7, 27, 13, 2},
                        {"orchard-year", 13'595'539'200, 7, 412, 198, 12}};
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.name);
    const job::Job job = demo_job(one.name);
    const Sewing sewing = sewing_of(job, solve::solve(job));
    CHECK(sewing.thread_each_um == one.thread_um);
    CHECK(sewing.rows_per_bobbin == one.rows);
    CHECK(sewing.fills_of(RowPlace::side) == one.side);
    CHECK(sewing.fills_of(RowPlace::lap) == one.lap);
    CHECK(sewing.fills_of(RowPlace::panel) == one.panel);
    ++seen;
  }
  CHECK(seen == 3);
}

TEST_CASE("typed metres win over those from the measures, and those over the assumed ones") {
  job::Job job = demo_job("marsh-lights");
  CHECK(bobbin_of(job).from == MetresFrom::assumed);
  CHECK(bobbin_of(job).usable_um == 22'500'000);
  enter(&job, Field::bobbin_outer, 24'000);
  enter(&job, Field::bobbin_core, 8'000);
  CHECK(bobbin_of(job).from == MetresFrom::assumed);
  enter(&job, Field::bobbin_width, 10'000);
  enter(&job, Field::thread_weighed_tex, 150'000);
  CHECK(bobbin_of(job).from == MetresFrom::measures);
  CHECK(bobbin_of(job).thread_um == 18'497'698);
  CHECK(fault_of(bobbin_thread_sum(job)) == "");
  CHECK(bobbin_thread_sum(job).figure == "18.50");
  enter(&job, Field::bobbin_thread, 30'000);
  CHECK(bobbin_of(job).from == MetresFrom::typed);
  CHECK(bobbin_of(job).thread_um == 30'000'000);
  enter(&job, Field::bobbin_kept_back, 0);
  CHECK(bobbin_of(job).usable_um == 30'000'000);
}

TEST_CASE("the bobbin's place of a row is said in words") {
  CHECK(bobbin_words({3, 7, 1, true}) == "bobbin 3, its 7th and last row");
  CHECK(bobbin_words({1, 1, 1, false}) == "bobbin 1, its 1st row");
  CHECK(bobbin_words({1, 2, 1, false}) == "bobbin 1, its 2nd row");
  CHECK(bobbin_words({1, 13, 1, false}) == "bobbin 1, its 13th row");
  CHECK(bobbin_words({1, 23, 1, false}) == "bobbin 1, its 23rd row");
  CHECK(bobbin_words({4, 1, 1, true}) == "bobbin 4, its only row");
  CHECK(bobbin_words({4, 1, 2, true}) == "bobbin 4 to 5, which do not last it unjoined");
}

TEST_CASE("a job without rows of stitches has no rows a bobbin, and a row too long has none") {
  job::Job job = demo_job("marsh-lights");
  enter(&job, Field::bobbin_thread, 2'000);
  const Sewing sewing = sewing_of(job, solve::solve(job));
  CHECK(sewing.rows_per_bobbin == 0);
  CHECK(sewing.fills_of(RowPlace::side) == 36);
  job.sections.clear();
  job.panels.clear();
  CHECK(!sewing_of(job, solve::solve(job)).rows_per_bobbin);
  CHECK(thread_each_sum(job, solve::solve(job)).figure == "0.00");
}

TEST_CASE("rows of panels alone are counted by the longest of them") {
  job::Job job = demo_job("marsh-lights");
  job.sections.clear();
  const Sewing sewing = sewing_of(job, solve::solve(job));
  // derived: hinge row 1388 + 253 × 3.9 + 300 = 2674.7; 22,500 ÷ 2674.7 is 8.41.
  CHECK(sewing.longest_row_um == 2'674'700);
  CHECK(sewing.rows_per_bobbin == 8);
}

TEST_CASE("every sum of thread and bobbins is true as it is written") {
  int sums = 0;
  for (const char* name : {"marsh-lights", "harbour-ledger", "orchard-year"}) {
    CAPTURE(name);
    for (const std::int64_t metres : {0, 12, 4}) {
      job::Job job = demo_job(name);
      if (metres > 0) enter(&job, Field::bobbin_thread, metres * 1'000);
      const Results results = solve::solve(job);
      CHECK(fault_of(thread_each_sum(job, results)) == "");
      CHECK(fault_of(rows_per_bobbin_sum(job, results)) == "");
      CHECK(fault_of(bobbin_thread_sum(job)) == "");
      for (const RowPlace place : {RowPlace::side, RowPlace::lap, RowPlace::panel}) {
        CHECK(fault_of(bobbin_fills_sum(job, results, place)) == "");
        ++sums;
      }
      for (const Row& row : results.rows) {
        if (row.kind != RowKind::stitch || sums % 50 > 10) continue;
        CHECK(fault_of(thread_sum(job, results, row)) == "");
        ++sums;
      }
    }
  }
  CHECK(sums > 30);
  const job::Job job = demo_job("harbour-ledger");
  const Results results = solve::solve(job);
  const Sum one = thread_sum(job, results, row_of(results, "1-01 left", RowKind::stitch));
  CHECK(one.numbers[0] == "2256 + 376 × 1.1 + 300 = 2969.6");
  CHECK(one.figure == "2.97");
  CHECK(rows_per_bobbin_sum(job, results).numbers[0] ==
        "25,000 assumed × (100 − 10 assumed) ÷ 100 = 22,500");
  CHECK(rows_per_bobbin_sum(job, results).numbers[1] == "22,500 = 7 × 2,969.6 + 1,712.8, so 7");
  CHECK(bobbin_fills_sum(job, results, RowPlace::side).numbers[2] == "184 = 26 × 7 + 2, so 27");
}

TEST_CASE("rows whose stack is not known are counted apart, and no bobbin is planned for them") {
  job::Job job = tests::demo_job("marsh-lights");
  const solve::Sewing typed = solve::sewing_of(job, solve::solve(job));
  CHECK(typed.all_not_known() == 0);
  CHECK(typed.rows_per_bobbin.has_value());
  // The panel's cloth and interlining were not entered.
  job.panels[0].stack_from_plies = true;
  const solve::Sewing open = solve::sewing_of(job, solve::solve(job));
  CHECK(open.not_known_of(solve::RowPlace::panel) == 3);
  CHECK(open.all_not_known() == 3);
  CHECK(open.thread_each_um < typed.thread_each_um);
  CHECK(open.fills_of(solve::RowPlace::panel) == 0);
  CHECK(open.fills_of(solve::RowPlace::side) == typed.fills_of(solve::RowPlace::side));
  CHECK(open.rows_per_bobbin == typed.rows_per_bobbin);
  job.sections[0].side_rows.stack_from_plies = true;
  CHECK_FALSE(solve::sewing_of(job, solve::solve(job)).rows_per_bobbin.has_value());
}
