#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "web/model/curve.h"
#include "web/model/curve_fixings.h"
#include "web/model/curve_force.h"
#include "web/model/curve_stations.h"

namespace pouncemark::web {

/// The slip that lies over the stage Curve.
enum class CurveSlip : std::uint8_t { none, bays, stations, force, fixings };

/// What the slip "Fixings" shows: a row and its slots, of a low slip one of these, or the values
/// that all rows share.
enum class FixingPart : std::uint8_t { row, slots, values };

/// The stage Curve as the page remembers it. Nothing of the job.
struct CurveStage {
  int bay = 0;
  std::int64_t turn = -1;  ///< of the bench that `view` was worked out for, with `made_for`
  int made_for = -1;
  CurveView view;
  CurveShape shape;
  double hung = 1;       ///< 0 flat, 1 hung
  double place = 0.3;    ///< where the slip is asked for, as a part from the left end
  float asked_at = -1;   ///< where the pointer stood when it last asked for it
  double shape_at = -1;  ///< what `shape` was worked out for, and the place then
  double shape_place = -1;
  double goes_to = 1;        ///< where it moves to by itself
  double comes_from = 1;     ///< and from
  double began = -1;         ///< when, seconds; negative: with the next frame
  bool shows_bulge = false;  ///< the cloth as it would stand up, sewn all round
  CurveSlip slip = CurveSlip::none;
  bool by_force = false;
  std::size_t first = 0;  ///< first bay shown of a list too long for its slip
  std::vector<RankedBay> ranked;
  StationsView stations;
  ForceView force;
  int fixing_row = 0;
  FixingPart fixing_part = FixingPart::row;
  FixingsView fixings;
  std::string sentence;  ///< why the last thing asked for was not done
};

}  // namespace pouncemark::web
