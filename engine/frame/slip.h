#pragma once

#include <optional>
#include <span>

#include "engine/frame/arc.h"

/// Plies held together at one edge and bent slip past one another: by their distance apart times
/// the turn from that edge, whatever the radius on the way.
namespace pouncemark::frame {

/// One stretch of a frame, walked from the sewn edge. It turns evenly from end to end.
struct Stretch {
  double along = 0;  ///< its length along the curve
  double turn = 0;   ///< radians, positive where it bulges toward the viewer
};
Stretch stretch_of(const Arc& arc, bool bulges);

/// Slip at a turn (radians, with its sign) from the sewn edge, plies `apart` from middle to middle.
/// Cloth on the viewer's side of its sheet moves in where it is positive: on a bulging bay it takes
/// the longer way round.
double slip_at(double apart, double turn);

/// The turn from the sewn edge to the place `station` along the stretches, with its sign. Beyond
/// either end: that end's.
double turn_to(std::span<const Stretch> stretches, double station);

/// Slip at the place `station` along the stretches.
double slip_along(std::span<const Stretch> stretches, double apart, double station);

/// Where, along the stretches from the sewn edge, the slip first comes to `limit` either way: on
/// one arc limit × R ÷ apart. Nothing where it never does before the far end.
std::optional<double> stop_along(std::span<const Stretch> stretches, double apart, double limit);

/// The greatest slip on the way, without its sign: of an S it is in the middle.
double most_slip(std::span<const Stretch> stretches, double apart);

/// What cloth has to give, as a share of its length, where it is held point by point on a curve of
/// this radius: apart ÷ R. 0 where it is flat (radius 0).
double ease(double radius, double apart);

}  // namespace pouncemark::frame
