#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "tests/support/rows.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::solve;
using pouncemark::job::StaplesOut;
using pouncemark::tests::demo_job;
using pouncemark::tests::findings_of;
using pouncemark::tests::panel_job;
using pouncemark::tests::section_job;
using pouncemark::tests::stops_in;

namespace {

/// One sleeve whose staples stand `apart_mm` from the row.
job::Job staples_apart(Um apart_mm, StaplesOut out) {
  job::Job job = section_job({200}, 0);
  job.sections[0].side_rows.staple.in_from_edge_um = (16 + apart_mm) * 1'000;
  job.sections[0].side_rows.staple.staples = out;
  return job;
}

/// Three lapped sleeves whose lap staples come out as told.
job::Job laps(StaplesOut out) {
  job::Job job = section_job({100, 100, 100}, 30);
  job.sections[0].lap_rows->staple.staples = out;
  return job;
}

}  // namespace

TEST_CASE(
    "Harbour Ledger has exactly one stop: section 2 does not say when its lap staples come out") {
  const Results results = solve::solve(demo_job("harbour-ledger"));
  CHECK(stops_in(results) == 1);
  const Finding& stop = results.findings[0];
  CHECK(stop.code == "staple_under_foot");
  CHECK(stop.place == "section 2, all 16 laps");
  CHECK(stop.sentence.find("does not say when they come out") != std::string::npos);
  CHECK(stop.piece == 1);
}

TEST_CASE("the other demo jobs have no stop") {
  CHECK(stops_in(solve::solve(demo_job("marsh-lights"))) == 0);
  CHECK(stops_in(solve::solve(demo_job("orchard-year"))) == 0);
}

TEST_CASE("the chance that a crown is struck is that of the stitch that is really sewn") {
  job::Job job = laps(StaplesOut::stay);
  // source: a wire of 0.5 and a needle of 1.4 over 6 are 32 %, over 3.8 they are 50 %.
  const auto before = findings_of(solve::solve(job), "staple_under_foot");
  REQUIRE(before.size() == 1);
  CHECK(before[0].sum.find("÷ stitch 6 = 32 %") != std::string::npos);
  job::Trial trial;
  trial.of = job::RowsOf::lap_rows;
  trial.stitch_um = 6'000;
  trial.ten_stitches_um = 38'000;
  trial.is_chosen = true;
  job.trials.push_back(trial);
  const auto after = findings_of(solve::solve(job), "staple_under_foot");
  REQUIRE(after.size() == 1);
  CHECK(after[0].sum.find("÷ stitch 3.8 = 50 %") != std::string::npos);
}

TEST_CASE("one cause in many laps is one finding that counts them") {
  job::Job job = section_job(std::vector<Um>(17, 100), 22);
  job.sections[0].lap_rows->staple.staples = StaplesOut::stay;
  const auto all = findings_of(solve::solve(job), "row_near_edge");
  CHECK(all.size() == 1);
  CHECK(all[0].place == "section 1, all 16 laps");
  CHECK(findings_of(solve::solve(job), "staple_under_foot").size() == 1);
}

TEST_CASE("a cause in one sleeve names it, in some of them counts them") {
  job::Job job = section_job(std::vector<Um>(5, 110), 30);
  job.sections[0].changes["1-02"].stitch = job::StitchChange{};
  job.sections[0].changes["1-02"].stitch->in_from_edge_um = 11'000;
  CHECK(findings_of(solve::solve(job), "row_near_edge")[0].place == "section 1, sleeve 1-02");
  job.sections[0].changes["1-04"] = job.sections[0].changes["1-02"];
  CHECK(findings_of(solve::solve(job), "row_near_edge")[0].place == "section 1, 2 sleeves");
  job.sections[0].changes.clear();
  CHECK(findings_of(solve::solve(job), "row_near_edge").empty());
}

TEST_CASE("two sections with one cause are two findings") {
  job::Job job = laps(StaplesOut::stay);
  job.sections.push_back(job.sections[0]);
  job.sections[1].code = "2";
  const auto stops = findings_of(solve::solve(job), "staple_under_foot");
  CHECK(stops.size() == 2);
  CHECK(stops[1].place == "section 2, all 2 laps");
}

