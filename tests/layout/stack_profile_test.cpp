#include "engine/layout/stack_profile.h"

#include "tests/support/random.h"
#include "tests/support/stars.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::layout;
using pouncemark::tests::any_star;
using pouncemark::tests::box;
using pouncemark::tests::Dice;
using pouncemark::tests::is_within;

namespace {

Um left_um(const ProfileStep& step, const std::vector<PlyShape>& plies) {
  return thickness_um(step.left, plies);
}
Um right_um(const ProfileStep& step, const std::vector<PlyShape>& plies) {
  return thickness_um(step.right, plies);
}

/// "0-8:1000 8-28:2600/1000 ..." in millimetres and micrometres; left/right where they differ.
std::string told(const std::vector<ProfileStep>& steps, const std::vector<PlyShape>& plies) {
  std::string words;
  for (const ProfileStep& step : steps) {
    if (!words.empty()) words += " ";
    words += std::to_string(std::llround(step.from)) + "-" + std::to_string(std::llround(step.to)) +
             ":" + std::to_string(left_um(step, plies));
    if (step.left != step.right) words += "/" + std::to_string(right_um(step, plies));
  }
  return words;
}

PlyShape arched_ply(Um thickness) {
  // 200 wide, 100 high, its top edge bulging 40 and its bottom edge hollow by 30.
  return {{{{0, 0}, {200, 0}, -30},
           {{200, 0}, {200, 100}, 0},
           {{200, 100}, {0, 100}, 40},
           {{0, 100}, {0, 0}, 0}},
          thickness};
}

}  // namespace

