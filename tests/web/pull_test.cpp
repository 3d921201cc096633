#include "web/model/pull.h"

#include <doctest/doctest.h>

#include "tests/support/jobs.h"

using namespace pouncemark;
using web::held_back;
using web::Measure;
using web::Place;
using web::Pull;
using web::PullAxis;
using web::Resisted;

namespace {

constexpr Place kAlone{0, 0};

Pull pulled(int sign, Um start_um) {
  return Pull{kAlone, Measure::kept_clear_bottom, PullAxis::level, sign, 2.0, start_um, 200};
}

/// A figure that can be, its neighbour that cannot, where the thing stops and why.
struct Case {
  const char* what;
  Place place;
  Measure measure;
  Um can;
  Um cannot;
  Um stops_at;
  const char* reason;
};

int check_all(const job::Job& job, const std::vector<Case>& cases) {
  const web::Solved start = web::solved(job);
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.what);
    const Resisted can = held_back(start, one.place, one.measure, one.can);
    CHECK(can.um == one.can);
    CHECK(can.reason == "");
    const Resisted cannot = held_back(start, one.place, one.measure, one.cannot);
    CHECK(cannot.um == one.stops_at);
    CHECK(cannot.reason == one.reason);
    ++ran;
  }
  return ran;
}

}  // namespace

