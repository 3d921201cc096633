#include "engine/checks/rules.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using namespace pouncemark::checks;

TEST_CASE("a row eight needle blades from the edge passes, a micrometre nearer is warned of") {
  CHECK(!edge_distance(11'200, 140, 8).has_value());
  CHECK(!edge_distance(11'201, 140, 8).has_value());
  CHECK(edge_distance(11'199, 140, 8).has_value());
  CHECK(edge_distance(0, 140, 8).has_value());
}

TEST_CASE("a finer needle may stand nearer to the edge") {
  CHECK(edge_distance(9'000, 140, 8).has_value());
  CHECK(edge_distance(9'000, 113, 8).has_value());
  CHECK(!edge_distance(9'000, 112, 8).has_value());
  CHECK(!edge_distance(8'800, 110, 8).has_value());
}

TEST_CASE("the warning says how much is short, what stands there and what is needed") {
  const std::optional<Finding> finding = edge_distance(9'000, 140, 8);
  CHECK(finding->code == "row_near_edge");
  CHECK(finding->severity == Severity::warn);
  CHECK(finding->figure == "2.2");
  CHECK(finding->sentence ==
        "2.2 short: the row stands 9.0 from the edge and 8 needle blades are 11.2. The strip "
        "outside the row can tear away.");
  CHECK(!finding->change.empty());
  CHECK(finding->sum.find("8 × 1.40 = 11.2") == 0);
}
