#include "engine/solve/sums.h"

#include "engine/base/number_text.h"
#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "tests/support/rows.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::solve;
using pouncemark::tests::demo_job;
using pouncemark::tests::panel_job;
using pouncemark::tests::row_of;
using pouncemark::tests::section_job;

namespace {

using Lines = std::vector<std::string>;

/// One sleeve with this staple rule.
job::Job ruled(Um length_mm, Um kept_mm, Um spacing_mm, job::SpacingRule rule,
               job::LeftOver left_over = job::LeftOver::end) {
  job::Job job = section_job({110}, 0);
  job.sections[0].length_um = length_mm * 1'000;
  job::StapleRow& row = job.sections[0].side_rows.staple;
  row.kept_clear_um = {kept_mm * 1'000, kept_mm * 1'000};
  row.spacing_um = spacing_mm * 1'000;
  row.rule = rule;
  row.left_over = left_over;
  return job;
}

using RowSum = Sum (*)(const job::Job&, const Results&, const Row&);

Sum of_staples(const job::Job& job, RowSum sum) {
  const Results results = solve::solve(job);
  return sum(job, results, row_of(results, "1-01 left", RowKind::staple));
}

std::vector<const Row*> rows_of_kind(const Results& results, RowKind kind) {
  std::vector<const Row*> rows;
  for (const Row& row : results.rows) {
    if (row.kind == kind) rows.push_back(&row);
  }
  return rows;
}

job::Job made(job::Make make, Um width_um, Um leaf_um, Um radius_um, Um flange_um) {
  job::Job job = section_job({120}, 0);
  job::Section& section = job.sections[0];
  section.widths_um = {width_um};
  section.make = make;
  section.leaf_um = leaf_um;
  section.fold_radius_um = radius_um;
  section.flange_um = flange_um;
  section.sewn_side = job::Side::left;
  return job;
}

}  // namespace

