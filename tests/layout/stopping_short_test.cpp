#include "engine/layout/edge_guides.h"
#include "tests/support/case_table.h"
#include "tests/support/outlines.h"
#include "tests/support/random.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::layout;
using pouncemark::piece::EdgeRole;
using pouncemark::piece::Outline;
using pouncemark::tests::arched;
using pouncemark::tests::Dice;
using pouncemark::tests::distance_from;
using pouncemark::tests::edges_through;
using pouncemark::tests::every_way;
using pouncemark::tests::random_convex;

// Rows that stop short of the row they would have met, on panels of every shape.
namespace {

std::vector<std::size_t> edges_with_rows(const Outline& outline) {
  std::vector<std::size_t> edges;
  for (std::size_t i = 0; i < outline.edges.size(); ++i) {
    if (outline.edges[i].role != EdgeRole::fly_side) edges.push_back(i);
  }
  return edges;
}

Segment run_of(const GuideLine& guide) {
  const double first = from_um(guide.clear_start_um);
  const double last = from_um(guide.length_um - guide.clear_end_um);
  return {point_at(guide.line, first), point_at(guide.line, last), 0};
}

struct Seen {
  int corners = 0;  ///< rows that stop short and are long enough to be laid
  int kept = 0;     ///< of these: as far away as told, and not a hair farther
  int shared = 0;
};

/// Compares the rows that stop short with those that share, corner by corner.
Seen look_at(const Outline& outline, Um in_um, Um clear_um) {
  const std::vector<std::size_t> edges = edges_with_rows(outline);
  const auto sharing = guides_round(outline, in_um, edges);
  const auto stopping = guides_round(outline, in_um, edges, clear_um);
  Seen seen;
  if (!sharing || !stopping) return seen;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    const GuideLine& stops = (*stopping)[i];
    if (stops.first_is_shared) ++seen.shared;
    if (!(*sharing)[i].first_is_shared) continue;
    if (stops.length_um - stops.clear_start_um - stops.clear_end_um < 0) continue;
    ++seen.corners;
    const Vec2 place = point_at(stops.line, from_um(stops.clear_start_um));
    const Vec2 nearer = point_at(stops.line, from_um(stops.clear_start_um - 1));
    double least = 1e9;
    double before = 1e9;
    for (std::size_t j = 0; j < edges.size(); ++j) {
      const Vec2 corner = point_at((*sharing)[i].line, from_um((*sharing)[i].clear_start_um));
      // The row that owns the corner passes through it.
      if (j == i || distance_from(run_of((*sharing)[j]), corner) > 0.002) continue;
      least = std::min(least, distance_from(run_of((*sharing)[j]), place));
      before = std::min(before, distance_from(run_of((*sharing)[j]), nearer));
    }
    if (least >= from_um(clear_um) - 0.0005 && before < from_um(clear_um) + 0.0005) ++seen.kept;
  }
  return seen;
}

}  // namespace

TEST_CASE("on 3,000 convex panels every row that stops short is as far away as told, no farther") {
  Dice dice(20'261'261);
  INFO(dice.words());
  Seen all;
  for (int i = 0; i < 3'000; ++i) {
    const auto outline = piece::panel_outline(edges_through(random_convex(dice)));
    const Um in_um = dice.between(0, 20'000);
    const Um clear_um = dice.between(1, 40'000);
    const Seen seen = look_at(*outline, in_um, clear_um);
    all.corners += seen.corners;
    all.kept += seen.kept;
    all.shared += seen.shared;
  }
  CHECK(all.corners > 5'000);
  CHECK(all.kept == all.corners);
  CHECK(all.shared == 0);
}

TEST_CASE("a panel turned, mirrored or begun elsewhere stops its rows at the same distances") {
  Dice dice(20'261'262);
  INFO(dice.words());
  int same = 0;
  for (int i = 0; i < 1'000; ++i) {
    const auto outline = piece::panel_outline(edges_through(random_convex(dice)));
    int agree = 0;
    std::vector<Um> first;
    for (const auto& [way, other] : every_way(*outline)) {
      std::vector<Um> clear;
      const auto guides = guides_round(other, 12'000, edges_with_rows(other), 15'000);
      for (const GuideLine& guide : *guides) clear.push_back(guide.clear_start_um);
      std::stable_sort(clear.begin(), clear.end());
      if (way == "as given") first = clear;
      bool holds = clear.size() == first.size();
      // A mirrored corner may round its micrometre the other way.
      for (std::size_t k = 0; holds && k < clear.size(); ++k) {
        holds = clear[k] - first[k] <= 1 && first[k] - clear[k] <= 1;
      }
      if (holds) ++agree;
    }
    if (agree == 4) ++same;
  }
  CHECK(same == 1'000);
}

TEST_CASE("a row under an arched top stops fifteen short of the hinge row's last hole") {
  int seen = 0;
  for (const double rise : {120.0, -120.0, 30.0, 0.0}) {
    const auto outline = piece::panel_outline(edges_through(arched(rise)));
    const std::vector<std::size_t> edges = edges_with_rows(*outline);
    const auto guides = guides_round(*outline, 16'000, edges, 15'000);
    CHECK(guides.is_ok());
    if (!guides) continue;
    const GuideLine& hinge = (*guides)[0];
    for (std::size_t i = 1; i < edges.size(); ++i) {
      const GuideLine& row = (*guides)[i];
      const Vec2 place = point_at(row.line, from_um(row.clear_start_um));
      CHECK(distance_from(run_of(hinge), place) >= 15.0 - 1e-6);
      CHECK(distance_from(run_of(hinge), place) < 15.002);
      ++seen;
    }
  }
  CHECK(seen == 8);
}

TEST_CASE("told to stop nothing short, rows share their corners as before") {
  const auto outline = piece::panel_outline(edges_through(arched(0)));
  const auto guides = guides_round(*outline, 16'000, edges_with_rows(*outline), 0);
  CHECK((*guides)[1].first_is_shared);
  const auto stopping = guides_round(*outline, 16'000, edges_with_rows(*outline), 1);
  CHECK(!(*stopping)[1].first_is_shared);
}
