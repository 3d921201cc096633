#include "engine/checks/rules.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using namespace pouncemark::checks;

TEST_CASE("every staple is said to make two holes that stay") {
  const Finding finding = staple_holes(11'610);
  CHECK(finding.severity == Severity::note);
  CHECK(finding.figure == "23,220");
  CHECK(finding.sentence.find("23,220 staple holes") == 0);
  CHECK(finding.sum == "2 × 11,610 = 23,220");
  CHECK(staple_holes(1).figure == "2");
}

TEST_CASE("the standing caution is a note that begins with the line printed on every page") {
  const Finding finding = always_said();
  CHECK(finding.severity == Severity::note);
  CHECK(finding.sentence.find(std::string(caution_line())) == 0);
  CHECK(finding.sentence.find("Not a structural or fire calculation") != std::string::npos);
}

TEST_CASE("a row that cannot be laid is a stop in the words of its problem") {
  const Problem problem{ProblemCode::row_too_short, {}, "35 long, 20 + 20 kept clear", {}};
  const Finding finding = row_not_laid(problem);
  CHECK(finding.code == "row_not_laid");
  CHECK(finding.severity == Severity::stop);
  CHECK(finding.figure == "35 long, 20 + 20 kept clear");
  CHECK(finding.sentence.find(problem_sentence(problem)) == 0);
}
