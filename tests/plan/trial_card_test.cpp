#include "engine/plan/trial_card.h"

#include "engine/solve/solve.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using plan::TrialCard;
using plan::TrialLine;
using solve::RowPlace;

namespace {

TrialCard card_of(const job::Job& job, RowPlace place = RowPlace::side) {
  return plan::trial_card(job, solve::solve(job), place);
}

/// "140 6 76.7 %", and "tear line" where it is one.
std::string words_of(const TrialLine& line) {
  return line.needle + " " + line.stitch + " " + line.left +
         (line.is_tear_line ? " tear line" : "");
}

/// What was measured, with bars between.
std::string results_of(const TrialLine& line) {
  return line.ten_stitches + "|" + line.marks + "|" + line.whitens + "|" + line.cracks + "|" +
         line.pull + "|" + (line.is_chosen ? "chosen" : "");
}

job::Trial trial(int needle, int tex, Um stitch_um) {
  job::Trial one;
  one.of_all_rows = true;
  one.needle_size = needle;
  one.thread_tex = tex;
  one.stitch_um = stitch_um;
  return one;
}

}  // namespace

TEST_CASE("nine trials: three needles by three stitches, the job's own marked") {
  // source: (stitch - blade) / stitch; 1 - 1.3 / 4.5 = 71.1 %, 1 - 1.6 / 4.5 = 64.4 %.
  const std::vector<std::string> wanted = {
      "130 4.5 71.1 %",           "130 5.5 76.4 %", "130 6.5 80 %",
      "140 4.5 68.9 %",           "140 5.5 74.5 %", "140 6.5 78.5 %",
      "160 4.5 64.4 % tear line", "160 5.5 70.9 %", "160 6.5 75.4 %"};
  const TrialCard card = card_of(tests::demo_job("marsh-lights"));
  std::vector<std::string> lines;
  int marked = 0;
  for (const TrialLine& line : card.trials) {
    lines.push_back(words_of(line));
    if (line.is_jobs) ++marked;
    CHECK(results_of(line) == "|||||");
  }
  CHECK(lines == wanted);
  CHECK(marked == 1);
  CHECK(card.trials[4].is_jobs);
}

TEST_CASE("needles are the job's and its neighbours, however small or large it is") {
  struct Case {
    int needle;
    const char* least;
    const char* most;
  };
  const std::vector<Case> cases = {{140, "130", "160"}, {110, "100", "120"}, {60, "60", "80"},
                                   {250, "200", "250"}, {400, "230", "400"}, {125, "120", "130"},
                                   {30, "30", "70"}};
  int ran = 0;
  for (const Case& one : cases) {
    job::Job job = tests::section_job({110}, 0);
    job.needle_size = one.needle;
    const TrialCard card = card_of(job);
    CAPTURE(one.needle);
    CHECK(card.trials.size() == 9);
    CHECK(card.trials.front().needle == one.least);
    CHECK(card.trials.back().needle == one.most);
    ++ran;
  }
  CHECK(ran == 7);
}

TEST_CASE("a very short stitch is tried half as long and half as long again") {
  job::Job job = tests::section_job({110}, 0);
  job.sections[0].side_rows.stitch.stitch_um = 1'500;
  const TrialCard card = card_of(job);
  CHECK(card.trials[3].stitch == "0.75");
  CHECK(card.trials[5].stitch == "2.25");
}

