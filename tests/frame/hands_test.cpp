#include "engine/frame/hands.h"

#include <doctest/doctest.h>

#include "engine/frame/bending.h"
#include "engine/material/assumed.h"

using namespace pouncemark;
using namespace pouncemark::frame;

TEST_CASE("one person pushes 70 N, a little more takes two") {
  constexpr std::int64_t kEach = material::kAssumedPushMn;
  CHECK(kEach == 70'000);
  CHECK(people_needed(0, kEach) == 0);
  CHECK(people_needed(1, kEach) == 1);
  CHECK(people_needed(70'000, kEach) == 1);
  CHECK(people_needed(70'001, kEach) == 2);
  CHECK(people_needed(219'800, kEach) == 4);
  CHECK(people_needed(219'800, 110'000) == 2);
}

TEST_CASE("a sheet and its facing on a short bay need four people, by the exact push three") {
  const double pack = stiffness({{1, 2100, .38}, {2, 2350, .38}}, Hold::slipping);
  const auto push = middle_push({pack, 2'400'000}, 400'000, 60'000);
  REQUIRE(push.has_value());
  CHECK(people_needed(push->small_bend_mn, material::kAssumedPushMn) == 4);
  CHECK(push->is_beyond_small);
  CHECK(push->exact_mn < push->small_bend_mn);
  CHECK(people_needed(push->exact_mn, material::kAssumedPushMn) == 3);
}
