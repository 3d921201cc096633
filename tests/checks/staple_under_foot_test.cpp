#include "engine/checks/rules.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using namespace pouncemark::checks;

namespace {

const FootNeed kFoot{7'000, 2'000, true};
const StrikeNeed kStrike{500, 140, 6'000};
const std::string kStruck =
    "; a crown that lies across the row is struck: (wire 0.5 + needle 1.4) ÷ stitch 6 = 32 %";

}  // namespace

TEST_CASE("a staple six from the row with half a foot of seven and two to stray is three short") {
  const auto finding = staple_under_foot(6'000, kFoot, kStrike, StapleState::there, true);
  CHECK(finding->code == "staple_under_foot");
  CHECK(finding->severity == Severity::stop);
  CHECK(finding->figure == "3.0");
  CHECK(finding->sentence.find(
            "3.0 short: the staples stand 6.0 from the row and the foot needs 9") == 0);
  CHECK(finding->sum == "half a foot 7 + tolerance 2 = 9 (assumed: measure your foot)" + kStruck);
}

TEST_CASE("a staple just as far away as the foot needs passes, a micrometre nearer is a stop") {
  CHECK(!staple_under_foot(9'000, kFoot, kStrike, StapleState::there, true).has_value());
  CHECK(!staple_under_foot(9'001, kFoot, kStrike, StapleState::there, true).has_value());
  const auto nearer = staple_under_foot(8'999, kFoot, kStrike, StapleState::there, true);
  CHECK(nearer->sentence.find(
            "0.001 short: the staples stand 8.999 from the row and the foot needs 9") == 0);
}

TEST_CASE(
    "staples that are out are met by nothing, those that come out as the foot comes are counted") {
  CHECK(!staple_under_foot(0, kFoot, kStrike, StapleState::out_already, true).has_value());
  const auto note =
      staple_under_foot(0, kFoot, kStrike, StapleState::comes_out_as_the_foot_comes, true);
  CHECK(note->severity == Severity::note);
  CHECK(note->sentence.find("Count them out") != std::string::npos);
  CHECK(!staple_under_foot(9'000, kFoot, kStrike, StapleState::comes_out_as_the_foot_comes, true));
  CHECK(staple_under_foot(0, kFoot, kStrike, StapleState::there, true)->severity == Severity::stop);
}

TEST_CASE("a job that does not say when the staples come out is told so") {
  const auto silent = staple_under_foot(0, kFoot, kStrike, StapleState::there, false);
  CHECK(silent->sentence.find("does not say when they come out") != std::string::npos);
  const auto said = staple_under_foot(0, kFoot, kStrike, StapleState::there, true);
  CHECK(said->sentence.find("does not say") == std::string::npos);
  CHECK(said->sentence.find("stand on the row") != std::string::npos);
}

TEST_CASE("a measured foot is not called assumed") {
  const FootNeed measured{5'500, 1'000, false};
  CHECK(!staple_under_foot(6'500, measured, kStrike, StapleState::there, true).has_value());
  const auto finding = staple_under_foot(6'499, measured, kStrike, StapleState::there, true);
  CHECK(finding->sum == "half a foot 5.5 + tolerance 1 = 6.5 (entered)" + kStruck);
}

TEST_CASE("a crown across the row is struck as often as wire and needle fill the stitch") {
  struct Case {
    StrikeNeed strike;
    const char* words;
  };
  // source: wire and blade over the stitch, by hand; the first is the trade's "about one in three".
  const Case cases[] = {
      {{500, 140, 6'000}, "(wire 0.5 + needle 1.4) ÷ stitch 6 = 32 %"},
      {{500, 140, 3'000}, "= 63 %"},
      {{500, 100, 6'000}, "(wire 0.5 + needle 1) ÷ stitch 6 = 25 %"},
      {{1'000, 90, 7'600}, "= 25 %"},
      {{500, 400, 4'000}, "= 100 %"},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.words);
    const auto finding = staple_under_foot(0, kFoot, one.strike, StapleState::there, true);
    CHECK(finding->sum.find(one.words) != std::string::npos);
    ++seen;
  }
  CHECK(seen == 5);
}
