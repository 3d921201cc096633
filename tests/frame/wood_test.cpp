#include "engine/frame/wood.h"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::frame;

TEST_CASE("timber grows across the grain as the published coefficients say") {
  struct Case {
    std::string_view timber;
    Sawn sawn;
    Um width_um;
    std::int64_t from_mpct;
    std::int64_t to_mpct;
    Um growth_um;
  };
  // source: FPL-GTR-190, Wood Handbook, table 13-5, by its formula D · C · (M2 - M1)
  const std::vector<Case> cases = {{"beech", Sawn::flat, 100'000, 8'000, 11'000, 1'293},
                                   {"beech", Sawn::quarter, 100'000, 8'000, 11'000, 570},
                                   {"beech", Sawn::flat, 100'000, 11'000, 8'000, -1'293},
                                   {"white oak", Sawn::flat, 200'000, 6'000, 14'000, 5'840},
                                   {"red oak", Sawn::quarter, 100'000, 8'000, 9'000, 158},
                                   {"red oak", Sawn::flat, 100'000, 8'000, 9'000, 369},
                                   {"yellow birch", Sawn::quarter, 100'000, 8'000, 9'000, 256},
                                   {"yellow birch", Sawn::flat, 100'000, 8'000, 9'000, 338},
                                   {"hard maple", Sawn::flat, 100'000, 8'000, 9'000, 353},
                                   {"basswood", Sawn::flat, 100'000, 8'000, 9'000, 330},
                                   {"aspen", Sawn::quarter, 100'000, 8'000, 9'000, 119},
                                   {"cherry", Sawn::flat, 100'000, 8'000, 9'000, 248},
                                   {"walnut", Sawn::flat, 100'000, 8'000, 9'000, 274},
                                   {"walnut", Sawn::flat, 100'000, 9'000, 9'000, 0},
                                   {"walnut", Sawn::flat, 0, 8'000, 9'000, 0}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.timber);
    const auto timber = timber_named(one.timber);
    REQUIRE(timber.has_value());
    CHECK(growth_across_um(*timber, one.sawn, one.width_um, one.from_mpct, one.to_mpct) ==
          one.growth_um);
    ++ran;
  }
  CHECK(ran == 15);
}

TEST_CASE("outside the table's moisture, and of a timber not in it, nothing is said") {
  const auto beech = timber_named("beech");
  REQUIRE(beech.has_value());
  CHECK(growth_across_um(*beech, Sawn::flat, 100'000, 6'000, 14'000).has_value());
  CHECK_FALSE(growth_across_um(*beech, Sawn::flat, 100'000, 5'999, 14'000));
  CHECK_FALSE(growth_across_um(*beech, Sawn::flat, 100'000, 6'000, 14'001));
  CHECK_FALSE(timber_named("Beech"));
  CHECK_FALSE(timber_named(""));
}

TEST_CASE("every timber moves more along its rings than toward its heart, and names its source") {
  int ran = 0;
  for (const Timber& timber : timbers()) {
    CAPTURE(timber.name);
    CHECK(timber.quarter < timber.flat);
    CHECK(timber.source.find("FPL-GTR-190") != std::string_view::npos);
    ++ran;
  }
  CHECK(ran == 11);
}

TEST_CASE("timber settles to the moisture the air asks for") {
  struct Case {
    std::int64_t temperature_mc;
    std::int64_t damp_mpct;
    std::int64_t settles_mpct;
    std::int64_t within;
  };
  // derived: Hailwood and Horrobin's equation with the handbook's coefficients. The first is also
  // published, 8.4.
  const std::vector<Case> cases = {{60'000, 55'000, 8'375, 10},  {20'000, 30'000, 6'190, 10},
                                   {20'000, 40'000, 7'720, 10},  {20'000, 50'000, 9'270, 10},
                                   {20'000, 60'000, 11'000, 10}, {20'000, 65'000, 12'000, 10},
                                   {20'000, 70'000, 13'130, 10}, {20'000, 0, 0, 0}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.damp_mpct);
    const auto settles = settles_at_mpct(one.temperature_mc, one.damp_mpct);
    REQUIRE(settles.has_value());
    CHECK(std::abs(*settles - one.settles_mpct) <= one.within);
    ++ran;
  }
  CHECK(ran == 8);
}

TEST_CASE(
    "damper air makes damper timber, warmer air drier, and beyond the range nothing is said") {
  int ran = 0;
  for (std::int64_t t = 0; t <= 60'000; t += 5'000) {
    for (std::int64_t h = 5'000; h <= 100'000; h += 5'000) {
      const std::int64_t here = settles_at_mpct(t, h).value();
      const bool is_damper = here > settles_at_mpct(t, h - 1'000).value();
      const bool is_drier = t == 60'000 || settles_at_mpct(t + 5'000, h).value() <= here;
      if (is_damper && (is_drier || t < 10'000 || h < 20'000)) ++ran;
    }
  }
  CHECK(ran == 260);
  CHECK_FALSE(settles_at_mpct(-1, 50'000));
  CHECK_FALSE(settles_at_mpct(60'001, 50'000));
  CHECK_FALSE(settles_at_mpct(20'000, -1));
  CHECK_FALSE(settles_at_mpct(20'000, 100'001));
}
