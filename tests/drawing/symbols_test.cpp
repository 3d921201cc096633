#include "engine/drawing/symbols.h"

#include "tests/drawing/picture_reading.h"
#include "tests/support/claims.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstddef>
#include <vector>

using namespace pouncemark::drawing;
using pouncemark::tests::all_of;
using pouncemark::tests::ClaimsCounted;
using pouncemark::tests::fills_reach;
using pouncemark::tests::is_mirrored;
using pouncemark::tests::reach_of;
using pouncemark::tests::operator==;

namespace {

Drawing check_bar(std::int64_t length_um, Lie lie) {
  Drawing picture;
  add_check_bar(picture, {{15000, 12000}, length_um, lie, 4000});
  return picture;
}

// The black pieces are the fills before the three that make the frame.
std::vector<Box> black_pieces(const Drawing& picture) {
  std::vector<Box> out;
  const std::vector<Fill> fills = all_of<Fill>(picture);
  for (std::size_t i = 0; i + 3 < fills.size(); ++i) out.push_back(reach_of(fills[i].steps));
  return out;
}

double apart(Spot a, Spot b) {
  const double x = static_cast<double>(a.x - b.x);
  const double y = static_cast<double>(a.y - b.y);
  return std::sqrt(x * x + y * y);
}

}  // namespace

TEST_CASE("a check bar's outer ends are exactly its length apart, across and along") {
  int looked_at = 0;
  for (const std::int64_t length : {180000, 200000, 170000, 100001, 5000}) {
    CHECK(fills_reach(check_bar(length, Lie::across)) ==
          Box{{15000, 12000}, {15000 + length, 16000}});
    CHECK(fills_reach(check_bar(length, Lie::along)) ==
          Box{{15000, 12000}, {19000, 12000 + length}});
    ++looked_at;
  }
  CHECK(looked_at == 5);
}

TEST_CASE("a check bar that ends white has a line at its end, inside the bar") {
  const std::vector<Fill> fills = all_of<Fill>(check_bar(20000, Lie::across));
  REQUIRE(fills.size() == 4);
  CHECK(reach_of(fills[3].steps) == Box{{34750, 12000}, {35000, 16000}});
}

TEST_CASE("nothing on a check bar is stroked, so that no pen adds to its length") {
  CHECK(all_of<Stroke>(check_bar(180000, Lie::across)).empty());
}

TEST_CASE("a check bar is black and white in turn, 10 mm each, black first, the rest shorter") {
  const std::vector<Box> even = black_pieces(check_bar(180000, Lie::across));
  REQUIRE(even.size() == 9);
  CHECK(even[0] == Box{{15000, 12000}, {25000, 16000}});
  CHECK(even[8] == Box{{175000, 12000}, {185000, 16000}});
  const std::vector<Box> odd = black_pieces(check_bar(25000, Lie::along));
  REQUIRE(odd.size() == 2);
  CHECK(odd[1] == Box{{15000, 32000}, {19000, 37000}});
}

TEST_CASE("a check bar without length, or thinner than its frame, is our own mistake") {
  const ClaimsCounted claims;
  check_bar(0, Lie::across);
  CHECK(claims.broken() == 1);
  Drawing picture;
  add_check_bar(picture, {{0, 0}, 100000, Lie::across, 500});
  CHECK(claims.broken() == 2);
}

TEST_CASE("a solid bar is one black box of exactly its length") {
  Drawing picture;
  add_solid_bar(picture, {{1000, 2000}, 180000, Lie::along, 2000});
  REQUIRE(picture.items.size() == 1);
  CHECK(fills_reach(picture) == Box{{1000, 2000}, {3000, 182000}});
  const ClaimsCounted claims;
  add_solid_bar(picture, {{0, 0}, 0, Lie::across, 2000});
  CHECK(claims.broken() == 1);
}

TEST_CASE("a registration mark is the same from every side") {
  Drawing picture;
  add_registration_mark(picture, {30001, 40007});
  std::vector<PathStep> steps;
  for (const Stroke& stroke : all_of<Stroke>(picture)) {
    steps.insert(steps.end(), stroke.steps.begin(), stroke.steps.end());
  }
  CHECK(is_mirrored(steps, {30001, 40007}, true));
  CHECK(is_mirrored(steps, {30001, 40007}, false));
  CHECK(reach_of(all_of<Stroke>(picture).at(0).steps) == Box{{27001, 37007}, {33001, 43007}});
  CHECK(!is_mirrored(steps, {30002, 40007}, true));
}

TEST_CASE("the datum is a black square with a white 0 in it") {
  Drawing picture;
  add_datum_square(picture, {1000, 2000}, 6000);
  CHECK(fills_reach(picture) == Box{{1000, 2000}, {7000, 8000}});
  const Text nought = all_of<Text>(picture).at(0);
  CHECK(nought.words == "0");
  CHECK(nought.grey_permille == 1000);
  CHECK(nought.at.x == 4000);
  // The figure is 4 mm x 0.76 = 3.04 mm high and leaves the same above and below.
  CHECK(nought.size_um == 4000);
  CHECK(nought.at.y == 2000 + (6000 - 3040) / 2);
}

TEST_CASE("a guide point is a ring, a dot and a line at right angles to its row") {
  Drawing picture;
  add_guide_point(picture, {50000, 60000}, {0, 12345});
  const std::vector<Stroke> strokes = all_of<Stroke>(picture);
  REQUIRE(strokes.size() == 2);
  CHECK(reach_of(strokes[0].steps) == Box{{48500, 58500}, {51500, 61500}});
  CHECK(strokes[0].pen.width_um == 200);
  CHECK(reach_of(strokes[1].steps) == Box{{47000, 60000}, {53000, 60000}});
  CHECK(fills_reach(picture) == Box{{49550, 59550}, {50450, 60450}});
}

