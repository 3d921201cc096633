#include "web/model/curve.h"
#include "engine/base/number_text.h"

#include "tests/support/jobs.h"
#include "tests/support/sum_reading.h"
#include "web/model/curve_edits.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::web;
using pouncemark::tests::demo_job;
using pouncemark::tests::fault_in_line;
using pouncemark::tests::last_number;
using pouncemark::tests::panel_job;

namespace {

/// One panel in a bay of 1000 over so much rise.
job::Job hung(Um rise_mm, const std::string& face) {
  job::Job job = panel_job(1040, 2000, "left");
  job.slip_distance_um = 1'500;
  job::Bay bay;
  bay.code = "B1";
  bay.chord_um = 1'000'000;
  bay.rise_um = rise_mm * 1'000;
  bay.face = face;
  bay.holds = "P1";
  job.bays.push_back(std::move(bay));
  return job;
}

std::vector<std::string> ids_of(const std::vector<FollowLine>& lines) {
  std::vector<std::string> ids;
  for (const FollowLine& line : lines) ids.push_back(line.id);
  return ids;
}

bool has(const std::vector<FollowLine>& lines, const std::string& id) {
  const auto ids = ids_of(lines);
  return std::find(ids.begin(), ids.end(), id) != ids.end();
}

std::string figure_of(const std::vector<FollowLine>& lines, std::string_view id) {
  for (const FollowLine& line : lines) {
    if (line.id == id) return line.figure;
  }
  return "none";
}

double walk_of(const std::vector<Vec2>& line) {
  double all = 0;
  for (std::size_t i = 1; i < line.size(); ++i) all += length(line[i] - line[i - 1]);
  return all;
}

}  // namespace

TEST_CASE("the sentence says the curve, the extra and where the cloth creeps") {
  struct Case {
    int bay;
    std::string words;
  };
  // source: the bays of the job by hand, R = c²/8h + h/2, along = R × turn, creep = 1.5 × turn
  const std::vector<Case> cases = {
      {0, "951 along the curve, 46 more than the straight distance"},
      {1,
       "863 along the curve, 43 more than the straight distance; the cloth creeps 1.65 out at the "
       "fly side"},
      {3,
       "943 along the curve, 48 more than the straight distance; the cloth creeps 1.67 out at the "
       "fly side"}};
  const Solved harbour = solved(demo_job("harbour-ledger"));
  int ran = 0;
  for (const Case& one : cases) {
    CHECK(plain_words(curve_view(harbour, nullptr, one.bay).headline) == one.words);
    ++ran;
  }
  CHECK(ran == 3);
  CHECK(plain_words(curve_view(solved(panel_job(600, 1200, "left")), nullptr, 0).headline) ==
        "No bay is entered");
}

TEST_CASE("from flat to hung the sheet keeps its length and the cloth creeps with its turn") {
  const CurveView view = curve_view(solved(hung(150, "hollow")), nullptr, 0);
  int ran = 0;
  for (const double part : {0.0, 0.25, 0.5, 0.75, 1.0}) {
    const CurveShape shape = curve_shape(view, part);
    CHECK(std::fabs(walk_of(shape.sheet) - from_um(view.along_um)) < 0.01);
    CHECK(std::fabs(shape.creep - part * from_um(view.creep_um)) < 0.001);
    ++ran;
  }
  CHECK(ran == 5);
  CHECK(curve_shape(view, 0).sheet_crest < 1e-6);
  CHECK(curve_shape(view, 0).creep_words == "0");
  const CurveShape hung_shape = curve_shape(view, 1);
  CHECK(std::fabs(hung_shape.sheet_crest - 150) < 0.05);
  CHECK(std::fabs(hung_shape.sheet.back().x - hung_shape.sheet.front().x - 1000) < 0.05);
  // source: 1.5 × 4 atan(0.3) = 1.749
  CHECK(hung_shape.creep_words == "1.75 out");
  CHECK(curve_shape(curve_view(solved(hung(150, "bulging")), nullptr, 0), 1).creep_words ==
        "1.75 in");
}

