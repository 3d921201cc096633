#include "engine/base/number_text.h"
#include "engine/checks/sewing_rules.h"
#include "engine/solve/row_sewing.h"
#include "engine/solve/sewing.h"
#include "engine/solve/solve.h"
#include "engine/solve/sums.h"
#include "tests/support/jobs.h"
#include "tests/support/sum_reading.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <utility>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::solve;
using pouncemark::tests::demo_job;
using pouncemark::tests::Dice;
using pouncemark::tests::fault_in_line;
using pouncemark::tests::last_number;
using pouncemark::tests::random_job;
using pouncemark::tests::worked_out;

namespace {

/// The figure without its sign of uncertainty.
std::string bare(const std::string& figure) {
  return figure.rfind("±", 0) == 0 ? figure.substr(std::string("±").size()) : figure;
}

/// With a true minus.
std::string shown(Um um, int decimals) {
  const std::string text = mm_text(um < 0 ? -um : um, decimals);
  return mm_text(um, decimals) == text ? text : "−" + text;
}

/// Sums looked at, and what is wrong with them.
struct Looked {
  int sums = 0;
  std::string fault;

  void fails(const std::string& what, const Sum& sum, const std::string& words) {
    if (!fault.empty()) return;
    fault = what + ": " + words + " (figure " + sum.figure + ")";
    for (const std::string& line : sum.numbers) fault += " / " + line;
  }

