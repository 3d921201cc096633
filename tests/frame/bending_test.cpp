#include "engine/frame/bending.h"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

#include "tests/support/random.h"

using namespace pouncemark;
using namespace pouncemark::frame;
using pouncemark::tests::Dice;

namespace {

constexpr Ply kPetg{1, 2100, .38};
constexpr Ply kFacing{2, 2350, .38};
constexpr Um kHeight = 2'400'000;

std::int64_t small_bend(double stiffness, Um chord_um) {
  const auto push = middle_push({stiffness, kHeight}, chord_um, 60'000);
  return push ? push->small_bend_mn : -1;
}

/// tenths of a newton, as shown
std::int64_t tenths(std::int64_t mn) { return divide_round(mn, 100); }

}  // namespace

TEST_CASE("the stiffness of a sheet follows from its modulus and the cube of its thickness") {
  struct Case {
    Ply ply;
    double stiffness;
  };
  // derived: E t³ / (12 (1 - ν²)) with ν 0.38
  const std::vector<Case> cases = {{{1, 2000, .38}, 194.795},  {{1, 2100, .38}, 204.535},
                                   {{1, 2200, .38}, 214.275},  {{.5, 2200, .38}, 26.784},
                                   {{1, 2350, .38}, 228.884},  {{.25, 2100, .38}, 3.196},
                                   {{2, 2350, .38}, 1831.074}, {{0, 2100, .38}, 0}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.stiffness);
    CHECK(std::fabs(stiffness(one.ply) - one.stiffness) < .0006);
    ++ran;
  }
  CHECK(ran == 8);
}

TEST_CASE("plies that slip add up, locked they are four times as stiff as two") {
  const std::vector<Ply> two = {kPetg, kPetg};
  const double slipping = stiffness(two, Hold::slipping);
  const double locked = stiffness(two, Hold::locked);
  CHECK(std::llround(slipping) == 409);
  CHECK(std::llround(locked) == 1636);
  CHECK(std::fabs(locked / slipping - 4) < 1e-14);
  CHECK(stiffness({}, Hold::slipping) <= 0);
  CHECK(stiffness({}, Hold::locked) <= 0);
  CHECK(std::fabs(stiffness({kPetg}, Hold::locked) - stiffness(kPetg)) < 1e-12);
}

