#include "engine/frame/elastica.h"

#include <cmath>
#include <numbers>

#include "engine/base/insist.h"
#include "engine/frame/elliptic.h"

namespace pouncemark::frame {
namespace {

using std::numbers::pi;
/// Where the ends meet, m is 0.8261; a little more closes the search.
constexpr double kEndsHaveMet = 0.83;
constexpr double kDeepestRise = 5;

/// The place between `low` and `high` where `is_past` turns from false to true, halved until two
/// numbers stand side by side.
template <typename IsPast>
double turning_place(double low, double high, IsPast is_past) {
  for (;;) {
    const double middle = low + (high - low) / 2.0;
    if (middle <= low || middle >= high) return high;
    if (is_past(middle)) {
      high = middle;
    } else {
      low = middle;
    }
  }
}

/// The part of the sheet's length by which its ends come together, 2 (K - E) / K: written so that
/// nothing is lost where the sheet is nearly flat. Source: DLMF 19.25.2.
double shortened_by(double m) {
  return 2.0 * m / 3.0 * carlson_rd(0, 1.0 - m, 1) / complete_first(m);
}

// Half of the sheet, from a support to the middle, carries half the push, so its slope θ and the
// distance x from the support obey D w dθ/ds = -(P/2) x: the sine of the slope falls as k (1 - u²),
// u = 2x/c, from k at the support to 0 in the middle, and P c² / (D w) = 16 k. With that,
//   along / chord = ∫ du / √(1 - k² (1-u²)²)   and   rise / chord = (k/2) ∫ (1-u²) du / √(the same)
// from 0 to 1, both of Carlson's kind after u² = 1 / (1+t).

double along_of(double k) { return carlson_rf((1.0 - k) * (1.0 + k), 1.0 + k, 1.0 - k); }

double rise_of(double k) {
  const double far = (1.0 - k) * (1.0 + k);
  const double squares = carlson_rd(1.0 / (1.0 - k), 1.0 / (1.0 + k), 1) / (3.0 * std::sqrt(far));
  return k / 2.0 * (along_of(k) - squares);
}

}  // namespace

PushedTogether pushed_together(double m) {
  INSIST(m >= 0 && m < 1);
  const double first = complete_first(m);
  const double p = std::sqrt(m);
  PushedTogether shape;
  shape.load = 4.0 * first * first / (pi * pi);
  shape.chord = 1.0 - shortened_by(m);
  shape.rise = p / first;
  shape.bend = 4.0 * p * first;
  const double half_slope = std::atan(p / std::sqrt(1.0 - m));
  shape.end_slope_mdeg = std::llround(half_slope * 2.0 * 180'000.0 / pi);
  return shape;
}

std::optional<PushedTogether> pushed_to_chord(double chord) {
  if (!(chord >= 0 && chord <= 1)) return std::nullopt;
  if (chord >= 1) return PushedTogether{};
  const double shorter = 1.0 - chord;
  return pushed_together(
      turning_place(0, kEndsHaveMet, [shorter](double m) { return shortened_by(m) >= shorter; }));
}

std::optional<PushedInMiddle> pushed_in_middle(double rise) {
  if (!(rise >= 0 && rise <= kDeepestRise)) return std::nullopt;
  PushedInMiddle shape;
  if (rise <= 0) return shape;
  // The rise is never less than k/3, its small bend.
  const double most = std::fmin(3.0 * rise, 1.0);
  const double k = turning_place(0, most, [rise](double tried) { return rise_of(tried) >= rise; });
  shape.load = 16.0 * k;
  shape.small = 48.0 * rise;
  shape.along = along_of(k);
  shape.bend = 4.0 * k;
  return shape;
}

}  // namespace pouncemark::frame
