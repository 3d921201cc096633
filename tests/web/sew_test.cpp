#include "web/model/sew.h"

#include "engine/job/job_json.h"
#include "tests/support/jobs.h"
#include "tests/support/sum_reading.h"
#include "web/model/bench.h"
#include "web/model/sew_trials.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::web;
using pouncemark::tests::demo_job;
using pouncemark::tests::fault_in_line;
using pouncemark::tests::last_number;
using pouncemark::tests::panel_job;

namespace {

/// A sleeve with this needle, thread and stitch.
Solved sewn(int needle_size, int thread_tex, Um stitch_um) {
  job::Job job = job::first_sleeve_job();
  job.needle_size = needle_size;
  job.thread_tex = thread_tex;
  job.sections[0].side_rows.stitch.stitch_um = stitch_um;
  return solved(std::move(job));
}

constexpr Place kSleeve{0, 0};

SewView view_of(const Solved& now, Place place = kSleeve) {
  return sew_view(now, nullptr, place, {});
}

std::string figure_of(const std::vector<FollowLine>& lines, std::string_view id) {
  for (const FollowLine& line : lines) {
    if (line.id == id) return line.figure;
  }
  return "none";
}

}  // namespace

TEST_CASE("the headline says needle, thread, stitch and what is left of the sheet") {
  struct Case {
    Um stitch_um;
    std::string words;
  };
  // source: checks of the trade, needle 140: p 4/5/6/7 leave 65/72/77/80 %
  const std::vector<Case> cases = {
      {4'000, "Needle size 140, tex 135, stitch 4: 65 % of the sheet is left"},
      {5'000, "Needle size 140, tex 135, stitch 5: 72 % of the sheet is left"},
      {6'000, "Needle size 140, tex 135, stitch 6: 77 % of the sheet is left"},
      {7'000, "Needle size 140, tex 135, stitch 7: 80 % of the sheet is left"}};
  int ran = 0;
  for (const Case& one : cases) {
    CHECK(plain_words(view_of(sewn(140, 135, one.stitch_um)).headline) == one.words);
    ++ran;
  }
  CHECK(ran == 4);
}

TEST_CASE("without a trial seam nothing is better than try, and what is plain is don't") {
  struct Case {
    int needle_size;
    int thread_tex;
    Um stitch_um;
    solve::Verdict verdict;
    std::string because;
  };
  const std::vector<Case> cases = {
      {140, 135, 6'000, solve::Verdict::try_it, "try it, then sew a trial seam"},
      // Exactly 65 % passes.
      {140, 135, 4'000, solve::Verdict::try_it, "try it, then sew a trial seam"},
      {140, 135, 3'990, solve::Verdict::do_not, "the holes make a tear line"},
      {140, 135, 3'000, solve::Verdict::do_not, "the holes make a tear line"},
      // source: trade rule, tex 135 in needle 90: the thread fills the eye
      {90, 135, 6'000, solve::Verdict::do_not, "the thread fills the eye"},
      {90, 45, 6'000, solve::Verdict::try_it, "try it, then sew a trial seam"}};
  int ran = 0;
  for (const Case& one : cases) {
    const SewView view = view_of(sewn(one.needle_size, one.thread_tex, one.stitch_um));
    CHECK(view.verdict == one.verdict);
    CHECK(view.because == one.because);
    ++ran;
  }
  CHECK(ran == 6);
}

TEST_CASE("a chosen trial seam is what fits rests on, and only while nothing departs from it") {
  job::Job job = job::first_sleeve_job();
  const Um stitch = job.sections[0].side_rows.stitch.stitch_um;
  job = with_trial(job, job::RowsOf::side_rows, stitch).job;
  CHECK(view_of(solved(job)).verdict == solve::Verdict::try_it);
  job = with_trial_chosen(job, 0, true).job;
  CHECK(view_of(solved(job)).because.find("not signed") != std::string::npos);
  CHECK(trials_open(solved(job)) == 1);
  job = with_trial_box(job, 0, TrialBox::signed_by, "the workshop, 26 Nov").job;
  CHECK(view_of(solved(job)).verdict == solve::Verdict::fits);
  CHECK(trials_open(solved(job)) == 0);
  job::Job other = job;
  other.needle_size = 120;
  CHECK(view_of(solved(other)).verdict == solve::Verdict::try_it);
  CHECK(view_of(solved(other)).because == "not as approved: needle size 120 instead of 140");
  job = with_trial_answer(job, 0, TrialAsk::cracks, true).job;
  CHECK(view_of(solved(job)).verdict == solve::Verdict::do_not);
}

TEST_CASE("a section has side and joining rows, a panel its sewn edges, the hanging none") {
  const Solved marsh = solved(demo_job("marsh-lights"));
  const auto ids = [&marsh](Place place) {
    std::string all;
    for (const SewKind& kind : sew_kinds(marsh, place)) all += kind.id + " ";
    return all;
  };
  CHECK(ids({0, -1}) == "side joining ");
  CHECK(ids({0, 3}) == "side joining ");
  CHECK(ids({1, -1}) == "hinge top bottom ");
  CHECK(ids(kWholeHanging).empty());
  CHECK(sew_kinds(marsh, {0, 3})[0].row == "side rows of sleeve 1-04");
  CHECK(sew_kinds(marsh, {0, 3})[0].rows.size() == 2);
  CHECK(sew_kinds(solved(panel_job(600, 1200, "left")), {0, -1})[0].row ==
        "hinge side row of panel P1");
}

TEST_CASE("every figure of the stage has a sum that is true and ends in it, and a source") {
  int ran = 0;
  for (const char* name : {"marsh-lights", "harbour-ledger"}) {
    const Solved now = solved(demo_job(name));
    for (int piece = 0; piece < static_cast<int>(now.results.pieces.size()); ++piece) {
      for (const SewKind& kind : sew_kinds(now, {piece, -1})) {
        for (const FollowLine& line : sew_lines(now, nullptr, {piece, -1}, kind.id)) {
          CAPTURE(line.id);
          CHECK(!line.sum.source.empty());
          REQUIRE(!line.sum.numbers.empty());
          CHECK(last_number(line.sum.numbers.back()) == last_number(line.figure));
          for (const std::string& numbers : line.sum.numbers) CHECK(fault_in_line(numbers) == "");
          ++ran;
        }
      }
    }
  }
  CHECK(ran > 100);
}

TEST_CASE("the demo jobs' thread and bobbins are those that must be shown") {
  const Solved ledger = solved(demo_job("harbour-ledger"));
  const auto lines = sew_lines(ledger, nullptr, {0, -1}, "side");
  // source: derived by hand: 285 rows of 2256 in 376 stitches through 1.1 or 1.0, tails 300
  CHECK(figure_of(lines, "thread_each") == "836.77");
  CHECK(figure_of(lines, "rows_per_bobbin") == "7");
  CHECK(figure_of(lines, "fills.0") == "27");
  CHECK(figure_of(lines, "fills.1") == "13");
  CHECK(figure_of(lines, "thread_row") == "2.97");
  const Solved marsh = solved(demo_job("marsh-lights"));
  CHECK(figure_of(sew_lines(marsh, nullptr, {0, -1}, "side"), "thread_each") == "55.27");
}

TEST_CASE("a trial of ten stitches 58 changes holes and thread of its rows, undone byte for byte") {
  Bench bench;
  REQUIRE(bench.open("harbour-ledger.json", tests::demo_text("harbour-ledger")));
  const std::string before = bench.file_bytes();
  const auto holes = [&bench] {
    return figure_of(sew_lines(bench.now(), bench.before(), {0, -1}, "side"), "row_holes");
  };
  CHECK(holes() == "377");
  bench.edit(with_trial(bench.now().job, job::RowsOf::side_rows, 6'000).job, "added");
  bench.edit(with_trial_box(bench.now().job, 0, TrialBox::ten_stitches, "58").job, "typed");
  CHECK(holes() == "377");
  bench.edit(with_trial_chosen(bench.now().job, 0, true).job, "chosen");
  // source: ceil(2256 ÷ 5.8) + 1
  CHECK(holes() == "390");
  for (int i = 0; i < 3; ++i) bench.undo();
  CHECK(bench.file_bytes() == before);
}
