#include <doctest/doctest.h>

#include <boost/math/special_functions/ellint_1.hpp>
#include <boost/math/special_functions/ellint_2.hpp>
#include <boost/math/special_functions/ellint_rd.hpp>
#include <boost/math/special_functions/ellint_rf.hpp>
#include <cmath>

#include "engine/frame/elliptic.h"
#include "tests/support/random.h"

/// Built where Boost.Math is there, natively.
using namespace pouncemark;
using pouncemark::tests::Dice;

namespace {

double part_off(double found, double wanted) { return std::fabs(found / wanted - 1.0); }

}  // namespace

TEST_CASE("Boost.Math and we have the same elliptic integrals") {
  Dice dice(20'261'126);
  INFO(dice.words());
  int ran = 0;
  double complete = 0;
  double carlson = 0;
  for (int i = 0; i < 20'000; ++i) {
    const double k = static_cast<double>(dice.between(0, 999'999)) / 1e6;
    const double x = static_cast<double>(dice.of_any_size(0, 1'000'000'000)) / 1e3;
    const double y = static_cast<double>(dice.of_any_size(1, 1'000'000'000)) / 1e3;
    const double z = static_cast<double>(dice.of_any_size(1, 1'000'000'000)) / 1e3;
    const double m = k * k;
    complete = std::fmax(complete, part_off(frame::complete_first(m), boost::math::ellint_1(k)));
    complete = std::fmax(complete, part_off(frame::complete_second(m), boost::math::ellint_2(k)));
    carlson =
        std::fmax(carlson, part_off(frame::carlson_rf(x, y, z), boost::math::ellint_rf(x, y, z)));
    carlson =
        std::fmax(carlson, part_off(frame::carlson_rd(x, y, z), boost::math::ellint_rd(x, y, z)));
    ++ran;
  }
  CHECK(ran == 20'000);
  // The square of k near 1 is rounded before we see it.
  CHECK(complete < 1e-13);
  CHECK(carlson < 2e-15);
}