TEST_CASE("a figure follows the hand in steps, the bottom end to the right, the top to the left") {
  struct Step {
    int sign;
    Um start;
    float at;
    Um step;
    Um asked;
  };
  int ran = 0;
  for (const Step& one : {Step{1, 18'000, 214, 500, 25'000}, Step{-1, 18'000, 186, 500, 25'000},
                          Step{1, 18'000, 213.6f, 500, 25'000},
                          Step{1, 18'000, 213.4f, 500, 24'500}, Step{1, 18'000, 214, 5'000, 25'000},
                          Step{1, 18'000, 216, 5'000, 25'000}, Step{1, 18'000, 221, 5'000, 30'000},
                          Step{1, 18'000, 213.4f, 100, 24'700}, Step{1, 6'350, 200.5f, 500, 6'350},
                          Step{1, 6'350, 201, 500, 7'000}, Step{1, 18'000, 0, 500, -82'000}}) {
    CAPTURE(one.at);
    CHECK(pulled(one.sign, one.start).asked(one.at, one.step) == one.asked);
    ++ran;
  }
  CHECK(ran == 11);
}

TEST_CASE("an arrow key moves by 1, with Shift by 10, with Ctrl by a tenth") {
  CHECK(web::key_step(false, false) == 1'000);
  CHECK(web::key_step(true, false) == 10'000);
  CHECK(web::key_step(false, true) == 100);
}

TEST_CASE("the ends of a sleeve resist where they would meet, and say how long it is") {
  CHECK(check_all(job::first_sleeve_job(),
                  {{"both ends to the middle", kAlone, Measure::kept_clear_bottom, 900'000, 900'500,
                    900'000, "1800 long, 900.5 + 900.5 kept clear: no room for a row"},
                   {"past the end of the sheet", kAlone, Measure::kept_clear_top, 0, -500, 0,
                    "0 kept clear: beyond it there is no sheet"},
                   {"the sleeve as short as its ends", kAlone, Measure::length, 36'000, 35'500,
                    36'000, "35.5 long, 18 + 18 kept clear: no room for a row"},
                   {"a row past the middle", kAlone, Measure::in_from_edge, 55'000, 55'500, 55'000,
                    "110 wide, a row 55.5 in from the edge: past the middle of the sleeve"},
                   {"a row off the sheet", kAlone, Measure::stitch_in_from_edge, 0, -100, 0,
                    "0 in from the edge: further out there is no sheet"}}) == 5);
}

TEST_CASE("a sleeve of a section resists where its lap, its rows or its make have no room") {
  job::Job job = tests::section_job({110, 110, 110}, 18);
  constexpr Place kSecond{0, 1};
  CHECK(check_all(job, {{"rows past one another", kSecond, Measure::width, 52'000, 51'900, 52'000,
                         "51.9 wide, a row 26 in from the edge: past the middle of the sleeve"},
                        {"a lap as wide as a sleeve",
                         {0, -1},
                         Measure::lap,
                         109'900,
                         110'000,
                         109'900,
                         "sleeve 1-01 is 110 wide, the lap is 110"}}) == 2);
  job.sections[0].side_rows.staple.in_from_edge_um = 5'000;
  job.sections[0].side_rows.stitch.in_from_edge_um = 5'000;
  CHECK(check_all(job, {{"no wider than the lap", kSecond, Measure::width, 18'100, 18'000, 18'100,
                         "sleeve 1-02 is 18 wide, the lap is 18"}}) == 1);
  job::Job round = job::first_sleeve_job();
  round.sections[0].make = job::Make::round;
  round.sections[0].sewn_side = job::Side::left;
  round.sections[0].flange_um = 40'000;
  round.sections[0].leaf_um = 250;
  CHECK(check_all(round,
                  {{"a row through the tube", kAlone, Measure::in_from_edge, 40'000, 40'500, 40'000,
                    "40.5 in from the edge: a round sleeve is sewn in its flange only"},
                   {"a flange narrower than its rows", kAlone, Measure::flange, 26'000, 25'500,
                    26'000, "26 in from the edge: a round sleeve is sewn in its flange only"},
                   {"a flange without a tube", kAlone, Measure::flange, 109'400, 109'500, 109'400,
                    "sleeve 1-01 is 110 wide: no room for a tube beside its flange"},
                   {"a sleeve without a tube", kAlone, Measure::width, 52'000, 51'500, 52'000,
                    "51.5 wide, a row 26 in from the edge: past the middle of the sleeve"}}) == 4);
  job::Job folded = job::first_sleeve_job();
  folded.sections[0].make = job::Make::folded;
  folded.sections[0].sewn_side = job::Side::left;
  folded.sections[0].fold_radius_um = 500;
  CHECK(check_all(folded, {{"a fold without radius", kAlone, Measure::fold_radius, 0, -100, 0,
                            "0 inside: no fold is sharper"}}) == 1);
}

TEST_CASE("what stands in the way first is what is said") {
  const web::Solved start = web::solved(tests::section_job({110, 110, 110}, 18));
  const Resisted held = held_back(start, {0, 1}, Measure::width, 10'000);
  CHECK(held.um == 52'000);
  CHECK(held.reason == "51.9 wide, a row 26 in from the edge: past the middle of the sleeve");
}

TEST_CASE("stitch rows that end elsewhere resist by themselves") {
  job::Job job = job::first_sleeve_job();
  job.sections[0].side_rows.stitch.kept_clear_um = {30'000, 40'000};
  CHECK(check_all(job,
                  {{"to the other end", kAlone, Measure::stitch_clear_bottom, 1'760'000, 1'760'100,
                    1'760'000, "1800 long, 1760.1 + 40 kept clear: no room for a row"}}) == 1);
}

TEST_CASE("a panel resists where its rows meet, and its fly side always") {
  job::Job job = tests::panel_job(690, 1420, "left");
  constexpr Place kPanel{0, -1};
  const web::Solved start = web::solved(job);
  const Resisted held = held_back(start, kPanel, Measure::in_from_edge, 900'000);
  CHECK(held.um < 900'000);
  CHECK(held.um >= 16'000);
  CHECK(held.reason.find(": ") != std::string::npos);
  CHECK(held_back(start, kPanel, Measure::in_from_edge, held.um).reason == "");
  CHECK(held_back(start, kPanel, Measure::in_from_edge, held.um + 100).reason != "");
  CHECK(held_back(start, kPanel, Measure::width, 500).um >= 1'000);
  job.panels[0].corners = job::Corners::stop_short;
  CHECK(held_back(web::solved(job), kPanel, Measure::corner_clear, -500).reason ==
        "0 clear: here it meets the hinge row");
  CHECK(
      web::fly_side_refusal() ==
      "FLY SIDE, DO NOT SEW: this edge must stay unsewn, so that cloth and sheet can slip when the "
      "panel is curved");
}

TEST_CASE("a row that could not be laid at the start keeps nothing else from being pulled") {
  job::Job job = job::first_sleeve_job();
  job.sections[0].side_rows.stitch.kept_clear_um = {1'000'000, 1'000'000};
  const Resisted held = held_back(web::solved(job), kAlone, Measure::kept_clear_bottom, 25'000);
  CHECK(held.um == 25'000);
  CHECK(held.reason == "");
}
