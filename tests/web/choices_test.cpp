#include "web/model/choices.h"

#include "engine/job/job_json.h"
#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "tests/support/rows.h"
#include "web/model/bench.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using pouncemark::tests::demo_job;
using pouncemark::tests::findings_of;
using pouncemark::tests::panel_job;
using pouncemark::tests::row_of;
using pouncemark::tests::section_job;
using web::Place;
using web::Question;

namespace {

constexpr Place kAlone{0, 0};
constexpr Place kWhole{0, -1};

job::Job exact_sleeve() {
  job::Job job = job::first_sleeve_job();
  job.sections[0].side_rows.staple.rule = job::SpacingRule::exact;
  return job;
}

job::Job wide_sleeve() {
  job::Job job = job::first_sleeve_job();
  job.sections[0].widths_um = {120'000};
  return job;
}

job::Job folded_sleeve() {
  job::Job job = wide_sleeve();
  job.sections[0].make = job::Make::folded;
  job.sections[0].fold_radius_um = 500;
  job.sections[0].sewn_side = job::Side::right;
  return job;
}

/// Harbour Ledger with the sleeves of section 2 each over its left neighbour.
job::Job left_over_ledger() {
  job::Job job = demo_job("harbour-ledger");
  job.sections[1].lies_over = job::Side::left;
  return job;
}

/// Harbour Ledger with sleeve 2-15 missing.
job::Job harbour_without() {
  job::Job job = demo_job("harbour-ledger");
  job.sections[1].missing = {"2-15"};
  return job;
}

/// A question, an answer to it, and what the slip says would follow.
struct Case {
  std::string what;
  job::Job job;
  Place place;
  Question question;
  int answer;
  std::string follows;  ///< its lines, and STOP before what stands in the way
};

std::string told(const web::Answer& answer) {
  std::string words;
  for (const std::string& line : answer.follows) words += (words.empty() ? "" : "; ") + line;
  if (!answer.stop.empty()) words += (words.empty() ? "" : "; ") + ("STOP " + answer.stop);
  return words;
}

web::Answer answer_of(const Case& one) {
  for (const web::Asked& asked : web::asked_at(web::solved(one.job), one.place)) {
    if (asked.question != one.question) continue;
    for (const web::Answer& answer : asked.answers) {
      if (answer.number == one.answer) return answer;
    }
  }
  return {};
}

std::vector<Case> cases() {
  const job::Job ledger = demo_job("harbour-ledger");
  const Place second{1, -1};
  return {
      {"two leaves", wide_sleeve(), kAlone, Question::leaves, 0, "2 leaves of 120 × 1800"},
      // source: a folded blank of 120, sheet 0.25, inside radius 0.5: 2(W-r-t) + π(r+t/2).
      {"folded", wide_sleeve(), kAlone, Question::leaves, 1,
       "blank 240.5 × 1800, fold line at 120.2 from its edge"},
      {"round", wide_sleeve(), kAlone, Question::leaves, 2,
       "blank 342 × 1800, flange lines at 30 from each edge, tube 89.5 inside"},
      {"round in a section", ledger, second, Question::leaves, 2,
       "17 blanks, 166 to 367.1 × 2300, flange lines at 30 from their edges; 17 side rows; STOP "
       "32 rows cannot be laid"},
      {"sewn left", folded_sleeve(), kAlone, Question::sewn_side, 0, "the fold lies at the right"},
      {"centre to centre", job::first_sleeve_job(), kAlone, Question::measured_from, 0,
       "37 points at 49.00; 50 wanted, centre to centre"},
      {"clear gap", job::first_sleeve_job(), kAlone, Question::measured_from, 1,
       "30 points at 60.83; 50 + crown 12 (assumed) = 62 centre to centre"},
      {"at the end", exact_sleeve(), kAlone, Question::left_over, 0,
       "36 points, from 18.0 to 1768.0; 14 left over at the top"},
      {"split", exact_sleeve(), kAlone, Question::left_over, 1,
       "36 points, from 25.0 to 1775.0; 14 left over, half at each end"},
      {"one more", exact_sleeve(), kAlone, Question::left_over, 2,
       "37 points, from 18.0 to 1782.0; the last gap is 14"},
      {"side staples stay", ledger, second, Question::staples_out, 4,
       "the foot meets none of them"},
      {"lap staples before", ledger, second, Question::lap_staples_out, 1,
       "the foot meets none of them"},
      {"lap staples with the foot", ledger, second, Question::lap_staples_out, 2,
       "count them out as they were counted in"},
      {"lap staples after", ledger, second, Question::lap_staples_out, 3,
       "STOP 9.0 short for the foot"},
      // source: 92 sleeves in 6 sections, 377 holes a row: 270 rows, or 98 when shared.
      {"separate", ledger, second, Question::side_seams, 0,
       "this section: 50 rows, 18,850 holes; 112.80 m to sew, 2,150 staples; all sections: 270 "
       "rows, 101,790 holes; 609.12 m to sew, 11,610 staples; can be opened: each sleeve by "
       "itself"},
      {"shared", ledger, second, Question::side_seams, 1,
       "this section: 18 rows, 6,786 holes; 40.61 m to sew, 774 staples; all sections: 98 rows, "
       "36,946 holes; 221.09 m to sew, 4,214 staples; can be opened: only two neighbours "
       "together"},
      {"missing",
       ledger,
       {1, 14},
       Question::is_there,
       1,
       "section 2: 16 sleeves, 1134 wide; 2-14 then lies over 2-16"},
      {"missing, each over its left neighbour",
       left_over_ledger(),
       {1, 14},
       Question::is_there,
       1,
       "section 2: 16 sleeves, 1134 wide; 2-16 then lies over 2-14"},
      {"put back", harbour_without(), second, Question::put_back, 0,
       "section 2: 17 sleeves, 1200 wide"},
      {"share the hole", panel_job(690, 1420, "left"), kWhole, Question::corners, 0,
       "58 points, 494 stitch holes; P1 top: first point at 16.0, the shared hole"},
      {"stop short", panel_job(690, 1420, "right"), kWhole, Question::corners, 1,
       "60 points, 490 stitch holes; P1 top: first point at 31.0"},
  };
}

}  // namespace

TEST_CASE("each answer says what would follow from it on this place") {
  int ran = 0;
  for (const Case& one : cases()) {
    CAPTURE(one.what);
    CHECK(told(answer_of(one)) == one.follows);
    ++ran;
  }
  CHECK(ran == 21);
}

TEST_CASE("each answer is one action: what was foretold stands, and undo gives the same bytes") {
  int ran = 0;
  for (const Case& one : cases()) {
    CAPTURE(one.what);
    web::Bench bench;
    const std::string bytes = job::save_job(one.job);
    CHECK(bench.open("a.json", bytes));
    bench.go(one.place);
    const solve::Results& results = bench.now().results;
    bench.edit(web::with_answer(one.job, results, one.place, one.question, one.answer),
               web::answered_words(one.job, results, one.place, one.question, one.answer));
    CHECK(job::open_job(bench.file_bytes()).is_ok());
    CHECK_FALSE(bench.last_action().empty());
    // A sleeve marked missing and one put back are asked for no longer.
    const bool is_gone = one.question == Question::is_there || one.question == Question::put_back;
    const web::Solved& now = bench.now();
    if (!is_gone) {
      CHECK(web::answer_at(now.job, now.results, one.place, one.question) == one.answer);
      CHECK(told(answer_of({"", now.job, one.place, one.question, one.answer, ""})) == one.follows);
    }
    bench.undo();
    CHECK(bench.file_bytes() == bytes);
    ++ran;
  }
  CHECK(ran == 21);
}

TEST_CASE("a question is asked only where it has an answer") {
  const job::Job alone = job::first_sleeve_job();
  const job::Job ledger = demo_job("harbour-ledger");
  struct Ask {
    job::Job job;
    Place place;
    Question question;
    bool is_asked;
  };
  const std::vector<Ask> asks = {
      {alone, kAlone, Question::leaves, true},
      {alone, kAlone, Question::sewn_side, false},
      {folded_sleeve(), kAlone, Question::sewn_side, true},
      {alone, kAlone, Question::left_over, false},
      {exact_sleeve(), kAlone, Question::left_over, true},
      {alone, kAlone, Question::lap_staples_out, false},
      {ledger, {1, -1}, Question::lap_staples_out, true},
      {ledger, {1, 3}, Question::lap_staples_out, false},
      {alone, kAlone, Question::side_seams, false},
      {ledger, {1, -1}, Question::side_seams, true},
      {alone, kAlone, Question::is_there, false},
      {ledger, {1, 3}, Question::is_there, true},
      {ledger, {1, -1}, Question::is_there, false},
      {ledger, {1, -1}, Question::put_back, false},
      {harbour_without(), {1, -1}, Question::put_back, true},
      {harbour_without(), {1, 3}, Question::put_back, false},
      {alone, kAlone, Question::corners, false},
      {ledger, {6, -1}, Question::corners, true},
      {ledger, {6, -1}, Question::leaves, false},
      {ledger, {6, -1}, Question::measured_from, false},
  };
  int ran = 0;
  for (const Ask& ask : asks) {
    CAPTURE(ran);
    CHECK(web::is_asked(ask.job, solve::solve(ask.job), ask.place, ask.question) == ask.is_asked);
    ++ran;
  }
  CHECK(ran == 20);
}

TEST_CASE(
    "a make taken for the first time gets values to begin with; a second time it keeps its own") {
  const job::Job job = wide_sleeve();
  const solve::Results results = solve::solve(job);
  const job::Job folded = web::with_answer(job, results, kAlone, Question::leaves, 1);
  CHECK(folded.sections[0].fold_radius_um == 500);
  CHECK(folded.sections[0].sewn_side == job::Side::right);
  CHECK(web::answered_words(job, results, kAlone, Question::leaves, 1) ==
        "Leaves of sleeve 1-01: folded, 0.5 inside the fold, sewn at the right");
  const job::Job round = web::with_answer(job, results, kAlone, Question::leaves, 2);
  CHECK(round.sections[0].flange_um == 30'000);
  CHECK(findings_of(solve::solve(round), "row_not_laid").empty());
  job::Job own = folded;
  own.sections[0].fold_radius_um = 2'000;
  own.sections[0].make = job::Make::two_leaf;
  CHECK(web::with_answer(own, results, kAlone, Question::leaves, 1).sections[0].fold_radius_um ==
        2'000);
}

TEST_CASE("a flange begins wide enough for the sleeve whose rows stand farthest in") {
  job::Job job = section_job({100, 100, 100}, 20);
  job::StapleChange& change = job.sections[0].changes["1-02"].staple.emplace();
  change.in_from_edge_um = 33'200;
  const job::Job round = web::with_answer(job, solve::solve(job), kWhole, Question::leaves, 2);
  CHECK(round.sections[0].flange_um == 38'000);
}

TEST_CASE("a flange or fold that a sleeve is too narrow for is held to what it has room for") {
  job::Job job = section_job({20, 100}, 5);
  const job::Job round = web::with_answer(job, solve::solve(job), kWhole, Question::leaves, 2);
  CHECK(round.sections[0].flange_um == 19'400);
  CHECK(job::open_job(job::save_job(round)).is_ok());
  const solve::Results results = solve::solve(round);
  CHECK(web::held_between(round, results, kWhole, web::Measure::flange).most == 19'400);
  CHECK(web::held_between(round, results, {0, 1}, web::Measure::width).least == 20'000);
}

TEST_CASE("an answer that cannot be had says why, and its neighbour can") {
  // The sheet alone is as thick as the sleeve is wide.
  job::Job thick = wide_sleeve();
  thick.sections[0].leaf_um = 120'000;
  CHECK(web::why_not(thick, solve::solve(thick), kAlone, Question::leaves, 1) ==
        "sleeve 1-01 is 120 wide: no room for the fold");
  thick.sections[0].leaf_um = 119'000;
  CHECK(web::why_not(thick, solve::solve(thick), kAlone, Question::leaves, 1).empty());
  CHECK(web::why_not(thick, solve::solve(thick), kAlone, Question::leaves, 2) ==
        "sleeve 1-01 is 120 wide: no room for a tube beside its flange");
  // The last sleeve there stays.
  job::Job two = section_job({100, 100}, 20);
  CHECK(web::why_not(two, solve::solve(two), {0, 1}, Question::is_there, 1).empty());
  two.sections[0].missing = {"1-01"};
  CHECK(web::why_not(two, solve::solve(two), {0, 0}, Question::is_there, 1) ==
        "it is the only sleeve that is there");
  // A sleeve is put back only where the lap still leaves it room.
  two.sections[0].changes["1-01"].width_um = 20'000;
  const web::Answer back = answer_of({"", two, {0, 0}, Question::put_back, 0, ""});
  CHECK_FALSE(back.can_be_had);
  CHECK(back.stop == "sleeve 1-01 is 20 wide, the lap is 20");
  two.sections[0].changes["1-01"].width_um = 20'001;
  CHECK(answer_of({"", two, {0, 0}, Question::put_back, 0, ""}).can_be_had);
}

TEST_CASE("the answers there are numbered as the job numbers them; none where nothing is asked") {
  const job::Job two = section_job({100, 100, 100}, 20);
  const auto numbers = [](const job::Job& job, Place place, Question question) {
    return web::answers_there(job, solve::solve(job), place, question);
  };
  using Numbers = std::vector<int>;
  CHECK(numbers(two, kWhole, Question::leaves) == Numbers{0, 1, 2});
  CHECK(numbers(two, kWhole, Question::staples_out) == Numbers{1, 2, 3, 4});
  CHECK(numbers(two, kWhole, Question::put_back).empty());
  CHECK(numbers(two, kWhole, Question::corners).empty());
  job::Job gaps = two;
  gaps.sections[0].missing = {"1-01", "1-03"};
  CHECK(numbers(gaps, kWhole, Question::put_back) == Numbers{0, 1});
}

TEST_CASE("missing sleeves are kept in the order of their numbers, whichever is marked first") {
  web::Bench bench;
  CHECK(bench.open("a.json", job::save_job(section_job({100, 100, 100, 100}, 20))));
  const auto mark = [&bench](Place place) {
    bench.go(place);
    bench.edit(web::with_answer(bench.now().job, bench.now().results, place, Question::is_there, 1),
               "marked");
  };
  mark({0, 2});
  mark({0, 0});
  CHECK(bench.now().job.sections[0].missing == std::vector<std::string>{"1-01", "1-03"});
}

TEST_CASE("left over on a section is that of all its exact rows, side and lap") {
  job::Job job = section_job({100, 100}, 20);
  job.sections[0].lap_rows->staple.rule = job::SpacingRule::exact;
  const solve::Results results = solve::solve(job);
  CHECK(web::answer_at(job, results, kWhole, Question::left_over) == 0);
  const job::Job split = web::with_answer(job, results, kWhole, Question::left_over, 1);
  CHECK(split.sections[0].lap_rows->staple.left_over == job::LeftOver::split);
  CHECK(split.sections[0].side_rows.staple.left_over == job::LeftOver::end);
  job::Job both = split;
  both.sections[0].side_rows.staple.rule = job::SpacingRule::exact;
  CHECK(web::answer_at(both, results, kWhole, Question::left_over) == -1);
}

TEST_CASE("when the job does not say when staples come out, no answer is chosen") {
  const job::Job ledger = demo_job("harbour-ledger");
  const solve::Results results = solve::solve(ledger);
  CHECK(web::answer_at(ledger, results, {1, -1}, Question::lap_staples_out) == -1);
  CHECK(web::answer_at(ledger, results, {0, -1}, Question::lap_staples_out) == 2);
  CHECK(tests::stops_in(results) == 1);
  const job::Job said = web::with_answer(ledger, results, {1, -1}, Question::lap_staples_out, 1);
  CHECK(tests::stops_in(solve::solve(said)) == 0);
}

TEST_CASE("on one sleeve of several only its own staples are asked about") {
  const job::Job ledger = demo_job("harbour-ledger");
  const solve::Results results = solve::solve(ledger);
  const job::Job one = web::with_answer(ledger, results, {1, 4}, Question::staples_out, 1);
  CHECK(job::side_rows_of(one.sections[1], 4).staple.staples == job::StaplesOut::before_the_row);
  CHECK(job::side_rows_of(one.sections[1], 5).staple.staples == job::StaplesOut::stay);
}
