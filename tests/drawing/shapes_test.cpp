#include "engine/drawing/shapes.h"

#include "tests/drawing/picture_reading.h"
#include "tests/support/claims.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <vector>

using namespace pouncemark::drawing;
using pouncemark::tests::all_of;
using pouncemark::tests::ClaimsCounted;
using pouncemark::tests::is_mirrored;
using pouncemark::tests::reach_of;
using pouncemark::tests::operator==;

namespace {

// How far the curves stray from the circle, micrometres, looked at in 33 places of each curve.
double stray(const std::vector<PathStep>& steps, Spot start, Spot centre, double radius) {
  double worst = 0.0;
  Spot from = start;
  for (const PathStep& step : steps) {
    for (int i = 0; i <= 32 && step.step == Step::curve; ++i) {
      const double t = i / 32.0;
      const double u = 1.0 - t;
      const auto at = [&](auto Spot::*axis) {
        return u * u * u * static_cast<double>(from.*axis) +
               3 * u * u * t * static_cast<double>(step.a.*axis) +
               3 * u * t * t * static_cast<double>(step.b.*axis) +
               t * t * t * static_cast<double>(step.to.*axis);
      };
      const double x = at(&Spot::x) - static_cast<double>(centre.x);
      const double y = at(&Spot::y) - static_cast<double>(centre.y);
      worst = std::max(worst, std::fabs(std::sqrt(x * x + y * y) - radius));
    }
    from = step.to;
  }
  return worst;
}

std::vector<PathStep> arc_steps(Spot from, Spot to, bool is_anticlockwise) {
  std::vector<PathStep> steps;
  append_arc(steps, {from, to, {0, 0}, is_anticlockwise});
  return steps;
}

bool passes(const std::vector<PathStep>& steps, Spot place) {
  return std::any_of(steps.begin(), steps.end(),
                     [place](const PathStep& step) { return step.to == place; });
}

}  // namespace

TEST_CASE("a circle is four curves, closed, and alike in all four quarters") {
  const std::vector<PathStep> steps = circle_steps({7, -9}, 1500);
  REQUIRE(steps.size() == 6);
  // source: 4/3 (1 - cos 45) / sin 45 = 0.5522847, times 1500 = 828.4.
  CHECK(steps[1].a == Spot{7 + 1500, -9 + 828});
  CHECK(steps[1].b == Spot{7 + 828, -9 + 1500});
  CHECK(steps.back().step == Step::close);
  CHECK(is_mirrored(steps, {7, -9}, true));
  CHECK(is_mirrored(steps, {7, -9}, false));
}

TEST_CASE("a circle strays from the true one by less than 0.03 % of its radius") {
  CHECK(stray(circle_steps({0, 0}, 100000), {100000, 0}, {0, 0}, 100000.0) < 28.0);
  CHECK(stray(circle_steps({0, 0}, 1500), {1500, 0}, {0, 0}, 1500.0) < 1.5);
}

TEST_CASE("a circle without radius is our own mistake") {
  const ClaimsCounted claims;
  circle_steps({0, 0}, 0);
  CHECK(claims.broken() == 1);
}

TEST_CASE("an arc of five metres radius stays within two micrometres") {
  struct Case {
    Spot from;
    Spot to;
    bool is_anticlockwise;
    std::size_t curves;
  };
  const Spot east{5'000'000, 0};
  const Spot north{0, 5'000'000};
  const Spot slant{3'000'000, 4'000'000};
  const Case cases[] = {
      {east, north, true, 4},  {north, east, false, 4},   {east, north, false, 12},
      {north, east, true, 12}, {east, slant, true, 4},    {slant, east, true, 14},
      {east, east, true, 16},  {slant, slant, false, 16}, {east, {-5'000'000, 0}, true, 8}};
  int looked_at = 0;
  for (const Case& one : cases) {
    CAPTURE(looked_at);
    const std::vector<PathStep> steps = arc_steps(one.from, one.to, one.is_anticlockwise);
    CHECK(steps.size() == one.curves);
    CHECK(stray(steps, one.from, {0, 0}, 5'000'000.0) < 2.0);
    CHECK(steps.back().to == one.to);
    ++looked_at;
  }
  CHECK(looked_at == 9);
}

TEST_CASE("an arc goes the way it is told") {
  CHECK(passes(arc_steps({1000, 0}, {-1000, 0}, true), {0, 1000}));
  CHECK(passes(arc_steps({1000, 0}, {-1000, 0}, false), {0, -1000}));
}

TEST_CASE("an arc of one micrometre, and one that stops a micrometre short of the full circle") {
  CHECK(arc_steps({1000, 0}, {1000, 1}, true).size() == 1);
  const std::vector<PathStep> almost = arc_steps({1000, 0}, {1000, 1}, false);
  CHECK(almost.size() == 16);
  CHECK(almost.back().to == Spot{1000, 1});
  CHECK(passes(almost, {-1000, 0}));
}

TEST_CASE("an arc whose ends are rounded places ends exactly on the place it was given") {
  const std::vector<PathStep> steps = arc_steps({1000, 0}, {0, 1003}, true);
  CHECK(steps.size() == 4);
  CHECK(steps.back().to == Spot{0, 1003});
}

TEST_CASE("an arc joins whatever stood before it without changing that") {
  std::vector<PathStep> steps{{Step::move, {9, 9}, {}, {}}};
  append_arc(steps, {{1000, 0}, {2000, 0}, {0, 0}, true});
  CHECK(steps.front().to == Spot{9, 9});
  CHECK(steps.back().to == Spot{2000, 0});
  CHECK(steps.back().step == Step::line);
}

