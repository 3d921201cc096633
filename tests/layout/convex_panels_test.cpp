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

namespace {

/// The panel with every corner cut off, `cut` along its edges at most; a cut belongs to top or
/// bottom.
std::vector<tests::Corner> cut_corners(const std::vector<tests::Corner>& corners, Dice& dice) {
  std::vector<tests::Corner> cut;
  const std::size_t count = corners.size();
  for (std::size_t i = 0; i < count; ++i) {
    const Vec2 from = corners[i].from;
    const Vec2 before = corners[(i + count - 1) % count].from;
    const Vec2 after = corners[(i + 1) % count].from;
    const auto away = static_cast<double>(dice.between(500, 25'000)) / 1000.0;
    const auto beyond = static_cast<double>(dice.between(500, 25'000)) / 1000.0;
    cut.push_back({EdgeRole::top, from + unit(before - from) * away, 0});
    cut.push_back({corners[i].role, from + unit(after - from) * beyond, 0});
  }
  return cut;
}

struct Cut {
  int passed_over = 0;
  int points = 0;
  int kept = 0;
};

Cut lay_round(const Outline& outline, Um in_um) {
  std::vector<std::size_t> edges;
  for (std::size_t i = 0; i < outline.edges.size(); ++i) {
    if (outline.edges[i].role != EdgeRole::fly_side) edges.push_back(i);
  }
  Cut cut;
  const auto guides = guides_round(outline, in_um, edges);
  if (!guides) return cut;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    const GuideLine& guide = (*guides)[i];
    if (guide.is_passed_over) {
      ++cut.passed_over;
      continue;
    }
    const auto run = solve_run({guide.length_um, guide.clear_start_um, guide.clear_end_um, 48'000});
    if (!run) continue;
    for (std::int64_t k = 0; k < run->points(); ++k) {
      const Vec2 place = point_at(guide.line, from_um(run->station_um(k)));
      ++cut.points;
      if (keeps_margins(outline, edges[i], place, from_um(in_um))) ++cut.kept;
    }
  }
  return cut;
}

}  // namespace

TEST_CASE(
    "on 3,000 panels with their corners cut off every point keeps its margin from every edge") {
  Dice dice(20'261'265);
  INFO(dice.words());
  Cut all;
  int laid = 0;
  for (int i = 0; i < 3'000; ++i) {
    const auto outline =
        piece::panel_outline(edges_through(cut_corners(random_convex(dice), dice)));
    if (!outline) continue;
    const Cut cut = lay_round(*outline, dice.between(5'000, 25'000));
    all.passed_over += cut.passed_over;
    all.points += cut.points;
    all.kept += cut.kept;
    if (cut.points > 0) ++laid;
  }
  CHECK(laid > 2'900);
  CHECK(all.points > 50'000);
  CHECK(all.kept == all.points);
  CHECK(all.passed_over > 2'000);
}
