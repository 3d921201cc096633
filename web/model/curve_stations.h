#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "web/model/making.h"
#include "web/model/solved.h"

/// Stations of a bay as they are typed on the stage Curve, each change one action. `station` counts
/// from 0.
namespace pouncemark::web {

/// One station of the list.
struct StationLine {
  std::string along;   ///< along the straight batten
  std::string off;     ///< from the batten to the timber
  std::string radius;  ///< "702.1" of the circle through it and its neighbours; else empty
};

/// The stations of a bay, what is asked of them, and the tape bent round the timber.
struct StationsView {
  std::vector<StationLine> lines;
  std::vector<std::string> said;  ///< a sentence each: how many, why 200 apart, how to measure
  std::string taped;              ///< empty: not taped
  std::string taped_said;         ///< "3.8 longer: measure again", "0.8, within 2"
  bool is_far_off = false;        ///< the tape and the curve differ too much
};
StationsView stations_view(const Solved& now, int bay);

enum class StationBox { along, off };

/// One or more stations as "400 61", several with a semicolon between, each put in its order.
Made with_stations_added(const job::Job& job, int bay, std::string_view typed);
Made with_station_typed(const job::Job& job, int bay, int station, StationBox box,
                        std::string_view typed);
/// Longer by so much, held between its neighbours.
Made with_station_stepped(const job::Job& job, int bay, int station, StationBox box, Um by);
Made without_station(const job::Job& job, int bay, int station);
/// What a tape bent round the timber says; an empty text takes it away.
Made with_taped(const job::Job& job, int bay, std::string_view typed);

}  // namespace pouncemark::web
