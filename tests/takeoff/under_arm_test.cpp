#include <doctest/doctest.h>

#include <algorithm>
#include <vector>

#include "engine/takeoff/under_arm.h"

using namespace pouncemark;
using takeoff::Arm;
using takeoff::UnderArm;

TEST_CASE("the smaller side of the row goes under the arm") {
  struct Case {
    Um width_um;
    Um row_um;
    Um side_um;
  };
  const std::vector<Case> cases = {{1'140'000, 1'030'000, 110'000},
                                   {1'140'000, 570'000, 570'000},
                                   {1'140'000, 110'000, 110'000},
                                   {100'000, 100'000, 0},
                                   {100'000, 120'000, 0}};
  int ran = 0;
  for (const Case& one : cases) {
    CHECK(takeoff::smaller_side_um(one.width_um, one.row_um) == one.side_um);
    ++ran;
  }
  CHECK(ran == 5);
}

TEST_CASE("a roll is as thick as the circle its section fills round the tightest turn") {
  // derived: the area of the ring, π (r² − R²) = b T, solved for 2 r.
  CHECK(takeoff::roll_across_um(600'000, 1'000, 150'000) == 301'271);
  CHECK(takeoff::roll_across_um(600'000, 2'000, 37'500) == 84'575);
  CHECK(takeoff::roll_across_um(0, 1'000, 150'000) == 300'000);
}

TEST_CASE("what is as wide as the throat lies flat, what is wider is rolled or does not fit") {
  struct Case {
    Um side_um;
    Um roll_um;
    Arm arm;
    UnderArm how;
  };
  const std::vector<Case> cases = {
      {110'000, 301'000, {265'000, 120'000}, UnderArm::flat},
      {265'000, 301'000, {265'000, 120'000}, UnderArm::flat},
      {265'001, 301'000, {265'000, 120'000}, UnderArm::does_not_fit},
      {570'000, 301'000, {350'000, 120'000}, UnderArm::does_not_fit},
      {570'000, 84'600, {350'000, 120'000}, UnderArm::rolled},
      {570'000, 120'000, {350'000, 120'000}, UnderArm::rolled},
      {570'000, 120'001, {350'000, 120'000}, UnderArm::does_not_fit},
      {570'000, 84'600, {350'000, {}}, UnderArm::not_known},
      {570'000, 400'000, {350'000, {}}, UnderArm::does_not_fit},
      {110'000, 84'600, {}, UnderArm::not_known},
  };
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.side_um);
    CHECK(takeoff::under_arm(one.side_um, one.roll_um, one.arm) == one.how);
    ++ran;
  }
  CHECK(ran == 10);
}

TEST_CASE("sleeves added at one edge put at most the widest less half a lap under the arm") {
  const auto joins = takeoff::joins_one_by_one(std::vector<Um>(14, 100'000), 20'000);
  REQUIRE(joins.size() == 13);
  for (const takeoff::Join& join : joins) CHECK(join.side_um == 90'000);
  CHECK(joins.back().run_um == 1'140'000);
  CHECK(takeoff::widest_side_um(joins) == 90'000);
  // Two halves joined in the middle are another matter.
  const auto halves = takeoff::joins_one_by_one({580'000, 580'000}, 20'000);
  REQUIRE(halves.size() == 1);
  CHECK(halves.front().side_um == 570'000);
  CHECK(takeoff::joins_one_by_one({100'000}, 20'000).empty());
  CHECK(takeoff::joins_one_by_one({}, 20'000).empty());
  CHECK(takeoff::widest_side_um({}) == 0);
}

TEST_CASE("whatever the widths, the side under the arm is never more than the widest sleeve") {
  int ran = 0;
  for (int seed = 1; seed <= 500; ++seed) {
    std::vector<Um> widths;
    for (int i = 0; i < 2 + seed % 17; ++i)
      widths.push_back(40'000 + (seed * 7'919 * (i + 3)) % 110'000);
    const Um lap = 10'000 + seed % 30 * 1'000;
    const auto joins = takeoff::joins_one_by_one(widths, lap);
    CHECK(takeoff::widest_side_um(joins) <=
          *std::max_element(widths.begin(), widths.end()) - lap / 2);
    ran += static_cast<int>(joins.size());
  }
  CHECK(ran > 4'000);
}
