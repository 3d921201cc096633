#include "web/model/found.h"
#include "tests/support/jobs.h"
#include "web/model/edits.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace pouncemark;
using pouncemark::tests::demo_job;
using pouncemark::tests::Dice;
using pouncemark::tests::panel_job;
using pouncemark::tests::random_job;
using pouncemark::tests::section_job;

namespace {

/// Five sleeves of which the second has its stitch row near its edges and the staples of all stand
/// near their rows; the joining rows stand near the edges of a narrow lap.
job::Job troubled() {
  job::Job job = section_job(std::vector<Um>(5, 110), 20);
  job::Section& section = job.sections[0];
  section.changes["1-02"].stitch.emplace().in_from_edge_um = 9'000;
  section.side_rows.staple.in_from_edge_um = 20'000;
  section.side_rows.staple.staples = job::StaplesOut::after_the_row;
  return job;
}

std::vector<std::string> in_order(const web::Solved& now, const web::LastChange& change) {
  std::vector<std::string> places;
  for (const std::size_t index : web::nearest_first(now, change)) {
    const solve::Finding& finding = now.results.findings[index];
    places.push_back(finding.code + ", " + finding.place);
  }
  return places;
}

bool comes_before(const std::vector<std::string>& order, const char* one, const char* other) {
  const auto at = [&order](const char* words) {
    return std::find_if(order.begin(), order.end(), [words](const std::string& line) {
      return line.find(words) != std::string::npos;
    });
  };
  return at(one) != order.end() && at(other) != order.end() && at(one) < at(other);
}

}  // namespace