TEST_CASE("creep and stop are said only where a panel hangs, bulge only where cloth moves out") {
  const Solved harbour = solved(demo_job("harbour-ledger"));
  const auto section = curve_lines(harbour, nullptr, 0);
  const auto panel = curve_lines(harbour, nullptr, 1);
  for (const char* id : {"creep", "stop", "ease", "bulge"}) {
    CHECK(!has(section, id));
    CHECK(has(panel, id));
  }
  CHECK(has(section, "radius"));
  CHECK(!has(curve_lines(solved(hung(150, "bulging")), nullptr, 0), "bulge"));
  const auto lines = curve_lines(solved(hung(150, "hollow")), nullptr, 0);
  // source: 0.5 × (1000² ÷ 1200 + 75) ÷ 1.5 = 302.8
  CHECK(figure_of(lines, "stop") == "302.8");
  const auto flat = curve_lines(solved(hung(0, "hollow")), nullptr, 0);
  CHECK(figure_of(flat, "radius") == "flat");
  CHECK(!has(flat, "stop"));
  CHECK(!has(flat, "push"));
}

TEST_CASE("every figure of a bay has a sum that is true and ends in it, and a source") {
  int ran = 0;
  for (const char* name : {"marsh-lights", "harbour-ledger"}) {
    const Solved now = solved(demo_job(name));
    for (int bay = 0; bay < static_cast<int>(now.job.bays.size()); ++bay) {
      for (const FollowLine& line : curve_lines(now, nullptr, bay)) {
        CAPTURE(line.id);
        CHECK(!line.sum.source.empty());
        REQUIRE(!line.sum.numbers.empty());
        CHECK(last_number(line.sum.numbers.back()) == last_number(line.figure));
        for (const std::string& numbers : line.sum.numbers) CHECK(fault_in_line(numbers) == "");
        ++ran;
      }
    }
  }
  CHECK(ran > 100);
}

TEST_CASE("the push shown is that of the results, and a flat bay has none") {
  const Solved now = solved(hung(51, "hollow"));
  const auto lines = curve_lines(now, nullptr, 0);
  REQUIRE(now.results.bays[0].force);
  CHECK(figure_of(lines, "push") == mm_text(now.results.bays[0].force->slipping.exact_mn, 1));
  CHECK(figure_of(lines, "people") == "1");
  CHECK(!has(curve_lines(solved(hung(0, "hollow")), nullptr, 0), "people"));
}

TEST_CASE("weight and what hangs on it are said as far as they are known") {
  job::Job job = hung(51, "hollow");
  job::FixingRow row;
  row.edge = "top";
  row.in_from_edge_um = 10'000;
  row.kept_clear_um = {70'000, 70'000};
  row.spacing_um = 300'000;
  job.bays[0].fixings.push_back(row);
  const auto label_of = [](const std::vector<FollowLine>& lines, const std::string& id) {
    for (const FollowLine& line : lines) {
      if (line.id == id) return line.label;
    }
    return std::string("none");
  };
  const auto part = curve_lines(solved(job), nullptr, 0);
  // source: 1.04 × 2 × 1.27 kg of sheet 1 thick, the cloth not known; × 9.80665
  CHECK(figure_of(part, "mass") == "2641.6");
  CHECK(figure_of(part, "weight") == "25.9");
  CHECK(label_of(part, "mass") == "Weight at least");
  CHECK(label_of(part, "fixing") == "On one fixing at least, most");
  job.materials.values[material::Field::panel_cloth_mass].thousandths = 300'000;
  const Solved now = solved(job);
  const auto all = curve_lines(now, nullptr, 0);
  const solve::BayLoads& loads = *now.results.bays[0].loads;
  CHECK(label_of(all, "mass") == "Weight");
  CHECK(figure_of(all, "per_stitch") == mm_text(loads.per_stitch_mn, 2));
  CHECK(figure_of(all, "corner") == mm_text(loads.corner_mn, 1));
  // source: textbook tables of continuous beams, 4 supports: .1333 .3667 .3667 .1333
  CHECK(figure_of(all, "fixing") == mm_text(loads.weight_mn * 11 / 30, 1));
  int ran = 0;
  for (const FollowLine& line : all) {
    if (line.unit != "N" || line.rank != LineRank::more || line.id == "locked") continue;
    CHECK(line.sum.rule.find("not a structural calculation") != std::string::npos);
    for (const std::string& numbers : line.sum.numbers) CHECK(fault_in_line(numbers) == "");
    ++ran;
  }
  CHECK(ran == 4);
  job.bays[0].fixings.clear();
  CHECK(!has(curve_lines(solved(job), nullptr, 0), "fixing"));
  job.bays[0].stands_empty = true;
  CHECK(!has(curve_lines(solved(job), nullptr, 0), "mass"));
}

