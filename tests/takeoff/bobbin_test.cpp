#include "engine/takeoff/bobbin.h"

#include <doctest/doctest.h>

#include <vector>

using namespace pouncemark;
using namespace pouncemark::takeoff;

TEST_CASE("a bobbin of 24 and 8 across and 10 wide holds 18.50 m of tex 150") {
  const BobbinMeasures measures{24'000, 8'000, 10'000, 500, 1'380, 150'000};
  // derived: π ÷ 4 × (24² − 8²) × 10, and that by 0.5 by 1.38 over 150.
  CHECK(bobbin_room_mm3(measures) == doctest::Approx(4'021.24).epsilon(1e-6));
  CHECK(bobbin_thread_um(measures) == 18'497'698);
  BobbinMeasures full = measures;
  full.core_um = 24'000;
  CHECK(bobbin_room_mm3(full) == 0.0);
  CHECK(bobbin_thread_um(full) == 0);
}

TEST_CASE("a tenth kept back of 25 m leaves 22.5 m, to the micrometre") {
  CHECK(usable_um(25'000'000, 10'000) == 22'500'000);
  CHECK(usable_um(25'000'000, 0) == 25'000'000);
  CHECK(usable_um(10'000'000'000, 90'000) == 1'000'000'000);
  CHECK(usable_um(18'497'698, 10'000) == 16'647'928);
}

TEST_CASE("a bobbin lasts whole rows only, and just as many as fill it") {
  struct Case {
    Um usable_um;
    Um row_um;
    std::int64_t rows;
  };
  // source: 25 m less a tenth by hand: 3.64 m a row are 6 rows, 2.9696 m are 7.
  const Case cases[] = {{22'500'000, 3'640'000, 6}, {22'500'000, 2'969'600, 7},
                        {22'500'000, 2'932'000, 7}, {22'500'000, 2'500'000, 9},
                        {22'500'000, 2'500'001, 8}, {22'500'000, 22'500'000, 1},
                        {22'500'000, 22'500'001, 0}};
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.row_um);
    CHECK(rows_a_bobbin(one.usable_um, one.row_um) == one.rows);
    ++seen;
  }
  CHECK(seen == 7);
}

TEST_CASE("184 side rows and 86 joining rows of 7 a bobbin take 27 and 13") {
  const std::vector<Um> side(184, 2'969'600);
  const std::vector<Um> laps(86, 2'932'000);
  const auto plan = bobbin_plan(side, 22'500'000);
  CHECK(bobbin_fills(plan) == 27);
  CHECK(bobbin_fills(bobbin_plan(laps, 22'500'000)) == 13);
  CHECK(plan[0] == BobbinPlace{1, 1, 1, false});
  CHECK(plan[6] == BobbinPlace{1, 7, 1, true});
  CHECK(plan[7] == BobbinPlace{2, 1, 1, false});
  CHECK(plan[183] == BobbinPlace{27, 2, 1, true});
  CHECK(bobbin_fills(bobbin_plan({}, 22'500'000)) == 0);
}

TEST_CASE("a bobbin is changed before a row it would not last, and before and after one too long") {
  const std::vector<Um> rows = {6'000, 4'000, 1, 9'999, 25'000, 1'000, 10'000, 10'001};
  const auto plan = bobbin_plan(rows, 10'000);
  const BobbinPlace wanted[] = {{1, 1, 1, false}, {1, 2, 1, true}, {2, 1, 1, false},
                                {2, 2, 1, true},  {3, 1, 3, true}, {6, 1, 1, true},
                                {7, 1, 1, true},  {8, 1, 2, true}};
  REQUIRE(plan.size() == 8);
  int seen = 0;
  for (std::size_t i = 0; i < plan.size(); ++i) {
    CAPTURE(i);
    CHECK(plan[i] == wanted[i]);
    ++seen;
  }
  CHECK(seen == 8);
  CHECK(bobbin_fills(plan) == 9);
}
