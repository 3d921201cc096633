#include "engine/layout/edge_guides.h"
#include "engine/layout/run.h"
#include "tests/support/case_table.h"
#include "tests/support/outlines.h"
#include "tests/support/random.h"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::layout;
using pouncemark::piece::EdgeRole;
using pouncemark::piece::Outline;
using pouncemark::tests::Dice;
using pouncemark::tests::distance_from;
using pouncemark::tests::edges_through;
using pouncemark::tests::every_way;
using pouncemark::tests::random_convex;

// Rows round 5,000 convex panels of three to nine edges, each also turned, mirrored and begun
// elsewhere.
namespace {

struct Laid {
  std::vector<std::int64_t> points;  ///< of each row, in the order of the edges from the hinge side
  int in_place = 0;
  int all = 0;
};

std::size_t hinge_of(const Outline& outline) {
  std::size_t at = 0;
  while (outline.edges[at].role != EdgeRole::hinge_side) ++at;
  return at;
}

bool keeps_margins(const Outline& outline, std::size_t own, Vec2 place, double margin) {
  for (std::size_t i = 0; i < outline.edges.size(); ++i) {
    const Segment& line = outline.edges[i].line;
    const double away = cross(unit(line.to - line.from), place - line.from);
    if (i == own && std::fabs(away - margin) > 1e-6) return false;
    if (away < margin - 0.001) return false;
  }
  return true;
}

Laid lay(const Outline& outline, Um in_um, Um spacing) {
  Laid laid;
  const std::size_t count = outline.edges.size();
  const std::size_t hinge = hinge_of(outline);
  for (std::size_t step = 0; step < count; ++step) {
    const std::size_t at = (hinge + step) % count;
    if (outline.edges[at].role == EdgeRole::fly_side) continue;
    const auto guides = guides_round(outline, in_um, {at});
    if (!guides) return {};
    const GuideLine& guide = (*guides)[0];
    const RunRule rule{guide.length_um, guide.clear_start_um, guide.clear_end_um, spacing};
    const Result<Run> run = solve_run(rule);
    if (!run) return {};
    laid.points.push_back(run->points());
    for (std::int64_t i = 0; i < run->points(); ++i) {
      const Vec2 place = point_at(guide.line, from_um(run->station_um(i)));
      ++laid.all;
      if (keeps_margins(outline, at, place, from_um(in_um))) ++laid.in_place;
    }
  }
  return laid;
}

}  // namespace

TEST_CASE("every point of 5,000 convex panels keeps its margin from its own edge and all others") {
  Dice dice(20'260'151);
  INFO(dice.words());
  int panels = 0;
  int points = 0;
  for (int i = 0; i < 5'000; ++i) {
    const Result<Outline> outline = piece::panel_outline(edges_through(random_convex(dice)));
    if (!outline) continue;
    const Um in_um = dice.between(0, 20'000);
    const Laid laid = lay(*outline, in_um, 48'000);
    if (laid.all > 0 && laid.in_place == laid.all) ++panels;
    points += laid.all;
  }
  CHECK(panels == 5'000);
  CHECK(points > 100'000);
}

TEST_CASE("a panel turned, mirrored or begun elsewhere has as many points on each row") {
  Dice dice(20'260'152);
  INFO(dice.words());
  int same = 0;
  for (int i = 0; i < 2'000; ++i) {
    const Result<Outline> outline = piece::panel_outline(edges_through(random_convex(dice)));
    const std::vector<std::int64_t> points = lay(*outline, 12'000, 7'300).points;
    int agree = 0;
    for (const auto& [way, other] : every_way(*outline)) {
      std::vector<std::int64_t> again = lay(other, 12'000, 7'300).points;
      // Mirrored, the walk from the hinge side meets the same edges from the other end.
      if (way == "mirrored") std::reverse(again.begin() + 1, again.end());
      if (again == points && !points.empty()) ++agree;
    }
    if (agree == 4) ++same;
  }
  CHECK(same == 2'000);
}

TEST_CASE("a panel turned by an angle of no round figure has as many points on each row") {
  Dice dice(20'260'153);
  INFO(dice.words());
  int same = 0;
  for (int i = 0; i < 2'000; ++i) {
    const Result<Outline> outline = piece::panel_outline(edges_through(random_convex(dice)));
    Outline turned = *outline;
    for (piece::Edge& edge : turned.edges) {
      // source: 3, 4, 5: a turn by 53.13 degrees without trigonometry.
      const auto turn = [](Vec2 p) {
        return Vec2{(3 * p.x - 4 * p.y) / 5, (4 * p.x + 3 * p.y) / 5};
      };
      edge.line = {turn(edge.line.from), turn(edge.line.to), edge.line.rise};
    }
    if (lay(turned, 12'000, 7'300).points == lay(*outline, 12'000, 7'300).points) ++same;
  }
  CHECK(same == 2'000);
}
