#include "engine/solve/solve.h"

#include "engine/base/number_text.h"
#include "tests/support/jobs.h"
#include "tests/support/rows.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using namespace pouncemark::solve;
using pouncemark::tests::demo_job;
using pouncemark::tests::Dice;
using pouncemark::tests::row_of;

namespace {

Results demo(const std::string& name) { return solve::solve(demo_job(name)); }

bool same_row(const Row& a, const Row& b) {
  const bool named = a.code == b.code && a.kind == b.kind && a.piece == b.piece;
  const bool laid = a.run.start_um == b.run.start_um && a.run.length_um == b.run.length_um &&
                    a.run.gaps == b.run.gaps && a.run.step_um == b.run.step_um;
  return named && laid && a.guide.from.x == b.guide.from.x && a.guide.to.y == b.guide.to.y &&
         a.first_is_shared == b.first_is_shared;
}

bool same_results(const Results& a, const Results& b) {
  bool same = a.rows.size() == b.rows.size() && a.findings.size() == b.findings.size() &&
              a.pieces.size() == b.pieces.size() && a.totals.row_um == b.totals.row_um;
  for (std::size_t i = 0; same && i < a.rows.size(); ++i) same = same_row(a.rows[i], b.rows[i]);
  for (std::size_t i = 0; same && i < a.findings.size(); ++i) {
    same = a.findings[i].sentence == b.findings[i].sentence &&
           a.findings[i].place == b.findings[i].place;
  }
  return same;
}

}  // namespace

