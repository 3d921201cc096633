#pragma once

#include <optional>
#include <vector>

#include "engine/geometry/units.h"

/// What of the work lies right of the needle, and whether it goes under the machine's arm.
namespace pouncemark::takeoff {

/// The side that goes under the arm when the piece is turned the better way round: from the row at
/// `row_um` to the nearer long edge of a piece `width_um` wide; never negative.
Um smaller_side_um(Um width_um, Um row_um);

/// Across a roll of `side_um` of work `thickness_um` thick, wound on itself no tighter than
/// `radius_um`: 2 √(R² + b T / π), rounded up to whole micrometres, so that a roll said to fit
/// does.
Um roll_across_um(Um side_um, Um thickness_um, Um radius_um);

/// The machine, as far as it was measured.
struct Arm {
  std::optional<Um> throat_um;     ///< from the needle to the arm's foot
  std::optional<Um> under_arm_um;  ///< clear height under the arm
};

/// How a side goes under an arm. Not known: the throat, or for a roll the height, was not measured.
enum class UnderArm { not_known, flat, rolled, does_not_fit };

/// Exactly as wide as the throat is flat; a roll exactly as high as the arm, and as wide as the
/// throat, fits.
UnderArm under_arm(Um side_um, Um roll_um, const Arm& arm);

/// One join of a section made by adding the sleeves from the left, one by one.
struct Join {
  Um run_um = 0;   ///< width of the work once this sleeve lies at its right
  Um row_um = 0;   ///< the joining row, from the work's left edge
  Um side_um = 0;  ///< the smaller side of the row
};

/// The joins of sleeves of these widths with this lap, from the left; none of one sleeve.
std::vector<Join> joins_one_by_one(const std::vector<Um>& widths_um, Um lap_um);

/// The widest smaller side among them; 0 where there is none.
Um widest_side_um(const std::vector<Join>& joins);

}  // namespace pouncemark::takeoff
