#include "engine/frame/arc.h"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>

#include "tests/support/random.h"

using namespace pouncemark;
using frame::Arc;
using frame::arc_along;
using frame::arc_of;
using std::numbers::pi;

TEST_CASE("radius, turn and length of a bay follow from its chord and rise") {
  struct Case {
    double chord;
    double rise;
    double radius;
    double degrees;
    double along;
  };
  // source: worked out by hand from c²/(8h) + h/2, 4·atan(2h/c) and their product
  const Case cases[] = {{800, 120, 726.7, 66.80, 847.2},
                        {1000, 150, 908.3, 66.80, 1059.0},
                        {665, 93, 640.9, 62.51, 699.2},
                        {1890, 267, 1805.8, 63.11, 1989.0},
                        {800, 400, 400.0, 180.0, 1256.6}};
  int count = 0;
  for (const Case& one : cases) {
    CAPTURE(one.chord);
    const Arc arc = arc_of(one.chord, one.rise);
    CHECK(std::fabs(arc.radius - one.radius) < 0.05);
    CHECK(std::fabs(arc.turn * 180 / pi - one.degrees) < 0.005);
    CHECK(std::fabs(arc.along - one.along) < 0.05);
    CHECK_FALSE(arc.is_flat());
    ++count;
  }
  CHECK(count == 5);
  CHECK(std::fabs(arc_of(800, 120).extra() - 47.2) < 0.05);
}

TEST_CASE("a bay without rise is flat and as long as its chord") {
  const Arc arc = arc_of(800, 0);
  CHECK(arc.is_flat());
  CHECK(arc.radius == 0);
  CHECK(arc.turn == 0);
  CHECK(arc.along == 800);
  CHECK(arc.extra() == 0);
  CHECK_FALSE(arc_of(800, 0.001).is_flat());
}

TEST_CASE(
    "a rise of half the chord is a half circle, a micrometre on either side goes through it") {
  CHECK(arc_of(800, 400).turn == doctest::Approx(pi).epsilon(1e-12));
  CHECK(arc_of(800, 399.999).turn < pi);
  CHECK(arc_of(800, 400.001).turn > pi);
  CHECK(arc_of(800, 399.999).along < arc_of(800, 400.001).along);
}

TEST_CASE("an arc deeper than a half circle is worked out just the same") {
  // Three quarters of a circle of 100: chord 100·√2, rise 100 + 100/√2.
  const Arc arc = arc_of(100 * std::sqrt(2.0), 100 + 100 / std::sqrt(2.0));
  CHECK(arc.radius == doctest::Approx(100).epsilon(1e-12));
  CHECK(arc.turn == doctest::Approx(1.5 * pi).epsilon(1e-12));
}

TEST_CASE("chord and length along say the arc") {
  struct Case {
    double along;
    double chord;
    double radius;
    double rise;
  };
  // source: derived: sin(u)/u = c/L solved for u, R = L/2u, rise = R(1 − cos u)
  const Case cases[] = {{1000, 990, 2038.172, 61.0225},
                        {1000, 980, 1439.025, 85.9940},
                        {1000, 950, 905.943, 134.5107},
                        {1000, 900, 635.580, 186.7349}};
  int count = 0;
  for (const Case& one : cases) {
    CAPTURE(one.chord);
    const auto arc = arc_along(one.chord, one.along);
    REQUIRE(arc.has_value());
    CHECK(std::fabs(arc->radius - one.radius) < 0.000'6);
    CHECK(std::fabs(arc->rise - one.rise) < 0.000'06);
    ++count;
  }
  CHECK(count == 4);
}

TEST_CASE("a curve as long as its chord is flat, a shorter one is none") {
  REQUIRE(arc_along(800, 800).has_value());
  CHECK(arc_along(800, 800)->rise < 0.000'1);
  CHECK_FALSE(arc_along(800, 799.999).has_value());
}

TEST_CASE("every arc is found again from its chord and its length, deep ones too") {
  tests::Dice dice(20'261'126);
  INFO(dice.words());
  int count = 0;
  for (int i = 0; i < 500; ++i) {
    const double chord = static_cast<double>(dice.of_any_size(1'000, 20'000'000)) / 1000.0;
    const double rise = chord * static_cast<double>(dice.between(1'000, 3'000'000)) / 1e6;
    const Arc arc = arc_of(chord, rise);
    const auto again = arc_along(chord, arc.along);
    REQUIRE(again.has_value());
    CHECK(again->rise == doctest::Approx(rise).epsilon(1e-7));
    ++count;
  }
  CHECK(count == 500);
}
