#include "web/model/curve_stations.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <optional>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/solve/bays.h"
#include "web/model/entry.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

constexpr Limits kAlong{0, 20'000'000};
constexpr Limits kOff{-20'000'000, 20'000'000};
constexpr std::size_t kMostStations = 1'000;  // as the job file has it

using Station = std::array<Um, 2>;

job::Bay& bay_at(Made& made, int bay) { return made.job.bays[static_cast<std::size_t>(bay)]; }

Made begun(const job::Job& job, int bay) {
  Made made;
  made.job = job;
  made.piece = bay;
  return made;
}

std::string signed_text(Um um) { return um < 0 ? kMinus + exact_mm_text(-um) : exact_mm_text(um); }

/// A distance off the batten may lie on its other side, with a minus before it.
Entry read_off(std::string_view text) {
  std::size_t sign = text.find_first_not_of(' ');
  sign = sign == std::string_view::npos ? 0 : sign;
  const std::string_view rest = text.substr(sign);
  const bool is_minus = rest.substr(0, 1) == "-" || rest.substr(0, 3) == kMinus;
  if (!is_minus) return read_entry(text, kOff);
  Entry entry = read_entry(rest.substr(rest.front() == '-' ? 1 : 3), kOff);
  if (entry.um) entry.um = -*entry.um;
  return entry;
}

/// "400 61": how far along and how far off, or why not.
std::optional<Station> read_station(std::string_view text, std::string* refused) {
  const std::size_t from = text.find_first_not_of(' ');
  const std::size_t gap = from == std::string_view::npos ? from : text.find(' ', from);
  const std::size_t off = gap == std::string_view::npos ? gap : text.find_first_not_of(' ', gap);
  if (off == std::string_view::npos) {
    *refused = "\"" + shortened(text, 20) +
               "\": give how far along the batten and how far off it, as 400 61.";
    return std::nullopt;
  }
  const Entry along = read_entry(text.substr(from, gap - from), kAlong);
  const Entry by = read_off(text.substr(off));
  *refused = along.um ? by.sentence : along.sentence;
  if (!along.um || !by.um) return std::nullopt;
  return Station{*along.um, *by.um};
}

std::string station_words(const Station& station) {
  return exact_mm_text(station[0]) + " along, " + signed_text(station[1]) + " off";
}

/// True when it stands in its order; else why not.
bool put_in(std::vector<Station>& stations, const Station& station, std::string* refused) {
  const auto after = std::find_if(stations.begin(), stations.end(),
                                  [&](const Station& one) { return one[0] >= station[0]; });
  if (after != stations.end() && (*after)[0] == station[0]) {
    *refused = "A station at " + exact_mm_text(station[0]) + " along is there already.";
    return false;
  }
  stations.insert(after, station);
  return true;
}

/// Between its neighbours along the batten; else why not.
bool is_in_order(const std::vector<Station>& stations, std::size_t at, std::string* refused) {
  const Um um = stations[at][0];
  const bool after = at == 0 || um > stations[at - 1][0];
  const bool before = at + 1 == stations.size() || um < stations[at + 1][0];
  if (after && before) return true;
  *refused =
      exact_mm_text(um) +
      (after ? " is not before the next station, at " + exact_mm_text(stations[at + 1][0])
             : " is not after the station before, at " + exact_mm_text(stations[at - 1][0])) +
      ": give a distance between them.";
  return false;
}

Made with_station(const job::Job& job, int bay, int station, StationBox box, Um um) {
  Made made = begun(job, bay);
  job::Bay& of = bay_at(made, bay);
  const auto at = static_cast<std::size_t>(station);
  Um& figure = of.stations_um[at][box == StationBox::along ? 0 : 1];
  made.action = "Station " + std::to_string(station + 1) + " of bay " + of.code + " " +
                signed_text(figure) + " " + kArrow + " " + signed_text(um) +
                (box == StationBox::along ? " along" : " off");
  figure = um;
  if (!is_in_order(of.stations_um, at, &made.refused)) made.job = job;
  return made;
}

