#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "tests/support/rows.h"

using namespace pouncemark;
using checks::Severity;
using solve::Finding;

namespace {

/// One panel in one hollow bay.
job::Job job_with_bay(Um chord_mm, Um rise_mm, Um width_mm) {
  job::Job job = tests::panel_job(width_mm, 1'420, "left");
  job::Bay bay;
  bay.code = "B1";
  bay.chord_um = chord_mm * 1'000;
  bay.rise_um = rise_mm * 1'000;
  bay.face = "hollow";
  bay.holds = "P1";
  job.bays.push_back(std::move(bay));
  return job;
}

std::vector<Finding> found(const job::Job& job, const std::string& code) {
  return tests::findings_of(solve::solve(job), code);
}

}  // namespace

TEST_CASE("a bay tighter than its panel's backing may stay bent is a stop at that panel") {
  CHECK(found(job_with_bay(240, 60, 200), "bay_too_tight").empty());
  const auto stops = found(job_with_bay(224, 56, 200), "bay_too_tight");
  REQUIRE(stops.size() == 1);
  CHECK(stops[0].severity == Severity::stop);
  CHECK(stops[0].place == "bay B1, panel P1");
  CHECK(stops[0].piece == 0);
  job::Job job = job_with_bay(224, 56, 200);
  job.materials.values[material::Field::backing_stay_bent].thousandths = 140'000;
  CHECK(found(job, "bay_too_tight").empty());
  job.bays[0].stands_empty = true;
  job.materials.values.clear();
  CHECK(found(job, "bay_too_tight").empty());
}

TEST_CASE("a flat bay is never too tight") {
  CHECK(found(job_with_bay(800, 0, 700), "bay_too_tight").empty());
}

TEST_CASE("a bay deeper than a half circle is asked about wherever it is measured so") {
  CHECK(found(job_with_bay(800, 400, 690), "bay_deep").empty());
  CHECK(found(job_with_bay(800, 401, 690), "bay_deep").size() == 1);
}

TEST_CASE("a panel wider than its bay is long, or just as wide as its chord, is said") {
  CHECK(found(job_with_bay(800, 120, 847), "bay_short").empty());
  CHECK(found(job_with_bay(800, 120, 848), "bay_short").size() == 1);
  CHECK(found(job_with_bay(800, 120, 800), "chord_for_curve").size() == 1);
  CHECK(found(job_with_bay(800, 120, 843), "chord_for_curve").empty());
}

TEST_CASE("a taped length is held against the curve and names the rise it speaks for") {
  job::Job job = job_with_bay(800, 120, 840);
  job.bays[0].taped_along_um = 848'000;
  CHECK(found(job, "tape_differs").empty());
  job.bays[0].taped_along_um = 851'000;
  const auto tape = found(job, "tape_differs");
  REQUIRE(tape.size() == 1);
  CHECK(tape[0].figure == "3.8");
  CHECK(tape[0].sum.find("for a rise of 124.") != std::string::npos);
}

TEST_CASE("one station, or stations out of order, are said; three in order 200 apart are not") {
  job::Job job = job_with_bay(800, 120, 840);
  job.bays[0].stations_um = {{0, 0}};
  CHECK(found(job, "stations_amiss").at(0).figure == "1");
  job.bays[0].stations_um = {{0, 0}, {400'000, 120'000}, {200'000, 90'000}, {800'000, 0}};
  CHECK(found(job, "stations_amiss").at(0).figure == "3");
  job.bays[0].stations_um = {
      {0, 0}, {200'000, 90'000}, {400'000, 120'000}, {600'000, 90'000}, {800'000, 0}};
  CHECK(found(job, "stations_amiss").empty());
  CHECK(found(job, "stations_near").empty());
  job.bays[0].stations_um = {{0, 0}, {100'000, 7'000}, {200'000, 0}};
  CHECK(found(job, "stations_near").size() == 1);
}

TEST_CASE("cloth that ends too near the fly side of a hollow bay creeps past the sheet") {
  job::Job job = job_with_bay(800, 120, 840);
  CHECK(found(job, "creep_past_sheet").empty());
  job.panels[0].cloth = job::ClothPlace{};
  job.panels[0].cloth->in_from_fly_side_um = 1'000;
  CHECK(found(job, "creep_past_sheet").size() == 1);
  job.bays[0].face = "bulging";
  CHECK(found(job, "creep_past_sheet").empty());
  job.bays[0].face = "hollow";
  job.panels[0].cloth.reset();
  job.slip_distance_um = 12'000;
  CHECK(found(job, "creep_past_sheet").at(0).sum.find("12 assumed") != std::string::npos);
}

TEST_CASE("top and bottom rows of a very tight bay run into the slip zone, said once for both") {
  CHECK(found(job_with_bay(800, 120, 840), "row_in_slip_zone").empty());
  job::Job job = job_with_bay(400, 120, 480);
  const auto rows = found(job, "row_in_slip_zone");
  REQUIRE(rows.size() == 1);
  CHECK(rows[0].part == checks::Part::rows);
  CHECK(rows[0].at.size() == 2);
  CHECK(rows[0].place == "bay B1, panel P1");
  job.panels[0].rows_on = {"hinge_side"};
  CHECK(found(job, "row_in_slip_zone").empty());
}

TEST_CASE("the bays of the demo jobs give no finding") {
  const std::vector<std::string> codes = {
      "bay_too_tight", "bay_deep",       "bay_short",        "chord_for_curve", "tape_differs",
      "stations_near", "stations_amiss", "creep_past_sheet", "row_in_slip_zone"};
  int count = 0;
  for (const char* name : {"marsh-lights", "harbour-ledger", "orchard-year"}) {
    const job::Job job = tests::demo_job(name);
    for (const std::string& code : codes) {
      CHECK(found(job, code).empty());
      ++count;
    }
  }
  CHECK(count == 27);
}