TEST_CASE("with nothing changed the findings of what lies on the bench come first, stops first") {
  job::Job job = troubled();
  job.panels = panel_job(690, 1'420, "left").panels;
  job.panels[0].panel_in_um = 9'000;
  const web::Solved now = web::solved(job);
  const auto panel = in_order(now, web::last_change(now, nullptr, {1, -1}));
  CHECK(panel.front().find("panel P1") != std::string::npos);
  const auto sleeve = in_order(now, web::last_change(now, nullptr, {0, 1}));
  CHECK(comes_before(sleeve, "section 1, 4 sleeves", "panel P1"));
  CHECK(comes_before(sleeve, "sleeve 1-02", "panel P1"));
  CHECK(sleeve.back().find("figures_guide") == 0);
}

TEST_CASE("after a change to the laps their findings come before a stop of the side rows") {
  const web::Solved before = web::solved(troubled());
  const web::Place whole{0, -1};
  const web::Solved now =
      web::solved(web::with_measure(before.job, before.results, whole, web::Measure::lap, 19'000));
  const web::LastChange change = web::last_change(now, &before, whole);
  CHECK(change.in_laps);
  CHECK(!change.in_sides);
  CHECK(comes_before(in_order(now, change), "row_near_edge, section 1, all 4 laps",
                     "staple_under_foot"));
  const web::LastChange none = web::last_change(now, nullptr, whole);
  CHECK(comes_before(in_order(now, none), "staple_under_foot",
                     "row_near_edge, section 1, all 4 laps"));
}

TEST_CASE("after a change to one sleeve what is found there comes first, from the section too") {
  const web::Solved before = web::solved(troubled());
  const web::Place third{0, 2};
  const web::Solved now = web::solved(
      web::with_measure(before.job, before.results, third, web::Measure::width, 120'000));
  for (const web::Place place : {third, web::Place{0, -1}}) {
    const web::LastChange change = web::last_change(now, &before, place);
    CHECK(change.sleeve == 2);
    CHECK(change.in_sides);
    const auto order = in_order(now, change);
    CHECK(order.front().find("staple_under_foot, section 1, ") == 0);
    CHECK(comes_before(order, "all 4 laps", "row_near_edge, section 1, sleeve 1-02"));
  }
  job::Job two = now.job;
  two.sections[0].changes["1-05"].width_um = 130'000;
  CHECK(web::last_change(web::solved(two), &before, {0, -1}).sleeve == -1);
}

TEST_CASE("every finding stands in the order once, whatever changed, in random jobs") {
  int seen = 0;
  for (std::uint32_t seed = 1; seed <= 60; ++seed) {
    Dice dice(seed);
    INFO(dice.words());
    const web::Solved before = web::solved(random_job(dice));
    const web::Solved now = web::solved(random_job(dice));
    for (const web::Place place : web::all_places(now.results)) {
      auto order = web::nearest_first(now, web::last_change(now, &before, place));
      REQUIRE(order.size() == now.results.findings.size());
      std::stable_sort(order.begin(), order.end());
      for (std::size_t i = 0; i < order.size(); ++i) REQUIRE(order[i] == i);
      ++seen;
      if (seen % 40 == 0) break;
    }
  }
  CHECK(seen > 100);
}

TEST_CASE(
    "a finding leads to the lap, the sleeve or the panel it is about, and stays where it is") {
  job::Job job = troubled();
  job.panels = panel_job(690, 1'420, "left").panels;
  job.panels[0].panel_in_um = 9'000;
  const web::Solved now = web::solved(job);
  const auto led_to = [&now](const char* code, const char* place, web::Spotted from) {
    for (const solve::Finding& finding : now.results.findings) {
      if (finding.code != code || finding.place.find(place) == std::string::npos) continue;
      return web::place_of(now.results, finding, from);
    }
    return web::Spotted{{-7, -7}, -7};
  };
  const web::Spotted panel{{1, -1}, -1};
  CHECK(led_to("row_near_edge", "all 4 laps", panel).lap == 0);
  CHECK(led_to("row_near_edge", "all 4 laps", {{0, -1}, 2}).lap == 2);
  CHECK(led_to("row_near_edge", "sleeve 1-02", panel).place == web::Place{0, 1});
  CHECK(led_to("staple_under_foot", "section 1, 4 sleeves", panel).place == web::Place{0, 0});
  CHECK(led_to("staple_under_foot", "section 1, 4 sleeves", {{0, 3}, -1}).place ==
        web::Place{0, 3});
  CHECK(led_to("row_near_edge", "panel P1", {{0, 3}, -1}).place == web::Place{1, -1});
  CHECK(led_to("figures_guide", "", panel).place.piece == -1);
}

TEST_CASE("the lap shown first is one that is not as the others, else the middle one") {
  job::Job job = section_job(std::vector<Um>(6, 110), 30);
  CHECK(web::first_lap(web::solved(job).results, 0) == 2);
  job.sections[0].missing = {"1-05"};
  CHECK(web::first_lap(web::solved(job).results, 0) == 3);
  job.sections[0].missing.clear();
  job.sections[0].side_rows.staple.staples = job::StaplesOut::before_the_row;
  job.sections[0].changes["1-02"].staple.emplace().staples = job::StaplesOut::stay;
  job.sections[0].changes["1-02"].staple->in_from_edge_um = 20'000;
  CHECK(web::first_lap(web::solved(job).results, 0) == 0);
  CHECK(web::first_lap(web::solved(demo_job("harbour-ledger")).results, 1) == 7);
  CHECK(web::first_lap(web::solved(section_job({110}, 0)).results, 0) == -1);
  CHECK(web::first_lap(web::solved(panel_job(690, 1'420, "left")).results, 0) == -1);
}

TEST_CASE("the lap nearest to a place across the section is the one whose middle is") {
  // source: three sleeves of 100 lapped by 20 have their middles at 90 and 170, by hand
  const web::Solved now = web::solved(section_job({100, 100, 100}, 20));
  const solve::Piece& piece = now.results.pieces[0];
  CHECK(web::lap_nearest(piece, 0) == 0);
  CHECK(web::lap_nearest(piece, 129'000) == 0);
  CHECK(web::lap_nearest(piece, 131'000) == 1);
  CHECK(web::lap_nearest(piece, 900'000) == 1);
  CHECK(web::lap_nearest(web::solved(section_job({100}, 0)).results.pieces[0], 50'000) == -1);
}
