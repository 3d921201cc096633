#include "engine/piece/outline.h"

#include "tests/support/case_table.h"
#include "tests/support/outlines.h"
#include "tests/support/random.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

using namespace pouncemark;
using namespace pouncemark::piece;
using pouncemark::tests::arched;
using pouncemark::tests::Corner;
using pouncemark::tests::Dice;
using pouncemark::tests::edges_through;
using pouncemark::tests::every_way;
using pouncemark::tests::five_edged;
using pouncemark::tests::outline_through;
using pouncemark::tests::random_convex;
using enum pouncemark::ProblemCode;

namespace {

constexpr double kPi = 3.14159265358979323846;
constexpr EdgeRole kTop = EdgeRole::top;

Outline square(double rise_of_top) {
  return outline_through(
      {{kTop, {0, 0}}, {kTop, {100, 0}}, {kTop, {100, 100}, rise_of_top}, {kTop, {0, 100}}});
}

struct Shape {
  const char* name;
  std::vector<Corner> corners;
};

struct BadShape {
  const char* name;
  ProblemCode code;
  std::vector<Corner> corners;
};

}  // namespace

TEST_CASE("an outline the rows can use is accepted, whichever way it lies") {
  const Shape shapes[] = {
      {"three edges", {{kTop, {0, 0}}, {kTop, {100, 0}}, {kTop, {0, 100}}}},
      {"five edges", five_edged()},
      {"a top that rises", arched(120)},
      {"a top that sinks", arched(-120)},
      {"a half circle", arched(400)},
      {"an edge of a thousandth",
       {{kTop, {5000, 0}}, {kTop, {5000.001, 0}}, {kTop, {5000.001, 9}}, {kTop, {5000, 9}}}},
      {"a corner that turns inward",
       {{kTop, {0, 0}}, {kTop, {100, 0}}, {kTop, {20, 20}}, {kTop, {0, 100}}}},
      {"a side in two parts",
       {{kTop, {0, 0}}, {kTop, {50, 0}}, {kTop, {100, 0}}, {kTop, {0, 100}}}},
      // source: an arc that sinks 49 over 100 reaches 1 above the edge below it, by hand.
      {"an arc that sinks almost to the edge below",
       {{kTop, {0, 0}}, {kTop, {100, 0}}, {kTop, {100, 50}, -49}, {kTop, {0, 50}}}},
      {"a corner rounded to the micrometre",
       {{kTop, {0, 50}, 14.646},
        {kTop, {50, 0}},
        {kTop, {600, 0}},
        {kTop, {600, 950}, 14.644},
        {kTop, {550, 1000}},
        {kTop, {0, 1000}}}}};
  int count = 0;
  for (const Shape& shape : shapes) {
    for (const auto& told : every_way(outline_through(shape.corners))) {
      const auto& outline = told.value;
      CAPTURE(std::string(shape.name));
      CAPTURE(told.way);
      CHECK(validate(outline).is_ok());
      ++count;
    }
  }
  CHECK(count == 40);
}

TEST_CASE("the neighbour of each good outline is refused for its own reason") {
  const BadShape shapes[] = {
      {"two edges", outline_too_few_edges, {{kTop, {0, 0}}, {kTop, {100, 0}, 20}}},
      {"an edge of nothing",
       outline_edge_too_short,
       {{kTop, {0, 0}}, {kTop, {0, 0}}, {kTop, {100, 0}}, {kTop, {0, 100}}}},
      {"a hair over a half circle", outline_arc_too_deep, arched(400.001)},
      {"a hair over a half circle inward", outline_arc_too_deep, arched(-400.001)},
      {"clockwise", outline_runs_clockwise, {{kTop, {0, 0}}, {kTop, {0, 100}}, {kTop, {100, 0}}}},
      {"no area", outline_runs_clockwise, {{kTop, {0, 0}}, {kTop, {100, 0}}, {kTop, {50, 0}}}},
      {"two edges that cross",
       outline_crosses_itself,
       {{kTop, {0, 0}}, {kTop, {100, 0}}, {kTop, {100, 100}}, {kTop, {60, -10}}, {kTop, {0, 100}}}},
      // source: an arc that sinks 50 over 100 reaches the edge 49 below it, by hand.
      {"an arc that sinks through the edge below",
       outline_crosses_itself,
       {{kTop, {0, 0}}, {kTop, {100, 0}}, {kTop, {100, 49}, -50}, {kTop, {0, 49}}}},
      {"an arc that bulges through its own neighbour",
       outline_crosses_itself,
       {{kTop, {0, 0}, -40}, {kTop, {100, 0}}, {kTop, {60, 60}}, {kTop, {0, 60}}}},
      {"two arcs that meet between two edges",
       outline_crosses_itself,
       {{kTop, {0, 0}, -30}, {kTop, {100, 0}}, {kTop, {100, 50}, -30}, {kTop, {0, 50}}}}};
  int count = 0;
  for (const BadShape& shape : shapes) {
    for (const auto& told : every_way(outline_through(shape.corners))) {
      const auto& outline = told.value;
      CAPTURE(std::string(shape.name));
      CAPTURE(told.way);
      const Result<bool> sound = validate(outline);
      CHECK(!sound);
      if (!sound) CHECK(sound.problem().code == shape.code);
      ++count;
    }
  }
  CHECK(count == 40);
}