// source for the three jobs: independent arithmetic from the rules, done before the program.
TEST_CASE("Marsh Lights has 6,916 holes on 29 rows 37.804 m long, and 540 and 240 staples") {
  const Totals totals = demo("marsh-lights").totals;
  CHECK(totals.stitch_holes == 6'916);
  CHECK(metres_text(totals.row_um, 3) == "37.804");
  CHECK(totals.side_staples == 540);
  CHECK(totals.lap_staples == 240);
  CHECK(totals.side_rows == 18);
  CHECK(totals.lap_rows == 8);
  CHECK(totals.panel_rows == 3);
  CHECK(totals.panel_points == 58);
}

TEST_CASE("a sleeve row of Marsh Lights has 30 staples at 46.55 and 247 holes at 5.488") {
  const Results results = demo("marsh-lights");
  const Row staples = row_of(results, "1-05 left", RowKind::staple);
  CHECK(staples.run.points() == 30);
  CHECK(mm_text(staples.run.spacing_um(), 2) == "46.55");
  const Row stitches = row_of(results, "1-05 left", RowKind::stitch);
  CHECK(stitches.run.points() == 247);
  CHECK(mm_text(stitches.run.spacing_um(), 3) == "5.488");
  CHECK(own_points(row_of(results, "P1 hinge", RowKind::stitch)) == 254);
  CHECK(own_points(row_of(results, "P1 top", RowKind::stitch)) == 120);
  CHECK(own_points(row_of(results, "P1 bottom", RowKind::stitch)) == 120);
  CHECK(row_of(results, "P1 fly", RowKind::stitch).code == "");
}

TEST_CASE("Harbour Ledger has 105,203 holes on 285 rows 629.54 m long") {
  const Results results = demo("harbour-ledger");
  CHECK(results.totals.stitch_holes == 105'203);
  CHECK(metres_text(results.totals.row_um, 2) == "629.54");
  CHECK(results.totals.side_staples == 7'912);
  CHECK(results.totals.lap_staples == 3'698);
  CHECK(results.totals.side_rows == 184);
  CHECK(results.totals.lap_rows == 86);
  CHECK(results.totals.panel_rows == 15);
  CHECK(results.totals.panel_points == 380);
  const Row stitches = row_of(results, "4-19 right", RowKind::stitch);
  CHECK(stitches.run.points() == 377);
  CHECK(stitches.run.spacing_um() == 6'000);
}

TEST_CASE("the sections of Harbour Ledger are as wide as its bays need") {
  const Results results = demo("harbour-ledger");
  const Um widths[] = {948, 1200, 1100, 1320, 1100, 948, 860, 940, 1180, 940, 860};
  const std::int64_t holes[] = {0, 0, 0, 0, 0, 0, 651, 677, 757, 677, 651};
  CHECK(results.pieces.size() == 11);
  int right = 0;
  for (std::size_t i = 0; i < results.pieces.size(); ++i) {
    const Piece& piece = results.pieces[i];
    std::int64_t own = 0;
    for (int row = 0; row < piece.row_count; ++row) {
      const Row& one = results.rows[static_cast<std::size_t>(piece.first_row + row)];
      if (one.kind == RowKind::stitch) own += own_points(one);
    }
    const bool panel = piece.kind == PieceKind::panel;
    if (piece.width_um == widths[i] * 1'000 && (!panel || own == holes[i])) ++right;
  }
  CHECK(right == 11);
}

TEST_CASE("Orchard Year has 2,020,332 holes on 4,332 rows, counted without being made") {
  const Results results = demo("orchard-year");
  const Totals& totals = results.totals;
  CHECK(totals.stitch_holes == 2'020'332);
  CHECK(metres_text(totals.row_um, 2) == "10080.24");
  CHECK(totals.side_staples == 138'240);
  CHECK(totals.lap_staples == 66'240);
  CHECK(totals.side_rows + totals.lap_rows + totals.panel_rows == 4'332);
  CHECK(results.pieces[0].width_um == 1'986'000);
  CHECK(row_of(results, "60-24 right", RowKind::stitch).run.points() == 469);
}

TEST_CASE("the same job solved twice gives the same results, and the job is as it was") {
  Dice dice(20'260'171);
  INFO(dice.words());
  int same = 0;
  for (int i = 0; i < 300; ++i) {
    const job::Job job = tests::random_job(dice);
    const std::string before = job::save_job(job);
    if (same_results(solve::solve(job), solve::solve(job)) && job::save_job(job) == before) ++same;
  }
  CHECK(same == 300);
}

TEST_CASE("a job gives the same figures after it was saved and opened") {
  Dice dice(20'260'172);
  INFO(dice.words());
  int same = 0;
  for (int i = 0; i < 300; ++i) {
    const job::Job job = tests::random_job(dice);
    const auto opened = job::open_job(job::save_job(job));
    if (same_results(solve::solve(job), solve::solve(opened->job))) ++same;
  }
  CHECK(same == 300);
}

TEST_CASE("totals are the sums of the rows, and every row belongs to its piece") {
  Dice dice(20'260'173);
  INFO(dice.words());
  int right = 0;
  for (int i = 0; i < 300; ++i) {
    const Results results = solve::solve(tests::random_job(dice));
    std::int64_t holes = 0;
    std::int64_t others = 0;
    std::size_t rows = 0;
    for (const Row& row : results.rows) {
      (row.kind == RowKind::stitch ? holes : others) += own_points(row);
    }
    for (std::size_t p = 0; p < results.pieces.size(); ++p) {
      const Piece& piece = results.pieces[p];
      for (int r = 0; r < piece.row_count; ++r, ++rows) {
        const Row& row = results.rows[static_cast<std::size_t>(piece.first_row + r)];
        if (row.piece != static_cast<int>(p)) ++holes;
      }
    }
    const Totals& totals = results.totals;
    const bool staples = totals.side_staples + totals.lap_staples + totals.panel_points == others;
    if (totals.stitch_holes == holes && staples && rows == results.rows.size()) ++right;
  }
  CHECK(right == 300);
}

TEST_CASE("the points of any job lie on their pieces") {
  Dice dice(20'260'174);
  INFO(dice.words());
  int looked_at = 0;
  int outside = 0;
  for (int i = 0; i < 300; ++i) {
    const Results results = solve::solve(tests::random_job(dice));
    for (const Row& row : results.rows) {
      const Piece& piece = results.pieces[static_cast<std::size_t>(row.piece)];
      for (const std::int64_t at : {std::int64_t{0}, row.run.points() - 1}) {
        const PlaceUm place = point_um(row, at);
        const bool across = place.x >= 0 && place.x <= piece.width_um;
        ++looked_at;
        if (!across || place.y < 0 || place.y > piece.length_um) ++outside;
      }
    }
  }
  CHECK(outside == 0);
  CHECK(looked_at > 5'000);
}