TEST_CASE("trials of the job stand in their lines, others below, and those of other rows nowhere") {
  job::Job job = tests::demo_job("harbour-ledger");
  job::Trial chosen = trial(140, 135, 6'000);
  chosen.ten_stitches_um = 58'000;
  chosen.marks_um = 498'500;
  chosen.whitens = false;
  chosen.cracks = true;
  chosen.pull_n = 212'500;
  chosen.is_chosen = true;
  chosen.signed_by = "A. Sewer, 12 Nov";
  job::Trial other_rows = trial(160, 135, 6'000);
  other_rows.of_all_rows = false;
  other_rows.of = job::RowsOf::panel_rows;
  other_rows.ten_stitches_um = 61'000;
  job.trials = {chosen, trial(140, 135, 6'000), trial(140, 90, 6'000), other_rows};
  const TrialCard card = card_of(job);
  REQUIRE(card.trials.size() == 9 + 2);
  CHECK(results_of(card.trials[4]) == "58|498.5|no|yes|212.5|chosen");
  CHECK(words_of(card.trials[9]) == "140 6 76.7 %");
  CHECK(card.trials[9].under.empty());
  CHECK(card.trials[10].under == "tex 90");
  CHECK(card.signed_by == "A. Sewer, 12 Nov");
  const TrialCard panels = card_of(job, RowPlace::panel);
  CHECK(panels.trials.size() == 9 + 2);
  CHECK(results_of(panels.trials[7]) == "61|||||");
}

TEST_CASE("trials that find no room are counted, and the chosen one is never among them") {
  job::Job job = tests::section_job({110}, 0);
  for (int i = 0; i < 7; ++i) job.trials.push_back(trial(90, 60, 3'000));
  job.trials.back().is_chosen = true;
  const TrialCard card = card_of(job);
  CHECK(card.trials.size() == 9 + 4);
  CHECK(card.trials_left_out == 3);
  CHECK(card.trials[9].is_chosen);
  job.trials.resize(4);
  CHECK(card_of(job).trials_left_out == 0);
}

TEST_CASE("the stack is said as typed, or ply by ply, or what is missing") {
  job::Job job = tests::section_job({110}, 0);
  job.sections[0].side_rows.stack_um = 1'100;
  job.sections[0].leaf_um = 250;
  CHECK(card_of(job).stack == "Stack as typed 1.1");
  job.sections[0].side_rows.stack_from_plies = true;
  CHECK(card_of(job).stack.starts_with("Stack not known: measure the thickness of the cloth"));
  job.materials.values[material::Field::sleeve_cloth_thickness] = {
      400, {}, material::Standing::typed, {}};
  CHECK(card_of(job).stack.starts_with("Stack: front leaf 0.25"));
  CHECK(card_of(job).stack.ends_with("back leaf 0.25: 0.9 in all"));
}

TEST_CASE("it is bent round the tightest bay that holds a piece with such rows") {
  job::Job job = tests::demo_job("marsh-lights");
  // source: 665² ÷ (8 × 93) + 93 ÷ 2 = 640.9.
  CHECK(card_of(job).bend ==
        "Bend it 5 times round a radius of 641, as in bay B1: no crack, no white.");
  CHECK(card_of(job, RowPlace::panel).bend.find("bay B2") != std::string::npos);
  job.bays[1].holds = "1";
  job.bays[1].rise_um = 120'000;
  // source: 665² ÷ (8 × 120) + 120 ÷ 2 = 520.7.
  CHECK(card_of(job).bend.find("radius of 520.5, as in bay B2") != std::string::npos);
  CHECK(card_of(job, RowPlace::panel).bend.find("no bay is curved") != std::string::npos);
}

TEST_CASE("there is a card for each kind of row that is sewn") {
  const auto kinds = [](const job::Job& job) {
    return plan::trial_card_kinds(solve::solve(job)).size();
  };
  CHECK(kinds(tests::demo_job("marsh-lights")) == 3);
  CHECK(kinds(tests::section_job({110}, 0)) == 1);
  job::Job bare = tests::panel_job(690, 1420, "left");
  CHECK(kinds(bare) == 1);
  bare.panels[0].rows_on = std::vector<std::string>{};
  CHECK(kinds(bare) == 0);
}

TEST_CASE("film stays on the coupon where it stays on the work, and other stitches are named") {
  job::Job job = tests::demo_job("harbour-ledger");
  CHECK(card_of(job).lines[0].find("a strip of 40 peeled") != std::string::npos);
  job.materials.values[material::Field::film_left_on] = {1, {}, material::Standing::typed, {}};
  CHECK(card_of(job).lines[0].find("left on.") != std::string::npos);
  CHECK(card_of(job).lines[1].find("Also asked for") == std::string::npos);
  job.sections[1].side_rows.stitch.stitch_um = 5'500;
  CHECK(card_of(job).lines[1].find("Also asked for: stitch 5.5.") != std::string::npos);
}