TEST_CASE("plies along a straight row begin and end where their edges cross it") {
  struct Case {
    const char* what;
    Segment path;
    double last;
    std::vector<PlyShape> plies;
    const char* steps;
  };
  const std::vector<PlyShape> two = {{box(0, 0, 100, 300), 1'000}, {box(8, 8, 88, 292), 800}};
  // A hem: the cloth again, less what lies 20 within it.
  PlyShape hem{box(8, 8, 88, 292), 800};
  const std::vector<Segment> hole = box(28, 28, 68, 272);
  hem.edges.insert(hem.edges.end(), hole.begin(), hole.end());
  const std::vector<PlyShape> hemmed = {two[0], two[1], hem};
  const Case cases[] = {
      {"through both", {{50, 0}, {50, 300}, 0}, 300, two, "0-8:1000 8-292:1800 292-300:1000"},
      {"walked back", {{50, 300}, {50, 0}, 0}, 300, two, "0-8:1000 8-292:1800 292-300:1000"},
      {"through a hem",
       {{50, 0}, {50, 300}, 0},
       300,
       hemmed,
       "0-8:1000 8-28:2600 28-272:1800 272-292:2600 292-300:1000"},
      {"within the hem all along",
       {{18, 0}, {18, 300}, 0},
       300,
       hemmed,
       "0-8:1000 8-292:2600 292-300:1000"},
      {"only part of the row", {{50, 0}, {50, 300}, 0}, 20, hemmed, "0-8:1000 8-20:2600"},
      {"along an edge", {{8, 0}, {8, 300}, 0}, 300, two, "0-8:1000 8-292:1000/1800 292-300:1000"},
      {"along an edge, back",
       {{8, 300}, {8, 0}, 0},
       300,
       two,
       "0-8:1000 8-292:1800/1000 292-300:1000"},
      {"a micrometre beside it",
       {{8.001, 0}, {8.001, 300}, 0},
       300,
       two,
       "0-8:1000 8-292:1800 292-300:1000"},
      {"beyond every ply", {{150, 0}, {150, 300}, 0}, 300, two, "0-300:0"},
      {"no ply at all", {{50, 0}, {50, 300}, 0}, 300, {}, "0-300:0"},
      {"no length", {{50, 0}, {50, 300}, 0}, 0, two, ""},
      {"touching a corner", {{0, 16}, {16, 0}, 0}, 16, two, "0-16:1000"},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.what);
    const auto steps = stack_profile(one.path, 0, one.last, one.plies);
    CHECK(told(steps, one.plies) == one.steps);
    ++seen;
  }
  CHECK(seen == 12);
}

TEST_CASE("two plies that share the edge a row runs along change places over it") {
  const std::vector<PlyShape> plies = {{box(0, 0, 50, 100), 300}, {box(50, 0, 90, 100), 500}};
  const auto steps = stack_profile({{50, 0}, {50, 100}, 0}, 0, 100, plies);
  CHECK(told(steps, plies) == "0-100:300/500");
  CHECK(steps[0].along == 3);
  // One ply of two outlines that touch there has no edge there.
  PlyShape whole{box(0, 0, 50, 100), 300};
  for (const Segment& edge : box(50, 0, 90, 100)) whole.edges.push_back(edge);
  const auto none = stack_profile({{50, 0}, {50, 100}, 0}, 0, 100, std::vector<PlyShape>{whole});
  REQUIRE(none.size() == 1);
  CHECK(none[0].along == 0);
  CHECK(none[0].left == 1);
}

TEST_CASE("a row through edges that bend") {
  const std::vector<PlyShape> ply = {arched_ply(700)};
  // The hollow bottom edge is 30 high in its middle, the bulging top edge 140.
  CHECK(told(stack_profile({{100, -10}, {100, 160}, 0}, 0, 170, ply), ply) ==
        "0-40:0 40-150:700 150-170:0");
  // Straight across: in and out of the bottom's arc; source: the circle's height at x = 50 is
  // √(181.667² − 50²) − 151.667 = 22.986.
  CHECK(told(stack_profile({{0, 22.986}, {200, 22.986}, 0}, 0, 200, ply), ply) ==
        "0-50:700 50-150:0 150-200:700");
  // Along the chord of the top edge, and along the edge itself.
  CHECK(told(stack_profile({{0, 100}, {200, 100}, 0}, 0, 200, ply), ply) == "0-200:700");
  const Segment top = ply[0].edges[2];
  const auto along = stack_profile(top, 0, length(top), ply);
  REQUIRE(along.size() == 1);
  CHECK(along[0].left == 1);
  CHECK(along[0].right == 0);
  const Segment inside = *parallel(top, 16);
  const auto within = stack_profile(inside, 0, length(inside), ply);
  REQUIRE(within.size() == 1);
  CHECK(within[0].left == 1);
  CHECK(within[0].along == 0);
}

TEST_CASE("the profile of any plies is what lies at each place of the path") {
  int looked = 0;
  for (std::uint32_t seed = 1; seed <= 400; ++seed) {
    Dice dice(seed);
    INFO(dice.words());
    std::vector<PlyShape> plies;
    const std::int64_t count = dice.between(1, 6);
    for (std::int64_t i = 0; i < count; ++i) plies.push_back(any_star(dice));
    const double y = static_cast<double>(dice.between(-80, 80));
    const double slant = static_cast<double>(dice.between(-60, 60));
    const double rise = dice.once_in(2) ? 0 : static_cast<double>(dice.between(-90, 90));
    const Segment path{{-130, y}, {130, y + slant}, rise};
    const double whole = length(path);
    const auto steps = stack_profile(path, 0, whole, plies);
    REQUIRE(!steps.empty());
    double at = 0;
    for (const ProfileStep& step : steps) {
      REQUIRE(step.from == doctest::Approx(at));
      REQUIRE(step.to > step.from);
      at = step.to;
      for (int part = 1; part <= 5; ++part) {
        const Vec2 place = point_at(path, step.from + (step.to - step.from) * part / 6.0);
        for (std::size_t i = 0; i < plies.size(); ++i) {
          const int within = is_within(plies[i], place);
          if (within < 0) continue;  // too near to an edge to say
          REQUIRE((step.left >> i & 1U) == static_cast<unsigned>(within));
          REQUIRE((step.right >> i & 1U) == static_cast<unsigned>(within));
          ++looked;
        }
      }
    }
    CHECK(at == doctest::Approx(whole));
  }
  CHECK(looked > 10'000);
}

TEST_CASE("one more ply never makes a stack thinner, at no place") {
  int looked = 0;
  for (std::uint32_t seed = 1; seed <= 200; ++seed) {
    Dice dice(seed);
    INFO(dice.words());
    std::vector<PlyShape> plies;
    const Segment path{{-130, 3}, {130, -11}, static_cast<double>(dice.between(-50, 50))};
    std::vector<ProfileStep> before = stack_profile(path, 0, 200, plies);
    for (int more = 0; more < 5; ++more) {
      std::vector<PlyShape> fewer = plies;
      plies.push_back(any_star(dice));
      const std::vector<ProfileStep> after = stack_profile(path, 0, 200, plies);
      std::size_t was = 0;
      for (const ProfileStep& step : after) {
        while (before[was].to <= step.from + 1e-6 && was + 1 < before.size()) ++was;
        CHECK(left_um(step, plies) >= left_um(before[was], fewer));
        CHECK(right_um(step, plies) >= right_um(before[was], fewer));
        ++looked;
      }
      before = after;
    }
  }
  CHECK(looked > 2'000);
}
