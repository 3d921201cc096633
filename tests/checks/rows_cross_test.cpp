#include "engine/checks/rules.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using namespace pouncemark::checks;

TEST_CASE("rows that come nearer than fifteen without a shared hole crowd their holes") {
  const auto finding = rows_cross(9'000, 15'000);
  CHECK(finding->code == "rows_cross");
  CHECK(finding->severity == Severity::warn);
  CHECK(finding->figure == "9.0");
  CHECK(finding->sentence == "9.0 apart and no hole shared: where rows cross, the holes crowd.");
  CHECK(finding->change == "Stop one row 15 short, or share a hole.");
}

TEST_CASE("exactly fifteen passes, a micrometre less does not, and rows that cross are at zero") {
  CHECK(!rows_cross(15'000, 15'000).has_value());
  CHECK(rows_cross(14'999, 15'000)->figure == "14.999");
  CHECK(!rows_cross(15'001, 15'000).has_value());
  CHECK(rows_cross(0, 15'000)->figure == "0.0");
}
