#include "tests/support/jobs.h"
#include "web/model/bench.h"
#include "web/model/words.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace pouncemark;
using pouncemark::tests::demo_job;
using pouncemark::tests::panel_job;
using pouncemark::tests::section_job;

namespace {

web::Headline told(const job::Job& job, web::Place place) {
  return web::headline(web::solved(job), nullptr, place);
}

job::StapleRow& staples(job::Job& job) { return job.sections[0].side_rows.staple; }

job::Job exactly(Um spacing_um, job::LeftOver left_over) {
  job::Job job = section_job({110}, 0);
  staples(job).spacing_um = spacing_um;
  staples(job).rule = job::SpacingRule::exact;
  staples(job).left_over = left_over;
  return job;
}

job::Job clear_gap(Um crown_um) {
  job::Job job = section_job({110}, 0);
  job.spacing_is_clear_gap = true;
  job.crown_um = crown_um;
  return job;
}

job::Job kept_clear(Um bottom_um, Um top_um) {
  job::Job job = section_job({110}, 0);
  staples(job).kept_clear_um = {bottom_um, top_um};
  return job;
}

job::Job round_sleeve(Um in_um) {
  job::Job job = section_job({110}, 0);
  job.sections[0].make = job::Make::round;
  job.sections[0].flange_um = 30'000;
  job.sections[0].sewn_side = job::Side::left;
  staples(job).in_from_edge_um = in_um;
  return job;
}

job::Job shared_of_three() {
  job::Job job = section_job({100, 100, 100}, 20);
  job.sections[0].side_seams = job::SideSeams::shared;
  return job;
}

struct Case {
  job::Job job;
  web::Place place;
  const char* words;
  const char* because;
};

void check(const std::vector<Case>& cases) {
  int seen = 0;
  for (const Case& one : cases) {
    const web::Headline line = told(one.job, one.place);
    CHECK(web::plain_words(line) == one.words);
    CHECK(line.because == one.because);
    ++seen;
  }
  CHECK(seen == static_cast<int>(cases.size()));
}

}  // namespace

