#include "engine/frame/elliptic.h"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::frame;

namespace {

using std::numbers::pi;

/// K by the arithmetic and geometric mean: another way than the engine's.
double first_by_means(double m) {
  double a = 1;
  double b = std::sqrt(1.0 - m);
  for (int i = 0; i < 40; ++i) {
    const double mean = (a + b) / 2.0;
    b = std::sqrt(a * b);
    a = mean;
  }
  return pi / (2.0 * a);
}

bool near(double found, double wanted, double part) {
  return std::fabs(found - wanted) <= part * std::fabs(wanted);
}

}  // namespace

TEST_CASE("the second kind gives the published values by modulus") {
  struct Case {
    double k;
    double second;
  };
  // source: Boost.Math, test/test_ellint_2.hpp, from functions.wolfram.com
  const std::vector<Case> cases = {{0.09765625, 1.5670445330545087},
                                   {0.1953125, 1.5557071588766557},
                                   {0.29296875, 1.5365278991162755},
                                   {0.390625, 1.5090417763083482},
                                   {0.5, 1.4674622093394272},
                                   {0.5859375, 1.4257538571071297},
                                   {0.78125, 1.2927868476159125},
                                   {0.87890625, 1.1966864890248740},
                                   {0, pi / 2},
                                   {1, 1}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.k);
    CHECK(near(complete_second(one.k * one.k), one.second, 1e-15));
    ++ran;
  }
  CHECK(ran == 10);
}

TEST_CASE("both kinds give the values by parameter") {
  struct Case {
    double m;
    double second;
  };
  // derived: by quadrature with 30 figures
  const std::vector<Case> cases = {{.1, 1.53075763689776}, {.25, 1.46746220933943},
                                   {.5, 1.35064388104768}, {.75, 1.21105602756846},
                                   {.9, 1.10477473270407}, {.99, 1.01599354502522}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.m);
    CHECK(near(complete_second(one.m), one.second, 5e-15));
    ++ran;
  }
  CHECK(ran == 6);
  CHECK(near(complete_first(.5), 1.85407467730137, 5e-15));
  CHECK(near(complete_first(0), pi / 2, 1e-15));
  // The circle has no end: a sine wave's length takes m below 0.
  // derived: √2 E(1/2), the sine arch over π
  CHECK(near(complete_second(-1), 1.9100988945138560, 1e-15));
}

TEST_CASE("Legendre's relation ties both kinds together for every parameter") {
  // source: DLMF 19.7.1
  int ran = 0;
  for (int i = 1; i < 1000; ++i) {
    const double m = i / 1000.0;
    const double sum = complete_second(m) * complete_first(1 - m) +
                       complete_second(1 - m) * complete_first(m) -
                       complete_first(m) * complete_first(1 - m);
    if (near(sum, pi / 2, 4e-15) && near(complete_first(m), first_by_means(m), 1e-15)) ++ran;
  }
  CHECK(ran == 999);
}

TEST_CASE("near the end of its range the first kind grows and the second comes to 1") {
  // source: DLMF 19.9.1, K lies within ln 4 of the logarithm of the rest
  int ran = 0;
  double rest = 1e-2;
  for (int i = 0; i < 13; ++i) {
    rest /= 10;
    const double m = 1.0 - rest;
    const double first = complete_first(m);
    CHECK(near(first, first_by_means(m), 1e-14));
    CHECK(first > 0.5 * std::log(16.0 / (1.0 - m)));
    CHECK(complete_second(m) > 1);
    CHECK(complete_second(m) < 1 + rest * first);
    ++ran;
  }
  CHECK(ran == 13);
}

TEST_CASE("Carlson's integrals give the published values") {
  // source: B. C. Carlson, Numerical computation of real or complex elliptic integrals (1994),
  // table of check values
  CHECK(near(carlson_rf(1, 2, 0), 1.3110287771461, 1e-13));
  CHECK(near(carlson_rf(2, 3, 4), 0.58408284167715, 1e-13));
  CHECK(near(carlson_rd(0, 2, 1), 1.7972103521034, 1e-13));
  CHECK(near(carlson_rd(2, 3, 4), 0.16510527294261, 1e-13));
  // The order of the equal arguments does not matter; a scale does as it should.
  CHECK(near(carlson_rf(4, 2, 3), carlson_rf(2, 3, 4), 1e-15));
  CHECK(near(carlson_rf(200, 300, 400), carlson_rf(2, 3, 4) / 10, 1e-15));
  CHECK(near(carlson_rd(3, 2, 4), carlson_rd(2, 3, 4), 1e-15));
  CHECK(near(carlson_rf(1, 1, 1), 1, 1e-15));
  CHECK(near(carlson_rd(1, 1, 1), 1, 1e-15));
}
