#include "engine/checks/bay_rules.h"

#include <doctest/doctest.h>

#include "engine/checks/finding.h"

using namespace pouncemark;
using namespace pouncemark::checks;
using frame::StationFault;

namespace {

/// Sheet 1 thick that may stay bent down to 150.
StayBent sheet_of_one() { return {1'000, 150'000, true, 150'000}; }

}  // namespace

TEST_CASE("a bay of 170 or 150 passes with a limit of 150, one of 140 is a stop") {
  CHECK_FALSE(bay_too_tight(170'000, 0, sheet_of_one()).has_value());
  CHECK_FALSE(bay_too_tight(150'000, 0, sheet_of_one()).has_value());
  CHECK(bay_too_tight(149'999, 0, sheet_of_one()).has_value());
  const auto stop = bay_too_tight(140'000, 0, sheet_of_one());
  REQUIRE(stop.has_value());
  CHECK(stop->severity == Severity::stop);
  CHECK(stop->sentence ==
        "10.0 too tight: the bay turns in 140.0 and this sheet may stay bent down to 150. Held for "
        "years at this radius it may craze.");
  CHECK(stop->sum == "1 × 150 assumed = 150; 150 − 140 = 10.0");
}

TEST_CASE("a radius measured at stations may be out: within that it is a warn, beyond it a stop") {
  const auto within = bay_too_tight(140'000, 8'000, sheet_of_one());
  REQUIRE(within.has_value());
  CHECK(within->severity == Severity::warn);
  CHECK(within->sentence.find("give or take 8.0 %") != std::string::npos);
  CHECK(bay_too_tight(140'000, 7'000, sheet_of_one())->severity == Severity::stop);
}

TEST_CASE("a radius under the thickness of the sheet is said as that") {
  CHECK(bay_too_tight(999, 0, sheet_of_one())->sentence.find("less than the sheet is thick") !=
        std::string::npos);
  CHECK(bay_too_tight(1'000, 0, sheet_of_one())->sentence.find("thick") == std::string::npos);
}

TEST_CASE("a rise over half the chord is asked about, one of half of it is not") {
  CHECK_FALSE(bay_deep(800'000, 400'000).has_value());
  CHECK_FALSE(bay_deep(800'001, 400'000).has_value());
  const auto deep = bay_deep(800'000, 400'001);
  REQUIRE(deep.has_value());
  CHECK(deep->severity == Severity::warn);
  CHECK(deep->sentence.find("Deeper than a half circle?") == 0);
}

TEST_CASE("a bay shorter than its piece is said with what the piece could end up out") {
  const Hung section{"section 2", 1'200'000, 4'555};
  CHECK_FALSE(bay_short(1'200'000, section).has_value());
  const auto found = bay_short(1'187'700, section);
  REQUIRE(found.has_value());
  CHECK(found->severity == Severity::warn);
  CHECK(found->sentence ==
        "The bay is 12.3 shorter than section 2: 1187.7 along its curve, and the "
        "piece 1200.0 wide, give or take 4.6.");
  CHECK(bay_short(849'999, {"panel P1", 850'000, 0})->sentence.find("give") == std::string::npos);
}

TEST_CASE("a piece as wide as the straight distance is asked about where the curve is longer") {
  CHECK(
      chord_for_curve(800'000, 847'168, {"panel P1", 800'000, 0})->sentence ==
      "The curve is 47.2 longer than the straight distance here. Which did you measure? The width "
      "of panel P1 is the straight distance.");
  CHECK(chord_for_curve(800'000, 847'168, {"panel P1", 802'000, 0}).has_value());
  CHECK_FALSE(chord_for_curve(800'000, 847'168, {"panel P1", 802'001, 0}).has_value());
  CHECK_FALSE(chord_for_curve(800'000, 804'000, {"panel P1", 800'000, 0}).has_value());
  CHECK_FALSE(chord_for_curve(665'000, 699'157, {"panel P1", 690'000, 0}).has_value());
}

TEST_CASE("a tape 3.8 longer than the curve is measured again, one 0.8 longer is not") {
  // source: worked out by hand: 800 and 120 are 847.2 along
  const auto longer = tape_differs(851'000, 847'168, 124'911);
  REQUIRE(longer.has_value());
  CHECK(longer->sentence.find("3.8 longer") == 0);
  CHECK(longer->change.find("Re-measure") == 0);
  CHECK(longer->sum.find("rise of 124.9") != std::string::npos);
  CHECK_FALSE(tape_differs(848'000, 847'168, 121'000).has_value());
  CHECK_FALSE(tape_differs(849'168, 847'168, 122'000).has_value());
  CHECK(tape_differs(849'169, 847'168, 122'000).has_value());
  CHECK(tape_differs(845'167, 847'168, 117'000)->sentence.find("shorter") != std::string::npos);
  CHECK(tape_differs(799'000, 847'168, std::nullopt)->sentence.find("straight distance") !=
        std::string::npos);
}

TEST_CASE("stations that make no curve say what is missing or which is out of its order") {
  CHECK(stations_amiss(StationFault::too_few, 1).sentence ==
        "1 station: a curve needs three. Until then chord and rise say how it bends.");
  CHECK(stations_amiss(StationFault::out_of_order, 3).sentence.find("Station 3 is not farther") ==
        0);
}

TEST_CASE("stations 100 apart are asked for at 200") {
  const auto near = stations_near(100'000, 17'150);
  REQUIRE(near.has_value());
  CHECK(near->severity == Severity::note);
  CHECK(near->figure == "17 %");
  CHECK_FALSE(stations_near(200'000, 4'287).has_value());
  CHECK_FALSE(stations_near(150'000, 8'000).has_value());
}

TEST_CASE("cloth that creeps as far as the sheet is bare passes, a micrometre more does not") {
  CHECK_FALSE(creep_past_sheet(12'000, 12'000, true).has_value());
  CHECK(creep_past_sheet(12'001, 12'000, true).has_value());
  const auto past = creep_past_sheet(14'000, 12'000, true);
  CHECK(past->figure == "2.0");
  CHECK(past->severity == Severity::warn);
  CHECK(past->sum == "14 − 12 assumed = 2.0");
  CHECK(creep_past_sheet(14'000, 12'000, false)->sum == "14 − 12 = 2.0");
}

TEST_CASE("rows in the slip zone are said where woven cloth would have to give too much") {
  SlipZone zone{100'000, 500, 250'000, 1'500, 1'749, 600};
  const auto found = row_in_slip_zone(672'000, zone);
  REQUIRE(found.has_value());
  CHECK(found->sentence.find("100.0 from the hinge side on") == 0);
  CHECK(found->sentence.find("give 0.60 %") != std::string::npos);
  CHECK_FALSE(row_in_slip_zone(100'000, zone).has_value());
  CHECK(row_in_slip_zone(100'001, zone).has_value());
  zone.ease = 500;
  CHECK_FALSE(row_in_slip_zone(672'000, zone).has_value());
}
