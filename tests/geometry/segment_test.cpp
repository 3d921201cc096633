#include "engine/geometry/segment.h"

#include "tests/support/case_table.h"
#include "tests/support/random.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

using namespace pouncemark;
using pouncemark::tests::Dice;
using pouncemark::tests::every_way;
using pouncemark::tests::mirrored;

namespace {

constexpr double kPi = 3.14159265358979323846;

Segment over_chord(double chord, double rise) { return {{0, 0}, {chord, 0}, rise}; }

double apart(Vec2 a, Vec2 b) { return length(a - b); }

Vec2 random_place(Dice& dice) {
  const double x = from_um(dice.between(-2'000'000, 2'000'000));
  const double y = from_um(dice.between(-2'000'000, 2'000'000));
  return {x, y};
}

/// A line or an arc of 1 to 5,660 mm over its chord, bulging either way up to a half circle.
Segment random_segment(Dice& dice) {
  Segment segment{random_place(dice), random_place(dice), 0};
  const double chord = length(segment.to - segment.from);
  const auto permille = static_cast<double>(dice.between(-500, 500));
  if (!dice.once_in(3)) segment.rise = chord * permille / 1000.0;
  return segment;
}

}  // namespace

TEST_CASE("chord and rise give the radius and the length along the curve") {
  struct Bay {
    double chord, rise, radius, along;
  };
  // source: independent arithmetic in Python by another formula, L = 2 R asin(c / 2R).
  const Bay bays[] = {{800, 120, 726.667, 847.168}, {1000, 150, 908.333, 1058.960},
                      {665, 93, 640.888, 699.157},  {905, 126, 875.525, 951.078},
                      {820, 116, 782.569, 863.082}, {1890, 267, 1805.831, 1989.031},
                      {800, 400, 400.000, 1256.637}};
  int count = 0;
  for (const Bay& bay : bays) {
    for (const auto& told : every_way(over_chord(bay.chord, bay.rise))) {
      const auto& arc = told.value;
      CAPTURE(bay.chord);
      CAPTURE(told.way);
      CHECK(std::fabs(radius(arc) - bay.radius) < 0.001);
      CHECK(std::fabs(length(arc) - bay.along) < 0.001);
      ++count;
    }
  }
  CHECK(count == 28);
}

TEST_CASE("a half circle is no special case: its length is half round") {
  const Segment half = over_chord(200, 100);
  CHECK(std::fabs(length(half) - kPi * 100) < 1e-9);
  CHECK(apart(centre(half), {100, 0}) < 1e-9);
  CHECK(apart(point_at(half, kPi * 50), {100, -100}) < 1e-9);
  CHECK(apart(point_at(half, kPi * 100), {200, 0}) < 1e-9);
  const Segment inward = over_chord(200, -100);
  CHECK(apart(point_at(inward, kPi * 50), {100, 100}) < 1e-9);
}

TEST_CASE("an arc deeper than a half circle still measures true") {
  // source: three quarters of a circle of radius 100 over the chord of its missing quarter.
  const double chord = 100 * std::sqrt(2.0);
  const Segment deep = over_chord(chord, 100 + chord / 2);
  CHECK(std::fabs(radius(deep) - 100) < 1e-9);
  CHECK(std::fabs(length(deep) - kPi * 150) < 1e-9);
}

TEST_CASE("no rise is a straight line, and so is one too small to store") {
  CHECK(is_straight(over_chord(800, 0)));
  CHECK(is_straight(over_chord(800, 1e-7)));
  CHECK(!is_straight(over_chord(800, 0.001)));
  CHECK(!is_straight(over_chord(800, -0.001)));
  CHECK(length(over_chord(800, 0)) == 800);
  CHECK(std::fabs(length(over_chord(800, 0.001)) - 800) < 1e-6);
}

TEST_CASE("an arc bulges to the right of its walk, and to the left when the rise is negative") {
  const Segment out = over_chord(100, 10);
  CHECK(apart(point_at(out, length(out) / 2), {50, -10}) < 1e-9);
  const Segment in = over_chord(100, -10);
  CHECK(apart(point_at(in, length(in) / 2), {50, 10}) < 1e-9);
}

