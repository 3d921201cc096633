#pragma once

#include <optional>
#include <string>

#include "engine/geometry/units.h"

namespace pouncemark::checks {

/// A distance that is shorter than a number of needle blades, in words for a finding.
struct ShortOfBlades {
  std::string short_by;  ///< "2.2"
  std::string distance;  ///< "9.0"
  std::string needed;    ///< "11.2"
  std::string need;      ///< "8 needle blades are 11.2"
  std::string sum;       ///< "8 × 1.40 = 11.2 (limit assumed)"
};

/// Nothing when `distance_um` is at least `blades` needle blades; exactly as many pass.
/// `needle_size` is the blade in hundredths of a millimetre.
std::optional<ShortOfBlades> short_of_blades(Um distance_um, int needle_size, int blades);

}  // namespace pouncemark::checks
