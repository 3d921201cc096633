#include "engine/base/number_text.h"
#include "engine/solve/seam_choice.h"
#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "tests/support/rows.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::solve;
using pouncemark::tests::findings_of;
using pouncemark::tests::row_of;
using pouncemark::tests::section_job;

namespace {

job::Job one_sleeve(Um length_mm, Um clear_mm, Um spacing_mm) {
  job::Job job = section_job({110}, 0);
  job.sections[0].length_um = length_mm * 1'000;
  job::StapleRow& row = job.sections[0].side_rows.staple;
  row.kept_clear_um = {clear_mm * 1'000, clear_mm * 1'000};
  row.spacing_um = spacing_mm * 1'000;
  return job;
}

Row left_staples(const job::Job& job) {
  return row_of(solve::solve(job), "1-01 left", RowKind::staple);
}

std::vector<Um> in_mm(const std::vector<Um>& lengths_um) {
  std::vector<Um> mm;
  for (const Um um : lengths_um) mm.push_back(um % 1'000 == 0 ? um / 1'000 : -1);
  return mm;
}

}  // namespace

TEST_CASE("fourteen sleeves of 100 lapped 20 are 1140 wide") {
  const job::Job job = section_job(std::vector<Um>(14, 100), 20);
  CHECK(solve::solve(job).pieces[0].width_um == 1'140'000);
}

