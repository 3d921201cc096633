#include "engine/checks/rules.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using namespace pouncemark::checks;

namespace {

const FootNeed kFoot{7'000, 2'000, true};

}  // namespace

TEST_CASE("a staple six from the row with half a foot of seven and two to stray is three short") {
  const auto finding = staple_under_foot(6'000, kFoot, StapleState::there, true);
  CHECK(finding->code == "staple_under_foot");
  CHECK(finding->severity == Severity::stop);
  CHECK(finding->figure == "3.0");
  CHECK(finding->sentence.find(
            "3.0 short: the staples stand 6.0 from the row and the foot needs 9") == 0);
  CHECK(finding->sum == "half a foot 7 + tolerance 2 = 9 (assumed: measure your foot)");
}

TEST_CASE("a staple just as far away as the foot needs passes, a micrometre nearer is a stop") {
  CHECK(!staple_under_foot(9'000, kFoot, StapleState::there, true).has_value());
  CHECK(!staple_under_foot(9'001, kFoot, StapleState::there, true).has_value());
  CHECK(staple_under_foot(8'999, kFoot, StapleState::there, true).has_value());
}

TEST_CASE(
    "staples that are out are met by nothing, those that come out as the foot comes are counted") {
  CHECK(!staple_under_foot(0, kFoot, StapleState::out_already, true).has_value());
  const auto note = staple_under_foot(0, kFoot, StapleState::comes_out_as_the_foot_comes, true);
  CHECK(note->severity == Severity::note);
  CHECK(note->sentence.find("Count them out") != std::string::npos);
  CHECK(!staple_under_foot(9'000, kFoot, StapleState::comes_out_as_the_foot_comes, true));
  CHECK(staple_under_foot(0, kFoot, StapleState::there, true)->severity == Severity::stop);
}

TEST_CASE("a job that does not say when the staples come out is told so") {
  const auto silent = staple_under_foot(0, kFoot, StapleState::there, false);
  CHECK(silent->sentence.find("does not say when they come out") != std::string::npos);
  const auto said = staple_under_foot(0, kFoot, StapleState::there, true);
  CHECK(said->sentence.find("does not say") == std::string::npos);
  CHECK(said->sentence.find("stand on the row") != std::string::npos);
}

TEST_CASE("a measured foot is not called assumed") {
  const FootNeed measured{5'500, 1'000, false};
  CHECK(!staple_under_foot(6'500, measured, StapleState::there, true).has_value());
  const auto finding = staple_under_foot(6'499, measured, StapleState::there, true);
  CHECK(finding->sum == "half a foot 5.5 + tolerance 1 = 6.5 (entered)");
}