  /// The figure is that of the results, every line is true, and the last one ends in the figure.
  void at(const std::string& what, const Sum& sum, const std::string& figure) {
    ++sums;
    if (sum.figure != figure) return fails(what, sum, "results say " + figure);
    if (sum.rule.empty() || sum.source.empty() || sum.numbers.empty()) {
      return fails(what, sum, "something is not said");
    }
    bool says_assumed = false;
    for (const std::string& line : sum.numbers) {
      const std::string wrong = fault_in_line(line);
      if (!wrong.empty()) fails(what, sum, wrong);
      if (line.find("assumed") != std::string::npos) says_assumed = true;
      if (line.find('-') != std::string::npos) fails(what, sum, "a hyphen for a minus");
    }
    if (says_assumed && !sum.rests_on_assumed) fails(what, sum, "assumed, and not said");
    const std::string& last = sum.numbers.back();
    const std::string end = bare(figure);
    if (last.size() < end.size() || last.substr(last.size() - end.size()) != end) {
      fails(what, sum, "the last line does not end in the figure");
    }
  }
};

void look_at_stitches(const job::Job& job, const Results& results, const Row& row, Looked* looked) {
  const std::string& code = row.code;
  const RowSewing sewing = row_sewing_of(job, results, row);
  looked->at(code + " thread", thread_sum(job, results, row),
             metres_text(thread_of(job, results, row).each_um(), 2));
  looked->at(code + " sheet left", sheet_left_sum(job, row),
             checks::percent_text(sewing.sheet_left_permille));
  if (sewing.stress) {
    looked->at(code + " stress across", stress_sum(job, row, true),
               mm_text(to_um(sewing.stress->across), 2));
    looked->at(code + " stress along", stress_sum(job, row, false),
               mm_text(to_um(sewing.stress->along), 2));
  }
  if (sewing.shear_out_mn) {
    looked->at(code + " shear-out", shear_out_sum(job, results, row),
               mm_text(*sewing.shear_out_mn, 1));
  }
  if (sewing.seam_mn_each_mm) {
    looked->at(code + " seam", seam_strength_sum(job, row), mm_text(*sewing.seam_mn_each_mm, 2));
  }
}

/// Thread and bobbins of the job.
void look_at_thread(const job::Job& job, const Results& results, Looked* looked) {
  const Sewing sewing = sewing_of(job, results);
  looked->at("thread", thread_each_sum(job, results), metres_text(sewing.thread_each_um, 2));
  looked->at("bobbin", bobbin_thread_sum(job), metres_text(sewing.bobbin.thread_um, 2));
  if (sewing.rows_per_bobbin) {
    looked->at("rows a bobbin", rows_per_bobbin_sum(job, results),
               count_text(*sewing.rows_per_bobbin));
  }
  for (const RowPlace place : {RowPlace::side, RowPlace::lap, RowPlace::panel}) {
    looked->at("bobbins", bobbin_fills_sum(job, results, place),
               count_text(sewing.fills_of(place)));
  }
  const auto guess = material::needle_guess(real_tex_thousandths(job));
  looked->at("needles to try", needle_guess_sum(job),
             std::to_string(guess.least) + " to " + std::to_string(guess.most));
}

void look_at_row(const job::Job& job, const Results& results, const Row& row, Looked* looked) {
  const layout::Run& run = row.run;
  const std::string& code = row.code;
  looked->at(code + " points", points_sum(job, results, row), count_text(run.points()));
  looked->at(code + " first", first_sum(job, results, row), shown(run.first_um(), 1));
  looked->at(code + " last", last_sum(job, results, row), mm_text(run.last_um(), 1));
  if (run.gaps > 0) {
    looked->at(code + " spacing", spacing_sum(job, results, row), mm_text(run.spacing_um(), 2));
  }
  if (run.gaps > 0 && is_clear_gap(job, row)) {
    looked->at(code + " clear gap", clear_gap_sum(job, results, row),
               shown(clear_gap_um(job, row), 2));
  }
  if (row.kind == RowKind::stitch) {
    const bool is_known = row.stack_is_typed || row.stack_um > 0;
    looked->at(code + " stack", stack_sum(job, results, row),
               is_known ? mm_text(row.stack_um, 2) : "not known");
  }
  if (row.kind == RowKind::stitch) look_at_stitches(job, results, row, looked);
  if (run.step_um == 0) return;
  looked->at(code + " left over", left_over_sum(job, results, row), mm_text(run.left_over_um, 2));
  if (run.last_gap_um() == run.left_over_um) {
    looked->at(code + " last gap", last_gap_sum(job, results, row), mm_text(run.last_gap_um(), 2));
  }
}

void look_at_rows(const job::Job& job, const Results& results, int piece, Looked* looked) {
  const Piece& found = results.pieces[static_cast<std::size_t>(piece)];
  for (const RowKind kind : {RowKind::staple, RowKind::stitch, RowKind::point}) {
    std::vector<const Row*> rows;
    std::int64_t points = 0;
    Um length = 0;
    for (int i = found.first_row; i < found.first_row + found.row_count; ++i) {
      const Row& row = results.rows[static_cast<std::size_t>(i)];
      if (row.kind != kind) continue;
      rows.push_back(&row);
      points += own_points(row);
      length += row.run.length_um;
    }
    if (rows.empty()) continue;
    looked->at("points together", points_together_sum(job, results, rows), count_text(points));
    if (kind == RowKind::staple) {
      looked->at("staple holes", staple_holes_sum(rows), count_text(2 * points));
    }
    if (kind == RowKind::stitch) {
      looked->at("sewing", sewing_sum(rows), metres_text(length, 2));
    }
  }
}

void look_at_section(const job::Job& job, const Results& results, int piece, Looked* looked) {
  const Piece& found = results.pieces[static_cast<std::size_t>(piece)];
  const auto count = static_cast<std::int64_t>(found.sleeves.size());
  looked->at("sleeves", sleeves_sum(job, results, piece), count_text(count));
  looked->at("laps", laps_sum(results, piece), count_text(count - 1));
  looked->at("width", width_sum(job, results, piece), short_mm_text(found.width_um, 1));
  looked->at("likely", likely_sum(job, results, piece), "±" + mm_text(found.likely_um, 1));
  looked->at("worst", worst_sum(job, results, piece), "±" + mm_text(found.worst_um, 1));
  std::int64_t side = 0;
  std::int64_t lap = 0;
  for (int i = found.first_row; i < found.first_row + found.row_count; ++i) {
    const Row& row = results.rows[static_cast<std::size_t>(i)];
    if (row.kind == RowKind::stitch) ++(row.place == RowPlace::lap ? lap : side);
  }
  looked->at("side rows", side_rows_sum(results, piece), count_text(side));
  looked->at("joining rows", joining_rows_sum(results, piece), count_text(lap));
  for (int i = 0; i < static_cast<int>(count); ++i) {
    const auto at = static_cast<std::size_t>(i);
    const Sleeve& sleeve = found.sleeves[at];
    looked->at("running total", running_total_sum(job, results, piece, i),
               short_mm_text(found.running_totals_um[at], 1));
    looked->at("blank", blank_sum(job, results, piece, i),
               short_mm_text(sleeve.blank.width_um, 1) + " × " + short_mm_text(found.length_um, 1));
    if (sleeve.blank.count == 1) {
      looked->at("fold", fold_sum(job, results, piece, i), short_mm_text(sleeve.blank.fold_um, 1));
    }
    if (at < found.row_middles_um.size()) {
      looked->at("middle", row_middle_sum(job, results, piece, i),
                 short_mm_text(found.row_middles_um[at], 1));
    }
  }
}

void look_at_totals(const Results& results, Looked* looked) {
  const Totals& totals = results.totals;
  const std::pair<Total, std::int64_t> counts[] = {
      {Total::side_staples, totals.side_staples},
      {Total::lap_staples, totals.lap_staples},
      {Total::staples, totals.side_staples + totals.lap_staples},
      {Total::side_rows, totals.side_rows},
      {Total::lap_rows, totals.lap_rows},
      {Total::panel_rows, totals.panel_rows},
      {Total::panel_points, totals.panel_points},
      {Total::stitch_holes, totals.stitch_holes},
  };
  for (const auto& [total, count] : counts) {
    looked->at("total", total_sum(results, total), count_text(count));
  }
  looked->at("sewing of all", total_sum(results, Total::sewing), metres_text(totals.row_um, 2));
}

Looked look_at(const job::Job& job) {
  Looked looked;
  const Results results = solve::solve(job);
  for (const Row& row : results.rows) look_at_row(job, results, row, &looked);
  for (int piece = 0; piece < static_cast<int>(results.pieces.size()); ++piece) {
    look_at_rows(job, results, piece, &looked);
    if (results.pieces[static_cast<std::size_t>(piece)].kind == PieceKind::section) {
      look_at_section(job, results, piece, &looked);
    }
  }
  look_at_totals(results, &looked);
  look_at_thread(job, results, &looked);
  return looked;
}

}  // namespace

