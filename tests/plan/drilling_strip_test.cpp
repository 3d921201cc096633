#include "engine/plan/drilling_strip.h"

#include "engine/solve/solve.h"
#include "tests/support/fixed_bay.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <vector>

using namespace pouncemark;
using plan::DrillingStrip;

namespace {

/// The last panel of the small job hangs in its second bay.
struct Fixed {
  job::Job job = tests::demo_job("marsh-lights");
  solve::Results results = solve::solve(job);

  const solve::Piece& panel() const { return results.pieces[1]; }
  void fix(const char* edge, int gaps, int tight) {
    results.bays[1].fixings.push_back(
        tests::fixings_along(panel(), tests::edge_called(panel(), edge), gaps, tight));
  }
  plan::DrillingStrips strips() const { return plan::drilling_strips(job, results); }
};

}  // namespace

TEST_CASE("a strip walks its edge from the datum end, the sheet at its side, the top where it is") {
  struct Case {
    const char* edge;
    const char* from;
    const char* to;
    Um length_um;
    bool edge_is_left;
    int top_turns;
  };
  // source: the panel is 690 x 1420 with its hinge side at the left, FRONT up.
  const std::vector<Case> cases = {{"hinge", "BOTTOM", "TOP", 1'420'000, true, 0},
                                   {"fly", "BOTTOM", "TOP", 1'420'000, false, 0},
                                   {"top", "HINGE SIDE", "FLY SIDE", 690'000, true, 1},
                                   {"bottom", "HINGE SIDE", "FLY SIDE", 690'000, false, 1}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.edge);
    Fixed fixed;
    fixed.fix(one.edge, 2, 1);
    const DrillingStrip strip = fixed.strips().strips.at(0);
    CHECK(strip.from == one.from);
    CHECK(strip.to == one.to);
    CHECK(strip.length_um == one.length_um);
    CHECK(strip.edge_is_left == one.edge_is_left);
    CHECK(strip.top_turns == one.top_turns);
    CHECK(strip.bay == "B2");
    CHECK(strip.piece == "panel P1");
    REQUIRE(strip.holes.size() == 3);
    CHECK(strip.holes[0].at_um == 30'000);
    CHECK(strip.holes[1].at_um == one.length_um / 2);
    CHECK(strip.holes[2].at_um == one.length_um - 30'000);
    for (const plan::StripHole& hole : strip.holes) CHECK(hole.in_um == 10'000);
    ++ran;
  }
  CHECK(ran == 4);
}

TEST_CASE("the tight hole is as wide as the screw, slots lie away from it") {
  Fixed fixed;
  fixed.fix("hinge", 2, 1);
  fixed.fix("top", 1, -1);
  const plan::DrillingStrips all = fixed.strips();
  const DrillingStrip& hinge = all.strips.at(0);
  CHECK(hinge.screw_um == 5'000);
  CHECK(hinge.holes[1].is_tight);
  CHECK(hinge.holes[1].slot_um == 5'000);
  CHECK(hinge.holes[0].slot_um == 8'000);
  CHECK(hinge.holes[0].way.along == -1);
  CHECK(hinge.holes[2].way.along == 1);
  CHECK(hinge.deepest_um == 12'500);
  // Of the top row the far slot lies aslant, toward the middle of the hinge side.
  const plan::StripHole& far = all.strips.at(1).holes.at(1);
  const double across = 660 - 10;
  const double up = 1410 - 710;
  const double size = std::sqrt(across * across + up * up);
  CHECK(far.way.along == doctest::Approx(across / size).epsilon(1e-12));
  CHECK(far.way.in == doctest::Approx(-up / size).epsilon(1e-12));
  CHECK(all.strips.at(1).deepest_um > 12'500);
}

TEST_CASE("where no fixing is tight nothing is guessed of a slot's way but along the edge") {
  Fixed fixed;
  fixed.fix("top", 1, -1);
  fixed.results.bays[1].fixings[0].tight_row = -1;
  CHECK(fixed.strips().strips.at(0).holes.at(1).way.along == 1);
}

TEST_CASE("bays without fixings, and edges that are arcs, are told of in a sentence") {
  Fixed fixed;
  CHECK(fixed.strips().strips.empty());
  CHECK(fixed.strips().notes ==
        std::vector<std::string>{"Bays B1, B2: no fixings. Enter edge, in from it, kept clear and "
                                 "spacing on the stage Curve."});
  fixed.fix("hinge", 2, 1);
  CHECK(fixed.strips().notes.at(0).starts_with("Bay B1: no fixings."));
  fixed.results.pieces[1]
      .outline.edges[static_cast<std::size_t>(tests::edge_called(fixed.panel(), "hinge"))]
      .line.rise = 30;
  CHECK(fixed.strips().strips.empty());
  CHECK(fixed.strips().notes.at(1) ==
        "Bay B2 hinge side: the edge is an arc, and a strip lies straight. Drill by figures.");
}

TEST_CASE("the hanging day's warmth is said where it was entered") {
  Fixed fixed;
  CHECK(fixed.strips().today == "Dot: the screw; the hanging day's °C was not entered.");
  fixed.job.materials.values[material::Field::hanging_today] = {
      12'500, {}, material::Standing::typed, {}};
  CHECK(fixed.strips().today == "Dot: the screw on the hanging day, at 12.5 °C.");
}
