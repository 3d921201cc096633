#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "engine/geometry/units.h"

namespace pouncemark::solve {

/// What follows of one bay. Where three stations or more were measured in their order, the curve is
/// theirs; else that of chord and rise. Creep and what follows from it is said of cloth sewn along
/// one long edge, whatever hangs in the bay.
struct BayResult {
  std::string code;
  int piece = -1;  ///< index into Results::pieces of what hangs there; -1: nothing that is known

  bool is_by_stations = false;
  Um radius_um = 0;                ///< where it is least; 0: flat
  int tightest_station = 0;        ///< by stations: which of them, from 1; 0: flat
  std::int64_t radius_out_by = 0;  ///< by stations: thousandths of a percent, either way
  std::int64_t turn_mdeg = 0;      ///< thousandths of a degree; below 0: against its face
  Um along_um = 0;                 ///< along the curve
  Um extra_um = 0;                 ///< along the curve less the straight distance

  Um creep_um = 0;  ///< at the fly side, either way
  bool moves_out = false;
  Um slip_most_um = 0;        ///< anywhere on the way: of an S more than the creep
  std::int64_t ease = 0;      ///< what cloth held point by point gives, thousandths of a percent
  std::optional<Um> stop_um;  ///< from the hinge side: where top and bottom rows stop, not after
  Um bulge_um = 0;            ///< stands up were the piece sewn all round; 0 where cloth moves in

  Um limit_um = 0;         ///< of the piece: how tight its stiffest ply may stay bent; 0: no piece
  std::int64_t spare = 0;  ///< radius over limit less 1, thousandths of a percent; 0 where flat
  Um room_um = 0;          ///< of the piece: along the curve less its width; below 0: too wide

  bool is_flat() const { return radius_um == 0; }
};

}  // namespace pouncemark::solve