TEST_CASE("rows that cannot be laid for one reason are told piece by piece") {
  job::Job job = section_job({110}, 0);
  job.sections[0].length_um = 30'000;
  job.sections.push_back(job.sections[0]);
  job.sections[1].code = "2";
  const auto stops = findings_of(solve::solve(job), "row_not_laid");
  CHECK(stops.size() == 2);
  CHECK(stops[0].place == "section 1, 2 rows");
  CHECK(stops[1].place == "section 2, 2 rows");
}

TEST_CASE("staples by their row are a stop, a note or nothing by when they come out") {
  struct Case {
    StaplesOut out;
    int stops;
    std::size_t findings;
  };
  const Case cases[] = {{StaplesOut::not_said, 1, 1},
                        {StaplesOut::before_the_row, 0, 0},
                        {StaplesOut::as_the_foot_comes, 0, 1},
                        {StaplesOut::after_the_row, 1, 1},
                        {StaplesOut::stay, 1, 1}};
  int count = 0;
  for (const Case& one : cases) {
    CAPTURE(static_cast<int>(one.out));
    const Results side = solve::solve(staples_apart(6, one.out));
    CHECK(stops_in(side) == one.stops);
    CHECK(findings_of(side, "staple_under_foot").size() == one.findings);
    const Results lap = solve::solve(laps(one.out));
    CHECK(stops_in(lap) == one.stops);
    CHECK(findings_of(lap, "staple_under_foot").size() == one.findings);
    ++count;
  }
  CHECK(count == 5);
}

TEST_CASE("staples just as far away as the foot needs pass, a micrometre nearer are a stop") {
  job::Job job = staples_apart(9, StaplesOut::stay);
  CHECK(stops_in(solve::solve(job)) == 0);
  job.sections[0].side_rows.staple.in_from_edge_um -= 1;
  CHECK(stops_in(solve::solve(job)) == 1);
  job.half_foot_um = 6'000;
  CHECK(stops_in(solve::solve(job)) == 0);
}

TEST_CASE("on a narrow sleeve the staples of the other edge are by the row as well") {
  // Staples 26 in from either edge of a sleeve 50 wide stand at 24 and 26, the rows at 16 and 34.
  CHECK(stops_in(solve::solve(section_job({50}, 0))) == 0);
  job::Job job = section_job({50}, 0);
  job.sections[0].side_rows.staple.staples = StaplesOut::stay;
  const auto stops = findings_of(solve::solve(job), "staple_under_foot");
  CHECK(stops.size() == 1);
  CHECK(stops[0].figure == "1.0");
}

TEST_CASE("side staples that stay are by the lap row, those out before the joining are not") {
  job::Job job = section_job({100, 100}, 40);
  for (const StaplesOut out :
       {StaplesOut::before_the_row, StaplesOut::as_the_foot_comes, StaplesOut::after_the_row}) {
    job.sections[0].side_rows.staple.staples = out;
    for (const Finding& finding : solve::solve(job).findings) {
      CHECK(finding.place != "section 1, lap 1-01+02");
    }
  }
  job.sections[0].side_rows.staple.staples = StaplesOut::stay;
  const auto stay = findings_of(solve::solve(job), "staple_under_foot");
  CHECK(stay.size() == 1);
  CHECK(stay[0].place == "section 1, lap 1-01+02");
  CHECK(stay[0].severity == Severity::stop);
  CHECK(stay[0].figure == "3.0");
}

TEST_CASE("a lap row is warned of when the lap is narrower than sixteen needle blades") {
  CHECK(findings_of(solve::solve(section_job({100, 100}, 23)), "row_near_edge").empty());
  CHECK(findings_of(solve::solve(section_job({100, 100}, 22)), "row_near_edge").size() == 1);
}

