#include "web/model/remedies.h"
#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "tests/support/rows.h"

#include <doctest/doctest.h>

#include <cstdint>
#include <string>
#include <vector>

using namespace pouncemark;
using pouncemark::tests::demo_job;
using pouncemark::tests::Dice;
using pouncemark::tests::panel_job;
using pouncemark::tests::random_job;
using pouncemark::tests::section_job;

namespace {

/// The words on the buttons for the first finding of a code, with commas between.
std::string offered(const job::Job& job, const char* code) {
  const web::Solved now = web::solved(job);
  for (const solve::Finding& finding : now.results.findings) {
    if (finding.code != code) continue;
    std::string words;
    for (const web::Remedy& one : web::remedies_for(now, finding)) {
      words += (words.empty() ? "" : ", ") + one.words;
    }
    return words;
  }
  return "not found";
}

std::size_t places_of(const solve::Results& results, const solve::Finding& finding) {
  for (const solve::Finding& one : results.findings) {
    const bool same = one.piece == finding.piece && one.sentence == finding.sentence &&
                      one.severity == finding.severity && one.part == finding.part;
    if (same) return std::max<std::size_t>(one.at.size(), 1);
  }
  return 0;
}

std::size_t stops_of(const solve::Results& results) {
  std::size_t stops = 0;
  for (const solve::Finding& one : results.findings) {
    if (one.severity == solve::Severity::stop) stops += std::max<std::size_t>(one.at.size(), 1);
  }
  return stops;
}

/// Tries every remedy of every finding on the whole job; gives how many there were.
int try_all(const job::Job& job) {
  const web::Solved now = web::solved(job);
  int tried = 0;
  for (const solve::Finding& finding : now.results.findings) {
    for (const web::Remedy& one : web::remedies_for(now, finding)) {
      CAPTURE(finding.place + ": " + finding.sentence);
      CAPTURE(one.words);
      const solve::Results then = solve::solve(one.job);
      CHECK(places_of(then, finding) < places_of(now.results, finding));
      CHECK(stops_of(then) <= stops_of(now.results));
      CHECK(!one.action.empty());
      const std::string saved = job::save_job(one.job);
      CHECK(saved != job::save_job(job));
      CHECK(static_cast<bool>(job::open_job(saved)));
      ++tried;
    }
  }
  return tried;
}

}  // namespace

TEST_CASE("what is offered for a finding of the demo jobs makes it less, and no stop more") {
  int tried = 0;
  for (const char* name : {"marsh-lights", "harbour-ledger"}) tried += try_all(demo_job(name));
  CHECK(tried >= 2);
}

TEST_CASE("what is offered for a finding of a random job makes it less, and no stop more") {
  int tried = 0;
  for (std::uint32_t seed = 1; seed <= 300; ++seed) {
    Dice dice(seed);
    INFO(dice.words());
    tried += try_all(random_job(dice));
  }
  CHECK(tried > 100);
}

TEST_CASE("staples under the foot come out first, or as it comes") {
  CHECK(offered(demo_job("harbour-ledger"), "staple_under_foot") ==
        "Staples out first, As the foot comes");
  job::Job job = section_job({200}, 0);
  job.sections[0].side_rows.staple.staples = job::StaplesOut::stay;
  CHECK(offered(job, "staple_under_foot") == "not found");
  job.sections[0].side_rows.staple.in_from_edge_um = 20'000;
  CHECK(offered(job, "staple_under_foot") == "Staples out first, As the foot comes");
}

TEST_CASE("staples of the sleeves that meet the joining row are those that come out first") {
  job::Job job = section_job({100, 100, 100}, 30);
  job.sections[0].side_rows.staple.in_from_edge_um = 20'000;
  job.sections[0].side_rows.staple.staples = job::StaplesOut::not_said;
  job.sections[0].lap_rows->staple.staples = job::StaplesOut::before_the_row;
  const web::Solved now = web::solved(job);
  int seen = 0;
  for (const solve::Finding& finding : now.results.findings) {
    if (finding.code != "staple_under_foot" || finding.part != checks::Part::laps) continue;
    const auto remedies = web::remedies_for(now, finding);
    REQUIRE(remedies.size() == 1);
    CHECK(remedies[0].words == "Side staples out first");
    ++seen;
  }
  CHECK(seen > 0);
}

