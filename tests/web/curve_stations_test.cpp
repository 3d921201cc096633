#include "web/model/curve_stations.h"

#include "tests/support/jobs.h"
#include "web/model/curve.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::web;
using pouncemark::tests::panel_job;

namespace {

using Station = std::array<Um, 2>;

/// One panel in a bay with these stations.
job::Job with_stations(std::vector<Station> stations, Um chord_um = 1'000'000) {
  job::Job job = panel_job(1040, 2000, "left");
  job.slip_distance_um = 1'500;
  job::Bay bay;
  bay.code = "B1";
  bay.chord_um = chord_um;
  bay.rise_um = 150'000;
  bay.face = "hollow";
  bay.holds = "P1";
  bay.stations_um = std::move(stations);
  job.bays.push_back(std::move(bay));
  return job;
}

/// An exact circle of 700 at every 200, the middle one on the crest.
std::vector<Station> circle_of_700() {
  std::vector<Station> stations;
  for (const double x : {-400.0, -200.0, 0.0, 200.0, 400.0}) {
    stations.push_back({to_um(x + 400), to_um(std::sqrt(700.0 * 700.0 - x * x) - 570)});
  }
  return stations;
}

}  // namespace

TEST_CASE("stations typed as two figures stand in their order along the batten") {
  const job::Job empty = with_stations({});
  const Made three = with_stations_added(empty, 0, "400 61; 0 0;800,5 -2.5");
  CHECK(three.refused.empty());
  CHECK(three.action == "3 stations added to bay B1");
  CHECK(three.job.bays[0].stations_um ==
        std::vector<Station>{{0, 0}, {400'000, 61'000}, {800'500, -2'500}});
  const Made fourth = with_stations_added(three.job, 0, "20cm 48");
  CHECK(fourth.action == "Station at 200 along, 48 off: added to bay B1");
  CHECK(fourth.job.bays[0].stations_um[1] == Station{200'000, 48'000});
  CHECK(without_station(fourth.job, 0, 1).job.bays[0].stations_um == three.job.bays[0].stations_um);
}

