#include "engine/frame/wave.h"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>

using namespace pouncemark;
using frame::Wave;
using std::numbers::pi;

TEST_CASE("length, tightest radius and slope of a sine wave") {
  struct Case {
    double height;
    double length;
    double along;
    double radius;
    double degrees;
  };
  // source: derived: direct quadrature of √(1 + y'²), to 15 digits
  const Case cases[] = {{1, 2 * pi, 7.64039557805542, 1, 45},
                        {10, 1000, 1000.98623107, 2533.030, 3.59527},
                        {25, 1000, 1006.14025443, 1013.212, 8.92705},
                        {50, 1000, 1024.23522856, 506.6059, 17.44059},
                        {100, 1000, 1092.38354733, 253.3030, 32.14191},
                        {150, 1000, 1194.45230099, 168.8686, 43.30381},
                        {40, 600, 625.51091336, 227.9727, 22.72779}};
  int count = 0;
  for (const Case& one : cases) {
    CAPTURE(one.height);
    const Wave wave{one.height, one.length};
    CHECK(std::fabs(frame::along(wave) / one.along - 1) < 1e-11);
    CHECK(std::fabs(frame::tightest_radius(wave) / one.radius - 1) < 3e-7);
    CHECK(std::fabs(frame::steepest_slope(wave) * 180 / pi - one.degrees) < 6e-6);
    ++count;
  }
  CHECK(count == 7);
}

TEST_CASE("the elliptic integral inside is that of the tables") {
  struct Case {
    double k;
    double e;
  };
  // source: Boost.Math test data of ellint_2, from functions.wolfram.com
  const Case cases[] = {{0.09765625, 1.5670445330545087}, {0.1953125, 1.5557071588766557},
                        {0.29296875, 1.5365278991162755}, {0.390625, 1.5090417763083482},
                        {0.5, 1.4674622093394272},        {0.5859375, 1.4257538571071297},
                        {0.78125, 1.2927868476159125},    {0.87890625, 1.1966864890248740}};
  int count = 0;
  for (const Case& one : cases) {
    CAPTURE(one.k);
    const double rest = std::sqrt(1 - one.k * one.k);
    const Wave wave{one.k / rest, 2 * pi};
    CHECK(std::fabs(frame::along(wave) / 4 * rest / one.e - 1) < 1e-14);
    ++count;
  }
  CHECK(count == 8);
}

TEST_CASE("a flat wave is as long as its middle line, a very high one as its ups and downs") {
  CHECK(frame::along({0, 1000}) == 1000);
  CHECK(frame::tightest_radius({0, 1000}) == 0);
  CHECK(frame::steepest_slope({0, 1000}) == 0);
  CHECK(frame::along({1e6, 1}) == doctest::Approx(4e6).epsilon(1e-6));
}

TEST_CASE("the height of a wave is found from its length along the curve") {
  struct Case {
    double along;
    double length;
    double height;
  };
  // source: derived: the length by quadrature, solved for the height
  const Case cases[] = {
      {1050, 1000, 72.48824290}, {1020, 1000, 45.35108782}, {640, 600, 50.51777243}};
  int count = 0;
  for (const Case& one : cases) {
    const auto wave = frame::wave_along(one.length, one.along);
    REQUIRE(wave.has_value());
    CHECK(std::fabs(wave->height - one.height) < 6e-9);
    ++count;
  }
  CHECK(count == 3);
  CHECK(frame::wave_along(1000, 1000)->height < 0.001);
  CHECK_FALSE(frame::wave_along(1000, 999.999).has_value());
}

TEST_CASE("two millimetres locked into 800 stand up 25 high") {
  // source: derived: half a sine of chord 800 and length 802
  CHECK(std::fabs(frame::bulge_height(800, 2) - 25.5) < 0.1);
  CHECK(std::fabs(2 / pi * std::sqrt(800 * 2.0) - 25.5) < 0.1);
  CHECK(frame::bulge_height(800, 0) < 0.001);
  CHECK(frame::bulge_height(800, 8) > 2 * 25);
}
