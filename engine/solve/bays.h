#pragma once

#include <optional>
#include <vector>

#include "engine/frame/stations.h"
#include "engine/job/job.h"
#include "engine/solve/results.h"
#include "engine/solve/sums.h"

namespace pouncemark::solve {

/// What follows of every bay, in the job's order; `results` has its pieces already.
std::vector<BayResult> bays_of(const job::Job& job, const Results& results);

/// The stations of a bay in millimetres, as frame wants them.
std::vector<Vec2> stations_of(const job::Bay& bay);

/// True where the stations of a bay make its curve.
bool has_curve_of_stations(const job::Bay& bay);

/// The figures of a bay that can be asked how they were worked out.
enum class BayFigure {
  radius,
  turn,
  along,
  extra,
  creep,
  stop,   ///< needs stop_um
  ease,   ///< needs a bay that is not flat, as limit and spare do
  bulge,  ///< needs cloth that moves out
  limit,  ///< needs a piece, as spare and room do
  spare,
  room,
  push,  ///< needs a force, as people and locked do
  people,
  locked,
  mass,  ///< grams; needs loads, as weight, per_stitch (a row along the top too) and corner do
  weight,
  per_stitch,
  corner,
};
Sum bay_sum(const job::Job& job, const Results& results, int bay, BayFigure figure);

/// The push for one kind of sheet alone, `ply` an index into BayForce::plies.
Sum ply_sum(const job::Job& job, const Results& results, int bay, int ply);

/// Indices of a bay, into BayResult::fixings and into BayFixings::fixings.
struct FixingPlace {
  int bay = 0;
  int row = 0;
  int fixing = 0;
};
enum class FixingFigure {
  move,
  slot,
  screw_today,
  load,  ///< needs the row that the bay's loads name
};
Sum fixing_sum(const job::Job& job, const Results& results, const FixingPlace& place,
               FixingFigure figure);

}  // namespace pouncemark::solve
