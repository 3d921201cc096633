#include "engine/takeoff/thread.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using namespace pouncemark::takeoff;

TEST_CASE("each thread takes the run, the stack once for each stitch, and tails") {
  struct Case {
    Um length_um;
    std::int64_t gaps;
    Um stack_um;
    Um tails_um;
    Um each_um;
  };
  // source: 2 + 2 × stack ÷ stitch of both threads together, by hand.
  const Case cases[] = {
      {2'360'000, 394, 2'500, 300'000, 3'645'000},
      {2'256'000, 376, 1'100, 300'000, 2'969'600},
      {1'350'000, 246, 1'100, 300'000, 1'920'600},
      {0, 0, 1'100, 300'000, 300'000},
      {6'000, 1, 3'000, 0, 9'000},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.each_um);
    CHECK(thread_of_row(one.length_um, one.gaps, one.stack_um, one.tails_um).each_um() ==
          one.each_um);
    ++seen;
  }
  CHECK(seen == 5);
}

TEST_CASE("thread to length of row is that of the handbooks for stitch type 301") {
  struct Case {
    Um stitch_um;
    Um stack_um;
    double ratio;
  };
  // source: apparel handbooks, 2 + 2 × thickness × stitches a unit length; 301 at 2.5 and 10
  // stitches an inch through 0.01 inch are 2.2 inches an inch.
  const Case cases[] = {{6'000, 3'000, 3.0},    {5'000, 3'000, 3.2}, {3'000, 2'000, 3.3333},
                        {6'000, 2'200, 2.7333}, {2'540, 254, 2.2},   {6'000, 2'500, 2.8333}};
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.ratio);
    const ThreadOfRow thread = thread_of_row(1'000 * one.stitch_um, 1'000, one.stack_um, 0);
    const double ratio = 2.0 * from_um(thread.each_um()) / from_um(thread.run_um);
    CHECK(ratio == doctest::Approx(one.ratio).epsilon(0.00002));
    ++seen;
  }
  CHECK(seen == 6);
}
