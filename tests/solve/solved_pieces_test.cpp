#include "engine/solve/solve.h"

#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <tuple>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::solve;
using pouncemark::tests::demo_job;
using pouncemark::tests::Dice;
using pouncemark::tests::random_job;

namespace {

bool same(Vec2 a, Vec2 b) { return a.x == b.x && a.y == b.y; }

bool same(const Row& a, const Row& b) {
  const auto told = [](const Row& row) {
    const layout::Run& run = row.run;
    return std::tuple(row.code, row.kind, row.place, row.piece, row.sleeve, row.in_from_edge_um,
                      row.asked_um, row.stitch_um, row.stack_um, row.climb_um, row.along_a_ply,
                      row.stack_is_typed, row.first_is_shared, run.start_um, run.length_um,
                      run.gaps, run.step_um, run.left_over_um, run.left_before_um, run.is_empty);
  };
  return told(a) == told(b) && same(a.guide.from, b.guide.from) && same(a.guide.to, b.guide.to) &&
         a.guide.rise == b.guide.rise;
}

bool same(const Finding& a, const Finding& b) {
  const auto told = [](const Finding& one) {
    return std::tuple(one.code, one.severity, one.place, one.figure, one.sentence, one.brief,
                      one.change, one.sum, one.piece, one.part, one.at);
  };
  return told(a) == told(b);
}

bool same(const Piece& a, const Piece& b) {
  const auto told = [](const Piece& piece) {
    return std::tuple(piece.code, piece.kind, piece.entry, piece.width_um, piece.length_um,
                      piece.row_middles_um, piece.running_totals_um, piece.likely_um,
                      piece.worst_um, piece.first_row, piece.row_count, piece.sleeves.size(),
                      piece.outline.edges.size());
  };
  return told(a) == told(b);
}

template <typename One>
bool same(const std::vector<One>& a, const std::vector<One>& b) {
  if (a.size() != b.size()) return false;
  for (std::size_t i = 0; i < a.size(); ++i) {
    if (!same(a[i], b[i])) return false;
  }
  return true;
}

bool same(const Results& a, const Results& b) {
  const auto told = [](const Totals& totals) {
    return std::tuple(totals.side_staples, totals.lap_staples, totals.side_rows, totals.lap_rows,
                      totals.panel_rows, totals.stitch_holes, totals.panel_points, totals.row_um);
  };
  return same(a.pieces, b.pieces) && same(a.rows, b.rows) && same(a.findings, b.findings) &&
         told(a.totals) == told(b.totals);
}

/// Any one thing an edit may change, small or of the whole job; often nothing at all.
void change_something(job::Job* job, Dice& dice) {
  const auto some = [&dice](const auto& list) {
    return static_cast<std::size_t>(dice.between(0, static_cast<std::int64_t>(list.size()) - 1));
  };
  const std::int64_t what = dice.between(0, 9);
  if (what == 0) job->needle_size = static_cast<int>(dice.between(60, 200));
  if (what == 1) job->spacing_is_clear_gap = !job->spacing_is_clear_gap;
  if (what == 2) job->foot_tolerance_um = dice.between(0, 5'000);
  if (what == 3 && !job->panels.empty()) job->panels.pop_back();
  if (what == 4 && job->sections.size() > 1) job->sections.erase(job->sections.begin());
  if (what == 5 && !job->panels.empty()) {
    job->panels[some(job->panels)].panel_in_um = dice.between(1'000, 60'000);
  }
  if (what < 6 || job->sections.empty()) return;
  job::Section& section = job->sections[some(job->sections)];
  if (what == 6) section.side_rows.staple.kept_clear_um[0] = dice.between(0, section.length_um);
  if (what == 7) section.lap_um = dice.between(1'000, 20'000);
  if (what == 8) section.widths_um[some(section.widths_um)] = dice.between(30'000, 200'000);
  if (what == 9) section.code += "a";
}

}  // namespace

TEST_CASE("pieces taken over from the job before give what a fresh solve gives") {
  Dice dice(41);
  int edits = 0;
  int taken_over = 0;
  int solved_anew = 0;
  for (int round = 0; round < 300; ++round) {
    job::Job job = round == 0 ? demo_job("harbour-ledger") : random_job(dice);
    SolvedPieces pieces = solve_pieces(job);
    for (int i = 0; i < 6; ++i) {
      const job::Job was_job = job;
      const SolvedPieces was = pieces;
      change_something(&job, dice);
      pieces = solve_pieces(job, was_job, was);
      INFO(dice.words() << ", round " << round << ", edit " << i);
      CHECK(same(put_together(job, pieces), solve::solve(job)));
      for (const auto& piece : pieces) {
        const bool is_old = std::find(was.begin(), was.end(), piece) != was.end();
        ++(is_old ? taken_over : solved_anew);
      }
      ++edits;
    }
  }
  CHECK(edits == 1'800);
  CHECK(taken_over > 500);
  CHECK(solved_anew > 500);
}

TEST_CASE("only the section that was changed is solved again, another needle changes all") {
  job::Job job = demo_job("orchard-year");
  const job::Job was_job = job;
  const SolvedPieces was = solve_pieces(job);
  REQUIRE(was.size() > 40);
  job.sections[7].side_rows.staple.kept_clear_um[0] += 1'000;
  const SolvedPieces now = solve_pieces(job, was_job, was);
  REQUIRE(now.size() == was.size());
  int anew = 0;
  for (std::size_t i = 0; i < now.size(); ++i) anew += now[i] == was[i] ? 0 : 1;
  CHECK(anew == 1);
  CHECK(now[7] != was[7]);
  job.needle_size += 10;
  const SolvedPieces all = solve_pieces(job, was_job, was);
  anew = 0;
  for (std::size_t i = 0; i < all.size(); ++i) anew += all[i] == was[i] ? 0 : 1;
  CHECK(anew == static_cast<int>(was.size()));
}
