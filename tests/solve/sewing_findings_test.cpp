#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "tests/support/rows.h"

#include <doctest/doctest.h>

#include <map>
#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::solve;
using pouncemark::job::RowsOf;
using pouncemark::job::Trial;
using pouncemark::material::Field;
using pouncemark::material::Standing;
using pouncemark::tests::demo_job;
using pouncemark::tests::findings_of;
using pouncemark::tests::section_job;

namespace {

void enter(job::Job* job, Field field, std::int64_t thousandths) {
  job->materials.values[field] = {thousandths, {}, Standing::typed, {}};
}

/// A chosen and signed trial of every row, set as the job is.
Trial trial_of(const job::Job& job) {
  Trial trial;
  trial.of_all_rows = true;
  trial.needle_size = job.needle_size;
  trial.thread_tex = job.thread_tex;
  trial.stitch_um = 6'000;
  trial.is_chosen = true;
  trial.signed_by = "A. Weaver, 3 March";
  return trial;
}

std::vector<Finding> found(const job::Job& job, const std::string& code) {
  return findings_of(solve::solve(job), code);
}

/// How many findings of each code and severity.
std::map<std::string, int> tally(const std::string& name) {
  std::map<std::string, int> counts;
  for (const Finding& one : solve::solve(demo_job(name)).findings) {
    const char* severity = one.severity == Severity::stop   ? "stop "
                           : one.severity == Severity::warn ? "warn "
                                                            : "note ";
    ++counts[severity + one.code];
  }
  return counts;
}

}  // namespace

TEST_CASE("each demo job has these findings and no other, each for its reason") {
  // Laps of 18 have their row 9 from the edge, under 8 blades of 1.40: meant so in every demo job.
  // Lap staples stand on the row and come out as the foot comes: a note a section; in Harbour
  // Ledger section 2 does not say when they come out: its one stop. Staples make holes; figures
  // guide. Side staples stand 10 from their row, over 9; stitches of 5 to 6 leave 72 % and more;
  // tex 135 fills a third of needle 140; nothing else was entered, so nothing is said of it.
  CHECK(tally("marsh-lights") == std::map<std::string, int>{{"warn row_near_edge", 1},
                                                            {"note staple_under_foot", 1},
                                                            {"note staple_holes", 1},
                                                            {"note figures_guide", 1}});
  CHECK(tally("harbour-ledger") == std::map<std::string, int>{{"stop staple_under_foot", 1},
                                                              {"warn row_near_edge", 6},
                                                              {"note staple_under_foot", 5},
                                                              {"note staple_holes", 1},
                                                              {"note figures_guide", 1}});
  CHECK(tally("orchard-year") == std::map<std::string, int>{{"warn row_near_edge", 60},
                                                            {"note staple_under_foot", 60},
                                                            {"note staple_holes", 1},
                                                            {"note figures_guide", 1}});
}

