#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "engine/frame/slip.h"
#include "engine/geometry/vec2.h"

/// A bay measured at stations: x along a straight batten, y from the batten to the timber, greater
/// where the timber stands out more.
namespace pouncemark::frame {

/// Why stations give no curve.
enum class StationFault : std::uint8_t { too_few, out_of_order };

/// Three stations at least, each farther along the batten than the one before; else what is wrong.
std::optional<StationFault> fault_in(std::span<const Vec2> stations);

/// The radius of the circle through three stations: a·b·c ÷ (4 × area). Positive where the middle
/// one stands out from the other two, negative where it stands in, 0 where they lie in line.
double radius_through(Vec2 before, Vec2 at, Vec2 after);

/// How far the radius there may be out, as a share of it, where each of the three readings may be
/// `reading` out, either way and independently: √6·R/Δ² per millimetre where both steps are Δ.
double radius_uncertainty(Vec2 before, Vec2 at, Vec2 after, double reading);

/// The curve through stations: from each to the next, the middle of the arcs through them and
/// their neighbours.
struct StationCurve {
  std::vector<double> radii;       ///< at each station but the first and last, as radius_through
  std::vector<Stretch> stretches;  ///< from each station to the next
  double along = 0;                ///< along the curve
  double turn = 0;                 ///< all turns with their signs
  /// The station (an index into the stations) where the radius is least; none where all is
  /// straight.
  std::optional<std::size_t> tightest;
};

/// Our own mistake where fault_in() finds one.
StationCurve curve_through(std::span<const Vec2> stations);

}  // namespace pouncemark::frame
