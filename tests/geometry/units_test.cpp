#include "engine/geometry/units.h"

#include "tests/support/random.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using pouncemark::tests::Dice;

TEST_CASE("millimetres are rounded to the nearest micrometre, halves away from zero") {
  CHECK(to_um(46.552) == 46'552);
  CHECK(to_um(0.0004999) == 0);
  CHECK(to_um(0.0005) == 1);
  CHECK(to_um(-0.0005) == -1);
  CHECK(to_um(100'000.0) == 100'000'000);
}

TEST_CASE("every length that can be entered comes back from millimetres as it was") {
  Dice dice(20'260'111);
  INFO(dice.words());
  int same = 0;
  for (int i = 0; i < 100'000; ++i) {
    const Um um = dice.of_any_size(-100'000'000, 100'000'000);
    if (to_um(from_um(um)) == um) ++same;
  }
  CHECK(same == 100'000);
}

TEST_CASE("a quotient is rounded to the nearest or up, as asked") {
  CHECK(divide_round(7, 2) == 4);
  CHECK(divide_round(-7, 2) == -4);
  CHECK(divide_round(7, 3) == 2);
  CHECK(divide_round(8, 3) == 3);
  CHECK(divide_round(-1, 3) == 0);
  CHECK(divide_up(1'200'000, 60'000) == 20);
  CHECK(divide_up(1'200'001, 60'000) == 21);
  CHECK(divide_up(0, 60'000) == 0);
}
