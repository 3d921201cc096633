#include "engine/frame/slip.h"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>
#include <vector>

#include "engine/frame/stations.h"
#include "engine/frame/wave.h"
#include "tests/support/random.h"

using namespace pouncemark;
using frame::Arc;
using frame::arc_of;
using frame::slip_along;
using frame::slip_at;
using frame::Stretch;
using frame::stretch_of;
using std::numbers::pi;

namespace {

/// An arc of this radius that turns so far.
Arc arc_turning(double radius, double turn) {
  return arc_of(2 * radius * std::sin(turn / 2), radius * (1 - std::cos(turn / 2)));
}

}  // namespace

TEST_CASE("cloth creeps by the distance of the plies times the turn of the bay") {
  struct Case {
    double chord;
    double rise;
    double apart;
    double creep;
  };
  // source: worked out by hand, d × 4·atan(2h/c)
  const Case cases[] = {{800, 120, 2, 2.33},   {1000, 150, 1.5, 1.75}, {665, 93, 1.5, 1.64},
                        {820, 116, 1.5, 1.65}, {895, 128, 1.5, 1.67},  {1120, 164, 1.5, 1.71}};
  int count = 0;
  for (const Case& one : cases) {
    CAPTURE(one.chord);
    const Arc arc = arc_of(one.chord, one.rise);
    const std::vector<Stretch> bay = {stretch_of(arc, true)};
    const double creep = slip_along(bay, one.apart, arc.along);
    CHECK(std::fabs(creep - one.creep) < 0.005);
    CHECK(frame::most_slip(bay, one.apart) == creep);
    const std::vector<Stretch> hollow = {stretch_of(arc, false)};
    CHECK(slip_along(hollow, one.apart, arc.along) == -creep);
    ++count;
  }
  CHECK(count == 6);
}

TEST_CASE("two plies held at one edge slip by their distance times the turn alone") {
  // source: derived: mid-planes h apart, turn θ
  CHECK(std::fabs(slip_at(1, pi / 2) - 1.570796) < 6e-7);
  CHECK(std::fabs(slip_at(1.5, pi / 2) - 2.356194) < 6e-7);
  CHECK(std::fabs(slip_at(2, pi / 3) - 2.094395) < 6e-7);
  CHECK(std::fabs(slip_at(1.25, pi) - 3.926991) < 6e-7);
  // Crest to where the wave crosses its middle line, and from there to the next crossing.
  const double to_middle = frame::steepest_slope({100, 1000});
  CHECK(std::fabs(slip_at(1, to_middle) - 0.560982) < 6e-7);
  CHECK(std::fabs(slip_at(1, 2 * to_middle) - 1.121964) < 6e-7);
  CHECK(std::fabs(slip_at(1.5, frame::steepest_slope({50, 1000})) - 0.456594) < 6e-7);
}

TEST_CASE("an S of two equal arcs slips most in its middle and not at its far edge") {
  const Arc arc = arc_of(1000, 150);
  const std::vector<Stretch> s = {stretch_of(arc, true), stretch_of(arc, false)};
  CHECK(std::fabs(slip_along(s, 1.5, arc.along) - 1.75) < 0.005);
  CHECK(slip_along(s, 1.5, 2 * arc.along) == 0);
  CHECK(frame::most_slip(s, 1.5) == slip_along(s, 1.5, arc.along));
  CHECK(slip_along(s, 1.5, 0) == 0);
  CHECK(slip_along(s, 1.5, arc.along / 2) == doctest::Approx(slip_along(s, 1.5, arc.along * 1.5)));
}

