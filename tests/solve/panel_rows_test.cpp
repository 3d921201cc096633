#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "tests/support/rows.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::solve;
using pouncemark::tests::Dice;
using pouncemark::tests::findings_of;
using pouncemark::tests::panel_job;
using pouncemark::tests::row_of;

namespace {

/// All own places of a kind, in order of place.
std::vector<PlaceUm> places(const Results& results, RowKind kind, Um mirrored_in) {
  std::vector<PlaceUm> all;
  for (const Row& row : results.rows) {
    if (row.kind != kind) continue;
    for (std::int64_t i = row.first_is_shared ? 1 : 0; i < row.run.points(); ++i) {
      PlaceUm place = point_um(row, i);
      if (mirrored_in > 0) place.x = mirrored_in - place.x;
      all.push_back(place);
    }
  }
  std::stable_sort(all.begin(), all.end(),
                   [](PlaceUm a, PlaceUm b) { return a.y != b.y ? a.y < b.y : a.x < b.x; });
  return all;
}

job::Job written_panel() {
  job::Job job = panel_job(1, 1, "left");
  job.panels[0].outline = {{"hinge_side", {0, 1'400'000}, 0, {}},
                           {"bottom", {0, 0}, 0, {}},
                           {"fly_side", {900'000, 0}, 0, {}},
                           {"top", {900'000, 1'000'000}, 0, {}},
                           {"top", {600'000, 1'400'000}, 0, {}}};
  return job;
}

}  // namespace

TEST_CASE("a panel has rows on hinge side, top and bottom, never on the fly side") {
  const Results results = solve::solve(panel_job(690, 1420, "left"));
  CHECK(results.rows.size() == 6);
  CHECK(results.totals.panel_rows == 3);
  int at_fly = 0;
  for (const Row& row : results.rows) {
    if (row.code == "P1 fly" || row.guide.from.x > 680) ++at_fly;
  }
  CHECK(at_fly == 0);
  CHECK(row_of(results, "P1 hinge", RowKind::point).run.points() > 2);
}

TEST_CASE(
    "a panel with its hinge at the right is the mirror of one with it at the left, point by "
    "point") {
  const Results left = solve::solve(panel_job(690, 1420, "left"));
  const Results right = solve::solve(panel_job(690, 1420, "right"));
  for (const RowKind kind : {RowKind::point, RowKind::stitch}) {
    const std::vector<PlaceUm> all = places(left, kind, 0);
    CHECK(all.size() > 50);
    CHECK(all == places(right, kind, 690'000));
  }
}

TEST_CASE("panels of any size mirror as many points on the same places") {
  Dice dice(20'260'181);
  INFO(dice.words());
  int same = 0;
  for (int i = 0; i < 200; ++i) {
    const Um wide = dice.between(40, 1'500);
    const Um high = dice.between(40, 2'400);
    const Results left = solve::solve(panel_job(wide, high, "left"));
    const Results right = solve::solve(panel_job(wide, high, "right"));
    const std::vector<PlaceUm> all = places(left, RowKind::stitch, 0);
    if (!all.empty() && all == places(right, RowKind::stitch, wide * 1'000)) ++same;
  }
  CHECK(same == 200);
}

TEST_CASE("the corner hole of two rows is one hole and is counted with the hinge side") {
  const Results results = solve::solve(panel_job(690, 1420, "left"));
  const Row hinge = row_of(results, "P1 hinge", RowKind::stitch);
  const Row top = row_of(results, "P1 top", RowKind::stitch);
  CHECK(point_um(hinge, hinge.run.gaps) == point_um(top, 0));
  CHECK(own_points(hinge) == hinge.run.points());
  CHECK(own_points(top) == top.run.points() - 1);
  const std::vector<PlaceUm> all = places(results, RowKind::stitch, 0);
  CHECK(std::adjacent_find(all.begin(), all.end()) == all.end());
  CHECK(static_cast<std::int64_t>(all.size()) == results.totals.stitch_holes);
}

TEST_CASE("only the rows that are asked for are laid") {
  job::Job job = panel_job(690, 1420, "left");
  job.panels[0].rows_on = {"top"};
  const Results top = solve::solve(job);
  CHECK(top.totals.panel_rows == 1);
  CHECK(!row_of(top, "P1 top", RowKind::stitch).first_is_shared);
  job.panels[0].rows_on = std::vector<std::string>{};
  CHECK(solve::solve(job).rows.empty());
}

TEST_CASE("a row asked for on the fly side is not laid and is a stop, the others are") {
  job::Job job = panel_job(690, 1420, "left");
  CHECK(findings_of(solve::solve(job), "fly_side_row").empty());
  job.panels[0].rows_on = {"fly_side", "hinge_side"};
  const Results results = solve::solve(job);
  CHECK(results.totals.panel_rows == 1);
  const auto findings = findings_of(results, "fly_side_row");
  CHECK(findings.size() == 1);
  CHECK(findings[0].place == "panel P1, fly side");
  CHECK(tests::stops_in(results) == 1);
}

TEST_CASE("a five-edged panel has a row on each of its four sewn edges, the second top named so") {
  const Results results = solve::solve(written_panel());
  CHECK(results.totals.panel_rows == 4);
  CHECK(row_of(results, "P1 top", RowKind::stitch).run.points() > 0);
  CHECK(row_of(results, "P1 top 2", RowKind::stitch).run.points() > 0);
  const std::vector<PlaceUm> all = places(results, RowKind::stitch, 0);
  CHECK(static_cast<std::int64_t>(all.size()) == results.totals.stitch_holes);
  CHECK(std::adjacent_find(all.begin(), all.end()) == all.end());
}

TEST_CASE("a rectangle written edge by edge has the points of the rectangle written short") {
  job::Job written = panel_job(1, 1, "left");
  written.panels[0].outline = {{"bottom", {50'000, -30'000}, 0, {}},
                               {"fly_side", {740'000, -30'000}, 0, {}},
                               {"top", {740'000, 1'390'000}, 0, {}},
                               {"hinge_side", {50'000, 1'390'000}, 0, {}}};
  const Results one = solve::solve(written);
  const Results other = solve::solve(panel_job(690, 1420, "left"));
  CHECK(places(one, RowKind::stitch, 0) == places(other, RowKind::stitch, 0));
  CHECK(one.totals.stitch_holes == other.totals.stitch_holes);
}

TEST_CASE("a panel that is all margin has no row, and each says why") {
  job::Job job = panel_job(690, 1420, "left");
  job.panels[0].panel_in_um = 345'000;
  CHECK(findings_of(solve::solve(job), "row_not_laid").empty());
  job.panels[0].panel_in_um = 345'001;
  const Results results = solve::solve(job);
  const auto findings = findings_of(results, "row_not_laid");
  CHECK(findings.size() == 1);
  CHECK(findings[0].sentence.find("margins meet") != std::string::npos);
  CHECK(results.totals.panel_rows == 1);
}

TEST_CASE("a hinge row farther in than the panel is wide is not laid beside the panel") {
  job::Job job = panel_job(40, 1420, "left");
  job.panels[0].panel_in_um = 40'002;
  const Results results = solve::solve(job);
  CHECK(results.rows.empty());
  CHECK(findings_of(results, "row_not_laid")[0].sentence.find("off the piece") !=
        std::string::npos);
  job.panels[0].panel_in_um = 20'000;
  CHECK(solve::solve(job).totals.panel_rows == 3);
}
