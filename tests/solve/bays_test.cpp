#include "engine/solve/bays.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <vector>

#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "tests/support/sum_reading.h"

using namespace pouncemark;
using solve::BayFigure;
using solve::BayResult;

namespace {

/// One panel in one bay.
job::Job job_with_bay(Um chord_mm, Um rise_mm, const std::string& face) {
  job::Job job = tests::panel_job(690, 1420, "left");
  job::Bay bay;
  bay.code = "B1";
  bay.chord_um = chord_mm * 1'000;
  bay.rise_um = rise_mm * 1'000;
  bay.face = face;
  bay.holds = "P1";
  job.bays.push_back(std::move(bay));
  return job;
}

BayResult first_bay(const job::Job& job) { return solve::solve(job).bays.at(0); }

/// Stations of a circle whose crest lies in the middle, every `step_mm`.
void measure(job::Bay* bay, double radius, int steps, double step_mm) {
  bay->stations_um.clear();
  for (int i = 0; i <= steps; ++i) {
    const double off = step_mm * (i - steps / 2.0);
    bay->stations_um.push_back({to_um(step_mm * i), to_um(std::sqrt(radius * radius - off * off))});
  }
}

}  // namespace

TEST_CASE("a bay of 800 and 120 is 847.2 along and its cloth creeps 2.33 at a distance of 2") {
  job::Job job = job_with_bay(800, 120, "bulging");
  job.slip_distance_um = 2'000;
  const BayResult bay = first_bay(job);
  // source: worked out by hand: 800²/960 + 60, 4·atan(0.3), their product, 2 × the turn
  CHECK(bay.radius_um == 726'667);
  CHECK(bay.turn_mdeg == 66'797);
  CHECK(bay.along_um == 847'168);
  CHECK(bay.extra_um == 47'168);
  CHECK(bay.creep_um == 2'332);
  CHECK_FALSE(bay.moves_out);
  CHECK(bay.bulge_um == 0);
  CHECK(bay.slip_most_um == bay.creep_um);
  CHECK(bay.piece == 0);
  CHECK(bay.room_um == 157'168);
}

TEST_CASE("on a hollow bay the cloth moves out, and stands up if it were sewn all round") {
  const BayResult bay = first_bay(job_with_bay(800, 120, "hollow"));
  CHECK(bay.creep_um == 1'749);
  CHECK(bay.moves_out);
  CHECK(bay.bulge_um > 20'000);
  CHECK(bay.bulge_um < 26'000);
}

TEST_CASE("top and bottom rows stop where the slip comes to a half millimetre, never after") {
  const BayResult bay = first_bay(job_with_bay(1'000, 150, "hollow"));
  REQUIRE(bay.stop_um.has_value());
  // 0.5 × 908.333 ÷ 1.5 = 302.7777
  CHECK(*bay.stop_um == 302'777);
  CHECK(bay.ease == 165);
  job::Job job = job_with_bay(1'000, 150, "hollow");
  job.slip_distance_um = 0;
  CHECK_FALSE(first_bay(job).stop_um.has_value());
  CHECK(first_bay(job).creep_um == 0);
  CHECK_FALSE(first_bay(job).moves_out);
  // The whole turn is 1.1658: the slip comes to 0.5 at a distance of 0.4289.
  job.slip_distance_um = 428;
  CHECK_FALSE(first_bay(job).stop_um.has_value());
  job.slip_distance_um = 429;
  CHECK(first_bay(job).stop_um.has_value());
}

TEST_CASE("the fly sides of the demo jobs creep as was worked out by hand") {
  struct Case {
    std::string job;
    std::vector<int> hundredths;
  };
  // source: worked out by hand, 1.5 × 4·atan(2h/c)
  const Case cases[] = {{"marsh-lights", {164}}, {"harbour-ledger", {165, 167, 171, 167, 165}}};
  int count = 0;
  for (const Case& one : cases) {
    const solve::Results results = solve::solve(tests::demo_job(one.job));
    std::vector<int> creeps;
    for (const BayResult& bay : results.bays) {
      if (results.pieces[static_cast<std::size_t>(bay.piece)].kind != solve::PieceKind::panel) {
        continue;
      }
      CHECK(bay.moves_out);
      creeps.push_back(static_cast<int>((bay.creep_um + 5) / 10));
    }
    CHECK(creeps == one.hundredths);
    ++count;
  }
  CHECK(count == 2);
}

TEST_CASE("a bay as tight as its sheet may stay bent has nothing to spare") {
  struct Case {
    Um chord;
    Um rise;
    Um radius;
    std::int64_t percent;
  };
  const Case cases[] = {{272, 68, 170'000, 13}, {240, 60, 150'000, 0}, {224, 56, 140'000, -7}};
  int count = 0;
  for (const Case& one : cases) {
    const BayResult bay = first_bay(job_with_bay(one.chord, one.rise, "hollow"));
    CHECK(bay.radius_um == one.radius);
    CHECK(bay.limit_um == 150'000);
    CHECK(std::llround(static_cast<double>(bay.spare) / 1000) == one.percent);
    ++count;
  }
  CHECK(count == 3);
}

TEST_CASE("a flat bay neither turns nor creeps, and one that holds nothing has no limit") {
  job::Job job = job_with_bay(800, 0, "hollow");
  const BayResult flat = first_bay(job);
  CHECK(flat.is_flat());
  CHECK(flat.turn_mdeg == 0);
  CHECK(flat.along_um == 800'000);
  CHECK(flat.creep_um == 0);
  CHECK_FALSE(flat.stop_um.has_value());
  CHECK(flat.spare == 0);
  job.bays[0].stands_empty = true;
  CHECK(first_bay(job).piece == -1);
  CHECK(first_bay(job).limit_um == 0);
  job.bays[0].stands_empty = false;
  job.bays[0].holds = "P9";
  CHECK(first_bay(job).piece == -1);
}

TEST_CASE("a half circle and what is deeper are worked out without a break") {
  CHECK(first_bay(job_with_bay(800, 400, "hollow")).turn_mdeg == 180'000);
  CHECK(first_bay(job_with_bay(800, 400, "hollow")).along_um == 1'256'637);
  CHECK(first_bay(job_with_bay(800, 401, "hollow")).turn_mdeg > 180'000);
}

TEST_CASE("stations make the curve where there are three of them in order") {
  job::Job job = job_with_bay(800, 120, "hollow");
  measure(&job.bays[0], 700, 4, 200);
  const BayResult bay = first_bay(job);
  CHECK(bay.is_by_stations);
  CHECK(std::llabs(bay.radius_um - 700'000) < 100);
  CHECK(bay.radius_out_by > 4'250);
  CHECK(bay.radius_out_by < 4'350);
  CHECK(std::llabs(bay.along_um - to_um(1400 * std::asin(400.0 / 700))) < 10);
  CHECK(bay.moves_out);
  CHECK(bay.stop_um.has_value());
  job.bays[0].stations_um.resize(2);
  CHECK_FALSE(first_bay(job).is_by_stations);
  CHECK(first_bay(job).radius_um == 726'667);
  measure(&job.bays[0], 700, 4, 200);
  std::swap(job.bays[0].stations_um[1], job.bays[0].stations_um[2]);
  CHECK_FALSE(first_bay(job).is_by_stations);
}

TEST_CASE("a bay that bends both ways creeps less at its far edge than on the way") {
  job::Job job = job_with_bay(1'600, 0, "bulging");
  for (int i = 0; i <= 16; ++i) {
    const double x = 100.0 * i;
    job.bays[0].stations_um.push_back({to_um(x), to_um(80 * std::sin(x * 3.14159265 / 800))});
  }
  const BayResult bay = first_bay(job);
  CHECK(bay.creep_um < 200);
  CHECK(bay.slip_most_um > 700);
  CHECK(bay.stop_um.has_value());
  CHECK(bay.extra_um > 30'000);
}

TEST_CASE("an uneven bay slips from the hinge side, whichever side that is") {
  job::Job job = job_with_bay(800, 120, "hollow");
  // Almost straight at the left, round at the right.
  job.bays[0].stations_um = {{0, 0}, {300'000, 40'000}, {600'000, 70'000}, {800'000, 0}};
  const auto hinged = [&job](const char* side) {
    job.panels[0].hinge_side = side;
    return first_bay(job);
  };
  const BayResult left = hinged("left");
  const BayResult right = hinged("right");
  REQUIRE(left.stop_um.has_value());
  REQUIRE(right.stop_um.has_value());
  CHECK(*left.stop_um > *right.stop_um + 50'000);
  CHECK(left.creep_um == right.creep_um);
  CHECK(left.tightest_station == 3);
  CHECK(right.tightest_station == 3);
  job.bays[0].stations_um = {{0, 0}, {200'000, 70'000}, {500'000, 40'000}, {800'000, 0}};
  CHECK(hinged("right").stop_um == left.stop_um);
  CHECK(hinged("left").stop_um == right.stop_um);
  job.bays[0].stands_empty = true;
  CHECK(hinged("right").stop_um == right.stop_um);
}

TEST_CASE("a bay that turns back before its end slips most seen from its longer bend") {
  job::Job job = job_with_bay(1'200, 0, "bulging");
  job.bays[0].stations_um = {{0, 0},       {300'000, 90'000},   {600'000, 90'000},
                             {900'000, 0}, {1'000'000, -8'000}, {1'200'000, 0}};
  const BayResult left = first_bay(job);
  job.panels[0].hinge_side = "right";
  const BayResult right = first_bay(job);
  CHECK(left.slip_most_um > right.slip_most_um);
  CHECK(left.creep_um == right.creep_um);
  CHECK(left.moves_out == right.moves_out);
}

TEST_CASE("the sums of a bay's figures are true as they are written") {
  int lines = 0;
  for (const job::Job& job : {job_with_bay(800, 120, "hollow"), job_with_bay(1'000, 150, "hollow"),
                              tests::demo_job("harbour-ledger")}) {
    const solve::Results results = solve::solve(job);
    for (std::size_t i = 0; i < results.bays.size(); ++i) {
      for (int figure = 0; figure <= static_cast<int>(BayFigure::room); ++figure) {
        const auto asked = static_cast<BayFigure>(figure);
        if (asked == BayFigure::bulge && !results.bays[i].moves_out) continue;
        const solve::Sum sum = solve::bay_sum(job, results, static_cast<int>(i), asked);
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
  CHECK(lines > 150);
}

TEST_CASE("the sums of a flat bay and of one measured at stations say so") {
  job::Job job = job_with_bay(800, 0, "hollow");
  const auto sum = [&job](BayFigure figure) {
    return solve::bay_sum(job, solve::solve(job), 0, figure);
  };
  CHECK(sum(BayFigure::radius).figure == "flat");
  CHECK(sum(BayFigure::along).figure == "800.0");
  measure(&job.bays[0], 700, 4, 200);
  CHECK(sum(BayFigure::radius).figure == "700.0");
  CHECK(sum(BayFigure::radius).numbers[0].find("4.3 %") != std::string::npos);
  CHECK(sum(BayFigure::radius).rests_on_assumed);
  CHECK(sum(BayFigure::along).rule == "the arcs from station to station");
  CHECK(sum(BayFigure::stop).figure.find('.') != std::string::npos);
}
