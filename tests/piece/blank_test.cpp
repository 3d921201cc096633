#include "engine/piece/blank.h"

#include "engine/base/number_text.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using namespace pouncemark::piece;

TEST_CASE("a folded blank is twice the flat part and the fold's middle line") {
  struct Case {
    Um width_um;
    Um radius_um;
    Um leaf_um;
    const char* blank;
    const char* fold;
  };
  // source: 2(W - r - t) + pi(r + t/2) by hand, pi to ten places
  const Case cases[] = {
      {120'000, 500, 250, "240.463", "120.232"}, {120'000, 2'000, 500, "242.069", "121.034"},
      {120'000, 0, 250, "239.893", "119.946"},   {120'000, 0, 1, "240.000", "120.000"},
      {64'000, 1'000, 175, "129.066", "64.533"},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.blank);
    const Blank blank = folded_blank(one.width_um, one.radius_um, one.leaf_um);
    CHECK(blank.count == 1);
    CHECK(mm_text(blank.width_um, 3) == one.blank);
    CHECK(mm_text(blank.fold_um, 3) == one.fold);
    ++seen;
  }
  CHECK(seen == 5);
}

TEST_CASE("a folded blank is shown as the trade reads it") {
  CHECK(mm_text(folded_blank(120'000, 500, 250).width_um, 1) == "240.5");
  CHECK(mm_text(folded_blank(120'000, 2'000, 500).width_um, 1) == "242.1");
}

TEST_CASE("a round blank goes once round the tube's middle and has two flanges") {
  // A tube 20 inside, sheet 0.25, flange 20, is 40.5 wide from the front.
  const Blank blank = round_blank(40'500, 20'000, 250);
  CHECK(blank.count == 1);
  CHECK(mm_text(blank.width_um, 1) == "103.6");
  CHECK(mm_text(blank.width_um, 3) == "103.617");  // source: pi * 20.25 + 40, by hand
  CHECK(blank.fold_um == 20'000);
  CHECK(mm_text(round_blank(40'501, 20'000, 250).width_um, 3) == "103.620");
}

TEST_CASE("two leaves are as wide as their sleeve and are not bent") {
  const Blank blank = two_leaf_blank(110'000);
  CHECK(blank.count == 2);
  CHECK(blank.width_um == 110'000);
  CHECK(blank.fold_um == 0);
}

TEST_CASE("a wider sleeve takes a wider blank, whatever its make") {
  int seen = 0;
  for (Um width = 60'000; width < 160'000; width += 777) {
    CHECK(folded_blank(width + 1, 2'000, 250).width_um > folded_blank(width, 2'000, 250).width_um);
    CHECK(round_blank(width + 1, 20'000, 250).width_um > round_blank(width, 20'000, 250).width_um);
    ++seen;
  }
  CHECK(seen == 129);
}
