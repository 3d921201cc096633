#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <vector>

#include "engine/solve/bays.h"
#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "tests/support/sum_reading.h"

using namespace pouncemark;
using material::Field;
using solve::BayFigure;
using solve::BayFixings;
using solve::FixingFigure;

namespace {

job::FixingRow row_of(const std::string& edge, job::Tight tight) {
  job::FixingRow row;
  row.edge = edge;
  row.in_from_edge_um = 10'000;
  row.kept_clear_um = {20'000, 20'000};
  row.spacing_um = 300'000;
  row.tight = tight;
  return row;
}

/// A panel 690 by 2400 in one bay, its cloth 20 in all round.
job::Job hung(const std::vector<job::FixingRow>& rows) {
  job::Job job = tests::panel_job(690, 2400, "left");
  job.panels[0].panel_in_um = 40'000;
  job.panels[0].cloth.emplace().in_from_edge_um = 20'000;
  job.panels[0].cloth->in_from_fly_side_um = 20'000;
  job::Bay bay;
  bay.code = "B1";
  bay.chord_um = 665'000;
  bay.rise_um = 93'000;
  bay.face = "bulging";
  bay.holds = "P1";
  bay.fixings = rows;
  job.bays.push_back(std::move(bay));
  return job;
}

BayFixings first_row(const job::Job& job) { return solve::solve(job).bays.at(0).fixings.at(0); }

const checks::Finding* finding_in(const solve::Results& results, const std::string& code) {
  for (const auto& finding : results.findings) {
    if (finding.code == code) return &finding;
  }
  return nullptr;
}

bool says(const job::Job& job, const std::string& code) {
  return finding_in(solve::solve(job), code) != nullptr;
}

}  // namespace

