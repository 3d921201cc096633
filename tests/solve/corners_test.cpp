#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "tests/support/rows.h"

#include <doctest/doctest.h>

#include <optional>
#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::solve;
using pouncemark::tests::findings_of;
using pouncemark::tests::panel_job;
using pouncemark::tests::row_of;

namespace {

job::Job stopping_short(const std::string& hinge_side, std::optional<Um> clear_um) {
  job::Job job = panel_job(690, 1420, hinge_side);
  job.panels[0].panel_in_um = 20'000;
  job.panels[0].corners = job::Corners::stop_short;
  job.panels[0].corner_clear_um = clear_um;
  return job;
}

/// A panel whose top meets the hinge side at an angle: the top's fly end is `drop_um` lower.
job::Job slanted(Um drop_um, bool is_lower) {
  job::Job job = stopping_short("left", 15'000);
  const Um fly_top = is_lower ? 1'400'000 - drop_um : 1'400'000 + drop_um;
  job.panels[0].outline = {{"hinge_side", {0, 1'400'000}, 0, {}},
                           {"bottom", {0, 0}, 0, {}},
                           {"fly_side", {900'000, 0}, 0, {}},
                           {"top", {900'000, fly_top}, 0, {}}};
  return job;
}

double away(const Row& from, const Row& to) {
  const PlaceUm place = point_um(from, 0);
  return distance_to(to.guide, from_um(to.run.first_um()), from_um(to.run.last_um()),
                     {from_um(place.x), from_um(place.y)});
}

}  // namespace

TEST_CASE("rows twenty in both ways have one hole at the corner, not two") {
  job::Job job = stopping_short("left", {});
  job.panels[0].corners = job::Corners::share_hole;
  const Results results = solve::solve(job);
  const Row top = row_of(results, "P1 top", RowKind::stitch);
  const Row hinge = row_of(results, "P1 hinge", RowKind::stitch);
  CHECK(top.first_is_shared);
  CHECK(point_um(top, 0) == point_um(hinge, hinge.run.points() - 1));
  CHECK(own_points(top) == top.run.points() - 1);
  CHECK(findings_of(results, "rows_cross").empty());
}

TEST_CASE("a row that stops short begins fifteen from the row it would cross and shares no hole") {
  struct Case {
    std::string hinge;
    std::optional<Um> clear_um;
    Um top_first_um;
  };
  const Case cases[] = {
      {"left", {}, 35'000},       // the assumed fifteen
      {"left", 15'000, 35'000},   //
      {"right", 15'000, 35'000},  // measured from the hinge side, wherever it is
      {"left", 9'001, 29'001},    //
      {"right", 40'000, 60'000},
  };
  int seen = 0;
  for (const Case& one : cases) {
    const Results results = solve::solve(stopping_short(one.hinge, one.clear_um));
    for (const char* code : {"P1 top", "P1 bottom"}) {
      CAPTURE(code);
      for (const RowKind kind : {RowKind::stitch, RowKind::point}) {
        const Row row = row_of(results, code, kind);
        CHECK(row.run.first_um() == one.top_first_um);
        CHECK(!row.first_is_shared);
        CHECK(own_points(row) == row.run.points());
        ++seen;
      }
    }
  }
  CHECK(seen == 20);
}

TEST_CASE(
    "a row that ends nearer than fifteen to the row it would cross is warned of, fifteen not") {
  CHECK(findings_of(solve::solve(stopping_short("left", 15'000)), "rows_cross").empty());
  const auto near = findings_of(solve::solve(stopping_short("left", 14'999)), "rows_cross");
  CHECK(near.size() == 1);
  CHECK(near[0].place == "panel P1, 2 rows");
  CHECK(near[0].severity == Severity::warn);
  CHECK(findings_of(solve::solve(stopping_short("right", 9'000)), "rows_cross")[0].figure == "9.0");
}

TEST_CASE("at a slanted corner the row stops where it is fifteen from the other row's holes") {
  // source: tan of the slant by its legs; a sharp corner pushes the row out to 15 / sin of its
  // angle.
  int seen = 0;
  for (const bool is_lower : {true, false}) {
    for (const Um drop : {Um{0}, Um{100'000}, Um{300'000}}) {
      const Results results = solve::solve(slanted(drop, is_lower));
      const Row top = row_of(results, "P1 top", RowKind::stitch);
      const Row hinge = row_of(results, "P1 hinge", RowKind::stitch);
      CAPTURE(drop);
      CHECK(away(top, hinge) >= 15.0 - 1e-3);
      CHECK(away(top, hinge) <= 15.0 + 2e-3);
      CHECK(findings_of(results, "rows_cross").empty());
      ++seen;
    }
  }
  CHECK(seen == 6);
}

TEST_CASE("a row too short to stop fifteen away is a stop and is not laid") {
  job::Job job = stopping_short("left", 15'000);
  job.panels[0].backing_um = {54'999, 1'420'000};
  const auto unlaid = findings_of(solve::solve(job), "row_not_laid");
  CHECK(unlaid.size() == 1);
  CHECK(unlaid[0].place == "panel P1, 2 rows");
  job.panels[0].backing_um = {55'000, 1'420'000};
  CHECK(findings_of(solve::solve(job), "row_not_laid").empty());
  CHECK(row_of(solve::solve(job), "P1 top", RowKind::stitch).run.points() == 1);
}

TEST_CASE("where the hinge side takes no row there is nothing to stop short of") {
  job::Job job = stopping_short("left", 15'000);
  job.panels[0].rows_on = std::vector<std::string>{"top", "bottom"};
  CHECK(row_of(solve::solve(job), "P1 top", RowKind::stitch).run.first_um() == 20'000);
}

TEST_CASE("edges that run smoothly into one another keep their shared hole") {
  job::Job job = stopping_short("left", 15'000);
  // A top that rounds the corner: the arc leaves the hinge side upright and meets the top level.
  job.panels[0].outline = {{"hinge_side", {0, 1'300'000}, 0, {}},
                           {"bottom", {0, 0}, 0, {}},
                           {"fly_side", {900'000, 0}, 0, {}},
                           {"top", {900'000, 1'400'000}, 0, {}},
                           {"top", {100'000, 1'400'000}, 29'289, {}}};
  const Results results = solve::solve(job);
  CHECK(row_of(results, "P1 top 2", RowKind::stitch).first_is_shared);
  CHECK(row_of(results, "P1 top", RowKind::stitch).first_is_shared);
  CHECK(!row_of(results, "P1 bottom", RowKind::stitch).first_is_shared);
}

TEST_CASE("an edge too short for a row is said in a note, and its neighbours share the corner") {
  job::Job job = panel_job(690, 1420, "left");
  job.panels[0].outline = {{"hinge_side", {0, 1'420'000}, 0, {}},
                           {"bottom", {0, 4'000}, 0, {}},
                           {"bottom", {4'000, 0}, 0, {}},
                           {"fly_side", {690'000, 0}, 0, {}},
                           {"top", {690'000, 1'420'000}, 0, {}}};
  const Results results = solve::solve(job);
  const auto notes = findings_of(results, "edge_passed_over");
  CHECK(notes.size() == 1);
  CHECK(notes[0].severity == Severity::note);
  CHECK(notes[0].place == "panel P1, edge P1 bottom");
  CHECK(row_of(results, "P1 bottom", RowKind::stitch).code.empty());
  const Row bottom = row_of(results, "P1 bottom 2", RowKind::stitch);
  CHECK(bottom.first_is_shared);
  const PlaceUm first = point_um(bottom, 0);
  CHECK((first.x == 16'000 && first.y == 16'000));
  job.panels[0].panel_in_um = 2'000;
  CHECK(findings_of(solve::solve(job), "edge_passed_over").empty());
}

TEST_CASE("rows that pass over one another in a narrow waist are warned of, at no distance") {
  job::Job job = panel_job(690, 1420, "left");
  const auto waist = [&job](Um left_um, Um right_um) {
    job.panels[0].outline = {{"hinge_side", {0, 1'400'000}, 0, {}},
                             {"hinge_side", {left_um, 700'000}, 0, {}},
                             {"fly_side", {0, 0}, 0, {}},
                             {"bottom", {700'000, 0}, 0, {}},
                             {"bottom", {right_um, 700'000}, 0, {}},
                             {"top", {700'000, 1'400'000}, 0, {}}};
    return findings_of(solve::solve(job), "rows_cross");
  };
  const auto narrow = waist(340'000, 360'000);
  CHECK(!narrow.empty());
  CHECK(narrow[0].figure == "0.0");
  CHECK(waist(250'000, 450'000).empty());
}

TEST_CASE("two rows side by side are not rows that cross, however near") {
  CHECK(findings_of(solve::solve(panel_job(690, 45, "left")), "rows_cross").empty());
  CHECK(row_of(solve::solve(panel_job(690, 45, "left")), "P1 top", RowKind::stitch).run.points() >
        2);
}