TEST_CASE("needle 90 and tex 135 in Marsh Lights: the thread fills the eye, once for the job") {
  job::Job job = demo_job("marsh-lights");
  job.needle_size = 90;
  const auto eye = found(job, "thread_fills_eye");
  REQUIRE(eye.size() == 1);
  CHECK(eye[0].place == "needle and thread");
  CHECK(eye[0].severity == Severity::warn);
  enter(&job, Field::thread_weighed_tex, 80'000);
  CHECK(found(job, "thread_fills_eye").empty());
}

TEST_CASE("stitches of 4 with needle 140 pass, of 3.999 are a tear line in every row") {
  job::Job job = demo_job("marsh-lights");
  job.sections[0].side_rows.stitch.stitch_um = 4'000;
  CHECK(found(job, "sheet_left").empty());
  job.sections[0].side_rows.stitch.stitch_um = 3'999;
  const auto left = found(job, "sheet_left");
  REQUIRE(left.size() == 1);
  CHECK(left[0].place == "section 1, all 18 side rows");
  CHECK(left[0].at.size() == 18);
  CHECK(left[0].part == checks::Part::rows);
  job.sections[0].side_rows.stitch.stitch_um = 5'500;
  job.sections[0].changes["1-05"].stitch = job::StitchChange{};
  job.sections[0].changes["1-05"].stitch->stitch_um = 3'000;
  CHECK(found(job, "sheet_left")[0].place == "section 1, 2 side rows");
}

TEST_CASE("a trial's measured stitch decides how much sheet is left") {
  job::Job job = section_job({110}, 0);
  job.sections[0].side_rows.stitch.stitch_um = 4'000;
  Trial trial = trial_of(job);
  trial.stitch_um = 4'000;
  trial.ten_stitches_um = 39'000;
  job.trials.push_back(trial);
  CHECK(found(job, "sheet_left").size() == 1);
  CHECK(found(job, "not_as_approved").empty());
  job.trials[0].ten_stitches_um = 40'000;
  CHECK(found(job, "sheet_left").empty());
}

TEST_CASE("rows, needle and thread that are not as on the chosen trial seam are said") {
  job::Job job = demo_job("harbour-ledger");
  job.trials.push_back(trial_of(job));
  CHECK(found(job, "not_as_approved").empty());
  CHECK(found(job, "trial_open").empty());
  job.sections[3].side_rows.stitch.stitch_um = 5'000;
  const auto stitch = found(job, "not_as_approved");
  REQUIRE(stitch.size() == 1);
  CHECK(stitch[0].sentence == "Not what was approved: stitch 5 instead of 6.");
  CHECK(stitch[0].place == "section 4, all 38 side rows");
  job.sections[3].side_rows.stitch.stitch_um = 6'000;
  job.trials[0].needle_size = 120;
  const auto needle = found(job, "not_as_approved");
  REQUIRE(needle.size() == 1);
  CHECK(needle[0].place == "side rows, joining rows, rows of panels");
  job.trials[0].of_all_rows = false;
  job.trials[0].of = RowsOf::lap_rows;
  CHECK(found(job, "not_as_approved")[0].place == "joining rows");
  job.trials[0].is_chosen = false;
  CHECK(found(job, "not_as_approved").empty());
  CHECK(found(job, "trial_open")[0].sentence == "Hold point H3 is open: no trial seam is chosen.");
}

TEST_CASE("a chosen trial that mars the sheet warns, one no one signed leaves H3 open") {
  job::Job job = demo_job("marsh-lights");
  CHECK(found(job, "trial_open").empty());
  Trial trial = trial_of(job);
  trial.stitch_um = 5'500;
  trial.signed_by.clear();
  trial.whitens = true;
  trial.cracks = false;
  job.trials.push_back(trial);
  CHECK(found(job, "trial_marred").size() == 1);
  CHECK(found(job, "trial_open").size() == 1);
  CHECK(found(job, "trial_open")[0].severity == Severity::note);
  job.trials[0].whitens = false;
  job.trials[0].signed_by = "B. Sewer";
  CHECK(found(job, "trial_marred").empty());
  CHECK(found(job, "trial_open").empty());
}

TEST_CASE("legs, foot, speed, point, label and film are asked about once they are entered") {
  struct Case {
    Field field;
    std::int64_t passes;
    std::int64_t fails;
    const char* code;
    std::size_t count;
  };
  // source: side rows of Marsh Lights go through 1.1, laps through 1.0, panels through 3.9.
  const Case cases[] = {
      {Field::staple_leg, 3'100, 3'099, "staple_leg_short", 1},
      {Field::staple_leg, 3'100, 2'999, "staple_leg_short", 2},
      {Field::machine_foot_lift, 5'900, 5'899, "foot_lift_short", 1},
      {Field::machine_foot_lift, 5'900, 2'999, "foot_lift_short", 3},
      {Field::machine_speed, 400'000, 401'000, "too_fast", 1},
      {Field::needle_point, 0, 1, "cutting_along", 1},
      {Field::needle_point, 2, 1, "cutting_along", 1},
      {Field::film_left_on, 0, 1, "film_under_row", 1},
      {Field::staple_stainless, 1, 0, "staple_may_rust", 1},
      {Field::leaf_modulus, 3'000'000, 4'512'000, "stiff_film", 1},
      {Field::backing_modulus, 3'000'000, 3'000'001, "stiff_film", 1},
      {Field::leaf_density, 2'300, 2'301, "unusual_value", 1},
      {Field::thread_packing, 900, 901, "unusual_value", 1},
      {Field::bobbin_thread, 3'000, 2'900, "bobbin_too_short", 1},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.code);
    CAPTURE(one.fails);
    job::Job job = demo_job("marsh-lights");
    CHECK(found(job, one.code).empty());
    enter(&job, one.field, one.passes);
    CHECK(found(job, one.code).empty());
    enter(&job, one.field, one.fails);
    CHECK(found(job, one.code).size() == one.count);
    ++seen;
  }
  CHECK(seen == 14);
}

TEST_CASE("a label that names a ticket is asked to be weighed until it was") {
  job::Job job = demo_job("marsh-lights");
  job.materials.values[Field::thread_label] = {0, "ticket 20", Standing::typed, {}};
  CHECK(found(job, "tex_from_ticket").size() == 1);
  enter(&job, Field::thread_weighed_tex, 135'000);
  CHECK(found(job, "tex_from_ticket").empty());
}

TEST_CASE("a stack worked out is warned of where a thickness is missing and along a ply's edge") {
  job::Job job = demo_job("marsh-lights");
  job.sections[0].side_rows.stack_from_plies = true;
  const auto missing = found(job, "stack_not_known");
  REQUIRE(missing.size() == 1);
  CHECK(missing[0].place == "section 1, all 18 side rows");
  enter(&job, Field::sleeve_cloth_thickness, 600);
  CHECK(found(job, "stack_not_known").empty());
  CHECK(found(job, "row_along_a_ply").empty());
  job.sections[0].cloth = job::ClothPlace{};
  job.sections[0].cloth->in_from_edge_um = 16'000;
  const auto along = found(job, "row_along_a_ply");
  REQUIRE(along.size() == 1);
  CHECK(along[0].place == "section 1, all 18 side rows");
  job.sections[0].cloth->in_from_edge_um = 16'001;
  CHECK(found(job, "row_along_a_ply").empty());
  enter(&job, Field::machine_foot_lift, 3'099);
  job.sections[0].cloth->in_from_edge_um = 12'000;
  CHECK(found(job, "foot_lift_short").size() >= 1);
}

TEST_CASE("sheet thicker than 20 is flagged where it is entered") {
  job::Job job = demo_job("marsh-lights");
  job.panels[0].backing_thickness_um = 20'000;
  CHECK(found(job, "unusual_value").empty());
  job.panels[0].backing_thickness_um = 25'000;
  job.sections[0].leaf_um = 21'000;
  CHECK(found(job, "unusual_value").size() == 2);
}

TEST_CASE("the solved pieces of another tex, tails or bobbin are solved again") {
  const job::Job job = demo_job("marsh-lights");
  const SolvedPieces pieces = solve_pieces(job);
  job::Job other = job;
  other.tails_um = 25'000'000;
  // Side rows, joining rows, the hinge row, and top and bottom are four lengths.
  CHECK(findings_of(put_together(other, solve_pieces(other, job, pieces)), "bobbin_too_short")
            .size() == 4);
}
