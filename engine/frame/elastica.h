#pragma once

#include <cstdint>
#include <optional>

/// Exact shapes of a thin elastic sheet bent far, in numbers without unit: what is asked of a sheet
/// that is pushed to its curve (bending.h gives them newtons and millimetres). Gravity is left out.
namespace pouncemark::frame {

/// A sheet held by its ends in two hinges and pushed together.
struct PushedTogether {
  double load = 1;   ///< end push over the push at which the flat sheet gives way, π² D w / L²
  double chord = 1;  ///< distance between the ends over the sheet's length; negative once crossed
  double rise = 0;   ///< over the sheet's length
  double bend = 0;   ///< sheet's length over the radius at the crown, the tightest place
  std::int64_t end_slope_mdeg = 0;  ///< of the sheet against the chord, thousandths of a degree
};

/// The shape with parameter m = sin²(half the end slope), 0 <= m < 1; 0 is flat, just giving way.
/// Source: Timoshenko and Gere, Theory of Elastic Stability, section 2.7.
PushedTogether pushed_together(double m);

/// The shape whose ends stand `chord` sheet lengths apart: 1 is flat, 0 has the ends meet at
/// 130.710 degrees; nothing beyond either.
std::optional<PushedTogether> pushed_to_chord(double chord);

/// A sheet lying across two supports that stay one chord apart, pushed square to the chord in the
/// middle. It slides over them as it bends, without friction, and they carry it at right angles to
/// the chord, half the push each: that reading gives the published table (.9588 at rise/chord .02).
/// Supports that push square to the sheet instead would help it bend, .9561; tests keep both.
struct PushedInMiddle {
  double load = 0;   ///< P c² / (D w), c the chord; tends to 48 rise/chord, never reaches 16
  double small = 0;  ///< what the small-bend formula gives for it: 48 rise/chord
  double along = 1;  ///< length of sheet between the supports over the chord
  double bend = 0;   ///< chord over the radius under the push, the tightest place: load / 4
};

/// The bend of `rise` chords; 0 is flat; nothing for a negative rise or one over five chords, where
/// the sheet hangs straight down from both supports.
std::optional<PushedInMiddle> pushed_in_middle(double rise);

}  // namespace pouncemark::frame
