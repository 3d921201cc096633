#pragma once

#include <cmath>
#include <cstdint>

/// Floor 1, geometry: the millimetre world (units, tolerance, points, segments, outlines). Knows no
/// piece, no job and no picture.
namespace pouncemark {

/// A length in whole micrometres: what is entered, stored and written.
using Um = std::int64_t;

/// Millimetres (double, inside the geometry) to whole micrometres: the one rounding step. Halves go
/// away from zero. The caller keeps |mm| under 10^12.
inline Um to_um(double mm) { return static_cast<Um>(std::llround(mm * 1000.0)); }

/// Whole micrometres to millimetres.
inline double from_um(Um um) { return static_cast<double>(um) / 1000.0; }

/// Quotient of whole numbers rounded to the nearest, halves away from zero; `divisor` > 0.
inline std::int64_t divide_round(std::int64_t number, std::int64_t divisor) {
  const std::int64_t half = divisor / 2;
  return number >= 0 ? (number + half) / divisor : -((-number + half) / divisor);
}

/// Quotient of whole numbers rounded up; `number` >= 0, `divisor` > 0.
inline std::int64_t divide_up(std::int64_t number, std::int64_t divisor) {
  return number / divisor + (number % divisor != 0 ? 1 : 0);
}

}  // namespace pouncemark
