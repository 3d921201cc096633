#include "engine/frame/fixings.h"

#include <doctest/doctest.h>

#include <vector>

#include "engine/material/assumed.h"
#include "tests/support/random.h"

using namespace pouncemark;
using namespace pouncemark::frame;
using pouncemark::tests::Dice;

namespace {

/// PETG on timber along the grain.
Warming petg_by(std::int64_t by_mk) {
  return {sheet_growth(material::Sheet::petg).thousandths, material::kAssumedTimberGrowth, by_mk};
}

}  // namespace

TEST_CASE("sheet moves with warmth as its growth says") {
  struct Case {
    Um length_um;
    Warming warming;
    Um move_um;
  };
  // source: growth a degree from suppliers' data sheets; polycarbonate 2.1 on 1000 is also a
  // supplier's own example
  const std::vector<Case> cases = {{1'000'000, {68'000, 0, 10'000}, 680},
                                   {2'000'000, {68'000, 0, 20'000}, 2'720},
                                   {1'000'000, {65'000, 0, 30'000}, 1'950},
                                   {1'000'000, {70'000, 0, 30'000}, 2'100},
                                   {1'000'000, {17'000, 0, 20'000}, 340},
                                   {2'000'000, {3'000, 0, 20'000}, 120},
                                   {2'000'000, {5'000, 0, 20'000}, 200},
                                   {2'000'000, {68'000, 5'000, 20'000}, 2'520},
                                   {2'000'000, {68'000, 5'000, -20'000}, -2'520},
                                   {2'000'000, {5'000, 68'000, 20'000}, -2'520},
                                   {2'000'000, {68'000, 5'000, 0}, 0},
                                   {0, {68'000, 5'000, 20'000}, 0}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.move_um);
    CHECK(move_um(one.length_um, one.warming) == one.move_um);
    ++ran;
  }
  CHECK(ran == 12);
}

TEST_CASE("a sheet of 2360 that grows by 15 degrees wants slots of 11.5, from its middle half") {
  // derived: (68 - 5) millionths · 15 · 2360
  const Um whole = move_um(2'360'000, petg_by(15'000));
  CHECK(whole == 2'230);
  CHECK(slot_um({5'000, whole, 0, 1'000}) == 11'460);
  CHECK(slot_shown_um(11'460) == 11'500);
  CHECK(farthest_um(0, 2'360'000) == 2'360'000);
  CHECK(farthest_um(2'360'000, 2'360'000) == 2'360'000);
  const Um middle = farthest_um(1'180'000, 2'360'000);
  CHECK(middle == 1'180'000);
  CHECK(move_um(middle, petg_by(15'000)) == 1'115);
  CHECK(slot_shown_um(slot_um({5'000, 1'115, 0, 1'000})) == 9'500);
}

TEST_CASE("slots are shown up to the next half millimetre, never down") {
  CHECK(slot_shown_um(11'500) == 11'500);
  CHECK(slot_shown_um(11'501) == 12'000);
  CHECK(slot_shown_um(11'001) == 11'500);
  CHECK(slot_shown_um(0) == 0);
  CHECK(slot_shown_um(1) == 500);
  int ran = 0;
  for (Um um = 0; um < 20'000; ++um) {
    const Um shown = slot_shown_um(um);
    if (shown >= um && shown - um < 500 && shown % 500 == 0) ++ran;
  }
  CHECK(ran == 20'000);
}

TEST_CASE("a slot takes up warmth and damp either way, whichever sign they have") {
  CHECK(slot_um({5'000, 2'230, 1'293, 1'000}) == 14'046);
  CHECK(slot_um({5'000, -2'230, -1'293, 1'000}) == 14'046);
  CHECK(slot_um({5'000, 0, 0, 0}) == 5'000);
}

TEST_CASE("the tight fixing in the middle asks for the least") {
  Dice dice(12);
  INFO(dice.words());
  int ran = 0;
  for (int i = 0; i < 1'000; ++i) {
    const Um last = 2 * dice.between(100'000, 5'000'000);
    const Um tight = dice.between(0, last);
    if (farthest_um(tight, last) >= farthest_um(last / 2, last)) ++ran;
  }
  CHECK(ran == 1'000);
}

TEST_CASE("hung colder the screw stands outward in its slot, and the warming brings it back") {
  const Um today = screw_from_middle_um(2'360'000, petg_by(-10'000));
  CHECK(today == 1'487);
  CHECK(screw_from_middle_um(2'360'000, petg_by(10'000)) == -1'487);
  CHECK(screw_from_middle_um(2'360'000, petg_by(0)) == 0);
  // The slot moves outward as the sheet warms up: the screw is then in its middle.
  CHECK(today - move_um(2'360'000, petg_by(10'000)) == 0);
}

TEST_CASE("every kind of sheet has a growth with a source") {
  int ran = 0;
  for (const auto sheet :
       {material::Sheet::petg, material::Sheet::polyester_film, material::Sheet::polycarbonate,
        material::Sheet::acrylic, material::Sheet::rigid_pvc}) {
    const material::Value growth = sheet_growth(sheet);
    CHECK(growth.is_known);
    CHECK(growth.thousandths >= 17'000);
    CHECK(growth.thousandths <= 80'000);
    CHECK_FALSE(growth.source.empty());
    ++ran;
  }
  CHECK(ran == 5);
}