TEST_CASE("a line walked the other way is the same line from its other end") {
  Dice dice(20'260'121);
  INFO(dice.words());
  int same = 0;
  for (int i = 0; i < 20'000; ++i) {
    const Segment line = random_segment(dice);
    const Segment back = reversed(line);
    const double along = length(line);
    const double station = along * static_cast<double>(dice.between(0, 1'000)) / 1000.0;
    const bool meets = apart(point_at(line, station), point_at(back, along - station)) < 1e-6;
    const Vec2 way = direction_at(line, station) + direction_at(back, along - station);
    if (std::fabs(length(back) - along) < 1e-6 && meets && length(way) < 1e-6) ++same;
  }
  CHECK(same == 20'000);
}

TEST_CASE("the ends of a line are its first and last station") {
  Dice dice(20'260'122);
  INFO(dice.words());
  int met = 0;
  for (int i = 0; i < 20'000; ++i) {
    const Segment line = random_segment(dice);
    const bool first = apart(point_at(line, 0), line.from) < 1e-6;
    const bool last = apart(point_at(line, length(line)), line.to) < 1e-6;
    if (first && last) ++met;
  }
  CHECK(met == 20'000);
}

TEST_CASE("any station of a line, its ends among them, is found again from its place") {
  Dice dice(20'260'123);
  INFO(dice.words());
  int same = 0;
  for (int i = 0; i < 20'000; ++i) {
    const Segment line = random_segment(dice);
    const double station = length(line) * static_cast<double>(dice.between(0, 1'000)) / 1000.0;
    if (std::fabs(station_of(line, point_at(line, station)) - station) < 1e-6) ++same;
  }
  CHECK(same == 20'000);
}

TEST_CASE("the last station of a half circle is found at its end, not at its beginning") {
  for (const auto& told : every_way(over_chord(200, 100))) {
    const auto& half = told.value;
    CAPTURE(told.way);
    CHECK(std::fabs(station_of(half, half.to) - kPi * 100) < 1e-6);
    CHECK(std::fabs(station_of(half, half.from)) < 1e-6);
  }
}

TEST_CASE("a place beside a line stands at the station square across from it") {
  CHECK(station_of(over_chord(100, 0), {30, 25}) == 30);
  CHECK(station_of(over_chord(100, 0), {-10, 5}) == -10);
  const Segment half = over_chord(200, 100);
  CHECK(std::fabs(station_of(half, {100, -40}) - kPi * 50) < 1e-9);
}

TEST_CASE("a parallel keeps its distance everywhere, to the left of the walk") {
  Dice dice(20'260'124);
  INFO(dice.words());
  int kept = 0;
  int none = 0;
  for (int i = 0; i < 20'000; ++i) {
    const Segment line = random_segment(dice);
    const double distance = from_um(dice.between(-50'000, 50'000));
    const std::optional<Segment> beside = parallel(line, distance);
    if (!beside) {
      ++none;
      continue;
    }
    const double part = static_cast<double>(dice.between(0, 1'000)) / 1000.0;
    const Vec2 here = point_at(line, length(line) * part);
    const Vec2 there = point_at(*beside, length(*beside) * part);
    const Vec2 left = left_of(direction_at(line, length(line) * part));
    if (apart(there, here + left * distance) < 1e-6) ++kept;
  }
  CHECK(kept + none == 20'000);
  CHECK(kept > 19'000);
}

TEST_CASE("a parallel of an arc is concentric, and there is none past the centre") {
  const Segment out = over_chord(200, 100);  // radius 100, centre to the left of the walk
  const std::optional<Segment> inside = parallel(out, 40);
  CHECK(std::fabs(radius(*inside) - 60) < 1e-9);
  CHECK(apart(centre(*inside), centre(out)) < 1e-9);
  CHECK(parallel(out, 99.999).has_value());
  CHECK(!parallel(out, 100).has_value());
  CHECK(!parallel(out, 101).has_value());
  const Segment in = over_chord(200, -100);  // centre to the right: the radius grows
  CHECK(std::fabs(radius(*parallel(in, 150)) - 250) < 1e-9);
}

TEST_CASE("two straight lines meet where both pass, however far that is") {
  const Segment across{{0, 10}, {100, 10}, 0};
  const Segment up{{200, 0}, {200, 5}, 0};
  CHECK(apart(*meeting(across, up, {0, 0}), {200, 10}) < 1e-9);
  const Segment beside{{0, 20}, {100, 20}, 0};
  CHECK(!meeting(across, beside, {0, 0}).has_value());
}

TEST_CASE("a line and an arc meet at the one of their two places that is nearer") {
  const Segment arc = over_chord(200, 100);
  const Segment level{{-500, -60}, {500, -60}, 0};
  CHECK(apart(*meeting(level, arc, {0, 0}), {20, -60}) < 1e-9);
  CHECK(apart(*meeting(level, arc, {200, 0}), {180, -60}) < 1e-9);
  CHECK(apart(*meeting(arc, level, {200, 0}), {180, -60}) < 1e-9);
  const Segment below{{-500, -101}, {500, -101}, 0};
  CHECK(!meeting(below, arc, {0, 0}).has_value());
}

TEST_CASE("a line that just touches an arc meets it there, whatever the rounding") {
  int met = 0;
  for (int tenths = 1'000; tenths < 20'000; tenths += 7) {
    const double r = tenths / 10.0;
    const Segment arc{{r, 0}, {-r, 0}, r};
    const std::optional<Segment> inner = parallel(arc, 16.3);
    const Segment side{{r - 16.3, -500}, {r - 16.3, 0}, 0};
    const std::optional<Vec2> place = meeting(side, *inner, {r, 0});
    if (place && apart(*place, {r - 16.3, 0}) < 0.001) ++met;
  }
  CHECK(met == 2'715);
}

TEST_CASE("two arcs meet at the nearer of their two places; circles apart or within do not meet") {
  const Segment one{{100, 0}, {-100, 0}, 100};  // round 0, 0
  const Segment two{{220, 0}, {20, 0}, 100};    // round 120, 0
  CHECK(apart(*meeting(one, two, {60, 50}), {60, 80}) < 1e-9);
  CHECK(apart(*meeting(one, two, {60, -50}), {60, -80}) < 1e-9);
  const Segment away{{400, 0}, {200, 0}, 100};
  CHECK(!meeting(one, away, {0, 0}).has_value());
  const Segment within{{50, 0}, {-50, 0}, 50};
  CHECK(!meeting(one, within, {0, 0}).has_value());
}

TEST_CASE("the distance to a part of a line is to the line beside it and to its end beyond it") {
  struct Case {
    Segment line;
    double first;
    double last;
    Vec2 place;
    double distance;
  };
  const double root_half = std::sqrt(0.5);
  const Segment half_circle{{100, 0}, {-100, 0}, 100};
  const double quarter = length(half_circle) / 2.0;
  // source: Pythagoras, and spokes of a circle of 100, by hand
  const Case cases[] = {
      {{{0, 0}, {100, 0}, 0}, 0, 100, {50, 7}, 7},
      {{{0, 0}, {100, 0}, 0}, 0, 100, {104, 3}, 5},
      {{{0, 0}, {100, 0}, 0}, 0, 100, {-4, 3}, 5},
      {{{0, 0}, {100, 0}, 0}, 0, 46, {50, 3}, 5},
      {{{0, 0}, {100, 0}, 0}, 20, 100, {20, 6}, 6},
      {half_circle, 0, 2 * quarter, {0, 107}, 7},
      {half_circle, 0, 2 * quarter, {0, 40}, 60},
      {half_circle, 0, quarter, {-30, 60}, 50},
      {half_circle, 0, quarter, {120 * root_half, 120 * root_half}, 20},
      {half_circle,
       quarter,
       2 * quarter,
       {100 * root_half, 100 * root_half},
       std::sqrt(10'000 * (2 - 2 * root_half))},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(seen);
    CHECK(distance_to(one.line, one.first, one.last, one.place) ==
          doctest::Approx(one.distance).epsilon(1e-9));
    const double whole = length(one.line);
    CHECK(distance_to(reversed(one.line), whole - one.last, whole - one.first, one.place) ==
          doctest::Approx(one.distance).epsilon(1e-9));
    CHECK(distance_to(mirrored(one.line), one.first, one.last, mirrored(one.place)) ==
          doctest::Approx(one.distance).epsilon(1e-9));
    ++seen;
  }
  CHECK(seen == 10);
}

TEST_CASE("two lines meet at no place, one or two") {
  struct Case {
    const char* name;
    Segment a;
    Segment b;
    int count;
  };
  const Segment circle{{100, 0}, {-100, 0}, 100};
  const Case cases[] = {
      {"alongside", {{0, 0}, {9, 0}, 0}, {{0, 1}, {9, 1}, 0}, 0},
      {"across", {{0, 0}, {9, 0}, 0}, {{4, 1}, {4, 9}, 0}, 1},
      {"through a circle", {{-200, 60}, {200, 60}, 0}, circle, 2},
      {"past a circle", {{-200, 100.1}, {200, 100.1}, 0}, circle, 0},
      {"two circles", circle, {{220, 0}, {20, 0}, 100}, 2},
      {"two circles apart", circle, {{400, 0}, {200.1, 0}, 99.95}, 0},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(std::string(one.name));
    const Meetings all = meetings(one.a, one.b);
    const bool none = all.count == 0;
    CHECK((none ? 0 : apart(all.a, all.b) < 1e-9 ? 1 : 2) == one.count);
    CHECK(meetings(one.b, one.a).count == all.count);
    ++seen;
  }
  CHECK(seen == 6);
  // source: 3, 4, 5: at a height of 60 a circle of 100 is 80 wide either way.
  const Meetings two = meetings(cases[2].a, circle);
  CHECK(std::fabs(two.a.x) == doctest::Approx(80));
  CHECK(std::fabs(two.b.x) == doctest::Approx(80));
}
