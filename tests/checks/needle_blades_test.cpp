#include "engine/checks/needle_blades.h"

#include <doctest/doctest.h>

using pouncemark::checks::short_of_blades;

TEST_CASE("a distance of just so many needle blades is enough, a micrometre less is not") {
  // source: needle size is the blade in hundredths of a millimetre: 8 x 1.40 = 11.20.
  CHECK(!short_of_blades(11'200, 140, 8).has_value());
  CHECK(short_of_blades(11'199, 140, 8).has_value());
}

TEST_CASE("what is lacking is said with its sum") {
  const auto lack = short_of_blades(9'000, 140, 8);
  REQUIRE(lack.has_value());
  CHECK(lack->short_by == "2.2");
  CHECK(lack->distance == "9.0");
  CHECK(lack->need == "8 needle blades are 11.2");
  CHECK(lack->sum == "8 × 1.40 = 11.2 (limit assumed)");
}
