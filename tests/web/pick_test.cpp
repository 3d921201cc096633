#include "web/model/pick.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using web::Drag;
using web::EndGrip;
using web::Grip;
using web::pick;

namespace {

EndGrip grip_at(float x) {
  EndGrip grip;
  grip.line_x = x;
  grip.line_top = 100;
  grip.stop_top = 300;
  grip.stop_bottom = 347;
  grip.stop_width = 46;
  return grip;
}

}  // namespace

TEST_CASE("the rule stop is taken anywhere on its block and nowhere beside it") {
  CHECK(pick(grip_at(130), grip_at(850), 152, 320) == Grip::bottom_end);
  CHECK(pick(grip_at(130), grip_at(850), 154, 320) == Grip::nothing);
  CHECK(pick(grip_at(130), grip_at(850), 850, 346) == Grip::top_end);
  CHECK(pick(grip_at(130), grip_at(850), 850, 348) == Grip::nothing);
}

TEST_CASE("the kept-clear line is taken within 7 px, between the sheet's edge and the rule") {
  CHECK(pick(grip_at(130), grip_at(850), 136, 200) == Grip::bottom_end);
  CHECK(pick(grip_at(130), grip_at(850), 138, 200) == Grip::nothing);
  CHECK(pick(grip_at(130), grip_at(850), 130, 99) == Grip::nothing);
}

TEST_CASE("where both ends are within reach the nearer one is taken") {
  CHECK(pick(grip_at(130), grip_at(140), 133, 200) == Grip::bottom_end);
  CHECK(pick(grip_at(130), grip_at(140), 137, 200) == Grip::top_end);
}

TEST_CASE("dragging the bottom end to the right keeps more clear, the top end to the left") {
  const Drag bottom{Grip::bottom_end, 18'000, 200};
  CHECK(bottom.at(214, 2.0, 500, 900'000) == 25'000);
  const Drag top{Grip::top_end, 18'000, 200};
  CHECK(top.at(186, 2.0, 500, 900'000) == 25'000);
}

TEST_CASE("a drag stays between nothing and half the sleeve") {
  const Drag drag{Grip::bottom_end, 18'000, 200};
  CHECK(drag.at(0, 2.0, 500, 900'000) == 0);
  CHECK(drag.at(5000, 2.0, 500, 900'000) == 900'000);
}

TEST_CASE("a press that does not move leaves a figure typed finer than the step") {
  const Drag drag{Grip::bottom_end, 6'350, 200};
  CHECK(drag.at(200.5f, 2.0, 500, 900'000) == 6'350);
  CHECK(drag.at(201, 2.0, 500, 900'000) == 7'000);
}
