#include "engine/frame/elastica.h"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>
#include <vector>

using namespace pouncemark::frame;

namespace {

using std::numbers::pi;

double parameter_at(double slope_degrees) {
  const double sine = std::sin(slope_degrees / 2.0 * pi / 180.0);
  return sine * sine;
}

/// Half of a sheet, from a support where it stands at a slope to the middle where it is level.
/// Stiffness, width and half the push are 1.
struct Walked {
  double across = 0;
  double rise = 0;
  double along = 0;
  double load() const { return 8.0 * across * across; }
  double rise_over_chord() const { return rise / (2.0 * across); }
};

/// Sums up the half step by step, knowing only what bends it: the support's push across the chord
/// (1) and along it (`inward`). Walked by the root of the slope lost, so that nothing is steep.
Walked walked(double slope, double inward) {
  constexpr int kSteps = 400;
  const double step = std::sqrt(slope) / kSteps;
  Walked sum;
  for (int i = 0; i < kSteps; ++i) {
    for (const double place : {0.5 - 0.5 / std::sqrt(3.0), 0.5 + 0.5 / std::sqrt(3.0)}) {
      const double w = (i + place) * step;
      const double here = slope - w * w;
      const double moment = std::sqrt(
          2.0 * (std::sin(slope) - std::sin(here) + inward * (std::cos(here) - std::cos(slope))));
      const double ds = 2.0 * w / moment * step / 2.0;
      sum.along += ds;
      sum.across += ds * std::cos(here);
      sum.rise += ds * std::sin(here);
    }
  }
  return sum;
}

enum class Reaction { across_the_chord, square_to_the_sheet };

/// The bend of that many chords, found by trying slopes.
Walked walked_to(double rise, Reaction reaction) {
  double low = 0.001;
  double high = 1.5;
  Walked found;
  for (int i = 0; i < 60; ++i) {
    const double slope = (low + high) / 2.0;
    found = walked(slope, reaction == Reaction::square_to_the_sheet ? std::tan(slope) : 0.0);
    (found.rise_over_chord() > rise ? high : low) = slope;
  }
  return found;
}

}  // namespace

TEST_CASE("a sheet pushed together at its ends follows the published table") {
  struct Case {
    double slope;
    double load;
    double chord;
    double rise;
    double bend;
  };
  // source: Timoshenko and Gere, Theory of Elastic Stability, section 2.7, worked out to six
  // figures
  const std::vector<Case> cases = {
      {10, 1.003818, .992397, .055379, .548660},    {20, 1.015397, .969731, .109707, 1.099431},
      {40, 1.063663, .881204, .211120, 2.216326},   {60, 1.151720, .741020, .296604, 3.371501},
      {80, 1.293889, .559396, .359749, 4.594052},   {100, 1.518389, .348989, .395770, 5.930965},
      {120, 1.884801, .123160, .401585, 7.470389},  {140, 2.542258, -.106923, .375194, 9.414029},
      {160, 4.030086, -.340319, .312302, 12.421913}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.slope);
    const PushedTogether shape = pushed_together(parameter_at(one.slope));
    CHECK(std::fabs(shape.load - one.load) < 1e-6);
    CHECK(std::fabs(shape.chord - one.chord) < 1e-6);
    CHECK(std::fabs(shape.rise - one.rise) < 1e-6);
    CHECK(std::fabs(shape.bend - one.bend) < 1e-6);
    CHECK(shape.end_slope_mdeg == std::llround(one.slope * 1000));
    ++ran;
  }
  CHECK(ran == 9);
}

TEST_CASE("from the distance of its ends the sheet's rise and tightest radius follow") {
  struct Case {
    double chord;
    double rise;
    double radius;
  };
  // derived: the table above turned round, with 25 figures
  const std::vector<Case> cases = {{.99, .0634627, 1.588559}, {.98, .0894672, 1.121157},
                                   {.95, .1401106, .7050154}, {.90, .1949243, .4936411},
                                   {.80, .2663186, .3419051}, {.70, .3143126, .2730231},
                                   {.50, .3733064, .2011307}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.chord);
    const auto shape = pushed_to_chord(one.chord);
    REQUIRE(shape.has_value());
    CHECK(std::fabs(shape->rise - one.rise) < 1e-7);
    CHECK(std::fabs(1.0 / shape->bend - one.radius) < 1e-6);
    CHECK(std::fabs(shape->chord - one.chord) < 1e-14);
    ++ran;
  }
  CHECK(ran == 7);
}

