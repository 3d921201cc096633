#include "engine/layout/landing.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using namespace pouncemark::layout;

TEST_CASE("whole stitches land on the corner, never longer than asked or as near as may be") {
  struct Case {
    Um length_um;
    Um stitch_um;
    std::int64_t never_longer;
    Um of_um;
    std::int64_t nearest;
    Um nearest_um;
  };
  // source: by hand; 2360 ÷ 6 is 393.33, 2360 ÷ 5.8 is 406.9, 2250 ÷ 4.5 is 500.
  const Case cases[] = {
      {2'360'000, 6'000, 394, 5'990, 393, 6'005},
      {2'360'000, 5'800, 407, 5'799, 407, 5'799},
      {2'250'000, 4'500, 500, 4'500, 500, 4'500},
      {9'000, 6'000, 2, 4'500, 2, 4'500},
      {8'999, 6'000, 2, 4'500, 1, 8'999},
      {1'000, 6'000, 1, 1'000, 1, 1'000},
      {0, 6'000, 0, 0, 0, 0},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.length_um);
    const Landing even = land_never_longer(one.length_um, one.stitch_um);
    CHECK(even.stitches == one.never_longer);
    CHECK(even.stitch_um() == one.of_um);
    const Landing nearest = land_nearest(one.length_um, one.stitch_um);
    CHECK(nearest.stitches == one.nearest);
    CHECK(nearest.stitch_um() == one.nearest_um);
    ++seen;
  }
  CHECK(seen == 7);
}
