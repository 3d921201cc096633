#include "engine/frame/stations.h"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>
#include <vector>

#include "engine/frame/arc.h"
#include "engine/frame/wave.h"

using namespace pouncemark;
using frame::curve_through;
using frame::radius_through;
using frame::StationFault;

namespace {

/// The timber of a circle that stands out most at x = `crest`.
Vec2 on_circle(double radius, double crest, double x) {
  const double off = x - crest;
  return {x, std::sqrt(radius * radius - off * off) - radius};
}

std::vector<Vec2> along_circle(double radius, double crest, const std::vector<double>& places) {
  std::vector<Vec2> stations;
  for (const double x : places) stations.push_back(on_circle(radius, crest, x));
  return stations;
}

std::vector<Vec2> along_sine(double height, double wave, int steps, double waves) {
  std::vector<Vec2> stations;
  for (int i = 0; i <= steps; ++i) {
    const double x = wave * waves * i / steps;
    stations.push_back({x, height * std::cos(2 * std::numbers::pi * x / wave)});
  }
  return stations;
}

}  // namespace

TEST_CASE("three stations of a circle give its radius, which second differences do not") {
  const double step = 200;
  const Vec2 a = on_circle(700, 0, -step);
  const Vec2 b = on_circle(700, 0, 0);
  const Vec2 c = on_circle(700, 0, step);
  CHECK(radius_through(a, b, c) == doctest::Approx(700).epsilon(1e-9));
  const double shortcut = step * step / std::fabs(a.y - 2 * b.y + c.y);
  CHECK(std::fabs(shortcut - 685.4) < 0.05);
  CHECK(std::fabs(shortcut - radius_through(a, b, c)) > 14);
}

TEST_CASE("the radius is found off the crest and over uneven steps as well") {
  const auto stations = along_circle(700, 250, {0, 200, 350, 600});
  CHECK(radius_through(stations[0], stations[1], stations[2]) ==
        doctest::Approx(700).epsilon(1e-9));
  CHECK(radius_through(stations[1], stations[2], stations[3]) ==
        doctest::Approx(700).epsilon(1e-9));
}

TEST_CASE("a middle station that stands in gives a hollow, one in line neither") {
  CHECK(radius_through({0, 0}, {200, 30}, {400, 0}) > 0);
  CHECK(radius_through({0, 0}, {200, -30}, {400, 0}) < 0);
  CHECK(radius_through({0, 5}, {200, 15}, {400, 25}) == 0);
}

TEST_CASE("a millimetre on each reading is 4.3 % at 200 and 17 % at 100, of a radius of 700") {
  struct Case {
    double step;
    double percent;
    double within;
  };
  // source: derived: √6·R/Δ², three independent readings
  const Case cases[] = {{200, 4.3, 0.05}, {100, 17, 0.5}};
  int count = 0;
  for (const Case& one : cases) {
    const auto at = along_circle(700, 0, {-one.step, 0, one.step});
    const double share = frame::radius_uncertainty(at[0], at[1], at[2], 1.0);
    CHECK(std::fabs(share * 100 - one.percent) < one.within);
    CHECK(frame::radius_uncertainty(at[0], at[1], at[2], 2.0) == doctest::Approx(2 * share));
    ++count;
  }
  CHECK(count == 2);
}

TEST_CASE("stations moved by their readings' error give radii spread as is said") {
  const auto at = along_circle(700, 0, {-200, 0, 200});
  const double share = frame::radius_uncertainty(at[0], at[1], at[2], 0.1);
  double squares = 0;
  for (std::size_t i = 0; i < 3; ++i) {
    auto moved = at;
    moved[i].y += 0.1;
    const double off = radius_through(moved[0], moved[1], moved[2]) / 700 - 1;
    squares += off * off;
  }
  CHECK(std::sqrt(squares) == doctest::Approx(share).epsilon(0.05));
}

TEST_CASE("summed from arc to arc, stations of a circle give its very length") {
  const double crest = 400;
  const auto curve = curve_through(along_circle(700, crest, {0, 200, 400, 600, 800}));
  const double turn = 2 * std::asin(400.0 / 700);
  CHECK(curve.along == doctest::Approx(700 * turn).epsilon(1e-12));
  CHECK(curve.turn == doctest::Approx(turn).epsilon(1e-12));
  CHECK(curve.radii.size() == 3);
  CHECK(curve.stretches.size() == 4);
  CHECK(curve.tightest.has_value());
  // Straight from station to station it would be short.
  CHECK(curve.along > 4 * 200 * 1.03);
}

TEST_CASE("stations that end short of a whole step serve as well") {
  const auto curve =
      curve_through(along_circle(1228, 630, {0, 200, 400, 600, 800, 1000, 1200, 1260}));
  CHECK(curve.along == doctest::Approx(1228 * 2 * std::asin(630.0 / 1228)).epsilon(1e-12));
}

TEST_CASE("stations in line are straight") {
  const auto curve = curve_through(std::vector<Vec2>{{0, 3}, {200, 3}, {400, 3}, {500, 3}});
  CHECK(curve.along == 500);
  CHECK(curve.turn == 0);
  CHECK_FALSE(curve.tightest.has_value());
}

TEST_CASE("the tightest place is where the radius is least, bulging or hollow") {
  // One place 12 lower than its neighbours in a flat batten of 200.
  const std::vector<Vec2> stations = {{0, 0}, {200, 0}, {400, -12}, {600, 0}, {800, 0}};
  const auto curve = curve_through(stations);
  REQUIRE(curve.tightest.has_value());
  CHECK(*curve.tightest == 2);
  CHECK(curve.radii[1] < 0);
  CHECK(curve.radii[0] > 0);
}

TEST_CASE("stations of a full wave come near its length, turn nothing and find its crest") {
  const frame::Wave wave{100, 1000};
  const auto curve = curve_through(along_sine(100, 1000, 40, 1));
  CHECK(std::fabs(curve.along / frame::along(wave) - 1) < 0.000'5);
  CHECK(std::fabs(curve.turn) < 0.02);
  CHECK(std::fabs(std::fabs(curve.radii[19]) / frame::tightest_radius(wave) - 1) < 0.02);
}

TEST_CASE("too few stations, or some out of their order, give no curve") {
  using Stations = std::vector<Vec2>;
  CHECK(frame::fault_in(Stations{}) == StationFault::too_few);
  CHECK(frame::fault_in(Stations{{0, 0}}) == StationFault::too_few);
  CHECK(frame::fault_in(Stations{{0, 0}, {200, 5}}) == StationFault::too_few);
  CHECK_FALSE(frame::fault_in(Stations{{0, 0}, {200, 5}, {400, 0}}).has_value());
  CHECK(frame::fault_in(Stations{{0, 0}, {400, 0}, {200, 5}}) == StationFault::out_of_order);
  CHECK(frame::fault_in(Stations{{0, 0}, {200, 5}, {200, 6}}) == StationFault::out_of_order);
}
