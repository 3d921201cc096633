#pragma once

#include <optional>

/// A full wave y = A sin(2πx/λ), and the half of one that surplus cloth stands up in.
namespace pouncemark::frame {

struct Wave {
  double height = 0;  ///< A: of a crest over the middle line, >= 0
  double length = 0;  ///< λ: crest to crest along the middle line, > 0
};

/// Along the curve over one wave: (2λ/π)·√(1+q²)·E, q = 2πA/λ, E the complete elliptic integral of
/// the second kind with m = q²/(1+q²). λ where the height is 0.
double along(const Wave& wave);

/// The radius at a crest, where it is least: (λ/2π)²/A; 0 where the wave is flat.
double tightest_radius(const Wave& wave);

/// The angle of the curve where it crosses the middle line, radians: atan(q).
double steepest_slope(const Wave& wave);

/// The wave of this length that is so long along its curve; nothing where that is shorter.
std::optional<Wave> wave_along(double length, double along);

/// What stands up where `surplus` more than `length` is held at both ends: the height of half a
/// sine over it. (2/π)·√(length × surplus) while it is small. 0 without surplus.
double bulge_height(double length, double surplus);

}  // namespace pouncemark::frame
