#include "engine/piece/inset.h"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::piece;

namespace {

double area_of(const std::vector<Segment>& lines) {
  Outline outline;
  for (const Segment& line : lines) outline.edges.push_back({{}, EdgeRole::side, line, false});
  return area_mm2(outline);
}

Outline through(const std::vector<Vec2>& corners) {
  Outline outline;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Vec2 to = corners[(i + 1) % corners.size()];
    outline.edges.push_back({{}, EdgeRole::side, {corners[i], to, 0}, false});
  }
  return outline;
}

bool is_closed(const std::vector<Segment>& lines) {
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (length(lines[i].to - lines[(i + 1) % lines.size()].from) > 1e-9) return false;
  }
  return !lines.empty();
}

}  // namespace

TEST_CASE("an outline so far in from each edge of a rectangle") {
  const Outline panel = panel_outline(690, 1'420, true);  // bottom, fly, top, hinge
  struct Case {
    std::vector<Um> in_um;
    double area;
  };
  const Case cases[] = {
      {{0, 0, 0, 0}, 690.0 * 1'420},
      {{8'000, 12'000, 8'000, 8'000}, 670.0 * 1'404},
      {{28'000, 32'000, 28'000, 28'000}, 630.0 * 1'364},
      {{0, 345'000, 0, 344'999}, 0.001 * 1'420},
      {{0, 345'000, 0, 345'001}, 0},
      {{710'000, 0, 710'001, 0}, 0},
      {{900'000, 900'000, 900'000, 900'000}, 0},
      {{-10'000, 0, 0, 0}, 690.0 * 1'430},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.area);
    const auto lines = inset(panel, one.in_um);
    CHECK(lines.empty() == (one.area == 0));
    if (!lines.empty()) CHECK(is_closed(lines));
    CHECK(area_of(lines) == doctest::Approx(one.area));
    ++seen;
  }
  CHECK(seen == 8);
}

TEST_CASE("an arched panel keeps its arch concentric, a chamfer too small for the distance goes") {
  Outline arched = panel_outline(800, 1'000, true);
  arched.edges[2].line.rise = 120;  // the top bulges: radius 800² ÷ (8 × 120) + 60 = 726.667
  const auto lines = inset(arched, {10'000, 10'000, 10'000, 10'000});
  REQUIRE(lines.size() == 4);
  CHECK(is_closed(lines));
  int arcs = 0;
  for (const Segment& line : lines) {
    if (is_straight(line)) continue;
    CHECK(radius(line) == doctest::Approx(716.6667));
    CHECK(length(centre(line) - centre(arched.edges[2].line)) < 1e-6);
    ++arcs;
  }
  CHECK(arcs == 1);

  const Outline chamfered = through({{0, 0}, {95, 0}, {100, 5}, {100, 100}, {0, 100}});
  CHECK(inset(chamfered, std::vector<Um>(5, 5'000)).size() == 5);
  const auto square = inset(chamfered, std::vector<Um>(5, 20'000));
  CHECK(square.size() == 4);
  CHECK(area_of(square) == doctest::Approx(60.0 * 60));
}

TEST_CASE("a corner that turns inward, and two edges in one line at different distances") {
  const Outline ell = through({{0, 0}, {100, 0}, {100, 40}, {40, 40}, {40, 100}, {0, 100}});
  const auto lines = inset(ell, std::vector<Um>(6, 10'000));
  CHECK(lines.size() == 6);
  CHECK(area_of(lines) == doctest::Approx(80.0 * 20 + 20.0 * 60));

  const Outline long_side = through({{0, 0}, {50, 0}, {100, 0}, {100, 100}, {0, 100}});
  const auto stepped = inset(long_side, {10'000, 20'000, 0, 0, 0});
  CHECK(is_closed(stepped));
  CHECK(area_of(stepped) == doctest::Approx(100.0 * 100 - 50 * 10 - 50 * 20));
}