TEST_CASE("a sleeve's headline says how far apart, and why, whatever the rule") {
  using job::LeftOver;
  // source: 1800 less 18 at each end is 1764; the counts by hand
  check({
      {section_job({110}, 0),
       {0, 0},
       "37 points in each staple row, 49.00 apart",
       "because 50 does not divide 1764, first point to last"},
      {exactly(50'000, LeftOver::end),
       {0, 0},
       "36 points in each staple row, exactly 50.00 apart",
       "14 left over at the top"},
      {exactly(50'000, LeftOver::split),
       {0, 0},
       "36 points in each staple row, exactly 50.00 apart",
       "14 left over, 7 at each end"},
      {exactly(50'000, LeftOver::extra_point),
       {0, 0},
       "37 points in each staple row, exactly 50.00 apart",
       "14 is the last gap, at the top"},
      {exactly(49'000, LeftOver::end),
       {0, 0},
       "37 points in each staple row, exactly 49.00 apart",
       "and nothing left over"},
      {clear_gap(12'000),
       {0, 0},
       "30 points in each staple row, 60.83 apart",
       "centre to centre, a clear gap of 48.83; 62 does not divide 1764"},
  });
}

TEST_CASE("crowns that overlap are not called a clear gap") {
  job::Job job = clear_gap(12'000);
  job.sections[0].length_um = 46'000;
  check({{job,
          {0, 0},
          "2 points in each staple row, 10.00 apart",
          "centre to centre, the crowns overlap by 2.00; 62 does not divide 10"}});
}

TEST_CASE("one point, and no row, are said as they are") {
  check({
      {kept_clear(900'000, 900'000),
       {0, 0},
       "1 point in each staple row",
       "the kept clear ends meet"},
      {kept_clear(900'000, 900'001),
       {0, 0},
       "No staple row",
       "1800 long, 900 + 900.001 kept clear: no room for a row"},
      {exactly(1'765'000, job::LeftOver::end),
       {0, 0},
       "1 point in each staple row",
       "1764 left over at the top"},
  });
}

TEST_CASE("a row that does not fit a round sleeve's flange says how wide the flange is") {
  check({
      {round_sleeve(30'000),
       {0, 0},
       "37 points in its one staple row, 49.00 apart",
       "because 50 does not divide 1764, first point to last"},
      {round_sleeve(30'001),
       {0, 0},
       "No staple row",
       "30.001 in from the edge: the flange is 30 wide"},
  });
}

TEST_CASE(
    "a sleeve whose seams are shared has no side rows of its own, but at the outermost edge") {
  const job::Job job = shared_of_three();
  check({
      {job, {0, 1}, "No side rows of its own", "the joining rows in its laps are its side seams"},
      {job,
       {0, 0},
       "37 points in its one staple row, 49.00 apart",
       "because 50 does not divide 1764, first point to last"},
      {job,
       {0, -1},
       "260 wide, could end up ±1.9, at worst ±4.0",
       "the joining rows are side seams too: side rows on the outermost edges only"},
  });
}

TEST_CASE("a section with a missing sleeve says how many of its numbers are there") {
  job::Job job = section_job({60, 75, 90, 120, 150, 120, 90, 75, 60}, 20);
  CHECK(web::plain_words(told(job, {0, -1})) == "680 wide, could end up ±3.3, at worst ±13.0");
  job.sections[0].missing = {"1-04"};
  CHECK(web::plain_words(told(job, {0, -1})) ==
        "8 of 9 sleeves, 580 wide, could end up ±3.1, at worst ±11.5");
}

TEST_CASE("a sleeve after a missing one is told by its own number, not by its place") {
  job::Job job = section_job({100, 100, 100}, 20);
  job.sections[0].missing = {"1-02"};
  job::StapleChange change;
  change.rule = job::SpacingRule::exact;
  change.left_over = job::LeftOver::split;
  job.sections[0].changes["1-03"].staple = change;
  check({{job,
          {0, 1},
          "36 points in each staple row, exactly 50.00 apart",
          "14 left over, 7 at each end"},
         {job,
          {0, 0},
          "37 points in each staple row, 49.00 apart",
          "because 50 does not divide 1764, first point to last"}});
}

TEST_CASE("a panel's headline names the edges that are sewn, and what its corners do") {
  const job::Job all = panel_job(690, 1'420, "left");
  job::Job two = all;
  two.panels[0].rows_on = {"hinge_side", "top"};
  job::Job one = all;
  one.panels[0].rows_on = {"hinge_side"};
  job::Job apart = all;
  apart.panels[0].corners = job::Corners::stop_short;
  job::Job none = all;
  none.panels[0].rows_on = {"fly_side"};
  check({
      {all,
       {0, -1},
       "58 points on hinge side, top and bottom",
       "the corner points are shared and counted once; the fly side stays unsewn"},
      {two,
       {0, -1},
       "44 points on hinge side and top",
       "the corner points are shared and counted once; the fly side stays unsewn"},
      {one, {0, -1}, "30 points on hinge side", "the fly side stays unsewn"},
      {apart,
       {0, -1},
       "60 points on hinge side, top and bottom",
       "rows stop 15 short at the corners: the corner holes are not shared; the fly side stays "
       "unsewn"},
      {none,
       {0, -1},
       "No row",
       "no edge takes a row: see what is found; the fly side stays unsewn"},
  });
}

TEST_CASE("every figure of a headline has a line of the slip with its sum") {
  int figures = 0;
  for (const char* name : {"marsh-lights", "harbour-ledger"}) {
    job::Job job = demo_job(name);
    job.sections[0].missing = {job.sections[0].code + "-02"};
    const web::Solved now = web::solved(job);
    for (const web::Place place : web::all_places(now.results)) {
      const auto lines = web::follow_lines(now, nullptr, place);
      for (const web::HeadlinePart& part : web::headline(now, nullptr, place).parts) {
        if (part.id.empty()) continue;
        const auto same = std::find_if(lines.begin(), lines.end(),
                                       [&](const auto& line) { return line.id == part.id; });
        REQUIRE(same != lines.end());
        CHECK(part.words.rfind(same->figure, 0) == 0);
        ++figures;
      }
    }
  }
  CHECK(figures > 200);
}

TEST_CASE("what was just changed carries the pen, what did not move does not") {
  web::Bench bench;
  bench.start_with_sleeve();
  job::Job job = bench.now().job;
  job.sections[0].side_rows.staple.kept_clear_um = {25'000, 25'000};
  bench.edit(job, "moved");
  const web::Headline moved = web::headline(bench.now(), bench.before(), bench.place());
  CHECK(moved.parts[0].changed);
  CHECK(moved.parts[2].changed);
  job.name = "Another name";
  bench.edit(job, "named");
  CHECK(!web::headline(bench.now(), bench.before(), bench.place()).parts[0].changed);
}