TEST_CASE("side rows of two lapped sleeves nearer than five blades are a tear line") {
  // source: left sleeve's right row 16 from its edge, right sleeve's left row 16 from its own: they
  // stand lap - 32 apart on either side of the lap row.
  CHECK(findings_of(solve::solve(section_job({100, 100}, 46)), "rows_too_near").empty());
  const auto near = findings_of(solve::solve(section_job({100, 100}, 44)), "rows_too_near");
  CHECK(near.size() == 1);
  CHECK(near[0].figure == "1.0");
  CHECK(near[0].place == "section 1, 2 places");
}

TEST_CASE("rows that were not laid do not stand too near to one another") {
  job::Job job = section_job({100, 100}, 44);
  CHECK(!findings_of(solve::solve(job), "rows_too_near").empty());
  job.sections[0].length_um = 10'000;
  const Results results = solve::solve(job);
  CHECK(results.rows.empty());
  CHECK(findings_of(results, "rows_too_near").empty());
}

TEST_CASE("a panel's rows nearer to the edge than eight blades are warned of once") {
  job::Job job = panel_job(690, 1420, "left");
  job.panels[0].panel_in_um = 11'200;
  CHECK(findings_of(solve::solve(job), "row_near_edge").empty());
  job.panels[0].panel_in_um = 11'199;
  CHECK(findings_of(solve::solve(job), "row_near_edge").size() == 1);
}

TEST_CASE("stops come first, then warnings, then notes, and the standing caution is always said") {
  for (const char* name : {"marsh-lights", "harbour-ledger", "orchard-year"}) {
    const Results results = solve::solve(demo_job(name));
    bool in_order = true;
    for (std::size_t i = 1; i < results.findings.size(); ++i) {
      in_order = in_order && results.findings[i - 1].severity <= results.findings[i].severity;
    }
    CHECK(in_order);
    CHECK(results.findings.back().code == "figures_guide");
    CHECK(findings_of(results, "staple_holes").size() == 1);
  }
  job::Job empty;
  empty.name = "Nothing yet";
  CHECK(solve::solve(empty).findings.size() == 1);
}

TEST_CASE("every finding says where, begins with a capital or a figure and ends with a full stop") {
  tests::Dice dice(20'260'191);
  INFO(dice.words());
  int looked_at = 0;
  int wrong = 0;
  for (int i = 0; i < 300; ++i) {
    for (const Finding& finding : solve::solve(tests::random_job(dice)).findings) {
      ++looked_at;
      const bool ends = finding.sentence.size() > 20 && finding.sentence.back() == '.';
      if (!ends || finding.place.empty() || finding.code.empty()) ++wrong;
    }
  }
  CHECK(wrong == 0);
  CHECK(looked_at > 1'000);
}

TEST_CASE(
    "a finding says which laps, sleeves or rows it is about, and in few words what it found") {
  const Results harbour = solve::solve(demo_job("harbour-ledger"));
  const Finding& stop = harbour.findings[0];
  CHECK(stop.part == checks::Part::laps);
  REQUIRE(stop.at.size() == 16);
  CHECK(stop.at.front() == 0);
  CHECK(stop.at.back() == 15);
  CHECK(stop.brief == "0 apart, needs 9");

  job::Job job = section_job({100, 100, 100}, 30);
  job.sections[0].changes["1-02"].stitch.emplace().in_from_edge_um = 9'000;
  const Results moved = solve::solve(job);
  const auto near = findings_of(moved, "row_near_edge");
  REQUIRE(near.size() == 1);
  CHECK(near[0].part == checks::Part::sleeves);
  CHECK(near[0].at == std::vector<int>{1});
  CHECK(near[0].brief == "9.0, needs 11.2");
  int rows_seen = 0;
  for (const Finding& one : findings_of(moved, "rows_too_near")) {
    CHECK(one.part == checks::Part::rows);
    for (const int row : one.at) {
      CHECK(moved.rows[static_cast<std::size_t>(row)].kind == RowKind::stitch);
      ++rows_seen;
    }
  }
  CHECK(rows_seen > 1);
  const auto always = findings_of(moved, "figures_guide");
  CHECK(always[0].part == checks::Part::whole);
  CHECK(always[0].at.empty());
}