TEST_CASE("the sum of a row's points goes from the edge to the count, every number put in") {
  using job::LeftOver;
  using job::SpacingRule;
  struct Case {
    job::Job job;
    const char* figure;
    Lines numbers;
  };
  // source: each line worked out by hand
  const Case cases[] = {
      {ruled(2'300, 22, 55, SpacingRule::even),
       "43",
       {"2300 − 22 − 22 = 2256", "2256 = 41 × 55 + 1, so 42 gaps", "42 + 1 = 43"}},
      {ruled(2'400, 20, 60, SpacingRule::even),
       "41",
       {"2400 − 20 − 20 = 2360", "2360 = 39 × 60 + 20, so 40 gaps", "40 + 1 = 41"}},
      {ruled(1'240, 20, 60, SpacingRule::even),
       "21",
       {"1240 − 20 − 20 = 1200", "1200 = 20 × 60, so 20 gaps", "20 + 1 = 21"}},
      {ruled(2'400, 20, 60, SpacingRule::exact),
       "40",
       {"2400 − 20 − 20 = 2360", "2360 = 39 × 60 + 20, so 39 gaps", "39 + 1 = 40"}},
      {ruled(2'400, 20, 60, SpacingRule::exact, LeftOver::extra_point),
       "41",
       {"2400 − 20 − 20 = 2360", "2360 = 39 × 60 + 20, so 40 gaps", "40 + 1 = 41"}},
      {ruled(40, 20, 60, SpacingRule::even),
       "1",
       {"40 − 20 − 20 = 0", "0 = 0 × 60, so 0 gaps", "0 + 1 = 1"}},
  };
  int seen = 0;
  for (const Case& one : cases) {
    const Sum sum = of_staples(one.job, points_sum);
    CAPTURE(one.figure);
    CHECK(sum.figure == one.figure);
    CHECK(sum.numbers == one.numbers);
    CHECK(sum.source == "exact whole-number arithmetic");
    CHECK(!sum.rests_on_assumed);
    ++seen;
  }
  CHECK(seen == 6);
}

TEST_CASE("the rule of a row stands in words before its numbers") {
  using job::SpacingRule;
  CHECK(of_staples(ruled(2'300, 22, 55, SpacingRule::even), points_sum).rule ==
        "fewest even gaps, none over 55");
  CHECK(of_staples(ruled(2'300, 22, 55, SpacingRule::exact), points_sum).rule ==
        "gaps of exactly 55");
  CHECK(of_staples(ruled(2'300, 22, 55, SpacingRule::exact, job::LeftOver::extra_point), points_sum)
            .rule == "gaps of exactly 55, one shorter");
}

TEST_CASE(
    "first, last, spacing and what is left over carry their sums, each way it can be placed") {
  using job::LeftOver;
  struct Case {
    LeftOver left_over;
    const char* first;
    const char* last;
  };
  // source: 2400, 20 kept clear, exactly 60: 39 gaps, 20 over, by hand
  const Case cases[] = {{LeftOver::end, "20.0", "20 + 39 × 60 = 2360.0"},
                        {LeftOver::split, "20 + 20 ÷ 2 = 30.0", "30 + 39 × 60 = 2370.0"},
                        {LeftOver::extra_point, "20.0", "20 + 39 × 60 + 20 = 2380.0"}};
  int seen = 0;
  for (const Case& one : cases) {
    const job::Job job = ruled(2'400, 20, 60, job::SpacingRule::exact, one.left_over);
    CHECK(of_staples(job, first_sum).numbers == Lines{one.first});
    CHECK(of_staples(job, last_sum).numbers == Lines{one.last});
    CHECK(of_staples(job, spacing_sum).numbers == Lines{"60.00"});
    CHECK(of_staples(job, left_over_sum).numbers ==
          Lines{"2400 − 20 − 20 = 2360", "2360 − 39 × 60 = 20.00"});
    ++seen;
  }
  CHECK(seen == 3);
  const job::Job even = ruled(2'400, 20, 60, job::SpacingRule::even);
  CHECK(of_staples(even, spacing_sum).numbers ==
        Lines{"2400 − 20 − 20 = 2360", "2360 ÷ 40 gaps = 59.00"});
  CHECK(of_staples(even, last_sum).numbers == Lines{"2400 − 20 − 20 = 2360", "20 + 2360 = 2380.0"});
}

TEST_CASE("a clear gap takes the crown with it, and an assumed crown says so wherever it stands") {
  job::Job job = ruled(2'400, 20, 60, job::SpacingRule::even);
  job.spacing_is_clear_gap = true;
  const Sum assumed = of_staples(job, points_sum);
  CHECK(assumed.figure == "34");  // source: 2360 / 72 is 32.8, 33 gaps, by hand
  CHECK(assumed.numbers == Lines{"2400 − 20 − 20 = 2360", "60 + 12 assumed = 72",
                                 "2360 = 32 × 72 + 56, so 33 gaps", "33 + 1 = 34"});
  CHECK(assumed.rests_on_assumed);
  CHECK(assumed.source == "crown assumed, common practice; exact whole-number arithmetic");
  CHECK(of_staples(job, spacing_sum).figure == "71.52");
  CHECK(of_staples(job, clear_gap_sum).numbers == Lines{"71.515 − 12 assumed = 59.52"});
  job.crown_um = 12'000;
  const Sum entered = of_staples(job, points_sum);
  CHECK(entered.numbers[1] == "60 + 12 = 72");
  CHECK(!entered.rests_on_assumed);
  CHECK(entered.source == "crown entered; exact whole-number arithmetic");
  const Results results = solve::solve(job);
  CHECK(!is_clear_gap(job, row_of(results, "1-01 left", RowKind::stitch)));
  CHECK(is_clear_gap(job, row_of(results, "1-01 left", RowKind::staple)));
}

TEST_CASE("stitch holes, staple holes and metres of rows together") {
  const job::Job job = demo_job("harbour-ledger");
  Results results = solve::solve(job);
  const Piece second = results.pieces[1];
  std::vector<const Row*> stitches;
  std::vector<const Row*> staples;
  for (int i = second.first_row; i < second.first_row + second.row_count; ++i) {
    const Row& row = results.rows[static_cast<std::size_t>(i)];
    (row.kind == RowKind::stitch ? stitches : staples).push_back(&row);
  }
  // source: 17 sleeves, 34 side rows and 16 laps of 2300 with 22 kept clear, stitch 6, by hand
  CHECK(points_together_sum(job, results, stitches).numbers ==
        Lines{"34 + 16 = 50 rows", "2300 − 22 − 22 = 2256", "2256 = 376 × 6, so 376",
              "50 × (376 + 1) = 18,850"});
  CHECK(sewing_sum(stitches).numbers ==
        Lines{"34 + 16 = 50 rows", "50 × (2300 − 22 − 22) = 112,800", "112,800 ÷ 1000 = 112.80"});
  CHECK(staple_holes_sum(staples).numbers == Lines{"50 × 43 = 2,150 staples", "2,150 × 2 = 4,300"});
}

TEST_CASE("a panel counts a shared corner once, and says so; rows that stop short share none") {
  job::Job job = panel_job(690, 1'420, "left");
  const Results shared = solve::solve(job);
  const Sum once = points_together_sum(job, shared, rows_of_kind(shared, RowKind::point));
  // source: look.md's panel, 30 + 15 + 15 with two corners in common
  CHECK(once.numbers == Lines{"30 + 14 + 14 = 58"});
  CHECK(once.rule == "row by row, a shared corner point counted once");
  job.panels[0].corners = job::Corners::stop_short;
  const Results apart = solve::solve(job);
  const Sum each = points_together_sum(job, apart, rows_of_kind(apart, RowKind::point));
  CHECK(each.numbers == Lines{"30 + 15 + 15 = 60"});
  CHECK(each.rule == "points of each row, added up");
  const Sum first = first_sum(job, apart, row_of(apart, "P1 top", RowKind::point));
  CHECK(first.numbers == Lines{"16 + 15 assumed = 31.0"});
  CHECK(first.rests_on_assumed);
  job.panels[0].corner_clear_um = 20'000;
  const Results entered = solve::solve(job);
  const Sum own = first_sum(job, entered, row_of(entered, "P1 top", RowKind::point));
  CHECK(own.numbers == Lines{"16 + 20 = 36.0"});
  CHECK(!own.rests_on_assumed);
}

TEST_CASE("a row along an arc begins with the arc's radius") {
  job::Job job = panel_job(800, 1'200, "left");
  job.panels[0].outline = {{"hinge_side", {0, 1'200'000}, 0, {}},
                           {"bottom", {0, 0}, 0, {}},
                           {"fly_side", {800'000, 0}, 0, {}},
                           {"top", {800'000, 1'200'000}, 120'000, {}}};
  const Results results = solve::solve(job);
  const Sum sum = points_sum(job, results, row_of(results, "P1 top", RowKind::point));
  CHECK(sum.numbers[0] == "800² ÷ (8 × 120) + 120 ÷ 2 = 726.667 radius");
  CHECK(sum.numbers[1] == "726.667 − 16 = 710.667 on the row");
  CHECK(sum.source == "intersecting chords, Euclid III.35");
  CHECK(points_sum(job, results, row_of(results, "P1 hinge", RowKind::point)).source ==
        "exact whole-number arithmetic");
}

TEST_CASE("a section's width, middles and running totals are added up from its sleeves") {
  const job::Job job = section_job({60, 75, 90, 120, 150, 120, 90, 75, 60}, 20);
  const Results results = solve::solve(job);
  // source: nine mixed sleeves at lap 20 are 680, middles at 50, 105 ... 630, by hand
  CHECK(width_sum(job, results, 0).numbers ==
        Lines{"60 + 75 + 90 + 120 + 150 + 120 + 90 + 75 + 60 − 8 × 20 = 680"});
  CHECK(row_middle_sum(job, results, 0, 0).numbers == Lines{"60 − 20 ÷ 2 = 50"});
  CHECK(row_middle_sum(job, results, 0, 7).numbers == Lines{"640 − 20 ÷ 2 = 630"});
  CHECK(running_total_sum(job, results, 0, 0).numbers == Lines{"60 = 60"});
  CHECK(running_total_sum(job, results, 0, 1).numbers == Lines{"60 + 75 − 20 = 115"});
  const job::Job even = section_job(std::vector<Um>(14, 100), 20);
  CHECK(width_sum(even, solve::solve(even), 0).numbers == Lines{"14 × 100 − 13 × 20 = 1140"});
}

TEST_CASE("likely and at worst name each tolerance, and which of them no one entered") {
  job::Job job = section_job(std::vector<Um>(14, 100), 20);
  const Results results = solve::solve(job);
  // source: 14 sleeves of ±1 and 13 laps of ±0.5 are ±20.5 and ±4.2, by hand
  CHECK(likely_sum(job, results, 0).numbers ==
        Lines{"widths ±1 assumed, laps ±0.5 assumed", "√(14 × 1² + 13 × 0.5²) = ±4.2"});
  CHECK(worst_sum(job, results, 0).numbers ==
        Lines{"widths ±1 assumed, laps ±0.5 assumed", "14 × 1 + 13 × 0.5 = ±20.5"});
  CHECK(likely_sum(job, results, 0).source == "assumed, common practice");
  job.sections[0].width_tolerance_um = 1'000;
  const Sum half = worst_sum(job, results, 0);
  CHECK(half.numbers[0] == "widths ±1, laps ±0.5 assumed");
  CHECK(half.source == "widths entered; laps assumed, common practice");
  CHECK(half.rests_on_assumed);
  job.sections[0].lap_tolerance_um = 500;
  CHECK(worst_sum(job, results, 0).source == "entered");
  CHECK(!worst_sum(job, results, 0).rests_on_assumed);
}

TEST_CASE("a missing sleeve, shared seams and rows that are not laid show in the row counts") {
  job::Job job = section_job({100, 100, 100, 100}, 20);
  CHECK(side_rows_sum(solve::solve(job), 0).numbers == Lines{"4 + 4 = 8"});
  CHECK(joining_rows_sum(solve::solve(job), 0).numbers == Lines{"4 − 1 = 3"});
  job.sections[0].missing = {"1-02"};
  CHECK(sleeves_sum(job, solve::solve(job), 0).numbers == Lines{"4 − 1 missing = 3"});
  CHECK(joining_rows_sum(solve::solve(job), 0).numbers == Lines{"3 − 1 = 2"});
  job.sections[0].side_seams = job::SideSeams::shared;
  CHECK(side_rows_sum(solve::solve(job), 0).numbers == Lines{"1 + 1 = 2"});
  job.sections[0].side_rows.stitch.kept_clear_um = {900'000, 900'001};
  CHECK(side_rows_sum(solve::solve(job), 0).numbers == Lines{"1 + 1 − 2 not laid = 0"});
}

TEST_CASE("a blank shows what it is cut to and where it is bent, whatever the make") {
  struct Case {
    job::Job job;
    Lines blank;
    Lines fold;
  };
  // source: W 120, r 0.5, t 0.25 is 240.5; r 2, t 0.5 is 242.1; D 20, flange 20 is 103.6
  const Case cases[] = {
      {made(job::Make::folded, 120'000, 250, 500, 0),
       {"2 × (120 − 0.5 − 0.25) + π × (0.5 + 0.25 ÷ 2) = 240.5", "240.5 × 1800"},
       {"240.463 ÷ 2 = 120.2"}},
      {made(job::Make::folded, 120'000, 500, 2'000, 0),
       {"2 × (120 − 2 − 0.5) + π × (2 + 0.5 ÷ 2) = 242.1", "242.1 × 1800"},
       {"242.069 ÷ 2 = 121"}},
      {made(job::Make::round, 40'500, 250, 0, 20'000),
       {"40.5 − 20 − 2 × 0.25 = 20 inside", "π × (20 + 0.25) + 2 × 20 = 103.6", "103.6 × 1800"},
       {"20"}},
  };
  int seen = 0;
  for (const Case& one : cases) {
    const Results results = solve::solve(one.job);
    CHECK(blank_sum(one.job, results, 0, 0).numbers == one.blank);
    CHECK(blank_sum(one.job, results, 0, 0).figure == one.blank.back());
    CHECK(fold_sum(one.job, results, 0, 0).numbers == one.fold);
    ++seen;
  }
  CHECK(seen == 3);
  const job::Job leaves = section_job({110}, 0);
  CHECK(blank_sum(leaves, solve::solve(leaves), 0, 0).numbers == Lines{"110 × 1800"});
}

TEST_CASE("the totals of a job are added up piece by piece") {
  const Results results = solve::solve(demo_job("marsh-lights"));
  // source: nine sleeves with 26 laid rows of 247 holes and a panel of 253, 119 and 119, by hand
  CHECK(total_sum(results, Total::side_rows).numbers == Lines{"18"});
  CHECK(total_sum(results, Total::panel_points).numbers == Lines{"58"});
  const Sum holes = total_sum(results, Total::stitch_holes);
  CHECK(holes.figure == count_text(results.totals.stitch_holes));
  CHECK(holes.numbers.size() == 1);
  CHECK(total_sum(results, Total::sewing).figure == metres_text(results.totals.row_um, 2));
  CHECK(total_sum(solve::solve(job::Job{}), Total::staples).numbers == Lines{"0"});
}

TEST_CASE("the sum of a row whose stitch a trial seam measured says so, with its setting") {
  job::Job job = section_job({110}, 0);
  job.sections[0].length_um = 2'400'000;
  job.sections[0].side_rows.stitch.kept_clear_um = {20'000, 20'000};
  const Results plain = solve::solve(job);
  const Row before = row_of(plain, "1-01 left", RowKind::stitch);
  CHECK(points_sum(job, plain, before).source == "exact whole-number arithmetic");
  job::Trial trial;
  trial.of_all_rows = true;
  trial.is_chosen = true;
  trial.stitch_um = 6'000;
  trial.ten_stitches_um = 58'000;
  job.trials.push_back(trial);
  const Results results = solve::solve(job);
  const Row row = row_of(results, "1-01 left", RowKind::stitch);
  const Sum holes = points_sum(job, results, row);
  CHECK(holes.figure == "408");
  CHECK(holes.rule == "fewest even stitches, none over 5.8");
  CHECK(holes.numbers == Lines{"2400 − 20 − 20 = 2360", "the trial seam: 58 ÷ 10 = 5.8, set at 6",
                               "2360 = 406 × 5.8 + 5.2, so 407", "407 + 1 = 408"});
  CHECK(holes.source == "trial seam, measured; exact whole-number arithmetic");
  const Sum stitch = spacing_sum(job, results, row);
  CHECK(stitch.numbers[0] == "the trial seam: 58 ÷ 10 = 5.8, set at 6");
  CHECK(stitch.figure == "5.80");
  const Row staples = row_of(results, "1-01 left", RowKind::staple);
  CHECK(points_sum(job, results, staples).source == "exact whole-number arithmetic");
}