TEST_CASE("what is no station is refused with a sentence and changes nothing") {
  const job::Job job = with_stations({{0, 0}, {200'000, 40'000}, {400'000, 61'000}});
  struct Case {
    std::string typed;
    std::string sentence;
  };
  const std::vector<Case> cases = {
      {"400", "\"400\": give how far along the batten and how far off it, as 400 61."},
      {"", "\"\": give how far along the batten and how far off it, as 400 61."},
      {"200 50", "A station at 200 along is there already."},
      {"600 0; 600 1", "A station at 600 along is there already."}};
  int ran = 0;
  for (const Case& one : cases) {
    const Made made = with_stations_added(job, 0, one.typed);
    CHECK(made.refused == one.sentence);
    CHECK(made.job.bays[0].stations_um == job.bays[0].stations_um);
    ++ran;
  }
  CHECK(ran == 4);
  for (const char* bad : {"-5 3", "600 six", "21m 3", "600 3 4"}) {
    CHECK(!with_stations_added(job, 0, bad).refused.empty());
    ++ran;
  }
  CHECK(ran == 8);
  const Made past = with_station_typed(job, 0, 1, StationBox::along, "400");
  CHECK(past.refused ==
        "400 is not before the next station, at 400: give a distance between them.");
  CHECK(past.job.bays[0].stations_um == job.bays[0].stations_um);
  CHECK(with_station_typed(job, 0, 1, StationBox::along, "399.9").refused.empty());
  const Made before = with_station_stepped(job, 0, 1, StationBox::along, -200'000);
  CHECK(before.refused == "0 is not after the station before, at 0: give a distance between them.");
  const Made other_side = with_station_typed(job, 0, 1, StationBox::off, "−12");
  CHECK(other_side.action == "Station 2 of bay B1 40 → −12 off");
  CHECK(other_side.job.bays[0].stations_um[1][1] == -12'000);
}

TEST_CASE("stations say why they are wanted every 200 and what the tape makes of them") {
  job::Job job = with_stations(circle_of_700());
  StationsView view = stations_view(solved(job), 0);
  REQUIRE(view.lines.size() == 5);
  CHECK(view.lines[2].along == "400");
  CHECK(view.lines[2].radius == "700.0");
  CHECK(view.lines[0].radius.empty());
  REQUIRE(view.said.size() == 3);
  CHECK(view.said[0] == "The curve goes through 5 stations.");
  // source: √6 × 700 ÷ 200² = 4.3 %, ÷ 100² = 17 %, for 1 on each of three readings
  CHECK(view.said[1] ==
        "Why 200: with each reading out by 1, a radius of 700 is ± 4.3 % out with stations 200 "
        "apart, and ± 17 % with 100.");
  const Um along = solved(job).results.bays[0].along_um;
  const auto taped = [&](Um more) {
    job.bays[0].taped_along_um = along + more;
    return stations_view(solved(job), 0);
  };
  CHECK(taped(3'800).taped_said == "3.8 longer than worked out: measure again");
  CHECK(taped(3'800).is_far_off);
  CHECK(taped(-2'100).taped_said == "2.1 shorter than worked out: measure again");
  CHECK(taped(800).taped_said == "0.8 apart, within 2");
  CHECK(!taped(2'000).is_far_off);
  CHECK(!with_taped(job, 0, " ").job.bays[0].taped_along_um.has_value());
  CHECK(with_taped(job, 0, "847.2").job.bays[0].taped_along_um == 847'200);
  CHECK(!with_taped(job, 0, "-3").refused.empty());
}

TEST_CASE("an S has radii to both sides, its tightest marked where it stands") {
  const job::Job job = with_stations({{0, 0},
                                      {200'000, 60'000},
                                      {400'000, 95'000},
                                      {600'000, 60'000},
                                      {800'000, 0},
                                      {1'000'000, -55'000},
                                      {1'200'000, -70'000},
                                      {1'400'000, 0}});
  const Solved now = solved(job);
  const StationsView view = stations_view(now, 0);
  CHECK(view.lines[2].radius.find("inward") == std::string::npos);
  CHECK(view.lines[6].radius.find(" inward") != std::string::npos);
  const CurveView bay = curve_view(now, nullptr, 0);
  CHECK(bay.tightest_station == 7);
  const CurveShape shape = curve_shape(bay, 1);
  REQUIRE(shape.stations.size() == 8);
  CHECK(shape.radius_at == shape.stations[6]);
  CHECK(shape.trough > 0);
  CHECK(shape.tight.empty());
}

TEST_CASE("slip is said at any place between the hinge side and the fly side") {
  job::Job job = with_stations({});
  const CurveView view = curve_view(solved(job), nullptr, 0);
  const double along = from_um(view.along_um);
  struct Case {
    double from_hinge;
    const char* words;
  };
  // source: 1.5 × place ÷ 908.3
  const std::vector<Case> cases = {{0, "slip 0, 0 from the hinge side"},
                                   {250, "slip 0.41 out, 250 from the hinge side"},
                                   {303, "slip 0.50 out, 303 from the hinge side"},
                                   {750, "slip 1.24 out, 750 from the hinge side"}};
  int ran = 0;
  for (const Case& one : cases) {
    CHECK(curve_shape(view, 1, one.from_hinge / along).place_words == one.words);
    ++ran;
  }
  CHECK(ran == 4);
  CHECK(curve_shape(view, 0, 0.5).place_words == "slip 0, 529 from the hinge side");
  job.panels[0].hinge_side = "right";
  const CurveView other = curve_view(solved(job), nullptr, 0);
  CHECK(curve_shape(other, 1, 1 - 250 / along).place_words ==
        "slip 0.41 out, 250 from the hinge side");
  // source: (2/π) × √(along × creep)
  CHECK(curve_shape(view, 1).bulge_words == "sewn all round the cloth would stand up 27.4");
  CHECK(curve_shape(view, 0).bulge == 0);
}

TEST_CASE("a bay tighter than its sheet may stay is marked with radius and limit") {
  job::Job job = with_stations({}, 200'000);
  job.bays[0].rise_um = 90'000;
  const CurveView tight = curve_view(solved(job), nullptr, 0);
  REQUIRE(tight.too_tight.has_value());
  CHECK(tight.radius_words.rfind("radius ", 0) == 0);
  CHECK(tight.limit_words.find("or more") != std::string::npos);
  CHECK(curve_shape(tight, 1).tight.size() == 1);
  job.bays[0].rise_um = 5'000;
  const CurveView open = curve_view(solved(job), nullptr, 0);
  CHECK(!open.too_tight.has_value());
  CHECK(curve_shape(open, 1).tight.empty());
}