TEST_CASE("the ends meet at 130.710 degrees and go no farther") {
  // source: as the table of Timoshenko and Gere, 130.7099 degrees
  const auto met = pushed_to_chord(0);
  REQUIRE(met.has_value());
  CHECK(met->end_slope_mdeg == 130'710);
  CHECK(std::fabs(met->chord) < 1e-14);
  CHECK_FALSE(pushed_to_chord(-0.001));
  CHECK_FALSE(pushed_to_chord(1.001));
  CHECK_FALSE(pushed_to_chord(std::nan("")));
}

TEST_CASE("a flat sheet has no rise and just gives way") {
  const auto flat = pushed_to_chord(1);
  REQUIRE(flat.has_value());
  CHECK(flat->rise <= 0);
  CHECK(flat->bend <= 0);
  CHECK(flat->end_slope_mdeg == 0);
  CHECK(std::fabs(flat->load - 1) < 1e-15);
  CHECK(std::fabs(pushed_together(0).load - 1) < 1e-15);
  // Nearly flat, the rise is two over π times the root of what the ends came together.
  int ran = 0;
  double shorter = 1e-2;
  for (int i = 0; i < 10; ++i) {
    shorter /= 10;
    const auto shape = pushed_to_chord(1.0 - shorter);
    REQUIRE(shape.has_value());
    // What the doubles left of `shorter` is what counts.
    const double simple = 2.0 / pi * std::sqrt(1.0 - (1.0 - shorter));
    CHECK(std::fabs(shape->rise / simple - 1) < shorter + 1e-12);
    ++ran;
  }
  CHECK(ran == 10);
}

TEST_CASE("a middle push with supports across the chord gives the published forces") {
  struct Case {
    double rise;
    double load;
    double part;
  };
  // derived: middle push, chord fixed, ends free to slide
  const std::vector<Case> cases = {{.02, .9588, .9988},
                                   {.05, 2.3817, .992},
                                   {.10, 4.6573, .970},
                                   {.14, 6.3417, .944},
                                   {.20, 8.5710, .893}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.rise);
    const auto shape = pushed_in_middle(one.rise);
    REQUIRE(shape.has_value());
    CHECK(std::fabs(shape->load - one.load) < .00005);
    CHECK(std::fabs(shape->load / shape->small - one.part) < .0005);
    CHECK(std::fabs(shape->bend - shape->load / 4) < 1e-14);
    ++ran;
  }
  CHECK(ran == 5);
}

TEST_CASE("the closed form is the sheet walked step by step, and only with such supports") {
  struct Case {
    double rise;
    double square_load;
  };
  // derived: the same walk with supports that push square to the sheet
  const std::vector<Case> cases = {
      {.02, .9561}, {.05, 2.3393}, {.10, 4.3377}, {.14, 5.5256}, {.20, 6.5119}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.rise);
    const auto shape = pushed_in_middle(one.rise);
    REQUIRE(shape.has_value());
    const Walked across = walked_to(one.rise, Reaction::across_the_chord);
    CHECK(std::fabs(shape->load - across.load()) < 1e-9);
    CHECK(std::fabs(shape->along - across.along / across.across) < 1e-10);
    const Walked square = walked_to(one.rise, Reaction::square_to_the_sheet);
    CHECK(std::fabs(square.load() - one.square_load) < .00005);
    CHECK(square.load() < shape->load - .002);
    ++ran;
  }
  CHECK(ran == 5);
}

TEST_CASE("the less the rise, the nearer the small-bend formula; the more, the nearer 16") {
  double before = 0;
  double part_before = 1;
  int ran = 0;
  for (int i = 1; i <= 5'000; ++i) {
    const auto shape = pushed_in_middle(i / 1'000.0);
    REQUIRE(shape.has_value());
    const double part = shape->load / shape->small;
    if (shape->load > before && shape->load < 16 && part < part_before && shape->along > 1) ++ran;
    before = shape->load;
    part_before = part;
  }
  CHECK(ran == 5'000);
  CHECK(before > 15.99999);
  double rise = 1e-1;
  for (int i = 0; i < 10; ++i) {
    rise /= 10;
    const auto shape = pushed_in_middle(rise);
    REQUIRE(shape.has_value());
    // derived: the first term left out is 108/35 of the square of the rise, the next goes with its
    // fourth power
    const double square = rise * rise;
    const double part = shape->load / shape->small;
    CHECK(std::fabs(part - 1 + 108.0 / 35.0 * square) < 12 * square * square + 1e-14);
  }
}

TEST_CASE("no rise takes no push; less than none and more than five chords are not answered") {
  const auto flat = pushed_in_middle(0);
  REQUIRE(flat.has_value());
  CHECK(flat->load <= 0);
  CHECK(flat->small <= 0);
  CHECK(flat->bend <= 0);
  CHECK(std::fabs(flat->along - 1) <= 0);
  CHECK(pushed_in_middle(5).has_value());
  CHECK_FALSE(pushed_in_middle(5.001));
  CHECK_FALSE(pushed_in_middle(-0.001));
  CHECK_FALSE(pushed_in_middle(std::nan("")));
}
