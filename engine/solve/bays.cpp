#include "engine/solve/bays.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

#include "engine/frame/arc.h"
#include "engine/frame/slip.h"
#include "engine/frame/wave.h"
#include "engine/solve/bay_fixings.h"
#include "engine/solve/bay_force.h"
#include "engine/solve/bay_loads.h"

namespace pouncemark::solve {
namespace {

constexpr double kThousandthsOfPercent = 100'000.0;

/// A curve as the rest is worked out from it, millimetres and radians; positive turns are to the
/// bay's own face.
struct Curve {
  std::vector<frame::Stretch> stretches;  ///< from the hinge side of the panel that hangs there
  double radius = 0;
  double straight = 0;  ///< from end to end
  double along = 0;
  double turn = 0;
};

Curve curve_of_rise(const job::Bay& bay) {
  const frame::Arc arc = frame::arc_of(from_um(bay.chord_um), from_um(bay.rise_um));
  return {{frame::stretch_of(arc, true)}, arc.radius, arc.chord, arc.along, arc.turn};
}

Curve curve_of_stations(const job::Bay& bay, BayResult* result) {
  const std::vector<Vec2> stations = stations_of(bay);
  frame::StationCurve all = frame::curve_through(stations);
  Curve curve{std::move(all.stretches), 0, length(stations.back() - stations.front()), all.along,
              all.turn};
  result->is_by_stations = true;
  if (!all.tightest) return curve;
  const std::size_t at = *all.tightest;
  curve.radius = std::fabs(all.radii[at - 1]);
  result->tightest_station = static_cast<int>(at) + 1;
  const double out_by = frame::radius_uncertainty(stations[at - 1], stations[at], stations[at + 1],
                                                  from_um(material::kAssumedReadingUm));
  result->radius_out_by = std::llround(out_by * kThousandthsOfPercent);
  return curve;
}

void add_slip(const job::Job& job, const job::Bay& bay, const Curve& curve, BayResult* result) {
  const double apart = from_um(job.slip_distance_um);
  const double creep = frame::slip_at(apart, curve.turn);
  result->creep_um = to_um(std::fabs(creep));
  result->moves_out = result->creep_um > 0 && (creep > 0) == (bay.face == "hollow");
  result->slip_most_um = to_um(frame::most_slip(curve.stretches, apart));
  result->ease = std::llround(frame::ease(curve.radius, apart) * kThousandthsOfPercent);
  const auto stop =
      frame::stop_along(curve.stretches, apart, from_um(material::kAssumedSlipLimitUm));
  // At or before the place, never after it.
  if (stop) result->stop_um = static_cast<Um>(std::floor(*stop * 1000.0));
  if (result->moves_out) {
    result->bulge_um = to_um(frame::bulge_height(curve.along, from_um(result->creep_um)));
  }
}

void add_piece(const job::Job& job, const job::Bay& bay, const Results& results,
               BayResult* result) {
  const Piece& piece = results.pieces[static_cast<std::size_t>(result->piece)];
  const std::vector<BentSheet> sheets = sheets_of(job, piece);
  const BentSheet& tightest = tightest_of(sheets);
  result->limit_um = tightest.limit_um();
  result->limit_of = tightest.item;
  result->room_um = result->along_um - piece.width_um;
  result->force = force_of(job, bay, results, *result);
  result->fixings = lay_fixings(job, bay, results, *result).rows;
  result->loads = loads_of(job, results, *result);
  if (result->is_flat()) return;
  const double times =
      static_cast<double>(result->radius_um) / static_cast<double>(result->limit_um);
  result->spare = std::llround((times - 1.0) * kThousandthsOfPercent);
}

/// Stations run from the left, slip from the hinge side.
bool slips_from_right(const Piece* piece) {
  return piece != nullptr && piece->kind == PieceKind::panel &&
         piece::hinge_at_right(piece->outline);
}

/// `piece` is what hangs there; nullptr: nothing that is known.
BayResult result_of(const job::Job& job, const job::Bay& bay, const Piece* piece) {
  BayResult result;
  result.code = bay.code;
  Curve curve = has_curve_of_stations(bay) ? curve_of_stations(bay, &result) : curve_of_rise(bay);
  if (slips_from_right(piece)) std::reverse(curve.stretches.begin(), curve.stretches.end());
  result.radius_um = to_um(curve.radius);
  result.turn_mdeg = std::llround(curve.turn * 180'000.0 / std::numbers::pi);
  result.along_um = to_um(curve.along);
  result.extra_um = result.along_um - to_um(curve.straight);
  add_slip(job, bay, curve, &result);
  return result;
}

}  // namespace

std::vector<Vec2> stations_of(const job::Bay& bay) {
  std::vector<Vec2> stations;
  for (const auto& station : bay.stations_um) {
    stations.push_back({from_um(station[0]), from_um(station[1])});
  }
  return stations;
}

bool has_curve_of_stations(const job::Bay& bay) {
  return !bay.stations_um.empty() && !frame::fault_in(stations_of(bay));
}

std::vector<BayResult> bays_of(const job::Job& job, const Results& results) {
  std::map<std::string, int> pieces;
  for (std::size_t i = 0; i < results.pieces.size(); ++i) {
    pieces[results.pieces[i].code] = static_cast<int>(i);
  }
  std::vector<BayResult> bays;
  for (const job::Bay& bay : job.bays) {
    const auto found = pieces.find(bay.holds);
    const bool is_held = !bay.stands_empty && found != pieces.end();
    const Piece* piece =
        is_held ? &results.pieces[static_cast<std::size_t>(found->second)] : nullptr;
    BayResult& result = bays.emplace_back(result_of(job, bay, piece));
    if (!is_held) continue;
    result.piece = found->second;
    add_piece(job, bay, results, &result);
  }
  rank_by_force(&bays);
  return bays;
}

}  // namespace pouncemark::solve
