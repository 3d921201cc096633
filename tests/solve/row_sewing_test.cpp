#include "engine/solve/row_sewing.h"
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
using pouncemark::tests::row_of;

namespace {

void enter(job::Job* job, Field field, std::int64_t thousandths) {
  job->materials.values[field] = {thousandths, {}, Standing::typed, {}};
}

/// What is wrong with a sum; empty when it is true, whole, and its last line ends in its figure.
std::string fault_of(const Sum& sum) {
  bool says_assumed = false;
  for (const std::string& line : sum.numbers) {
    if (!fault_in_line(line).empty()) return fault_in_line(line);
    says_assumed = says_assumed || line.find("assumed") != std::string::npos;
  }
  if (sum.rule.empty() || sum.source.empty() || sum.numbers.empty()) return "not all is said";
  if (says_assumed && !sum.rests_on_assumed) return "assumed, and not said";
  const std::string& last = sum.numbers.back();
  const bool ends = last.size() >= sum.figure.size() &&
                    last.substr(last.size() - sum.figure.size()) == sum.figure;
  return ends ? "" : "ends elsewhere: " + last;
}

/// Harbour Ledger with the strengths of its sheet and thread.
job::Job strong_job() {
  job::Job job = demo_job("harbour-ledger");
  enter(&job, Field::thread_strength, 92'500);
  return job;
}

}  // namespace

TEST_CASE("needle 140, tex 135 and a stitch of 6 in Harbour Ledger") {
  const job::Job job = strong_job();
  const Results results = solve::solve(job);
  const Row row = row_of(results, "1-01 left", RowKind::stitch);
  const RowSewing sewing = row_sewing_of(job, results, row);
  // derived: 0.035682 √(135 ÷ (1.38 × 0.6)) = 0.4556; by 1.40 and by 4.6 of 6; exact row stress;
  // 2 × 0.25 × (16 − 0.7) × 62; 1.5 × 92.5 ÷ 6.
  CHECK(sewing.thread_um == 456);
  CHECK(sewing.blade_um == 1'400);
  CHECK(sewing.eye_permille == 326);
  CHECK(sewing.sheet_left_permille == 767);
  CHECK(sewing.guess.least == 130);
  CHECK(sewing.guess.most == 140);
  REQUIRE(sewing.stress.has_value());
  CHECK(sewing.stress->across == doctest::Approx(3.0115).epsilon(3e-4));
  CHECK(sewing.stress->along == doctest::Approx(2.6969).epsilon(3e-4));
  CHECK(sewing.shear_out_mn == 474'300);
  CHECK(sewing.seam_mn_each_mm == 23'125);
  CHECK(sewing.verdict == Verdict::try_it);
  CHECK(sheet_left_sum(job, row).figure == "76.7 %");
  CHECK(seam_strength_sum(job, row).figure == "23.13");
  CHECK(shear_out_sum(job, results, row).figure == "474.3");
  CHECK(stress_sum(job, row, true).figure == "3.01");
}

TEST_CASE("what was not entered is not worked out") {
  const job::Job job = demo_job("marsh-lights");
  const Results results = solve::solve(job);
  const Row row = row_of(results, "P1 hinge", RowKind::stitch);
  CHECK_FALSE(row_sewing_of(job, results, row).seam_mn_each_mm.has_value());
  job::Job film = job;
  enter(&film, Field::backing_sheet, 1);
  film.materials.values[Field::backing_sheet].thousandths = 1;
  CHECK_FALSE(row_sewing_of(film, results, row).shear_out_mn.has_value());
  // derived: 2 × 1 × (16 − 0.7) × 62.
  CHECK(row_sewing_of(job, results, row).shear_out_mn == 1'897'200);
}

TEST_CASE("a row fits as on its signed trial seam, is to be tried without, and is not to be sewn") {
  job::Job job = demo_job("harbour-ledger");
  const auto verdict = [&job]() {
    const Results results = solve::solve(job);
    const Row row = row_of(results, "1-01 left", RowKind::stitch);
    const RowSewing sewing = row_sewing_of(job, results, row);
    CHECK_FALSE(sewing.why.empty());
    return std::string(verdict_word(sewing.verdict));
  };
  CHECK(verdict() == "try");
  job::Trial trial;
  trial.of_all_rows = trial.is_chosen = true;
  trial.needle_size = 140;
  trial.thread_tex = 135;
  trial.stitch_um = 6'000;
  job.trials.push_back(trial);
  CHECK(verdict() == "try");
  job.trials[0].signed_by = "A. Sewer";
  CHECK(verdict() == "fits");
  job.trials[0].cracks = true;
  CHECK(verdict() == "don't");
  // Sewn otherwise it says nothing of these settings.
  job.trials[0].stitch_um = 5'000;
  CHECK(verdict() == "try");
  job.trials[0].cracks = false;
  CHECK(verdict() == "try");
  job.trials[0].stitch_um = 6'000;
  job.needle_size = 90;
  CHECK(verdict() == "don't");
  job.needle_size = 140;
  job.sections[0].side_rows.stitch.stitch_um = 3'999;
  CHECK(verdict() == "don't");
}

TEST_CASE("every sum of needle, thread and sheet is true as it is written") {
  int sums = 0;
  for (const int needle : {60, 90, 113, 140, 217, 400}) {
    for (const Um stitch : {1'750, 3'999, 5'805, 6'000, 7'001}) {
      for (const std::int64_t tex : {0, 131'500, 40'000}) {
        CAPTURE(needle);
        CAPTURE(stitch);
        job::Job job = strong_job();
        job.needle_size = needle;
        job.sections[0].side_rows.stitch.stitch_um = stitch;
        if (tex > 0) enter(&job, Field::thread_weighed_tex, tex);
        const Results results = solve::solve(job);
        for (const char* code : {"1-01 left", "1-01+02", "P1 top"}) {
          const Row row = row_of(results, code, RowKind::stitch);
          CHECK(fault_of(sheet_left_sum(job, row)) == "");
          CHECK(fault_of(shear_out_sum(job, results, row)) == "");
          CHECK(fault_of(seam_strength_sum(job, row)) == "");
          const bool has_stress = row_sewing_of(job, results, row).stress.has_value();
          CHECK(has_stress == (needle * 10 * 10 <= row.stitch_um * 8));
          if (has_stress) {
            CHECK(fault_of(stress_sum(job, row, true)) == "");
            CHECK(fault_of(stress_sum(job, row, false)) == "");
          }
          ++sums;
        }
        CHECK(fault_of(thread_across_sum(job)) == "");
        CHECK(fault_of(eye_sum(job)) == "");
        CHECK(fault_of(needle_guess_sum(job)) == "");
      }
    }
  }
  CHECK(sums == 6 * 5 * 3 * 3);
}
