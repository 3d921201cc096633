#include "engine/checks/hanging_rules.h"

#include <doctest/doctest.h>

#include "engine/frame/fixings.h"
#include "engine/material/assumed.h"

using namespace pouncemark;
using namespace pouncemark::checks;

TEST_CASE("a sheet held tight at both ends is a stop once it grows more than its holes give") {
  CHECK_FALSE(held_at_both_ends(2'360'000, 500, 500));
  CHECK_FALSE(held_at_both_ends(2'360'000, -2'230, 0));
  CHECK_FALSE(held_at_both_ends(0, 0, 0));
  CHECK(held_at_both_ends(2'360'000, 501, 500).has_value());
  const auto finding = held_at_both_ends(2'360'000, 2'230, 0);
  REQUIRE(finding.has_value());
  CHECK(finding->severity == Severity::stop);
  CHECK(finding->code == "held_at_both_ends");
  CHECK(finding->sentence ==
        "2.2 of growth between two tight fixings 2360 apart: it cannot grow, it will buckle.");
  // derived: two over π times the root of 2360 · 2.23, 46.2
  CHECK(finding->sum ==
        "2.2 − 0 of play = 2.2 too long, one bulge of about 46 (half a wave between the "
        "fixings)");
}

TEST_CASE("a hanging day five degrees off passes, more is a note that says where the screw goes") {
  constexpr std::int64_t kOff = material::kAssumedOffPlanMk;
  CHECK_FALSE(hanging_temperature(20'000, 15'000, kOff, 0));
  CHECK_FALSE(hanging_temperature(20'000, 25'000, kOff, 0));
  CHECK(hanging_temperature(20'000, 14'999, kOff, 0).has_value());
  const frame::Warming colder{68'000, material::kAssumedTimberGrowth, -10'000};
  const auto finding =
      hanging_temperature(20'000, 10'000, kOff, frame::screw_from_middle_um(2'360'000, colder));
  REQUIRE(finding.has_value());
  CHECK(finding->severity == Severity::note);
  CHECK(finding->sentence == "10 °C colder than planned: the sheet has yet to grow.");
  CHECK(finding->change ==
        "Set the farthest screw 1.5 from the middle of its slot, outward, away from the tight "
        "fixing, and nearer ones in proportion.");
  CHECK(finding->sum == "10 − 20 = -10 °C, limit 5");
  const auto warmer = hanging_temperature(20'000, 30'000, kOff, -1'487);
  REQUIRE(warmer.has_value());
  CHECK(warmer->sentence == "10 °C warmer than planned: the sheet has yet to shrink.");
  CHECK(warmer->change.find("1.5 from the middle of its slot, inward, toward the tight") !=
        std::string::npos);
}

TEST_CASE("two people's push passes, a thousandth of a newton more asks for a third") {
  constexpr std::int64_t kEach = material::kAssumedPushMn;
  constexpr std::int64_t kHands = material::kAssumedHands;
  CHECK_FALSE(many_hands(0, kEach, kHands, true));
  CHECK_FALSE(many_hands(140'000, kEach, kHands, true));
  CHECK(many_hands(140'001, kEach, kHands, true)->brief == "3 people");
  const auto finding = many_hands(219'800, kEach, kHands, true);
  REQUIRE(finding.has_value());
  CHECK(finding->severity == Severity::warn);
  CHECK(finding->sentence == "219.8 N to bend this bay to its curve: 4 people pushing 70 N each.");
  CHECK(finding->sum == "219.8 N / 70 N, rounded up = 4 people (a steady push: assumed)");
  CHECK(many_hands(219'800, kEach, kHands, false)->sum.find("as entered") != std::string::npos);
  CHECK_FALSE(many_hands(219'800, 110'000, kHands, false));
}

TEST_CASE(
    "a rise of a fifth of the chord passes, a micrometre more is a warning with both pushes") {
  const frame::Strip strip{204.535, 2'400'000};
  const auto at_limit = frame::middle_push(strip, 800'000, 160'000);
  REQUIRE(at_limit.has_value());
  CHECK_FALSE(deep_curve(800'000, 160'000, *at_limit));
  CHECK(deep_curve(800'000, 160'001, *at_limit).has_value());
  const auto push = frame::middle_push(strip, 800'000, 200'000);
  REQUIRE(push.has_value());
  const auto finding = deep_curve(800'000, 200'000, *push);
  REQUIRE(finding.has_value());
  CHECK(finding->severity == Severity::warn);
  CHECK(finding->code == "deep_curve");
  CHECK(finding->sentence ==
        "200.0 of rise is deep for a chord of 800: the simple formula reads 9.2 N, large bending "
        "takes 7.8 N.");
  CHECK(finding->sum ==
        "200.0 over 800 / 5 = 160 (exact shape: pushed in the middle, chord fixed, ends free to "
        "slide)");
}

TEST_CASE("a screw in the cloth is sent to the edge only where it finds room there") {
  struct Case {
    Um cloth_um;
    const char* words;
  };
  // source: two screws of 5 from the edge to the middle, half a screw beyond it
  const Case cases[] = {
      {8'000, "12.5 of bare sheet"}, {12'499, "12.5 of bare sheet"}, {12'500, "nearer the edge"}};
  int ran = 0;
  for (const Case& one : cases) {
    for (const bool is_assumed : {true, false}) {
      const checks::FixingNeed need{5'000, 15'000, is_assumed};
      const auto finding = checks::screw_in_cloth(17'500, one.cloth_um, need);
      REQUIRE(finding);
      CHECK(finding->change.find(one.words) != std::string::npos);
      CHECK((finding->change.rfind("Enter where", 0) == 0) == is_assumed);
      ++ran;
    }
  }
  CHECK(ran == 6);
  CHECK_FALSE(checks::screw_in_cloth(10'000, 12'500, {5'000, 15'000, true}));
}