TEST_CASE("every sum of the demo jobs is true as it is written") {
  int seen = 0;
  for (const char* name : {"marsh-lights", "harbour-ledger", "orchard-year"}) {
    CAPTURE(name);
    for (const bool clear_gap : {false, true}) {
      job::Job job = demo_job(name);
      job.spacing_is_clear_gap = clear_gap;
      const Looked looked = look_at(job);
      CHECK(looked.fault == "");
      CHECK(looked.sums > 200);
      ++seen;
    }
  }
  CHECK(seen == 6);
}

TEST_CASE("every sum of any job is true as it is written") {
  int seen = 0;
  int sums = 0;
  for (std::uint32_t seed = 1; seed <= 150; ++seed) {
    Dice dice(seed);
    INFO(dice.words());
    const Looked looked = look_at(random_job(dice));
    CHECK(looked.fault == "");
    sums += looked.sums;
    ++seen;
  }
  CHECK(seen == 150);
  CHECK(sums > 20'000);
}

TEST_CASE(
    "a row that begins before its edge, at a corner turned inward, is told with a true minus") {
  job::Job job = tests::panel_job(800, 1'200, "left");
  job.panels[0].outline = {
      {"hinge_side", {0, 1'200'000}, 0, {}}, {"bottom", {0, 0}, 0, {}},
      {"fly_side", {800'000, 0}, 0, {}},     {"top", {800'000, 600'000}, 0, {}},
      {"top", {400'000, 600'000}, 0, {}},    {"top", {400'000, 1'200'000}, 0, {}}};
  const Looked looked = look_at(job);
  CHECK(looked.fault == "");
  CHECK(looked.sums > 30);
  const Results results = solve::solve(job);
  int beyond = 0;
  for (const Row& row : results.rows) {
    if (row.run.first_um() >= 0) continue;
    CHECK(first_sum(job, results, row).figure == "−16.0");
    CHECK(points_sum(job, results, row).numbers[0].find(" + 16") != std::string::npos);
    ++beyond;
  }
  CHECK(beyond > 0);
}

TEST_CASE("a sum with a slip in it is caught by the reader") {
  struct Case {
    const char* line;
    bool is_true;
  };
  const Case cases[] = {
      {"2256 = 41 × 55 + 1, so 42 gaps", true},
      {"2256 = 41 × 55 + 1, so 43 gaps", false},
      {"2256 = 41 × 55 + 2, so 42 gaps", false},
      {"1200 = 20 × 60, so 21 gaps", false},
      {"2256 ÷ 42 gaps = 53.71", true},
      {"2256 ÷ 42 gaps = 53.72", false},
      {"50 × (2300 − 22 − 22) = 112,800", true},
      {"50 × (2300 − 22 + 22) = 112,800", false},
      {"60 + 12 assumed = 72", true},
      {"60 + 12 assumed = 73", false},
      {"√(14 × 1² + 13 × 0.5²) = ±4.2", true},
      {"√(14 × 1² + 13 × 0.5²) = ±4.3", false},
      {"2 × (120 − 0.5 − 0.25) + π × (0.5 + 0.25 ÷ 2) = 240.5", true},
      {"2 × (120 − 0.5 − 0.25) + π × (0.5 + 0.25 ÷ 2) = 240.6", false},
      {"800² ÷ (8 × 120) + 120 ÷ 2 = 726.667 radius", true},
      {"800² ÷ (8 × 120) + 120 ÷ 2 = 726.676 radius", false},
      {"2 + = 2", false},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.line);
    CHECK(fault_in_line(one.line).empty() == one.is_true);
    ++seen;
  }
  CHECK(seen == 17);
  CHECK(last_number("34 + 16 = 2,150 rows") == "2,150");
  CHECK(worked_out("4 × atan(2 × 120 ÷ 800)") == doctest::Approx(4 * std::atan(0.3)));
}
