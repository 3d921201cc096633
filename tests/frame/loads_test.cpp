#include "engine/frame/loads.h"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::frame;

TEST_CASE("sheets weigh their thickness times their density") {
  struct Case {
    Um thickness_um;
    Um width_um;
    std::int64_t mass_mg;
    std::int64_t weight_mn;
  };
  // derived: PETG of 1.27 g/cm³, 2050 long
  const std::vector<Case> cases = {{1'000, 1'000'000, 2'603'500, 25'532},
                                   {1'000, 1'250'000, 3'254'375, 31'915},
                                   {500, 1'250'000, 1'627'188, 15'957},
                                   {0, 1'250'000, 0, 0}};
  int ran = 0;
  for (const Case& one : cases) {
    const std::int64_t mass =
        mass_mg(sheet_mg_m2(one.thickness_um, 1'270), one.width_um, 2'050'000);
    CHECK(mass == one.mass_mg);
    CHECK(weight_mn(mass) == one.weight_mn);
    ++ran;
  }
  CHECK(ran == 4);
  // A square metre: 1.27 kg, 12.454 N.
  CHECK(sheet_mg_m2(1'000, 1'270) == 1'270'000);
  CHECK(weight_mn(1'270'000) == 12'454);
  // Silk of 69.4 g a square metre beside it.
  CHECK(mass_mg(1'270'000 + 69'400, 1'000'000, 1'000'000) == 1'339'400);
}

TEST_CASE("a panel of backing, cloth and facing weighs what its parts do") {
  // derived: 1160 by 2380 of 1 mm PETG, cloth of 0.9 kg a square metre, 2 mm polycarbonate
  const std::int64_t backing = mass_mg(sheet_mg_m2(1'000, 1'270), 1'160'000, 2'380'000);
  const std::int64_t cloth = mass_mg(900'000, 1'160'000, 2'380'000);
  const std::int64_t facing = mass_mg(sheet_mg_m2(2'000, 1'200), 1'160'000, 2'380'000);
  CHECK(divide_round(backing, 100'000) == 35);
  CHECK(divide_round(cloth, 100'000) == 25);
  CHECK(divide_round(facing, 100'000) == 66);
  CHECK(divide_round(backing + cloth + facing, 100'000) == 126);
}

TEST_CASE("hanging is little for each stitch, a corner lift is all of it on four") {
  const std::int64_t weight = weight_mn(3'500'000);
  CHECK(weight == 34'323);
  // A row of 1290 with stitches of 6 has 215 of them.
  const std::int64_t stitches = divide_up(1'290'000, 6'000);
  CHECK(stitches == 215);
  CHECK(equal_share_mn(weight, stitches) == 160);
  CHECK(equal_share_mn(weight, kCornerStitches) == 8'581);
  CHECK(divide_round(equal_share_mn(weight, kCornerStitches), 100) == 86);
  CHECK(equal_share_mn(weight, 1) == weight);
  CHECK(equal_share_mn(0, 4) == 0);
}

TEST_CASE("fixings along a batten carry the shares of a continuous beam") {
  // source: textbook tables of continuous beams with equal spans and an even load
  const std::vector<std::vector<double>> tables = {
      {},
      {1},
      {1. / 2, 1. / 2},
      {3. / 16, 10. / 16, 3. / 16},
      {4. / 30, 11. / 30, 11. / 30, 4. / 30},
      {11. / 112, 32. / 112, 26. / 112, 32. / 112, 11. / 112},
      {15. / 190, 43. / 190, 37. / 190, 37. / 190, 43. / 190, 15. / 190}};
  int ran = 0;
  for (std::size_t n = 0; n < tables.size(); ++n) {
    CAPTURE(n);
    const std::vector<double> shares = share_of_fixings(static_cast<int>(n));
    REQUIRE(shares.size() == tables[n].size());
    for (std::size_t i = 0; i < n; ++i) {
      CHECK(std::fabs(shares[i] - tables[n][i]) < 1e-15);
      ++ran;
    }
  }
  CHECK(ran == 21);
  CHECK(share_of_fixings(-1).empty());
}

TEST_CASE("twelve kilograms on three fixings lie mostly on the middle one") {
  const std::int64_t weight = weight_mn(12'000'000);
  CHECK(weight == 117'680);
  CHECK(fixing_loads_mn(weight, 3) == std::vector<std::int64_t>{22'065, 73'550, 22'065});
  // By equal parts, nine fixings would seem to carry 13.076 each.
  CHECK(equal_share_mn(weight, 9) == 13'076);
  CHECK(fixing_loads_mn(weight, 9)[1] > 13'076);
  CHECK(fixing_loads_mn(weight, 0).empty());
}

TEST_CASE("the shares add up to the whole, are the same from both ends, and none pulls up") {
  int ran = 0;
  for (int n = 1; n <= 300; ++n) {
    const std::vector<double> shares = share_of_fixings(n);
    double sum = 0;
    bool is_same = true;
    for (std::size_t i = 0; i < shares.size(); ++i) {
      sum += shares[i];
      is_same = is_same && shares[i] > 0 && !(shares[i] < shares[shares.size() - 1 - i]);
    }
    if (std::fabs(sum - 1) < 1e-13 && is_same) ++ran;
  }
  CHECK(ran == 300);
  // Far from the ends each carries one space of the batten.
  CHECK(std::fabs(share_of_fixings(101)[50] - 0.01) < 1e-15);
}
