#include "engine/job/panel_shape.h"

#include "tests/support/jobs.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using namespace pouncemark::job;

TEST_CASE("a rectangle's outline has its hinge side where the job says") {
  const auto left = outline_of(tests::panel_job(690, 1420, "left").panels[0]);
  const auto right = outline_of(tests::panel_job(690, 1420, "right").panels[0]);
  int hinges = 0;
  for (std::size_t i = 0; i < 4; ++i) {
    if (left->edges[i].name == "hinge") hinges += left->edges[i].line.from.x == 0 ? 1 : 100;
    if (right->edges[i].name == "hinge") hinges += right->edges[i].line.from.x == 690 ? 10 : 100;
  }
  CHECK(hinges == 11);
}

TEST_CASE("a written outline is moved so that its lowest and leftmost places are at nought") {
  Panel panel = tests::panel_job(1, 1, "left").panels[0];
  panel.outline = {{"hinge_side", {-12'500, 1'200'000}, 0, {}},
                   {"bottom", {-12'500, -40'000}, 20'000, {}},
                   {"fly_side", {787'500, -40'000}, 0, {}},
                   {"top", {787'500, 1'200'000}, 0, {}}};
  const auto outline = outline_of(panel);
  const piece::Extent extent = piece::extent(*outline);
  CHECK(to_um(extent.low.x) == 0);
  CHECK(to_um(extent.low.y) == 0);
  CHECK(to_um(extent.high.x) == 800'000);
  CHECK(to_um(extent.high.y) == 1'260'000);  // 1,240 and the bottom's rise of 20
  CHECK(to_um(outline->edges[1].line.from.y) == 20'000);
}

TEST_CASE("a word of the job file stands for its role") {
  CHECK(role_of("hinge_side") == piece::EdgeRole::hinge_side);
  CHECK(role_of("fly_side") == piece::EdgeRole::fly_side);
  CHECK(role_of("top") == piece::EdgeRole::top);
  CHECK(role_of("bottom") == piece::EdgeRole::bottom);
}
