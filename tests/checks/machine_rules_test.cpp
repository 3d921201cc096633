#include "engine/checks/machine_rules.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using namespace pouncemark::checks;

TEST_CASE("a row as wide as the arm passes, a micrometre more is a stop unless it can be rolled") {
  CHECK_FALSE(row_out_of_reach(300'000, 400'000, {300'000, {}}));
  const auto finding = row_out_of_reach(300'001, 301'271, {300'000, {}});
  REQUIRE(finding.has_value());
  CHECK(finding->severity == Severity::stop);
  CHECK(finding->code == "row_out_of_reach");
  CHECK_FALSE(row_out_of_reach(570'000, 84'575, {300'000, 90'000}));
  CHECK(row_out_of_reach(570'000, 84'575, {300'000, 84'574}).has_value());
  // Nothing is said of an arm that was not measured.
  CHECK_FALSE(row_out_of_reach(570'000, 84'575, {}));
}

TEST_CASE("the stop says how wide the work is and what the arm takes") {
  const auto finding = row_out_of_reach(570'000, 301'271, {300'000, 120'000});
  REQUIRE(finding.has_value());
  CHECK(finding->sentence ==
        "270.0 too wide: 570.0 would lie right of the needle and the arm takes 300; rolled it is "
        "301.3 across. This row cannot be reached.");
  CHECK(finding->sum ==
        "570.0 − 300 = 270.0 (arm as entered); roll 301.3 against 120 under the arm");
}

TEST_CASE("staples exactly as far in as the stapler reaches pass") {
  CHECK_FALSE(beyond_stapler(63'000, 63'000));
  const auto finding = beyond_stapler(63'001, 63'000);
  REQUIRE(finding.has_value());
  CHECK(finding->severity == Severity::warn);
  CHECK(finding->sentence.find("63.001 from the nearer edge") != std::string::npos);
}
