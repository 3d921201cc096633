#include "engine/layout/edge_guides.h"

#include "engine/layout/run.h"
#include "tests/support/outlines.h"
#include "tests/support/random.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::layout;
using pouncemark::piece::EdgeRole;
using pouncemark::piece::Outline;
using pouncemark::tests::arched;
using pouncemark::tests::Corner;
using pouncemark::tests::distance_from;
using pouncemark::tests::edges_through;
using pouncemark::tests::five_edged;

namespace {

Outline panel_of(const std::vector<Corner>& corners) {
  return *piece::panel_outline(edges_through(corners));
}

std::vector<std::size_t> edges_with_rows(const Outline& outline) {
  std::vector<std::size_t> edges;
  for (std::size_t i = 0; i < outline.edges.size(); ++i) {
    if (outline.edges[i].role != EdgeRole::fly_side) edges.push_back(i);
  }
  return edges;
}

RunRule rule_of(const GuideLine& guide, Um spacing) {
  RunRule rule;
  rule.edge_length_um = guide.length_um;
  rule.kept_clear_start_um = guide.clear_start_um;
  rule.kept_clear_end_um = guide.clear_end_um;
  rule.spacing_um = spacing;
  return rule;
}

/// The places of all rows, 48 apart at most.
std::vector<Vec2> places(const std::vector<GuideLine>& guides) {
  std::vector<Vec2> all;
  for (const GuideLine& guide : guides) {
    const Result<Run> run = solve_run(rule_of(guide, 48'000));
    for (std::int64_t i = guide.first_is_shared ? 1 : 0; run && i < run->points(); ++i) {
      all.push_back(point_at(guide.line, from_um(run->station_um(i))));
    }
  }
  return all;
}

bool near(Vec2 a, Vec2 b) { return length(a - b) < 0.001; }

}  // namespace

TEST_CASE("a rectangle's rows meet in its corners, and a corner belongs to the hinge side") {
  const Outline panel = piece::panel_outline(690, 1420, true);
  const auto guides = guides_round(panel, 16'000, {3, 2, 0});
  const GuideLine& hinge = (*guides)[0];
  CHECK(hinge.length_um == 1'420'000);
  CHECK((hinge.clear_start_um == 16'000 && hinge.clear_end_um == 16'000));
  CHECK(!hinge.first_is_shared);
  CHECK(near(point_at(hinge.line, 16), {16, 16}));
  const GuideLine& top = (*guides)[1];
  CHECK((top.clear_start_um == 16'000 && top.clear_end_um == 16'000));
  CHECK(top.first_is_shared);
  CHECK(near(point_at(top.line, 16), {16, 1404}));
  CHECK((*guides)[2].first_is_shared);
}

TEST_CASE("without a row on the hinge side top and bottom own their corners") {
  const Outline panel = piece::panel_outline(690, 1420, true);
  const auto guides = guides_round(panel, 16'000, {2, 0});
  CHECK(!(*guides)[0].first_is_shared);
  CHECK(!(*guides)[1].first_is_shared);
}

TEST_CASE("a fly side never takes a row, wherever it is") {
  for (const bool at_left : {true, false}) {
    const Outline panel = piece::panel_outline(690, 1420, at_left);
    int refused = 0;
    for (std::size_t i = 0; i < 4; ++i) {
      const Result<GuideLine> guide = guide_along(panel.edges[i], 16'000);
      CHECK(guide.is_ok() == (panel.edges[i].role != EdgeRole::fly_side));
      if (!guide && guide.problem().code == ProblemCode::row_on_fly_side) ++refused;
    }
    CHECK(refused == 1);
    CHECK(!guides_round(panel, 16'000, {0, 1, 2, 3}).is_ok());
  }
}

TEST_CASE("on a five-edged panel every point keeps its margin and every corner is counted once") {
  const Outline panel = panel_of(five_edged());
  const auto guides = guides_round(panel, 18'000, edges_with_rows(panel));
  CHECK(guides->size() == 4);
  const std::vector<Vec2> all = places(*guides);
  int kept = 0;
  int twice = 0;
  for (std::size_t i = 0; i < all.size(); ++i) {
    double nearest = 1e9;
    for (const piece::Edge& edge : panel.edges) {
      nearest = std::fmin(nearest, distance_from(edge.line, all[i]));
    }
    if (std::fabs(nearest - 18) < 0.002) ++kept;
    for (std::size_t j = 0; j < i; ++j) twice += length(all[i] - all[j]) < 1 ? 1 : 0;
  }
  // source: counted by hand. Hinge side 1364 long inside: 30 points; bottom 864: 18 more; level top
  // 573 and slope 485 between their corners: 12 and 11 more.
  CHECK(all.size() == 71);
  CHECK(kept == 71);
  CHECK(twice == 0);
}

TEST_CASE("along an arched top the points keep their margin from the arc, rising or sinking") {
  for (const double rise : {120.0, -120.0, 5.0, -5.0}) {
    CAPTURE(rise);
    const Outline panel = panel_of(arched(rise));
    const auto guides = guides_round(panel, 16'000, {0, 1, 3});
    const GuideLine& top = (*guides)[2];
    const Result<Run> run = solve_run(rule_of(top, 48'000));
    int kept = 0;
    for (std::int64_t i = 0; i < run->points(); ++i) {
      const Vec2 place = point_at(top.line, from_um(run->station_um(i)));
      const bool own = std::fabs(distance_from(panel.edges[3].line, place) - 16) < 1e-6;
      const bool hinge = distance_from(panel.edges[0].line, place) > 15.999;
      const bool fly = distance_from(panel.edges[2].line, place) > 15.999;
      if (own && hinge && fly) ++kept;
    }
    CHECK(run->points() > 16);
    CHECK(kept == run->points());
    const Vec2 first = point_at(top.line, from_um(run->station_um(0)));
    CHECK(std::fabs(distance_from(panel.edges[0].line, first) - 16) < 0.001);
  }
}

TEST_CASE("a top that is half a circle carries its row from side to side") {
  // source: half a circle of radius 400 - 16, pi * 384 long.
  const Outline panel = panel_of(arched(400));
  const auto guides = guides_round(panel, 16'000, {0, 1, 3});
  CHECK(guides.is_ok());
  if (!guides) return;
  const GuideLine& top = (*guides)[2];
  CHECK(top.length_um == 1'206'372);
  CHECK((top.clear_start_um == 0 && top.clear_end_um == 0));
  CHECK((*guides)[0].clear_end_um == 0);
  CHECK(near(point_at(top.line, 0), {16, 1200}));
}

TEST_CASE("rounded corners entered to the micrometre carry the row round") {
  // source: a quarter circle of radius 50 rises 50 (1 - sqrt 1/2) = 14.6447 over its chord.
  for (const double rise : {14.644, 14.645, 14.646}) {
    CAPTURE(rise);
    const Outline panel = panel_of({{EdgeRole::hinge_side, {0, 950}},
                                    {EdgeRole::bottom, {0, 50}, rise},
                                    {EdgeRole::bottom, {50, 0}},
                                    {EdgeRole::fly_side, {600, 0}},
                                    {EdgeRole::top, {600, 1000}},
                                    {EdgeRole::top, {50, 1000}, rise}});
    const auto guides = guides_round(panel, 16'000, edges_with_rows(panel));
    CHECK(guides.is_ok());
    if (!guides) continue;
    int apart = 0;
    const std::vector<Vec2> all = places(*guides);
    for (std::size_t i = 0; i < all.size(); ++i) {
      for (std::size_t j = 0; j < i; ++j) apart += length(all[i] - all[j]) > 1 ? 1 : 0;
    }
    const auto count = static_cast<int>(all.size());
    CHECK(count > 40);
    CHECK(apart == count * (count - 1) / 2);
  }
}

TEST_CASE("a side written in two parts is one row after the other, its joint counted once") {
  const Outline panel = panel_of({{EdgeRole::hinge_side, {0, 1420}},
                                  {EdgeRole::hinge_side, {0, 700}},
                                  {EdgeRole::bottom, {0, 0}},
                                  {EdgeRole::fly_side, {690, 0}},
                                  {EdgeRole::top, {690, 1420}}});
  const auto guides = guides_round(panel, 16'000, {0, 1, 2, 4});
  CHECK(guides.is_ok());
  if (!guides) return;
  int shared = 0;
  for (const GuideLine& guide : *guides) shared += guide.first_is_shared ? 1 : 0;
  CHECK(shared == 3);
  // source: 720 - 16 and 700 - 16 at 48: 15 gaps each, 658 twice: 14 gaps each.
  CHECK(places(*guides).size() == 16 + 15 + 14 + 14);
}

TEST_CASE("an arc tighter than the row is in from the edge says so by its name") {
  const Outline panel = panel_of(arched(400));
  CHECK(guides_round(panel, 399'999, {3}).is_ok());
  const auto guides = guides_round(panel, 400'000, {3});
  CHECK(guides.problem().code == ProblemCode::row_off_the_piece);
  CHECK(guides.problem().where == "top");
  CHECK(guides.problem().found == "400 in");
}

TEST_CASE("a corner cut off by less than the row is in is passed over, its neighbours' rows meet") {
  struct Case {
    double cut;
    bool is_passed_over;
  };
  // source: the line 16 inside a cut of 45 degrees passes the corner (16, 16) when the cut's leg is
  // 32 - 16 times the root of 2, 9.3726.
  const Case cases[] = {{3.5, true}, {9.37, true}, {9.372, false}, {9.375, false}, {40, false}};
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.cut);
    const Outline panel = panel_of({{EdgeRole::hinge_side, {0, 1420}},
                                    {EdgeRole::bottom, {0, one.cut}},
                                    {EdgeRole::bottom, {one.cut, 0}},
                                    {EdgeRole::fly_side, {690, 0}},
                                    {EdgeRole::top, {690, 1420}}});
    const auto guides = guides_round(panel, 16'000, edges_with_rows(panel));
    CHECK(guides.is_ok());
    if (!guides) continue;
    CHECK((*guides)[1].is_passed_over == one.is_passed_over);
    const GuideLine& hinge = (*guides)[0];
    const GuideLine& bottom = (*guides)[2];
    if (one.is_passed_over) {
      CHECK(near(point_at(hinge.line, from_um(hinge.clear_start_um)), {16, 16}));
      CHECK(near(point_at(bottom.line, from_um(bottom.clear_start_um)), {16, 16}));
    }
    CHECK(bottom.first_is_shared);
    ++seen;
  }
  CHECK(seen == 5);
}

TEST_CASE("a rounded corner tighter than the row is in is passed over, a wider one carries it") {
  // source: a quarter circle of radius r rises r (1 - sqrt 1/2) over its chord.
  int seen = 0;
  for (const double r : {5.0, 15.0, 50.0}) {
    CAPTURE(r);
    const double rise = std::round(r * (1 - std::sqrt(0.5)) * 1000) / 1000;
    const Outline panel = panel_of({{EdgeRole::hinge_side, {0, 1420}},
                                    {EdgeRole::bottom, {0, r}, rise},
                                    {EdgeRole::bottom, {r, 0}},
                                    {EdgeRole::fly_side, {690, 0}},
                                    {EdgeRole::top, {690, 1420}}});
    const auto guides = guides_round(panel, 16'000, edges_with_rows(panel));
    CHECK(guides.is_ok());
    if (!guides) continue;
    CHECK((*guides)[1].is_passed_over == (r < 16));
    ++seen;
  }
  CHECK(seen == 3);
}

TEST_CASE("a corner rounded by short straight edges is passed over edge by edge") {
  // source: places on a quarter circle of 40 about (40, 40), by sine and cosine, to the micrometre.
  const Outline panel = panel_of({{EdgeRole::hinge_side, {0, 1420}},
                                  {EdgeRole::bottom, {0, 40}},
                                  {EdgeRole::bottom, {3.045, 24.693}},
                                  {EdgeRole::bottom, {11.716, 11.716}},
                                  {EdgeRole::bottom, {24.693, 3.045}},
                                  {EdgeRole::bottom, {40, 0}},
                                  {EdgeRole::fly_side, {690, 0}},
                                  {EdgeRole::top, {690, 1420}}});
  struct Case {
    Um in_um;
    int passed_over;
  };
  int seen = 0;
  for (const Case& one : {Case{16'000, 0}, Case{39'000, 0}, Case{45'000, 4}, Case{60'000, 4}}) {
    CAPTURE(one.in_um);
    const auto guides = guides_round(panel, one.in_um, edges_with_rows(panel));
    CHECK(guides.is_ok());
    if (!guides) continue;
    int passed_over = 0;
    for (const GuideLine& guide : *guides) passed_over += guide.is_passed_over ? 1 : 0;
    CHECK(passed_over == one.passed_over);
    const double in = from_um(one.in_um);
    const GuideLine& hinge = (*guides)[0];
    const Vec2 corner = point_at(hinge.line, from_um(hinge.clear_start_um));
    CHECK(near(corner, {in, in}) == (one.passed_over > 0));
    ++seen;
  }
  CHECK(seen == 4);
}

TEST_CASE("a panel too narrow for its rows is not made to fit by passing over its ends") {
  const Outline narrow = piece::panel_outline(31.9, 1420, true);
  const auto guides = guides_round(narrow, 16'000, {3, 2, 0});
  CHECK(guides.is_ok());
  if (!guides) return;
  CHECK(!(*guides)[1].is_passed_over);
  const GuideLine& top = (*guides)[1];
  CHECK(solve_run(rule_of(top, 48'000)).problem().code == ProblemCode::row_too_short);
}

TEST_CASE("a panel too narrow for its rows says so even where its sides are not quite parallel") {
  int seen = 0;
  for (const double lean : {1.0, -1.0, 0.001}) {
    const Outline narrow = panel_of({{EdgeRole::hinge_side, {0, 1420}},
                                     {EdgeRole::bottom, {0, 0}},
                                     {EdgeRole::fly_side, {30, 0}},
                                     {EdgeRole::top, {30 + lean, 1420}}});
    const auto guides = guides_round(narrow, 16'000, edges_with_rows(narrow));
    CHECK(guides.is_ok());
    if (!guides) continue;
    for (const GuideLine& guide : *guides) CHECK(!guide.is_passed_over);
    CHECK(solve_run(rule_of((*guides)[1], 48'000)).problem().code == ProblemCode::row_too_short);
    ++seen;
  }
  CHECK(seen == 3);
}
