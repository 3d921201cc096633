#include "engine/solve/rows_stop.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "engine/solve/solve.h"
#include "engine/solve/sums.h"
#include "tests/support/jobs.h"
#include "tests/support/rows.h"
#include "tests/support/sum_reading.h"

using namespace pouncemark;
using namespace pouncemark::solve;
using pouncemark::tests::findings_of;
using pouncemark::tests::panel_job;
using pouncemark::tests::row_of;

namespace {

job::Job stopping(Um stop_um, const std::string& hinge = "left") {
  job::Job job = panel_job(690, 1'420, hinge);
  job.panels[0].rows_stop_um = stop_um;
  return job;
}

/// 800 wide, 1200 high; the top is one arc, or two edges that meet at 500 from the hinge side.
job::Job arched(Um stop_um) {
  job::Job job = stopping(stop_um);
  job.panels[0].outline = {{"hinge_side", {0, 1'200'000}, 0, {}},
                           {"bottom", {0, 0}, 0, {}},
                           {"fly_side", {800'000, 0}, 0, {}},
                           {"top", {800'000, 1'200'000}, 120'000, {}}};
  return job;
}

job::Job two_tops(Um stop_um) {
  job::Job job = stopping(stop_um);
  job.panels[0].outline = {{"hinge_side", {0, 1'200'000}, 0, {}},
                           {"bottom", {0, 0}, 0, {}},
                           {"fly_side", {900'000, 0}, 0, {}},
                           {"top", {900'000, 900'000}, 0, {}},
                           {"top", {500'000, 1'200'000}, 0, {}}};
  return job;
}

/// A bay whose cloth has to give more than the limit, so that a row past its stop is said.
job::Job tight(std::optional<Um> stop_um) {
  job::Job job = panel_job(480, 1'420, "left");
  job.panels[0].rows_stop_um = stop_um;
  job::Bay bay;
  bay.code = "B1";
  bay.chord_um = 400'000;
  bay.rise_um = 120'000;
  bay.face = "hollow";
  bay.holds = "P1";
  job.bays.push_back(bay);
  return job;
}

bool is_there(const Results& results, const std::string& code) {
  return !row_of(results, code, RowKind::stitch).code.empty();
}

}  // namespace

TEST_CASE("top and bottom rows stop where they are told, points and stitches, from either hinge") {
  for (const std::string hinge : {"left", "right"}) {
    CAPTURE(hinge);
    const Results results = solve::solve(stopping(302'500, hinge));
    int rows = 0;
    for (const std::string code : {"P1 top", "P1 bottom"}) {
      for (const RowKind kind : {RowKind::point, RowKind::stitch}) {
        const Row row = row_of(results, code, kind);
        CHECK(row.run.first_um() == 16'000);
        CHECK(row.run.last_um() == 302'500);
        CHECK(row.stops_um == 302'500);
        CHECK(point_um(row, row.run.points() - 1).x == (hinge == "left" ? 302'500 : 387'500));
        ++rows;
      }
    }
    CHECK(rows == 4);
    // 286.5 in gaps of 48 at most, and in stitches of 5.5.
    CHECK(row_of(results, "P1 top", RowKind::point).run.gaps == 6);
    CHECK(row_of(results, "P1 top", RowKind::stitch).run.gaps == 53);
    CHECK(row_of(results, "P1 hinge", RowKind::stitch).run.last_um() == 1'404'000);
    CHECK(row_of(results, "P1 hinge", RowKind::stitch).stops_um == 0);
  }
}

TEST_CASE("a stop where the rows end anyway changes nothing; one micrometre before it does") {
  const Results plain = solve::solve(panel_job(690, 1'420, "left"));
  for (const Um stop : {674'000, 690'000, 5'000'000}) {
    CAPTURE(stop);
    const Results results = solve::solve(stopping(stop));
    CHECK(row_of(results, "P1 top", RowKind::point).run.last_um() == 674'000);
    CHECK(row_of(results, "P1 top", RowKind::point).stops_um == 0);
    CHECK(results.totals.stitch_holes == plain.totals.stitch_holes);
  }
  const Results cut = solve::solve(stopping(673'999));
  CHECK(row_of(cut, "P1 top", RowKind::point).run.last_um() == 673'999);
}

TEST_CASE(
    "a stop at the first point leaves no row and is a stop; shorter than a gap it is warned") {
  const Results none = solve::solve(stopping(16'000));
  const auto unlaid = findings_of(none, "row_not_laid");
  REQUIRE(unlaid.size() == 1);
  CHECK(unlaid[0].severity == Severity::stop);
  CHECK(unlaid[0].sentence.find("begins at 16") != std::string::npos);
  CHECK_FALSE(is_there(none, "P1 top"));
  CHECK(is_there(none, "P1 hinge"));
  struct Case {
    Um stop;
    std::size_t soon;
  };
  int cases = 0;
  for (const Case& one : {Case{16'001, 1}, Case{63'999, 1}, Case{64'000, 0}, Case{302'500, 0}}) {
    CAPTURE(one.stop);
    CHECK(findings_of(solve::solve(stopping(one.stop)), "rows_stop_soon").size() == one.soon);
    ++cases;
  }
  CHECK(cases == 4);
  CHECK(findings_of(solve::solve(stopping(16'001)), "rows_stop_soon")[0].at.size() == 2);
}

TEST_CASE("a stop beyond the rows is said; without top and bottom rows there is nothing to say") {
  CHECK(findings_of(solve::solve(stopping(674'000)), "rows_stop_beyond").empty());
  const auto beyond = findings_of(solve::solve(stopping(674'500)), "rows_stop_beyond");
  REQUIRE(beyond.size() == 1);
  CHECK(beyond[0].severity == Severity::warn);
  CHECK(beyond[0].figure == "674.5");
  job::Job job = stopping(674'500);
  job.panels[0].rows_on = {"hinge_side"};
  CHECK(findings_of(solve::solve(job), "rows_stop_beyond").empty());
}

TEST_CASE("on an arched edge a stop is measured along the arc and the row ends square in from it") {
  // source: R 726.667 of chord 800 and rise 120; the row 16 farther in has R 710.667, so that 302.5
  // along the edge is 302.5 × 710.667 ÷ 726.667 = 295.839 along the row.
  const Results results = solve::solve(arched(302'500));
  const Row top = row_of(results, "P1 top", RowKind::point);
  CHECK(top.run.last_um() == 295'839);
  CHECK(row_of(results, "P1 bottom", RowKind::point).run.last_um() == 302'500);
  CHECK(ends_from_hinge_um(results.pieces[0], top) <= 302'500);
  CHECK(ends_from_hinge_um(results.pieces[0], top) >= 302'498);
}

TEST_CASE("over a top of two edges the tape goes on; an edge past the stop takes no row") {
  // source: the first top edge is 500 long, the second 500 (3-4-5 from 400 by 300).
  const Results second = solve::solve(two_tops(700'000));
  CHECK(row_of(second, "P1 top", RowKind::point).stops_um +
            row_of(second, "P1 top 2", RowKind::point).stops_um ==
        700'000);
  int cut = 0;
  for (const std::string code : {"P1 top", "P1 top 2"}) {
    const Row row = row_of(second, code, RowKind::point);
    REQUIRE_FALSE(row.code.empty());
    if (row.stops_um > 0) {
      CHECK(row.run.last_um() == 200'000);
      CHECK(ends_from_hinge_um(second.pieces[0], row) == 700'000);
      ++cut;
    } else {
      CHECK(row.run.last_um() > 400'000);
    }
  }
  CHECK(cut == 1);
  const Results first = solve::solve(two_tops(300'000));
  CHECK(is_there(first, "P1 top") != is_there(first, "P1 top 2"));
  CHECK(findings_of(first, "row_not_laid").empty());
  CHECK(findings_of(first, "rows_stop_beyond").empty());
}

TEST_CASE("a row that stops at or before the place where the cloth wants to move is not warned") {
  const Results on = solve::solve(tight({}));
  REQUIRE(on.bays[0].stop_um);
  const Um stop = *on.bays[0].stop_um;
  CHECK(findings_of(on, "row_in_slip_zone").size() == 1);
  CHECK(findings_of(solve::solve(tight(stop)), "row_in_slip_zone").empty());
  CHECK(findings_of(solve::solve(tight(stop - stop % 500)), "row_in_slip_zone").empty());
  CHECK(findings_of(solve::solve(tight(stop + 1)), "row_in_slip_zone").size() == 1);
}

TEST_CASE("thread, holes and metres follow the stop and come back without it") {
  const Results plain = solve::solve(panel_job(690, 1'420, "left"));
  const Results cut = solve::solve(stopping(302'500));
  // Two rows of 658 became two of 286.5.
  CHECK(plain.totals.row_um - cut.totals.row_um == 2 * (658'000 - 286'500));
  CHECK(plain.totals.panel_points - cut.totals.panel_points == 2 * (14 - 6));
  job::Job job = stopping(302'500);
  job.panels[0].rows_stop_um.reset();
  CHECK(solve::solve(job).totals.stitch_holes == plain.totals.stitch_holes);
}

TEST_CASE("the sums of a stopped row begin with the stop, also on arcs and over two edges") {
  int lines = 0;
  for (const job::Job& job : {stopping(302'500), arched(302'500), two_tops(700'000)}) {
    const Results results = solve::solve(job);
    for (const Row& row : results.rows) {
      if (row.stops_um == 0) continue;
      for (const Sum& sum : {last_sum(job, results, row), points_sum(job, results, row),
                             spacing_sum(job, results, row)}) {
        for (const std::string& line : sum.numbers) {
          CAPTURE(row.code);
          CHECK(tests::fault_in_line(line) == "");
          ++lines;
        }
      }
    }
  }
  CHECK(lines > 40);
  const job::Job job = stopping(302'500);
  const Results results = solve::solve(job);
  const Sum sum = points_sum(job, results, row_of(results, "P1 top", RowKind::point));
  CHECK(sum.numbers.front() == "302.5 − 16 = 286.5");
}