TEST_CASE("bays are ranked by their radius and by their force") {
  const Solved harbour = solved(demo_job("harbour-ledger"));
  const auto by_radius = ranked_bays(harbour, false);
  const auto by_force = ranked_bays(harbour, true);
  REQUIRE(by_radius.size() == 11);
  REQUIRE(by_force.size() == 11);
  CHECK(by_radius.front().code == "B2");
  CHECK(by_radius.back().code == "B7");
  CHECK(by_force.front().holds == "P1");
  job::Job job = hung(150, "hollow");
  job = with_new_bay(solved(job)).job;
  const auto flat_last = ranked_bays(solved(job), false);
  CHECK(flat_last.back().radius == "flat");
}

TEST_CASE("chord, rise, face and what hangs there are typed, and refused with a sentence") {
  const job::Job job = demo_job("harbour-ledger");
  const Made rise = with_bay_typed(job, 1, BayBox::rise, "120");
  CHECK(rise.refused.empty());
  CHECK(rise.action == "Rise of bay B2 116 → 120");
  CHECK(rise.job.bays[1].rise_um == 120'000);
  CHECK(with_bay_typed(job, 1, BayBox::chord, "82cm").job.bays[1].chord_um == 820'000);
  CHECK(with_bay_typed(job, 1, BayBox::holds, "P2").job.bays[1].holds == "P2");
  CHECK(with_bay_face(job, 1, false).job.bays[1].face == "bulging");
  struct Bad {
    BayBox box;
    std::string typed;
  };
  int ran = 0;
  for (const Bad& bad : std::vector<Bad>{{BayBox::rise, "-5"},
                                         {BayBox::chord, "0"},
                                         {BayBox::chord, "wide"},
                                         {BayBox::holds, "P99"}}) {
    CHECK(!with_bay_typed(job, 1, bad.box, bad.typed).refused.empty());
    ++ran;
  }
  CHECK(ran == 4);
  CHECK(with_bay_typed(job, 1, BayBox::rise, "0").refused.empty());
}

TEST_CASE("a bay is added for the first piece that hangs in none, and taken away") {
  job::Job job = panel_job(600, 1200, "left");
  const Made made = with_new_bay(solved(job));
  REQUIRE(made.job.bays.size() == 1);
  CHECK(made.job.bays[0].holds == "P1");
  CHECK(made.job.bays[0].chord_um == 600'000);
  CHECK(made.job.bays[0].rise_um == 0);
  CHECK(made.action == "Bay B1 added");
  const Made second = with_new_bay(solved(made.job));
  CHECK(second.job.bays[1].code == "B2");
  CHECK(second.job.bays[1].stands_empty);
  CHECK(job::open_job(job::save_job(second.job)).is_ok());
  CHECK(without_bay(second.job, 1).job.bays.size() == 1);
  job.panels.clear();
  CHECK(!with_new_bay(solved(job)).refused.empty());
}