/// How far out a radius is with stations so far apart, in words.
std::string out_by(double radius, double step) {
  const Vec2 ends{step, std::sqrt(radius * radius - step * step)};
  const double share = frame::radius_uncertainty({-ends.x, ends.y}, {0, radius}, ends,
                                                 from_um(material::kAssumedReadingUm));
  return std::string(kPlusMinus) + " " +
         mm_text(std::llround(share * 100'000.0), share < 0.1 ? 1 : 0) + " %";
}

void say_why(const solve::BayResult& result, StationsView* view) {
  const std::size_t count = view->lines.size();
  const std::string until = "chord and rise say how the bay bends.";
  view->said.push_back(count == 0  ? "No station yet: " + until
                       : count < 3 ? "A curve needs three stations. Until then " + until
                       : result.is_by_stations
                           ? "The curve goes through " + std::to_string(count) + " stations."
                           : "Not in their order: " + until);
  constexpr double kNear = 100;
  constexpr double kAsked = 200;
  constexpr double kWhereFlat = 700;
  const double radius = result.is_flat() ? kWhereFlat : from_um(result.radius_um);
  if (radius > kAsked) {
    view->said.push_back(
        "Why 200: with each reading out by " + exact_mm_text(material::kAssumedReadingUm) +
        ", a radius of " + mm_text(to_um(radius), 0) + " is " + out_by(radius, kAsked) +
        " out with stations 200 apart, and " + out_by(radius, kNear) + " with 100.");
  }
  view->said.push_back(
      "Measure every 200 along a straight batten, the middle one on the crest. Off is from batten "
      "to timber, more where it stands out, with a minus on the batten's other side.");
}

void set_taped(const job::Bay& bay, const solve::BayResult& result, StationsView* view) {
  if (!bay.taped_along_um) return;
  view->taped = exact_mm_text(*bay.taped_along_um);
  const Um apart = *bay.taped_along_um - result.along_um;
  const std::string by = mm_text(std::llabs(apart), 1);
  view->is_far_off = std::llabs(apart) > material::kAssumedTapeLimitUm;
  view->taped_said =
      view->is_far_off
          ? by + (apart > 0 ? " longer" : " shorter") + " than worked out: measure again"
          : by + " apart, within " + exact_mm_text(material::kAssumedTapeLimitUm);
}

}  // namespace

StationsView stations_view(const Solved& now, int bay) {
  StationsView view;
  if (bay < 0) return view;
  const auto at = static_cast<std::size_t>(bay);
  const job::Bay& of = now.job.bays[at];
  const solve::BayResult& result = now.results.bays[at];
  for (const Station& station : of.stations_um) {
    view.lines.push_back({exact_mm_text(station[0]), signed_text(station[1]), {}});
  }
  if (result.is_by_stations) {
    const auto radii = frame::curve_through(solve::stations_of(of)).radii;
    for (std::size_t i = 0; i < radii.size(); ++i) {
      const Um radius = to_um(radii[i]);
      view.lines[i + 1].radius =
          radius == 0 ? "straight" : mm_text(std::llabs(radius), 1) + (radius < 0 ? " inward" : "");
    }
  }
  say_why(result, &view);
  set_taped(of, result, &view);
  return view;
}

Made with_stations_added(const job::Job& job, int bay, std::string_view typed) {
  Made made = begun(job, bay);
  job::Bay& of = bay_at(made, bay);
  std::size_t added = 0;
  while (made.refused.empty()) {
    const std::size_t end = typed.find(';');
    const auto station = read_station(typed.substr(0, end), &made.refused);
    if (!station || !put_in(of.stations_um, *station, &made.refused)) break;
    ++added;
    made.action = "Station at " + station_words(*station) + ": added to bay " + of.code;
    if (end == std::string_view::npos) break;
    typed.remove_prefix(end + 1);
    if (typed.find_first_not_of(' ') == std::string_view::npos) break;
  }
  if (added > 1) made.action = std::to_string(added) + " stations added to bay " + of.code;
  if (of.stations_um.size() > kMostStations)
    made.refused = "1000 stations are the most there can be.";
  if (!made.refused.empty()) made.job = job;
  return made;
}

Made with_station_typed(const job::Job& job, int bay, int station, StationBox box,
                        std::string_view typed) {
  Entry entry = box == StationBox::along ? read_entry(typed, kAlong) : read_off(typed);
  if (entry.um) return with_station(job, bay, station, box, *entry.um);
  Made made = begun(job, bay);
  made.refused = std::move(entry.sentence);
  return made;
}

Made with_station_stepped(const job::Job& job, int bay, int station, StationBox box, Um by) {
  const Station& of =
      job.bays[static_cast<std::size_t>(bay)].stations_um[static_cast<std::size_t>(station)];
  const bool is_along = box == StationBox::along;
  return with_station(job, bay, station, box,
                      stepped(of[is_along ? 0 : 1], by, is_along ? kAlong : kOff));
}

Made without_station(const job::Job& job, int bay, int station) {
  Made made = begun(job, bay);
  job::Bay& of = bay_at(made, bay);
  const auto at = of.stations_um.begin() + station;
  made.action = "Station at " + station_words(*at) + ": taken away from bay " + of.code;
  of.stations_um.erase(at);
  return made;
}

Made with_taped(const job::Job& job, int bay, std::string_view typed) {
  Made made = begun(job, bay);
  job::Bay& of = bay_at(made, bay);
  if (typed.find_first_not_of(' ') == std::string_view::npos) {
    of.taped_along_um.reset();
    made.action = "Taped length of bay " + of.code + " taken away";
    return made;
  }
  constexpr Limits kTaped{1'000, 100'000'000};
  Entry entry = read_entry(typed, kTaped);
  made.refused = std::move(entry.sentence);
  if (!entry.um) return made;
  of.taped_along_um = entry.um;
  made.action = "Taped round bay " + of.code + ": " + exact_mm_text(*entry.um);
  return made;
}

}  // namespace pouncemark::web