TEST_CASE("a guide point on a slanting row keeps its place and turns only its line") {
  Drawing picture;
  add_guide_point(picture, {50000, 60000}, {3, 4});
  const std::vector<PathStep> line = all_of<Stroke>(picture).at(1).steps;
  CHECK(line[0].to == Spot{50000 + 2400, 60000 - 1800});
  CHECK(line[1].to == Spot{50000 - 2400, 60000 + 1800});
}

TEST_CASE("a staple mark is 12 mm from leg to leg, whichever way its row runs") {
  int looked_at = 0;
  for (const Spot row : {Spot{1, 0}, Spot{0, -1}, Spot{5, 3}, Spot{-700, 11}}) {
    Drawing picture;
    add_staple_mark(picture, {50000, 60000}, row, 12000);
    const std::vector<Stroke> strokes = all_of<Stroke>(picture);
    REQUIRE(strokes.size() == 2);
    const Spot first = strokes[0].steps[0].to;
    const Spot last = strokes[0].steps[1].to;
    CHECK(std::fabs(apart(first, last) - 12000.0) < 1.5);
    CHECK(first.x + last.x == 100000);
    CHECK(first.y + last.y == 120000);
    CHECK(all_of<Fill>(picture).size() == 2);
    ++looked_at;
  }
  CHECK(looked_at == 4);
}

TEST_CASE("the hinge side is barred inward every 6 mm, and no ink lies outside the piece") {
  Drawing picture;
  add_hinge_edge(picture, {0, 1000}, {60000, 1000});
  const std::vector<Stroke> strokes = all_of<Stroke>(picture);
  REQUIRE(strokes.size() == 2);
  CHECK(strokes[0].steps[0].to.y - strokes[0].pen.width_um / 2 == 1000);
  REQUIRE(strokes[1].steps.size() == 20);
  CHECK(strokes[1].steps[0].to == Spot{3000, 1000});
  CHECK(strokes[1].steps[2].to == Spot{9000, 1000});
  CHECK(reach_of(strokes[1].steps) == Box{{3000, 1000}, {57000, 4500}});
}

TEST_CASE("an edge walked the other way has its bars and teeth on the other side") {
  Drawing hinge;
  add_hinge_edge(hinge, {60000, 1000}, {0, 1000});
  CHECK(reach_of(all_of<Stroke>(hinge).at(1).steps).low.y == 1000 - 3500);
  Drawing fly;
  add_fly_edge(fly, {60000, 1000}, {0, 1000});
  CHECK(reach_of(all_of<Stroke>(fly).at(0).steps) == Box{{0, 1000 - 2500}, {60000, 1000}});
}

TEST_CASE("the fly side touches the edge with its tips only, and its ends are tips") {
  Drawing picture;
  add_fly_edge(picture, {0, 0}, {0, 21000});
  const std::vector<PathStep> steps = all_of<Stroke>(picture).at(0).steps;
  REQUIRE(steps.size() == 9);  // Four teeth of 5.25 mm.
  int tips = 0;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    CHECK(steps[i].to.x == (i % 2 == 0 ? 0 : -2500));
    CHECK(steps[i].to.y == static_cast<std::int64_t>(i) * 2625);
    if (steps[i].to.x == 0) ++tips;
  }
  CHECK(tips == 5);
}

TEST_CASE("the shortest edge still has one tooth, one without length is our own mistake") {
  Drawing picture;
  add_fly_edge(picture, {0, 0}, {1000, 0});
  CHECK(all_of<Stroke>(picture).at(0).steps.size() == 3);
  const ClaimsCounted claims;
  add_fly_edge(picture, {5, 5}, {5, 5});
  CHECK(claims.broken() == 1);
  add_hinge_edge(picture, {5, 5}, {5, 5});
  CHECK(claims.broken() == 2);
}

TEST_CASE("FRONT is a bold word in an outline, FACE DOWN a white word on black") {
  const Box box{{0, 0}, {60000, 15000}};
  Drawing front;
  add_word_box(front, box, "FRONT");
  CHECK(reach_of(all_of<Stroke>(front).at(0).steps) == Box{{250, 250}, {59750, 14750}});
  CHECK(all_of<Text>(front).at(0).grey_permille == 0);
  CHECK(all_of<Text>(front).at(0).weight == Weight::bold);
  Drawing down;
  add_word_banner(down, box, "FACE DOWN");
  CHECK(fills_reach(down) == box);
  CHECK(all_of<Text>(down).at(0).grey_permille == 1000);
  CHECK(all_of<Text>(down).at(0).at == Spot{30000, (15000 - 7600) / 2});
}

TEST_CASE("the TOP arrow points to the top of the piece however the page is turned") {
  const Spot tips[] = {{50000, 62000}, {38000, 50000}, {50000, 38000}, {62000, 50000}};
  int looked_at = 0;
  for (int turns = 0; turns < 4; ++turns) {
    Drawing picture;
    add_top_arrow(picture, {50000, 50000}, 12000, turns);
    CHECK(all_of<Fill>(picture).at(0).steps.at(0).to == tips[turns]);
    const Spot word = all_of<Text>(picture).at(0).at;
    // Seen along the arrow the word is 2.5 mm to its right.
    const Spot right[] = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}};
    const Spot away{word.x - 50000, word.y - 50000};
    CHECK(away.x * right[turns].x + away.y * right[turns].y == 2500);
    CHECK(all_of<Text>(picture).at(0).words == "TOP");
    CHECK(all_of<Text>(picture).at(0).quarter_turns == turns);
    ++looked_at;
  }
  CHECK(looked_at == 4);
}
