#include <doctest/doctest.h>

#include <algorithm>
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
using solve::BayForce;

namespace {

/// A panel 2400 high in one bay; without a facing where that is 0.
job::Job hung(Um chord_mm, Um rise_mm, Um facing_um = 0) {
  job::Job job = tests::panel_job(690, 2400, "left");
  if (facing_um > 0) job.panels[0].facing_thickness_um = facing_um;
  job::Bay bay;
  bay.code = "B1";
  bay.chord_um = chord_mm * 1'000;
  bay.rise_um = rise_mm * 1'000;
  bay.face = "hollow";
  bay.holds = "P1";
  job.bays.push_back(std::move(bay));
  return job;
}

BayForce force_of(const job::Job& job) {
  const auto force = solve::solve(job).bays.at(0).force;
  REQUIRE(force);
  return *force;
}

double newtons(std::int64_t mn) { return static_cast<double>(mn) / 1000.0; }

const checks::Finding* finding_in(const solve::Results& results, const std::string& code) {
  for (const auto& finding : results.findings) {
    if (finding.code == code) return &finding;
  }
  return nullptr;
}

}  // namespace

TEST_CASE("the push for a rise of 60 is that of the published table") {
  struct Case {
    Um chord = 0;
    double backing = 0;
    double facing = 0;
    double both = 0;
  };
  // source: trade table, 48 D w h ÷ c³; PETG 1 at 2100, polycarbonate 2 at 2350, Poisson 0.38
  const std::vector<Case> cases = {{1'000, 1.4, 12.7, 14.1},
                                   {800, 2.8, 24.7, 27.5},
                                   {400, 22.1, 197.8, 219.8},
                                   {300, 52.4, 468.8, 521.1}};
  int ran = 0;
  for (const Case& one : cases) {
    const BayForce force = force_of(hung(one.chord, 60, 2'000));
    REQUIRE(force.plies.size() == 2);
    CHECK(force.plies[0].item == material::Item::backing);
    CHECK(std::fabs(newtons(force.plies[0].push.small_mn) - one.backing) <= 0.05);
    CHECK(std::fabs(newtons(force.plies[1].push.small_mn) - one.facing) <= 0.05);
    CHECK(std::fabs(newtons(force.slipping.small_mn) - one.both) <= 0.05);
    ++ran;
  }
  CHECK(ran == 4);
}

TEST_CASE("large bending leaves the published part of the small-bend formula") {
  struct Case {
    Um rise_of_1000 = 0;
    double exact = 0;  // P c² ÷ (D w)
  };
  // source: derived, pushed in the middle, chord fixed, ends free to slide
  const std::vector<Case> cases = {
      {20, 0.9588}, {50, 2.3817}, {100, 4.6573}, {140, 6.3417}, {200, 8.5710}};
  int ran = 0;
  for (const Case& one : cases) {
    const BayForce force = force_of(hung(1'000, one.rise_of_1000));
    // 2100 × 1 ÷ (12 × (1 − 0.38²)) × 2400 ÷ 1000²
    const double unit = 2'100.0 / (12 * (1 - 0.38 * 0.38)) * 2'400 / 1e6;
    CHECK(std::fabs(newtons(force.slipping.exact_mn) - unit * one.exact) < 0.0011);
    CHECK(force.is_beyond_small == (one.rise_of_1000 > 50));
    CHECK(force.shown_mn ==
          (force.is_beyond_small ? force.slipping.exact_mn : force.slipping.small_mn));
    ++ran;
  }
  CHECK(ran == 5);
}

TEST_CASE("a bay of 400 and 60 with a facing takes four people by formula and three by bending") {
  const BayForce force = force_of(hung(400, 60, 2'000));
  CHECK(force.people == 3);
  CHECK(force.people_other == 4);
  CHECK(force.is_beyond_small);
  job::Job strong = hung(400, 60, 2'000);
  strong.materials.values[Field::hanging_push].thousandths = 250'000;
  CHECK(force_of(strong).people == 1);
}

TEST_CASE("half the length takes eight times the push for one rise") {
  int ran = 0;
  for (const Um rise : {10, 20}) {
    const double long_bay = newtons(force_of(hung(1'600, rise, 2'000)).slipping.small_mn);
    const double short_bay = newtons(force_of(hung(800, rise, 2'000)).slipping.small_mn);
    CHECK(std::fabs(short_bay / long_bay - 8) < 0.01);
    ++ran;
  }
  CHECK(ran == 2);
}

TEST_CASE("two sheets alike are four times as stiff locked as slipping") {
  job::Job job = hung(400, 10, 1'000);
  job.materials.values[Field::facing_sheet].thousandths = 0;
  const BayForce force = force_of(job);
  // source: 409 N·mm slipping, 1636 locked for two 1 mm sheets of 2100 at 0.38; ratio 4.00
  CHECK(std::fabs(newtons(force.locked.small_mn) / newtons(force.slipping.small_mn) - 4) < 1e-3);
  const double per_stiffness = 48.0 * 2'400 * 10 / (400.0 * 400 * 400);
  CHECK(std::lround(newtons(force.slipping.small_mn) / per_stiffness) == 409);
  CHECK(std::lround(newtons(force.locked.small_mn) / per_stiffness) == 1'636);
}

TEST_CASE("a section is bent as the two leaves of a sleeve") {
  job::Job job = tests::section_job({100, 120, 100}, 18);
  job.bays = hung(300, 20).bays;
  job.bays[0].holds = "1";
  const BayForce force = force_of(job);
  REQUIRE(force.plies.size() == 1);
  CHECK(force.plies[0].count == 2);
  // 48 × 2 × 2100 × 0.25³ ÷ (12 × (1 − 0.38²)) × 1800 × 20 ÷ 300³
  CHECK(std::fabs(newtons(force.slipping.small_mn) - 0.409) < 0.001);
  CHECK(solve::bay_sum(job, solve::solve(job), 0, BayFigure::push).numbers[0].find("two leaves") !=
        std::string::npos);
}

TEST_CASE("stations give a push from the line between their ends to the crest") {
  job::Job job = hung(800, 10);
  const BayForce of_rise = force_of(hung(800, 60));
  job.bays[0].stations_um = {
      {0, 5'000}, {200'000, 52'000}, {400'000, 65'000}, {600'000, 52'000}, {800'000, 5'000}};
  const BayForce force = force_of(job);
  CHECK(force.chord_um == 800'000);
  CHECK(force.rise_um == 60'000);
  CHECK(force.slipping.small_mn == of_rise.slipping.small_mn);
  CHECK(solve::bay_sum(job, solve::solve(job), 0, BayFigure::push).numbers[0].find("station") !=
        std::string::npos);
  // All in line is flat, and no push.
  job.bays[0].stations_um = {{0, 5'000}, {400'000, 5'000}, {800'000, 5'000}};
  CHECK_FALSE(solve::solve(job).bays[0].force);
}

TEST_CASE("no force is said of a flat or empty bay, and bays are ranked by it") {
  CHECK_FALSE(solve::solve(hung(800, 0)).bays[0].force);
  job::Job empty = hung(800, 60);
  empty.bays[0].stands_empty = true;
  CHECK_FALSE(solve::solve(empty).bays[0].force);
  job::Job job = hung(800, 60);
  for (const Um chord : {400, 800, 1'000}) {
    job::Bay bay = job.bays[0];
    bay.code = "C" + std::to_string(chord);
    bay.chord_um = chord * 1'000;
    job.bays.push_back(bay);
  }
  const auto bays = solve::solve(job).bays;
  CHECK(bays[0].force->rank == 2);
  CHECK(bays[1].force->rank == 1);
  CHECK(bays[2].force->rank == 3);
  CHECK(bays[3].force->rank == 4);
}

TEST_CASE("the facing sets how tight a panel may stay bent where it is the stiffer ply") {
  const auto bare = solve::solve(hung(800, 60)).bays[0];
  const auto faced = solve::solve(hung(800, 60, 2'000)).bays[0];
  CHECK(bare.limit_um == 150'000);
  // source: suppliers' outdoor limit of polycarbonate, 180 times
  CHECK(faced.limit_um == 360'000);
  CHECK(faced.limit_of == material::Item::facing);
  CHECK(solve::solve(hung(800, 60, 500)).bays[0].limit_of == material::Item::backing);
}

TEST_CASE("hands, deep curves and short bays are said of the bay") {
  const auto many = solve::solve(hung(400, 60, 2'000));
  REQUIRE(finding_in(many, "many_hands") != nullptr);
  CHECK(finding_in(many, "many_hands")->place == "bay B1, panel P1");
  CHECK(finding_in(solve::solve(hung(800, 60, 2'000)), "many_hands") == nullptr);
  job::Job more = hung(400, 60, 2'000);
  more.materials.values[Field::hanging_people].thousandths = 3'000;
  CHECK(finding_in(solve::solve(more), "many_hands") == nullptr);
  CHECK(finding_in(solve::solve(hung(800, 161)), "deep_curve") != nullptr);
  CHECK(finding_in(solve::solve(hung(800, 160)), "deep_curve") == nullptr);
  job::Job two = hung(800, 60);
  two.bays.push_back(two.bays[0]);
  two.bays[1].code = "B2";
  two.bays[1].chord_um = 400'000;
  REQUIRE(finding_in(solve::solve(two), "short_bay") != nullptr);
  CHECK(finding_in(solve::solve(two), "short_bay")->place == "bay B2, panel P1");
  two.bays[1].chord_um = 400'001;
  CHECK(finding_in(solve::solve(two), "short_bay") == nullptr);
}

TEST_CASE("the sums of push, people and single sheets are true as they are written") {
  int lines = 0;
  for (const Um rise : {10, 60, 140}) {
    for (const Um facing : {0, 2'000}) {
      const job::Job job = hung(400, rise, facing);
      const auto results = solve::solve(job);
      std::vector<solve::Sum> sums;
      for (const auto figure : {BayFigure::push, BayFigure::people, BayFigure::locked}) {
        sums.push_back(solve::bay_sum(job, results, 0, figure));
      }
      for (int ply = 0; ply < static_cast<int>(results.bays[0].force->plies.size()); ++ply) {
        sums.push_back(solve::ply_sum(job, results, 0, ply));
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
  }
  CHECK(lines > 40);
}