TEST_CASE("a locked pack is as stiff as one sheet of its thickness, and never less than slipping") {
  Dice dice(37);
  INFO(dice.words());
  int ran = 0;
  for (int i = 0; i < 1'000; ++i) {
    std::vector<Ply> same;
    std::vector<Ply> mixed;
    double thickness = 0;
    const std::int64_t plies = dice.between(1, 6);
    for (std::int64_t n = 0; n < plies; ++n) {
      const double t = static_cast<double>(dice.between(50, 3'000)) / 1000.0;
      const double modulus = static_cast<double>(dice.between(500, 5'000));
      same.push_back({t, 2100, .38});
      mixed.push_back({t, modulus, .38});
      thickness += t;
    }
    const double one = stiffness({thickness, 2100, .38});
    const std::vector<Ply> turned(mixed.rbegin(), mixed.rend());
    const double locked = stiffness(mixed, Hold::locked);
    const bool as_one = std::fabs(stiffness(same, Hold::locked) / one - 1) < 1e-12;
    const bool either_side_up = std::fabs(stiffness(turned, Hold::locked) / locked - 1) < 1e-12;
    const bool not_less = locked >= stiffness(mixed, Hold::slipping) * (1 - 1e-14);
    if (as_one && either_side_up && not_less) ++ran;
  }
  CHECK(ran == 1'000);
}

TEST_CASE("bending to a radius takes the stiffness over it and strains the faces") {
  // derived: 204.535 N·mm over 150
  CHECK(std::fabs(*moment(stiffness(kPetg), 150) - 1.36357) < .000005);
  CHECK_FALSE(moment(204.5, 0));
  CHECK_FALSE(moment(204.5, -150));
  // source: suppliers' limits of 100, 150, 180 and 330 thicknesses, as strains
  struct Case {
    Um thickness_um;
    Um radius_um;
    std::int64_t millionths;
  };
  const std::vector<Case> cases = {{1'000, 100'000, 5'000}, {1'000, 150'000, 3'333},
                                   {1'000, 180'000, 2'778}, {1'000, 330'000, 1'515},
                                   {3'000, 990'000, 1'515}, {0, 150'000, 0}};
  int ran = 0;
  for (const Case& one : cases) {
    CHECK(surface_strain(one.thickness_um, one.radius_um) == one.millionths);
    ++ran;
  }
  CHECK(ran == 6);
  CHECK(surface_strain(1'000, 501) == 998'004);
  CHECK_FALSE(surface_strain(1'000, 500));
  CHECK_FALSE(surface_strain(1'000, 0));
  CHECK_FALSE(surface_strain(-1, 150'000));
}

TEST_CASE("down to its elastic radius a sheet springs back") {
  // derived: 2100 · 1 / (2 · 50)
  CHECK(elastic_radius_um(kPetg, 50) == 21'000);
  CHECK(elastic_radius_um({2, 2100, .38}, 50) == 42'000);
  CHECK_FALSE(elastic_radius_um(kPetg, 0));
}

TEST_CASE("the small-bend push is that of the table by chord and pack") {
  const double one = stiffness(kPetg);
  const double facing = stiffness(kFacing);
  const double both = stiffness({kPetg, kFacing}, Hold::slipping);
  struct Case {
    Um chord_um;
    std::int64_t one;
    std::int64_t facing;
    std::int64_t both;
  };
  // derived: 48 D w h / c³ for a height of 2400 and a rise of 60
  const std::vector<Case> cases = {{1'000'000, 14, 127, 141},
                                   {800'000, 28, 247, 275},
                                   {400'000, 221, 1'978, 2'198},
                                   {300'000, 524, 4'688, 5'211}};
  int ran = 0;
  for (const Case& chord : cases) {
    CAPTURE(chord.chord_um);
    CHECK(tenths(small_bend(one, chord.chord_um)) == chord.one);
    CHECK(tenths(small_bend(facing, chord.chord_um)) == chord.facing);
    CHECK(tenths(small_bend(both, chord.chord_um)) == chord.both);
    ++ran;
  }
  CHECK(ran == 4);
}

TEST_CASE("at equal rise half the chord takes eight times the push") {
  int ran = 0;
  for (Um chord = 400'000; chord <= 4'000'000; chord += 7'000) {
    const double whole = static_cast<double>(small_bend(1e6, chord));
    const double half = static_cast<double>(small_bend(1e6, chord / 2));
    if (std::fabs(half / whole - 8) < .001) ++ran;
  }
  CHECK(ran == 515);
}

TEST_CASE("at equal radius half the chord takes twice the push") {
  const Strip strip{stiffness(kPetg), kHeight};
  CHECK(push_for_radius_mn(strip, 800'000, 700'000) == 3'506);
  CHECK(push_for_radius_mn(strip, 400'000, 700'000) == 7'013);
  CHECK_FALSE(push_for_radius_mn(strip, 0, 700'000));
  CHECK_FALSE(push_for_radius_mn(strip, 800'000, 0));
}

TEST_CASE("beyond a twentieth of the chord the exact push is shown, and it is lower") {
  const Strip strip{1000, 1'000'000};
  const auto at_limit = middle_push(strip, 1'000'000, 50'000);
  REQUIRE(at_limit.has_value());
  CHECK_FALSE(at_limit->is_beyond_small);
  CHECK(at_limit->small_bend_mn == 2'400);
  CHECK(at_limit->exact_mn == 2'382);
  const auto beyond = middle_push(strip, 1'000'000, 50'001);
  REQUIRE(beyond.has_value());
  CHECK(beyond->is_beyond_small);
  const auto deep = middle_push(strip, 1'000'000, 200'000);
  REQUIRE(deep.has_value());
  CHECK(deep->exact_mn == 8'571);
  CHECK(deep->small_bend_mn == 9'600);
  // derived: a quarter of the load over the chord
  CHECK(deep->tightest_um == 466'691);
}

TEST_CASE("a flat bay takes no push, and what is no bay is not answered") {
  const Strip strip{1000, 1'000'000};
  const auto flat = middle_push(strip, 800'000, 0);
  REQUIRE(flat.has_value());
  CHECK(flat->small_bend_mn == 0);
  CHECK(flat->exact_mn == 0);
  CHECK_FALSE(flat->tightest_um);
  CHECK(flat->along_um == 800'000);
  CHECK_FALSE(middle_push(strip, 800'000, -1));
  CHECK_FALSE(middle_push(strip, 0, 60'000));
  CHECK_FALSE(middle_push(strip, -800'000, 60'000));
  CHECK_FALSE(middle_push(strip, 1'000, 5'001));
  // Nobody's push: nothing rather than a wrong number.
  CHECK_FALSE(middle_push({1e12, 100'000'000}, 1, 1));
}

TEST_CASE("hinged at both ends a sheet gives way at Euler's load") {
  // derived: π² D w / L² with a metre's width; 1 mm PETG
  const Strip strip{stiffness(kPetg), 1'000'000};
  CHECK(end_push_mn(strip, 1'000'000, 1'000'000) == 2'019);
  CHECK(end_push_mn(strip, 500'000, 500'000) == 8'075);
  // source: code_aster SSNL502, a cantilever 500 long, 75 wide, 4.5 thick, of 200,000 MPa: it gives
  // way like twice its length between hinges, at 1124.2 N
  const Strip bar{stiffness({4.5, 200'000, 0}), 75'000};
  CHECK(end_push_mn(bar, 1'000'000, 1'000'000) == 1'124'210);
  // Pushed on, it takes a little more; with its ends together, much more.
  CHECK(end_push_mn(strip, 1'000'000, 950'000).value() > 2'019);
  CHECK(end_push_mn(strip, 1'000'000, 0).value() > 2 * 2'019);
  CHECK_FALSE(end_push_mn(strip, 1'000'000, 1'000'001));
  CHECK_FALSE(end_push_mn(strip, 1'000'000, -1));
  CHECK_FALSE(end_push_mn(strip, 0, 0));
}