TEST_CASE("along the top of a bay the slip grows evenly and says where a row must stop") {
  const Arc arc = arc_of(1000, 150);
  const std::vector<Stretch> bay = {stretch_of(arc, true)};
  // source: worked out by hand, 1.5 × distance ÷ 908.3
  CHECK(std::fabs(slip_along(bay, 1.5, 250) - 0.41) < 0.005);
  CHECK(std::fabs(slip_along(bay, 1.5, 303) - 0.50) < 0.005);
  CHECK(std::fabs(slip_along(bay, 1.5, 750) - 1.24) < 0.005);
  const auto stop = frame::stop_along(bay, 1.5, 0.5);
  REQUIRE(stop.has_value());
  CHECK(std::fabs(*stop - 302.8) < 0.05);
  CHECK(slip_along(bay, 1.5, *stop) == doctest::Approx(0.5));
  CHECK(std::fabs(frame::ease(arc.radius, 1.5) * 100 - 0.165) < 0.000'5);
}

TEST_CASE("rows need not stop where the slip stays within the limit") {
  const std::vector<Stretch> bay = {stretch_of(arc_of(1000, 150), true)};
  const double creep = frame::most_slip(bay, 1.5);
  CHECK_FALSE(frame::stop_along(bay, 1.5, creep * 1.000'01).has_value());
  CHECK(frame::stop_along(bay, 1.5, creep * 0.999'99).has_value());
  CHECK_FALSE(frame::stop_along(bay, 1.5, creep).has_value());
  CHECK_FALSE(frame::stop_along(bay, 0, 0.5).has_value());
  const std::vector<Stretch> flat = {stretch_of(arc_of(1000, 0), true)};
  CHECK_FALSE(frame::stop_along(flat, 1.5, 0.5).has_value());
  CHECK(frame::ease(0, 1.5) == 0);
}

TEST_CASE("where a frame bends both ways a row stops at the first place that asks for it") {
  const Arc arc = arc_of(1000, 150);
  const double quarter = arc.along / 4;
  // Bulging a little, then hollow: the limit is met in the hollow, counted from the sewn edge.
  const std::vector<Stretch> s = {{quarter, arc.turn / 4}, {arc.along, -arc.turn}};
  const auto stop = frame::stop_along(s, 1.5, 0.5);
  REQUIRE(stop.has_value());
  CHECK(*stop == doctest::Approx(2 * quarter + 0.5 * arc.radius / 1.5));
  CHECK(std::fabs(slip_along(s, 1.5, *stop)) == doctest::Approx(0.5));
}

TEST_CASE("creep does not depend on the way between equal turns") {
  tests::Dice dice(20'261'127);
  INFO(dice.words());
  int count = 0;
  for (int i = 0; i < 300; ++i) {
    const double turn = static_cast<double>(dice.between(10, 3'000)) / 1000;
    const double share = static_cast<double>(dice.between(1, 99)) / 100;
    const double wide = static_cast<double>(dice.between(200, 5'000));
    const double tight = static_cast<double>(dice.between(50, 500));
    const std::vector<Stretch> one = {stretch_of(arc_turning(wide, turn), true)};
    const std::vector<Stretch> other = {stretch_of(arc_turning(tight, turn * share), true),
                                        stretch_of(arc_of(300, 0), true),
                                        stretch_of(arc_turning(wide, turn * (1 - share)), true)};
    const double creep = slip_along(one, 1.5, 1e9);
    CHECK(creep == doctest::Approx(1.5 * turn).epsilon(1e-9));
    CHECK(slip_along(other, 1.5, 1e9) == doctest::Approx(creep).epsilon(1e-9));
    ++count;
  }
  CHECK(count == 300);
}

TEST_CASE("over a full wave the creep is nothing, whatever its arcs") {
  tests::Dice dice(20'261'128);
  INFO(dice.words());
  int count = 0;
  for (int i = 0; i < 300; ++i) {
    const double turn = static_cast<double>(dice.between(10, 3'000)) / 1000;
    const double bulging = static_cast<double>(dice.between(100, 5'000));
    const double hollow = static_cast<double>(dice.between(100, 5'000));
    const std::vector<Stretch> wave = {stretch_of(arc_turning(bulging, turn / 2), true),
                                       stretch_of(arc_turning(hollow, turn), false),
                                       stretch_of(arc_turning(bulging, turn / 2), true)};
    CHECK(std::fabs(slip_along(wave, 1.5, 1e9)) < 1e-9);
    ++count;
  }
  CHECK(count == 300);
}
