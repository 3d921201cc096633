#include "engine/checks/rules.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark::checks;

TEST_CASE("a row asked for on a fly side is a stop that says why and what to take out") {
  const Finding finding = fly_side_row();
  CHECK(finding.code == "fly_side_row");
  CHECK(finding.severity == Severity::stop);
  CHECK(finding.sentence.find("must stay unsewn") != std::string::npos);
  CHECK(finding.sentence.find("No row was laid") != std::string::npos);
  CHECK(finding.change.find("fly_side") != std::string::npos);
}
