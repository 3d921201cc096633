#pragma once

#include <optional>
#include <span>

#include "engine/frame/arc.h"

/// Plies held together at one edge and bent slip past one another: by their distance apart times
/// the turn from that edge, whatever the radius on the way.
namespace pouncemark::frame {

/// One stretch of a frame, walked from the sewn edge: `bulges` toward the viewer, or hollow.
struct Stretch {
  Arc arc;
  bool bulges = true;
};

/// Slip at a turn (radians, with its sign) from the sewn edge, plies `apart` from middle to middle.
/// Cloth on the viewer's side of its sheet moves in where it is positive: on a bulging bay it takes
/// the longer way round.
double slip_at(double apart, double turn);

/// The turn from the sewn edge to the place `station` along the stretches, with its sign: it grows
/// evenly over each arc. Beyond either end: that end's.
double turn_to(std::span<const Stretch> stretches, double station);

/// Slip at the place `station` along the stretches.
double slip_along(std::span<const Stretch> stretches, double apart, double station);

/// How far from the sewn edge, along an arc, the slip comes to `limit`: limit × R ÷ apart. Nothing
/// where it never does: flat, plies at one height, or the arc ends before.
std::optional<double> stop_at(const Arc& arc, double apart, double limit);

/// What cloth has to give, as a share of its length, where it is held point by point: apart ÷ R. 0
/// where the arc is flat.
double ease(const Arc& arc, double apart);

}  // namespace pouncemark::frame
