#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "engine/checks/finding.h"
#include "engine/frame/stations.h"
#include "engine/geometry/units.h"

/// Rules about bays and what is bent over them, each in a file of its own. Percents are
/// thousandths.
namespace pouncemark::checks {

/// How tight the stiffest ply may stay bent.
struct StayBent {
  Um sheet_um = 0;
  std::int64_t times = 0;  ///< thousandths
  bool is_assumed = true;
  Um limit_um = 0;
};

/// Caution 26, stop: a bay tighter than the sheet may stay bent; a warn where its radius was
/// measured at stations and may be out so far that it need not be. Exactly at the limit passes.
std::optional<Finding> bay_too_tight(Um radius_um, std::int64_t out_by, const StayBent& sheet);

/// Warn: a rise over half the chord is asked about.
std::optional<Finding> bay_deep(Um chord_um, Um rise_um);

/// What hangs in a bay: "section 2", its width, and how far that could end up out (0: not known).
struct Hung {
  std::string words;
  Um width_um = 0;
  Um likely_um = 0;
};

/// Warn: a bay shorter along its curve than its piece is wide.
std::optional<Finding> bay_short(Um along_um, const Hung& hung);

/// Caution 34, warn: a piece as wide as the straight distance of a bay whose curve is longer.
std::optional<Finding> chord_for_curve(Um straight_um, Um along_um, const Hung& hung);

/// Warn: a tape bent round the timber differs from the curve worked out by more than the limit.
/// `rise_um` is the rise that the tape speaks for; nothing where it is shorter than the chord.
/// Exactly at the limit passes.
std::optional<Finding> tape_differs(Um taped_um, Um along_um, std::optional<Um> rise_um);

/// Warn: stations that make no curve. `station` is the first that is out of its order, from 1, or
/// how many there are.
Finding stations_amiss(frame::StationFault fault, std::int64_t station);

/// Note: stations so near to one another that a reading's error tells. `out_by` is what it makes of
/// the radius. Exactly as far apart as asked passes.
std::optional<Finding> stations_near(Um step_um, std::int64_t out_by);

/// Caution 36, warn: cloth that creeps out farther than the sheet is bare beyond it.
std::optional<Finding> creep_past_sheet(Um creep_um, Um bare_um, bool is_assumed);

/// Slip as it matters to top and bottom rows; the limit is assumed.
struct SlipZone {
  Um stop_um = 0;  ///< from the hinge side
  Um limit_um = 0;
  Um radius_um = 0;  ///< 0: the slip was added up along stations
  Um apart_um = 0;
  Um slip_um = 0;  ///< the most there is
  std::int64_t ease = 0;
};

/// Caution 37, warn: a row that goes on where the slip is over its limit, on a bay so tight that
/// the cloth must give more than woven cloth usually does. Where it gives no more, nothing is said.
std::optional<Finding> row_in_slip_zone(Um row_ends_um, const SlipZone& zone);

}  // namespace pouncemark::checks
