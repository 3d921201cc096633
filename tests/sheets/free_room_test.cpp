#include "engine/sheets/free_room.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using namespace pouncemark::sheets;

TEST_CASE("the longest free stretch is found between what is taken, the first of equals") {
  const Stretch all = longest_free({0, 100}, {});
  CHECK((all.low == 0 && all.high == 100));
  const Stretch between = longest_free({0, 100}, {{10, 20}, {70, 80}});
  CHECK((between.low == 20 && between.high == 70));
  const Stretch first = longest_free({0, 100}, {{40, 60}});
  CHECK((first.low == 0 && first.high == 40));
  const Stretch order = longest_free({0, 100}, {{70, 80}, {10, 20}, {15, 75}});
  CHECK((order.low == 80 && order.high == 100));
}

TEST_CASE("what is taken outside the stretch does not matter, and all taken leaves nothing") {
  const Stretch outside = longest_free({50, 100}, {{0, 40}, {120, 130}});
  CHECK((outside.low == 50 && outside.high == 100));
  CHECK(longest_free({0, 100}, {{-10, 110}}).length() == 0);
  CHECK(longest_free({0, 100}, {{0, 60}, {60, 100}}).length() == 0);
}