TEST_CASE("2360 from the tight fixing the sheet moves 2.23 and the slot is 11.5") {
  const BayFixings row = first_row(hung({row_of("hinge_side", job::Tight::first)}));
  // source: trade figures, (68 − 5) × 15 × 2360 ÷ 1000000 = 2.23, 5 + 2 × 2.23 + 2 × 1 = 11.46
  REQUIRE(row.fixings.size() == 9);
  CHECK(row.tight == 0);
  CHECK(row.fixings[0].is_tight);
  CHECK(row.fixings[0].slot_um == 0);
  CHECK(row.fixings[8].from_tight_um == 2'360'000);
  CHECK(row.fixings[8].move_um == 2'230);
  CHECK(row.fixings[8].slot_um == 11'460);
  CHECK(row.fixings[8].slot_shown_um == 11'500);
  CHECK(row.fixings[8].screw_today_um == 0);
}

TEST_CASE("from the middle the farthest fixing moves half as far") {
  const BayFixings row = first_row(hung({row_of("hinge_side", job::Tight::middle)}));
  // source: trade figures, from the middle 1.12
  CHECK(row.tight == 4);
  CHECK(row.fixings[0].from_tight_um == 1'180'000);
  CHECK(row.fixings[0].move_um == 1'115);
  CHECK(row.fixings[8].move_um == row.fixings[0].move_um);
}

TEST_CASE("a row without a tight fixing moves from the tight one of another row") {
  const auto bay = solve::solve(hung({row_of("fly_side", job::Tight::none),
                                      row_of("hinge_side", job::Tight::middle)}))
                       .bays[0];
  REQUIRE(bay.fixings.size() == 2);
  CHECK(bay.fixings[0].tight == -1);
  CHECK(bay.fixings[0].tight_row == 1);
  // 690 wide, both rows 10 in: 670 across and 1180 along
  CHECK(bay.fixings[0].fixings[4].from_tight_um == 670'000);
  CHECK(bay.fixings[0].fixings[0].from_tight_um == to_um(std::hypot(670.0, 1180.0)));
}

TEST_CASE("timber across its grain asks for room for its damp, along it for none") {
  job::FixingRow row = row_of("top", job::Tight::first);
  CHECK(first_row(hung({row})).fixings.back().damp_um == 0);
  row.timber = job::TimberLies::across_grain;
  const BayFixings across = first_row(hung({row}));
  // 650 × 0.369 ÷ 100 × 4 = 9.594
  CHECK(across.fixings.back().from_tight_um == 650'000);
  CHECK(across.fixings.back().damp_um == 9'594);
  CHECK(across.fixings.back().slot_um ==
        5'000 + 2 * (across.fixings.back().move_um + 9'594) + 2'000);
}

TEST_CASE("on a colder day the screw stands outward in its slot, on a warmer one inward") {
  job::Job job = hung({row_of("hinge_side", job::Tight::first)});
  job.materials.values[Field::hanging_today].thousandths = 12'000;
  // (68 − 5) × (20 − 12) × 2360 ÷ 1000000 = 1.189
  CHECK(first_row(job).fixings.back().screw_today_um == 1'189);
  CHECK(says(job, "hanging_temperature"));
  job.materials.values[Field::hanging_today].thousandths = 25'000;
  CHECK(first_row(job).fixings.back().screw_today_um == -743);
  CHECK_FALSE(says(job, "hanging_temperature"));
}

TEST_CASE("fixings that cannot do their work are said, their neighbours pass") {
  const auto good = row_of("hinge_side", job::Tight::middle);
  for (const char* code : {"held_at_both_ends", "none_is_tight", "fixing_near_edge",
                           "washer_on_row", "screw_in_cloth", "slots_meet", "no_such_edge"}) {
    CAPTURE(code);
    CHECK_FALSE(says(hung({good}), code));
  }
  CHECK(says(hung({good, row_of("fly_side", job::Tight::middle)}), "held_at_both_ends"));
  CHECK_FALSE(says(hung({good, row_of("fly_side", job::Tight::none)}), "held_at_both_ends"));
  CHECK(says(hung({row_of("fly_side", job::Tight::none)}), "none_is_tight"));
  auto near = good;
  near.in_from_edge_um = 9'999;
  CHECK(says(hung({near}), "fixing_near_edge"));
  auto on_row = good;
  on_row.in_from_edge_um = 35'000;
  CHECK(says(hung({on_row}), "washer_on_row"));
  CHECK(says(hung({on_row}), "screw_in_cloth"));
  job::Job unsewn = hung({on_row});
  unsewn.panels[0].rows_on.emplace();
  CHECK_FALSE(says(unsewn, "washer_on_row"));
  CHECK(says(unsewn, "screw_in_cloth"));
  auto touching = good;
  touching.in_from_edge_um = 17'500;
  CHECK_FALSE(says(hung({touching}), "screw_in_cloth"));
  touching.in_from_edge_um = 17'501;
  CHECK(finding_in(solve::solve(hung({touching})), "screw_in_cloth")->severity ==
        checks::Severity::stop);
  auto dense = row_of("top", job::Tight::first);
  dense.spacing_um = 10'000;
  CHECK(says(hung({dense}), "slots_meet"));
  CHECK(says(hung({row_of("left", job::Tight::middle)}), "no_such_edge"));
  auto long_ends = good;
  long_ends.kept_clear_um = {1'300'000, 1'300'000};
  CHECK(finding_in(solve::solve(hung({long_ends})), "row_not_laid")->place ==
        "bay B1, panel P1, fixings along the hinge side");
}

TEST_CASE("cloth that creeps out comes nearer to screws at the fly side") {
  job::Job job =
      hung({row_of("hinge_side", job::Tight::middle), row_of("fly_side", job::Tight::none)});
  job.bays[0].fixings[1].in_from_edge_um = 16'500;
  CHECK_FALSE(says(job, "screw_in_cloth"));
  // 1.64 out: the cloth then begins 18.36 from the fly side, and the screw ends at 19
  job.bays[0].face = "hollow";
  CHECK(says(job, "screw_in_cloth"));
}

TEST_CASE("what hangs weighs what its parts weigh, and what nobody weighed is said") {
  job::Job job = hung({row_of("top", job::Tight::middle)});
  const auto bare = solve::solve(job).bays[0].loads;
  REQUIRE(bare);
  // 0.69 × 2.4 × 1.27 = 2.10312 kg of PETG 1
  CHECK(bare->mass_mg == 2'103'120);
  CHECK_FALSE(bare->is_whole);
  job.materials.values[Field::panel_cloth_mass].thousandths = 300'000;
  job.panels[0].facing_thickness_um = 2'000;
  const auto all = solve::solve(job).bays[0].loads;
  CHECK(all->is_whole);
  // cloth 650 × 2360 and its hem 20: twice that less 610 × 2320, at 300 g/m²
  const std::int64_t cloth = std::llround((2 * 0.65 * 2.36 - 0.61 * 2.32) * 300'000);
  CHECK(all->sewn_mg == 2'103'120 + cloth);
  // 0.69 × 2.4 × 2 × 1.2 of polycarbonate
  CHECK(all->mass_mg == all->sewn_mg + 3'974'400);
  CHECK(all->fixings_mn.size() == 4);
  // source: textbook tables of continuous beams, 4 supports: .1333 .3667 .3667 .1333
  CHECK(std::llabs(all->fixings_mn[0] - all->weight_mn * 4 / 30) <= 1);
  CHECK(std::llabs(all->fixings_mn[1] - all->weight_mn * 11 / 30) <= 1);
}

TEST_CASE("3.5 kg on a top row of 1290 at 6 is 0.16 on each stitch and 8.6 at a corner") {
  job::Job job = tests::panel_job(1'322, 1'000, "left");
  job.bays = hung({}).bays;
  job.panels[0].stitch_um = 6'000;
  // as thick as makes 3.5 kg: 3.5 ÷ (1.322 × 1.27) = 2.0846
  job.panels[0].backing_thickness_um = 2'085;
  const auto loads = solve::solve(job).bays[0].loads;
  REQUIRE(loads);
  // source: trade figures, 3.5 kg: 0.16 N a stitch, 8.6 N on each of four at a corner
  CHECK(std::fabs(static_cast<double>(loads->sewn_mg) / 1e6 - 3.5) < 0.001);
  CHECK(loads->stitches >= 215);
  CHECK(std::lround(static_cast<double>(loads->per_stitch_mn) / 10) == 16);
  CHECK(std::lround(static_cast<double>(loads->corner_mn) / 100) == 86);
  CHECK(loads->corner_least_mn < loads->corner_mn);
  CHECK(loads->corner_most_mn > loads->corner_mn);
}

TEST_CASE("a section weighs its blanks, and no row along its top takes a share") {
  job::Job job = tests::section_job({100, 120}, 18);
  job.bays = hung({}).bays;
  job.bays[0].holds = "1";
  const auto loads = solve::solve(job).bays[0].loads;
  REQUIRE(loads);
  // two leaves of 0.22 × 1.8 at 0.25 and 1.27
  CHECK(loads->mass_mg == 251'460);
  CHECK(loads->row == -1);
  CHECK(loads->per_stitch_mn == 0);
  CHECK(loads->corner_mn > 0);
}

TEST_CASE("the sums of fixings and loads are true as they are written") {
  int lines = 0;
  for (const bool across : {false, true}) {
    job::Job job = hung({row_of("top", job::Tight::first), row_of("fly_side", job::Tight::none)});
    if (across) job.bays[0].fixings[0].timber = job::TimberLies::across_grain;
    if (across) job.materials.values[Field::hanging_today].thousandths = -4'500;
    if (across) job.materials.values[Field::panel_cloth_mass].thousandths = 310'000;
    const auto results = solve::solve(job);
    std::vector<solve::Sum> sums;
    for (const auto figure :
         {BayFigure::mass, BayFigure::weight, BayFigure::per_stitch, BayFigure::corner}) {
      sums.push_back(solve::bay_sum(job, results, 0, figure));
    }
    for (int row = 0; row < 2; ++row) {
      const auto count = results.bays[0].fixings[static_cast<std::size_t>(row)].fixings.size();
      for (int i = 0; i < static_cast<int>(count); ++i) {
        for (const auto figure : {FixingFigure::move, FixingFigure::slot, FixingFigure::screw_today,
                                  FixingFigure::load}) {
          if (figure == FixingFigure::load && row == 1) continue;
          sums.push_back(solve::fixing_sum(job, results, {0, row, i}, figure));
        }
      }
    }
    for (const solve::Sum& sum : sums) {
      CAPTURE(sum.rule);
      CHECK_FALSE(sum.source.empty());
      CHECK(tests::last_number(sum.numbers.back()) == tests::last_number(sum.figure));
      for (const std::string& line : sum.numbers) {
        CAPTURE(line);
        CHECK(tests::fault_in_line(line).empty());
        ++lines;
      }
    }
  }
  CHECK(lines > 80);
}
