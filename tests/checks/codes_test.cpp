#include "engine/checks/rules.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using namespace pouncemark::checks;

TEST_CASE("a missing code is named with the codes it should stand between") {
  const Finding finding = code_missing("2-15", "2-14", "2-16");
  CHECK(finding.code == "code_missing");
  CHECK(finding.severity == Severity::warn);
  CHECK(finding.sentence ==
        "2-15 is missing: the codes go from 2-14 to 2-16. Nothing was renumbered.");
  CHECK(finding.change.find("Find it") == 0);
}

TEST_CASE("a code that appears twice is named with both things it stands for") {
  CHECK(code_used_twice("4-07", "section 4-07", "a sleeve of section 4").sentence ==
        "4-07 appears twice: it names section 4-07 and a sleeve of section 4.");
  CHECK(code_hung_twice("P2", "B3", "B5").sentence == "P2 appears twice: in bay B3 and in bay B5.");
  CHECK(code_used_twice("4-07", "a", "b").code == "code_used_twice");
  CHECK(code_hung_twice("P2", "B3", "B5").severity == Severity::warn);
}

TEST_CASE("a bay that holds what is not in the job is named with what it holds") {
  const Finding finding = code_unknown("P9", "B3");
  CHECK(finding.code == "code_missing");
  CHECK(finding.sentence == "P9 hangs in bay B3, and no section or panel has that code.");
}