TEST_CASE("a row too near an edge moves in where there is room for it, and else nothing is said") {
  job::Job panel = panel_job(690, 1'420, "left");
  panel.panels[0].panel_in_um = 9'000;
  CHECK(offered(panel, "row_near_edge") == "Rows 11.5 in");
  job::Job sleeve = section_job({200}, 0);
  sleeve.sections[0].side_rows.stitch.in_from_edge_um = 9'000;
  CHECK(offered(sleeve, "row_near_edge") == "Stitch rows 11.5 in");
  // A wider lap would bring its joining row to the side rows.
  CHECK(offered(demo_job("harbour-ledger"), "row_near_edge") == "");
}

TEST_CASE("a row that has no room keeps less clear; one that lies off the piece has no button") {
  job::Job job = section_job({200}, 0);
  job.sections[0].side_rows.staple.kept_clear_um = {1'000'000, 1'000'000};
  CHECK(offered(job, "row_not_laid") == "Keep 875 clear");
  job.sections[0].side_rows.staple.kept_clear_um = {18'000, 18'000};
  job.sections[0].side_rows.staple.in_from_edge_um = 300'000;
  CHECK(offered(job, "row_not_laid") == "");
}

TEST_CASE("a short last gap is made even; a sleeve that is missing can be put back") {
  job::Job job = section_job({200}, 0);
  job::StapleRow& row = job.sections[0].side_rows.staple;
  row.spacing_um = 60'000;
  row.rule = job::SpacingRule::exact;
  row.left_over = job::LeftOver::extra_point;
  CHECK(offered(job, "short_last_gap") == "Even gaps");
  job::Job missing = section_job({200, 200, 200}, 46);
  missing.sections[0].missing = {"1-02"};
  CHECK(offered(missing, "code_missing") == "Put 1-02 back");
  CHECK(offered(missing, "figures_guide") == "");
}

TEST_CASE("rows in the slip zone are offered a stop at or before its place, and to run on again") {
  job::Job job = panel_job(480, 1'420, "left");
  job::Bay bay;
  bay.code = "B1";
  bay.chord_um = 400'000;
  bay.rise_um = 120'000;
  bay.face = "hollow";
  bay.holds = "P1";
  job.bays.push_back(bay);
  // source: R 226.667 of chord 400 and rise 120; 0.5 × 226.667 ÷ 1.5 = 75.556, down to a half.
  CHECK(offered(job, "row_in_slip_zone") == "Stop the rows at 75.5");
  const web::Solved now = web::solved(job);
  for (const solve::Finding& finding : now.results.findings) {
    if (finding.code != "row_in_slip_zone") continue;
    const web::Remedy stop = web::remedies_for(now, finding).at(0);
    CHECK(stop.job.panels[0].rows_stop_um == 75'500);
    CHECK(stop.action == "Rows of panel P1 stop 75.5 from the hinge side");
    CHECK(offered(stop.job, "row_in_slip_zone") == "not found");
  }
  // With no room for a gap before that place nothing is offered.
  job.panels[0].spacing_um = 60'000;
  CHECK(offered(job, "row_in_slip_zone").empty());
  job.panels[0].rows_stop_um = 40'000;
  CHECK(offered(job, "rows_stop_soon") == "Let the rows run on");
  job.panels[0].rows_stop_um = 470'000;
  CHECK(offered(job, "rows_stop_beyond") == "Let the rows run on");
  job.panels[0].rows_stop_um = 300'000;
  CHECK(offered(job, "rows_stop_beyond") == "not found");
}