TEST_CASE("an outline whose edges do not follow one another says which edge") {
  Outline open = square(0);
  open.edges[1].line.to = {100, 99.999};
  const Result<bool> sound = validate(open);
  CHECK(sound.problem().code == outline_not_closed);
  CHECK(sound.problem().where == "edge 2");
  open.edges[1].line.to = {100, 100 + 1e-7};
  CHECK(validate(open).is_ok());
}

TEST_CASE("an arc too deep is told with its rise and the most it may be") {
  const Result<bool> sound = validate(outline_through(arched(500)));
  CHECK(sound.problem().where == "edge 4");
  CHECK(sound.problem().found == "rise 500");
  CHECK(sound.problem().needed == "at most 400");
}

TEST_CASE("the area counts what an arc adds or takes away") {
  // source: half a circle of radius 50; a segment of a circle by R*R/2 * (turn - sin turn).
  CHECK(std::fabs(area_mm2(square(0)) - 10'000) < 1e-9);
  CHECK(std::fabs(area_mm2(square(50)) - (10'000 + kPi * 1'250)) < 1e-6);
  CHECK(std::fabs(area_mm2(square(-50)) - (10'000 - kPi * 1'250)) < 1e-6);
  const double turn = 4 * std::atan(2 * 10.0 / 100);
  const double cap = 130.0 * 130.0 / 2 * (turn - std::sin(turn));
  CHECK(std::fabs(area_mm2(square(10)) - (10'000 + cap)) < 1e-6);
  CHECK(area_mm2(outline_through({{kTop, {0, 0}}, {kTop, {0, 100}}, {kTop, {100, 0}}})) == -5'000);
}

TEST_CASE("the area of any panel is the same turned, mirrored and begun elsewhere") {
  Dice dice(20'260'131);
  INFO(dice.words());
  int same = 0;
  for (int i = 0; i < 2'000; ++i) {
    const Outline outline = outline_through(random_convex(dice));
    const double area = area_mm2(outline);
    int agree = 0;
    for (const auto& way : every_way(outline)) {
      if (std::fabs(area_mm2(way.value) - area) < 1e-6 * area) ++agree;
    }
    if (agree == 4 && area > 0) ++same;
  }
  CHECK(same == 2'000);
}

TEST_CASE("the extent holds the crown of an arc, and no more than that") {
  const Extent flat = extent(square(0));
  CHECK((flat.low.x == 0 && flat.low.y == 0 && flat.high.x == 100 && flat.high.y == 100));
  CHECK(std::fabs(extent(square(50)).high.y - 150) < 1e-9);
  CHECK(std::fabs(extent(square(10)).high.y - 110) < 1e-9);
  CHECK(extent(square(-10)).high.y == 100);
  const Extent turned = extent(tests::quarter_turned(square(50)));
  CHECK(std::fabs(turned.low.x + 150) < 1e-9);
  CHECK(turned.high.x == 0);
}

TEST_CASE("the extent of an arc that does not reach its crown's side ends at its ends") {
  // source: an eighth of a circle of radius 100 from 0 to 45 degrees, rise 100 (1 - cos 22.5).
  const double corner = 100 * std::sqrt(0.5);
  const double rise = 100 * (1 - std::cos(kPi / 8));
  const Extent slice =
      extent(outline_through({{kTop, {0, 0}}, {kTop, {100, 0}, rise}, {kTop, {corner, corner}}}));
  CHECK(std::fabs(slice.high.x - 100) < 1e-9);
  CHECK(std::fabs(slice.high.y - corner) < 1e-9);
}

TEST_CASE("a moved outline keeps its area and its roles") {
  const Outline there = moved(outline_through(five_edged()), {30, -70});
  CHECK(std::fabs(extent(there).low.x - 30) < 1e-9);
  CHECK(std::fabs(extent(there).low.y + 70) < 1e-9);
  CHECK(std::fabs(area_mm2(there) - area_mm2(outline_through(five_edged()))) < 1e-6);
  CHECK(there.edges[2].role == EdgeRole::fly_side);
}

TEST_CASE("a sleeve's long edges are sides, both measured from BOTTOM") {
  const Outline sleeve = sleeve_outline(42, 110, 1800);
  CHECK(validate(sleeve).is_ok());
  int sides = 0;
  for (const Edge& edge : sleeve.edges) {
    if (edge.role != EdgeRole::side) continue;
    ++sides;
    CHECK(from_datum(edge).from.y == 0);
    CHECK(from_datum(edge).to.y == 1800);
    CHECK(from_datum(edge).from.x == (edge.name == "left" ? 42 : 152));
  }
  CHECK(sides == 2);
}

TEST_CASE("a rectangular panel is measured from BOTTOM and from its hinge side") {
  for (const bool at_left : {true, false}) {
    const Outline panel = panel_outline(690, 1420, at_left);
    CHECK(validate(panel).is_ok());
    const double hinge_x = at_left ? 0 : 690;
    int seen = 0;
    for (const Edge& edge : panel.edges) {
      const Segment walked = from_datum(edge);
      if (edge.name == "hinge") CHECK((walked.from.x == hinge_x && walked.from.y == 0));
      if (edge.name == "fly") CHECK((walked.from.x == 690 - hinge_x && walked.from.y == 0));
      if (edge.name == "top") CHECK((walked.from.x == hinge_x && walked.from.y == 1420));
      if (edge.name == "bottom") CHECK((walked.from.x == hinge_x && walked.from.y == 0));
      ++seen;
    }
    CHECK(seen == 4);
  }
}

TEST_CASE("a rectangle written edge by edge has the rows of the rectangle written short") {
  for (const bool at_left : {true, false}) {
    const EdgeRole left = at_left ? EdgeRole::hinge_side : EdgeRole::fly_side;
    const EdgeRole right = at_left ? EdgeRole::fly_side : EdgeRole::hinge_side;
    const Result<Outline> written = panel_outline(edges_through({{EdgeRole::bottom, {0, 0}},
                                                                 {right, {690, 0}},
                                                                 {EdgeRole::top, {690, 1420}},
                                                                 {left, {0, 1420}}}));
    const Outline shorter = panel_outline(690, 1420, at_left);
    int same = 0;
    for (std::size_t i = 0; i < 4; ++i) {
      if (shorter.edges[i].role == EdgeRole::fly_side) continue;  // nothing is measured along it
      const Segment a = from_datum(written->edges[i]);
      const Segment b = from_datum(shorter.edges[i]);
      const bool ends = length(a.from - b.from) == 0 && length(a.to - b.to) == 0;
      if (ends && written->edges[i].name == shorter.edges[i].name) ++same;
    }
    CHECK(same == 3);
  }
}

TEST_CASE("every edge of a five-edged panel is measured from the hinge side") {
  const Result<Outline> panel = panel_outline(edges_through(five_edged()));
  const Vec2 datums[] = {{0, 0}, {0, 0}, {900, 0}, {600, 1400}, {0, 1400}};
  int right = 0;
  for (std::size_t i = 0; i < 5; ++i) {
    const Vec2 from = from_datum(panel->edges[i]).from;
    if (length(from - datums[i]) == 0) ++right;
  }
  CHECK(right == 5);
}

TEST_CASE("a panel without a hinge side or without a fly side is refused") {
  std::vector<Corner> corners = five_edged();
  corners[0].role = EdgeRole::bottom;
  CHECK(panel_outline(edges_through(corners)).problem().code == panel_without_hinge_side);
  corners = five_edged();
  corners[2].role = EdgeRole::bottom;
  CHECK(panel_outline(edges_through(corners)).problem().code == panel_without_fly_side);
  CHECK(panel_outline(edges_through(arched(401))).problem().code == outline_arc_too_deep);
  CHECK(panel_outline(edges_through(five_edged())).is_ok());
}

TEST_CASE("a panel hangs from the side of its middle on which its hinge side lies") {
  CHECK_FALSE(hinge_at_right(panel_outline(600, 1200, true)));
  CHECK(hinge_at_right(panel_outline(600, 1200, false)));
  CHECK_FALSE(hinge_at_right(*panel_outline(edges_through(five_edged()))));
  CHECK_FALSE(hinge_at_right(sleeve_outline(0, 110, 1800)));
}
