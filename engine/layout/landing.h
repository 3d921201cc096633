#pragma once

#include <algorithm>
#include <cstdint>

#include "engine/geometry/units.h"

namespace pouncemark::layout {

/// Whole stitches from the first hole of a row to its last, so that the last one lands on a corner
/// or an end and no reverse stitch is needed.
struct Landing {
  std::int64_t stitches = 0;
  Um length_um = 0;

  /// One of them, to the micrometre; 0 where there is none.
  Um stitch_um() const { return stitches == 0 ? 0 : divide_round(length_um, stitches); }
  bool operator==(const Landing&) const = default;
};

/// The fewest stitches none of which is longer than `stitch_um`: how rows are laid.
inline Landing land_never_longer(Um length_um, Um stitch_um) {
  return {divide_up(length_um, stitch_um), length_um};
}

/// Stitches as near as may be to `stitch_um`, a little longer or shorter; of two as near, the
/// shorter. One at least, where the row has a length.
inline Landing land_nearest(Um length_um, Um stitch_um) {
  const std::int64_t stitches = divide_round(length_um, stitch_um);
  return {length_um > 0 ? std::max<std::int64_t>(stitches, 1) : 0, length_um};
}

}  // namespace pouncemark::layout
