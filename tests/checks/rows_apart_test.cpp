#include "engine/checks/rules.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using namespace pouncemark::checks;

TEST_CASE("two rows five needle blades apart pass, a micrometre nearer is warned of") {
  CHECK(!rows_apart(7'000, 140, 5).has_value());
  CHECK(!rows_apart(7'001, 140, 5).has_value());
  CHECK(rows_apart(6'999, 140, 5).has_value());
  CHECK(rows_apart(0, 140, 5).has_value());
}

TEST_CASE("the warning says how far apart they stand and that the strip is a tear line") {
  const std::optional<Finding> finding = rows_apart(5'000, 140, 5);
  CHECK(finding->code == "rows_too_near");
  CHECK(finding->severity == Severity::warn);
  CHECK(finding->sentence.find("2.0 short: the two rows stand 5.0 apart") == 0);
  CHECK(finding->sentence.find("tear line") != std::string::npos);
  CHECK(finding->sum.find("5 × 1.40 = 7.0") == 0);
}