TEST_CASE("nine mixed sleeves are 680 wide, their rows on the middles of the laps") {
  const job::Job job = section_job({60, 75, 90, 120, 150, 120, 90, 75, 60}, 20);
  const Piece piece = solve::solve(job).pieces[0];
  CHECK(piece.width_um == 680'000);
  CHECK(in_mm(piece.row_middles_um) == std::vector<Um>{50, 105, 175, 275, 405, 505, 575, 630});
  CHECK(in_mm(piece.running_totals_um) ==
        std::vector<Um>{60, 115, 185, 285, 415, 515, 585, 640, 680});
}

TEST_CASE("how wide a section could end up: likely by squares, at worst by adding") {
  const Piece fourteen = solve::solve(section_job(std::vector<Um>(14, 100), 20)).pieces[0];
  CHECK(mm_text(fourteen.likely_um, 1) == "4.2");
  CHECK(fourteen.likely_um == 4'153);  // source: the root of 14 * 1 + 13 * 0.25, by hand
  CHECK(mm_text(fourteen.worst_um, 1) == "20.5");
  const Piece eighteen = solve::solve(section_job(std::vector<Um>(18, 100), 20)).pieces[0];
  CHECK(mm_text(eighteen.likely_um, 1) == "4.7");
  CHECK(mm_text(eighteen.worst_um, 1) == "26.5");
  job::Job closer = section_job(std::vector<Um>(14, 100), 20);
  closer.sections[0].width_tolerance_um = 500;
  closer.sections[0].lap_tolerance_um = 200;
  CHECK(solve::solve(closer).pieces[0].worst_um == 14 * 500 + 13 * 200);
}

TEST_CASE(
    "a sleeve row of 2400 kept 20 clear at 60 is 41 staples at 59.00, and moves with its margin") {
  job::Job job = one_sleeve(2'400, 20, 60);
  CHECK(left_staples(job).run.points() == 41);
  CHECK(mm_text(left_staples(job).run.spacing_um(), 2) == "59.00");
  const std::string before = job::save_job(job);
  job.sections[0].side_rows.staple.kept_clear_um = {25'000, 25'000};
  CHECK(left_staples(job).run.gaps == 40);
  CHECK(mm_text(left_staples(job).run.spacing_um(), 2) == "58.75");
  job.sections[0].side_rows.staple.kept_clear_um = {20'000, 20'000};
  CHECK(job::save_job(job) == before);
}

TEST_CASE("an exact row of a sleeve has its left-over where the job says") {
  job::Job job = one_sleeve(2'400, 20, 60);
  job::StapleRow& row = job.sections[0].side_rows.staple;
  row.rule = job::SpacingRule::exact;
  CHECK(left_staples(job).run.points() == 40);
  CHECK(left_staples(job).run.left_over_um == 20'000);
  row.left_over = job::LeftOver::split;
  CHECK(left_staples(job).run.first_um() == 30'000);
  row.left_over = job::LeftOver::extra_point;
  CHECK(left_staples(job).run.points() == 41);
}

TEST_CASE("60 clear with a crown of 12 is 72 at most: 34 staples at 71.52") {
  job::Job job = one_sleeve(2'400, 20, 60);
  job.spacing_is_clear_gap = true;
  job.crown_um = 12'000;
  CHECK(left_staples(job).run.points() == 34);
  CHECK(mm_text(left_staples(job).run.spacing_um(), 2) == "71.52");
  job.crown_um.reset();
  CHECK(left_staples(job).run.points() == 34);
  job.crown_um = 10'000;
  CHECK(left_staples(job).run.points() == 35);
  job.spacing_is_clear_gap = false;
  CHECK(left_staples(job).run.points() == 41);
}

TEST_CASE("a clear gap is asked of staples, never of stitches") {
  job::Job job = one_sleeve(2'400, 20, 60);
  const auto holes = row_of(solve::solve(job), "1-01 left", RowKind::stitch).run.points();
  job.spacing_is_clear_gap = true;
  CHECK(row_of(solve::solve(job), "1-01 left", RowKind::stitch).run.points() == holes);
}

TEST_CASE("where the margins of a sleeve meet no point is laid and a stop says so") {
  const job::Job job = one_sleeve(35, 20, 60);
  const Results results = solve::solve(job);
  CHECK(row_of(results, "1-01 left", RowKind::staple).code == "");
  CHECK(results.totals.side_staples == 0);
  const auto findings = findings_of(results, "row_not_laid");
  CHECK(findings.size() >= 1);
  CHECK(findings[0].severity == Severity::stop);
  CHECK(findings[0].sentence.find("margins meet") != std::string::npos);
  CHECK(left_staples(one_sleeve(40, 20, 60)).run.points() == 1);
}

TEST_CASE(
    "side rows stand in from their own edge, measured from BOTTOM; lap rows on the lap's middle") {
  const Results results = solve::solve(section_job({60, 75}, 20));
  CHECK(point_um(row_of(results, "1-01 left", RowKind::staple), 0) == PlaceUm{26'000, 18'000});
  CHECK(point_um(row_of(results, "1-01 right", RowKind::staple), 0) == PlaceUm{34'000, 18'000});
  CHECK(point_um(row_of(results, "1-02 left", RowKind::stitch), 0) == PlaceUm{56'000, 18'000});
  CHECK(point_um(row_of(results, "1-02 right", RowKind::stitch), 0) == PlaceUm{99'000, 18'000});
  CHECK(point_um(row_of(results, "1-01+02", RowKind::staple), 0) == PlaceUm{50'000, 18'000});
}

TEST_CASE("a change on one sleeve moves its own rows and, by its width, those to its right") {
  job::Job job = section_job({60, 75, 90}, 20);
  const Results before = solve::solve(job);
  job.sections[0].changes["1-02"].width_um = 80'000;
  job.sections[0].changes["1-02"].staple = job::StapleChange{};
  job.sections[0].changes["1-02"].staple->kept_clear_um = std::array<Um, 2>{30'000, 30'000};
  const Results after = solve::solve(job);
  CHECK(after.pieces[0].width_um == before.pieces[0].width_um + 5'000);
  CHECK(after.pieces[0].sleeves[1].left_um == before.pieces[0].sleeves[1].left_um);
  CHECK(after.pieces[0].sleeves[2].left_um == before.pieces[0].sleeves[2].left_um + 5'000);
  CHECK(row_of(after, "1-02 left", RowKind::staple).run.first_um() == 30'000);
  CHECK(row_of(after, "1-01 left", RowKind::staple).run.first_um() == 18'000);
  CHECK(row_of(after, "1-03 left", RowKind::staple).run.first_um() == 18'000);
}

TEST_CASE("a row farther in than its sleeve is wide lies off the piece and is a stop") {
  job::Job job = section_job({110}, 0);
  job.sections[0].side_rows.staple.in_from_edge_um = 110'000;
  CHECK(findings_of(solve::solve(job), "row_not_laid").empty());
  job.sections[0].side_rows.staple.in_from_edge_um = 110'001;
  const auto findings = findings_of(solve::solve(job), "row_not_laid");
  CHECK(findings.size() == 1);
  CHECK(findings[0].sentence.find("off the piece") != std::string::npos);
}

TEST_CASE("a sleeve on its own has two sides, no lap and one running total") {
  const Results results = solve::solve(section_job({110}, 0));
  CHECK(results.totals.side_rows == 2);
  CHECK(results.totals.lap_rows == 0);
  CHECK(results.pieces[0].row_middles_um.empty());
  CHECK(results.pieces[0].running_totals_um == std::vector<Um>{110'000});
}

namespace {

/// A trial seam that was chosen: set at 6, ten stitches measured.
job::Trial chosen_trial_of(Um ten_stitches_um) {
  job::Trial trial;
  trial.of_all_rows = true;
  trial.stitch_um = 6'000;
  trial.ten_stitches_um = ten_stitches_um;
  trial.is_chosen = true;
  return trial;
}

}  // namespace

TEST_CASE("the stitch that the chosen trial seam measured lays the rows that were set like it") {
  // source: 2360 ÷ 5.80 = 406.9, so 407 stitches and 408 holes; 2360 ÷ 6 = 393.3: 395 holes.
  struct Case {
    const char* what;
    bool is_chosen;
    Um set_um;
    job::RowsOf of;
    bool of_all;
    std::int64_t side_holes;
    std::int64_t lap_holes;
  };
  const Case cases[] = {
      {"chosen", true, 6'000, job::RowsOf::side_rows, true, 408, 408},
      {"of side rows", true, 6'000, job::RowsOf::side_rows, false, 408, 395},
      {"of lap rows", true, 6'000, job::RowsOf::lap_rows, false, 395, 408},
      {"of panel rows", true, 6'000, job::RowsOf::panel_rows, false, 395, 395},
      {"not chosen", false, 6'000, job::RowsOf::side_rows, true, 395, 395},
      {"set otherwise", true, 5'500, job::RowsOf::side_rows, true, 395, 395},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.what);
    job::Job job = section_job({110, 110}, 20);
    job.sections[0].length_um = 2'400'000;
    job.sections[0].side_rows.stitch.kept_clear_um = {20'000, 20'000};
    job.sections[0].lap_rows->stitch.kept_clear_um = {20'000, 20'000};
    const std::int64_t staples = row_of(solve::solve(job), "1-01 left", RowKind::staple).run.gaps;
    job.trials.push_back(chosen_trial_of(58'000));
    job.trials[0].is_chosen = one.is_chosen;
    job.trials[0].stitch_um = one.set_um;
    job.trials[0].of = one.of;
    job.trials[0].of_all_rows = one.of_all;
    const Results results = solve::solve(job);
    const Row side = row_of(results, "1-01 left", RowKind::stitch);
    CHECK(side.run.points() == one.side_holes);
    CHECK(side.asked_um == 6'000);
    CHECK(side.stitch_um == (one.side_holes == 408 ? 5'800 : 6'000));
    CHECK(row_of(results, "1-01+02", RowKind::stitch).run.points() == one.lap_holes);
    CHECK(row_of(results, "1-01 left", RowKind::staple).run.gaps == staples);
    ++seen;
  }
  CHECK(seen == 6);
}

TEST_CASE("a panel's stitches are those of its trial seam, its guide points stay") {
  job::Job job = tests::panel_job(800, 2'392, "left");
  job.panels[0].stitch_um = 6'000;
  const Results before = solve::solve(job);
  job.trials.push_back(chosen_trial_of(58'000));
  const Results after = solve::solve(job);
  CHECK(row_of(before, "P1 hinge", RowKind::stitch).run.points() == 395);
  CHECK(row_of(after, "P1 hinge", RowKind::stitch).run.points() == 408);
  CHECK(before.totals.panel_points == after.totals.panel_points);
  CHECK(after.totals.stitch_holes > before.totals.stitch_holes);
}

TEST_CASE("both ways of keeping side seams are counted with the trial seam's stitch") {
  job::Job job = section_job({110, 110}, 20);
  job.trials.push_back(chosen_trial_of(58'000));
  const Results results = solve::solve(job);
  CHECK(count_seams(job, job::SideSeams::separate).stitch_holes == results.totals.stitch_holes);
  job.trials.clear();
  CHECK(count_seams(job, job::SideSeams::separate).stitch_holes < results.totals.stitch_holes);
}
