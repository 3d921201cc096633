#include "engine/checks/rules.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using namespace pouncemark::checks;

TEST_CASE("a last gap of twenty where sixty was asked is said to be short") {
  const auto finding = short_last_gap(20'000, 60'000);
  CHECK(finding->code == "short_last_gap");
  CHECK(finding->severity == Severity::note);
  CHECK(finding->figure == "20.0");
  CHECK(finding->sentence ==
        "20.0: the last gap is shorter than the 60 of the rest, for the sake of one more point.");
  CHECK(finding->sum == "what 60 does not fill is left over: 20");
}

TEST_CASE("a last gap as asked is not short, one a micrometre less is") {
  CHECK(!short_last_gap(60'000, 60'000).has_value());
  CHECK(short_last_gap(59'999, 60'000).has_value());
  CHECK(!short_last_gap(0, 60'000).has_value());
}
