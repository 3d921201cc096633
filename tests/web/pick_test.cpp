#include "web/model/pick.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using web::Grip;
using web::kReachPx;
using web::pick;

namespace {

const Grip kStop{107, 300, 153, 347};
const Grip kLine{130, 100, 130, 300};
const Grip kRow{130, 180, 500, 180};

}  // namespace

TEST_CASE("a block is taken anywhere on it and nowhere beside it") {
  CHECK(pick({kStop}, 152, 320, kReachPx) == 0);
  CHECK(pick({kStop}, 154, 320, kReachPx) == -1);
  CHECK(pick({kStop}, 130, 346, kReachPx) == 0);
  CHECK(pick({kStop}, 130, 348, kReachPx) == -1);
}

TEST_CASE("a line drawn thin is 34 px wide to the hand, 48 where everything is for fingers") {
  CHECK(pick({kLine}, 147, 200, kReachPx) == 0);
  CHECK(pick({kLine}, 148, 200, kReachPx) == -1);
  CHECK(pick({kLine}, 154, 200, web::kCompactReachPx) == 0);
  CHECK(pick({kLine}, 155, 200, web::kCompactReachPx) == -1);
}

TEST_CASE("a line ends where it is drawn") {
  CHECK(pick({kLine}, 130, 100, kReachPx) == 0);
  CHECK(pick({kLine}, 130, 99, kReachPx) == -1);
}

TEST_CASE("the nearest of those within reach is taken, of equals the last") {
  CHECK(pick({kLine, kRow}, 140, 186, kReachPx) == 1);
  CHECK(pick({kLine, kRow}, 134, 192, kReachPx) == 0);
  CHECK(pick({kLine, kRow}, 130, 180, kReachPx) == 1);
  CHECK(pick({kRow, kLine}, 130, 180, kReachPx) == 1);
  CHECK(pick({}, 130, 180, kReachPx) == -1);
}