TEST_CASE("an arc that begins in its own centre is our own mistake") {
  const ClaimsCounted claims;
  CHECK(arc_steps({0, 0}, {1000, 0}, true).empty());
  CHECK(arc_steps({1000, 0}, {0, 0}, true).empty());
  CHECK(claims.broken() == 2);
}

TEST_CASE("steps either side of a place are exactly symmetrical") {
  const Way slant = way_of({7, 3});
  int looked_at = 0;
  for (const double along : {0.5, 1.5, 333.3, 6000.0, 123456.7}) {
    const Spot forward = stepped({10, 20}, slant, along, 77.7);
    const Spot back = stepped({10, 20}, slant, -along, -77.7);
    CHECK(forward.x + back.x == 20);
    CHECK(forward.y + back.y == 40);
    ++looked_at;
  }
  CHECK(looked_at == 5);
}

TEST_CASE("across is to the left of along") {
  CHECK(stepped({0, 0}, way_of({5, 0}), 100.0, 10.0) == Spot{100, 10});
  CHECK(stepped({0, 0}, way_of({0, 5}), 100.0, 10.0) == Spot{-10, 100});
  const ClaimsCounted claims;
  way_of({0, 0});
  CHECK(claims.broken() == 1);
}

TEST_CASE("a filled box is exactly as large as it was told") {
  Drawing picture;
  add_solid(picture, {{1, 2}, {30, 40}}, 700);
  const std::vector<Fill> fills = all_of<Fill>(picture);
  REQUIRE(fills.size() == 1);
  CHECK(reach_of(fills[0].steps) == Box{{1, 2}, {30, 40}});
  CHECK(fills[0].grey_permille == 700);
}

TEST_CASE("rectangle, circle, dot and cross are one item each, about their place") {
  Drawing picture;
  add_rectangle(picture, {{0, 0}, {10, 20}}, Pen{});
  add_circle(picture, {100, 100}, 50, Pen{});
  add_cross(picture, {100, 100}, 50, Pen{});
  add_dot(picture, {100, 100}, 50);
  const std::vector<Stroke> strokes = all_of<Stroke>(picture);
  REQUIRE(strokes.size() == 3);
  CHECK(reach_of(strokes[0].steps) == Box{{0, 0}, {10, 20}});
  CHECK(reach_of(strokes[1].steps) == Box{{50, 50}, {150, 150}});
  CHECK(reach_of(strokes[2].steps) == Box{{50, 50}, {150, 150}});
  CHECK(reach_of(all_of<Fill>(picture).at(0).steps) == Box{{50, 50}, {150, 150}});
}

TEST_CASE("an arrow's head ends exactly on its tip and its line does not reach it") {
  Drawing picture;
  add_arrow(picture, {0, 0}, {20000, 0}, Pen{250, {}, 0});
  const std::vector<Stroke> lines = all_of<Stroke>(picture);
  const std::vector<Fill> heads = all_of<Fill>(picture);
  REQUIRE(lines.size() == 1);
  REQUIRE(heads.size() == 1);
  CHECK(reach_of(heads[0].steps) == Box{{18000, -700}, {20000, 700}});
  CHECK(reach_of(lines[0].steps) == Box{{0, 0}, {19000, 0}});
}

TEST_CASE("a short arrow is all head, one without length is our own mistake") {
  Drawing picture;
  add_arrow(picture, {0, 0}, {0, 1200}, Pen{});
  CHECK(reach_of(all_of<Fill>(picture).at(0).steps) == Box{{-700, 0}, {700, 1200}});
  const ClaimsCounted claims;
  add_arrow(picture, {5, 5}, {5, 5}, Pen{});
  CHECK(claims.broken() >= 1);
}

TEST_CASE("hatching rises at 45 degrees and never leaves its box") {
  struct Case {
    Box box;
    int lines;
  };
  const Case cases[] = {{{{100, 200}, {50100, 20200}}, 17},
                        {{{0, 0}, {20000, 50000}}, 17},
                        {{{0, 0}, {3000, 3000}}, 1},
                        {{{-5000, -5000}, {5000, 5000}}, 5}};
  int looked_at = 0;
  for (const Case& one : cases) {
    Drawing picture;
    add_hatching(picture, one.box, 4000, Pen{});
    const std::vector<PathStep> steps = all_of<Stroke>(picture).at(0).steps;
    CHECK(steps.size() == 2 * static_cast<std::size_t>(one.lines));
    const Box reach = reach_of(steps);
    CHECK(reach.low == one.box.low);
    CHECK(reach.high.x <= one.box.high.x);
    CHECK(reach.high.y <= one.box.high.y);
    for (std::size_t i = 0; i + 1 < steps.size(); i += 2) {
      CHECK(steps[i + 1].to.x - steps[i].to.x == steps[i + 1].to.y - steps[i].to.y);
    }
    ++looked_at;
  }
  CHECK(looked_at == 4);
}

TEST_CASE("hatching of an empty box draws nothing, hatching without spacing is our own mistake") {
  Drawing picture;
  add_hatching(picture, {{0, 0}, {0, 0}}, 4000, Pen{});
  CHECK(picture.items.empty());
  const ClaimsCounted claims;
  add_hatching(picture, {{0, 0}, {1000, 1000}}, 0, Pen{});
  CHECK(claims.broken() == 1);
}
