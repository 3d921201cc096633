#include "engine/frame/stations.h"

#include <cmath>

#include "engine/base/insist.h"
#include "engine/geometry/tolerance.h"

namespace pouncemark::frame {
namespace {

/// Turn of the arc of a circle over a chord no longer than across it; radius 0 is straight.
double turn_over(double chord, double radius) {
  if (radius == 0) return 0;
  return 2.0 * std::asin(std::fmax(std::fmin(chord / (2.0 * radius), 1.0), -1.0));
}

double length_over(double chord, double radius) {
  return radius == 0 ? chord : radius * turn_over(chord, radius);
}

}  // namespace

std::optional<StationFault> fault_in(std::span<const Vec2> stations) {
  if (stations.size() < 3) return StationFault::too_few;
  for (std::size_t i = 1; i < stations.size(); ++i) {
    if (stations[i].x <= stations[i - 1].x) return StationFault::out_of_order;
  }
  return std::nullopt;
}

double radius_through(Vec2 before, Vec2 at, Vec2 after) {
  const double a = length(at - before);
  const double b = length(after - at);
  const double c = length(after - before);
  const double twice_area = cross(after - before, at - before);
  if (std::fabs(twice_area) < tolerance::kParallel * a * c) return 0;
  return a * b * c / (2.0 * twice_area);
}

double radius_uncertainty(Vec2 before, Vec2 at, Vec2 after, double reading) {
  const double a = at.x - before.x;
  const double b = after.x - at.x;
  const double per_reading = 2.0 * std::sqrt(a * a + b * b + (a + b) * (a + b)) / (a * b * (a + b));
  return std::fabs(radius_through(before, at, after)) * per_reading * reading;
}

StationCurve curve_through(std::span<const Vec2> stations) {
  INSIST(!fault_in(stations));
  StationCurve curve;
  for (std::size_t i = 1; i + 1 < stations.size(); ++i) {
    const double radius = radius_through(stations[i - 1], stations[i], stations[i + 1]);
    curve.radii.push_back(radius);
    if (radius == 0) continue;
    const bool is_tighter =
        !curve.tightest || std::fabs(radius) < std::fabs(curve.radii[*curve.tightest - 1]);
    if (is_tighter) curve.tightest = i;
  }
  for (std::size_t i = 0; i + 1 < stations.size(); ++i) {
    // The first and the last step have one arc, all others two.
    const double one = curve.radii[i == 0 ? 0 : i - 1];
    const double other = curve.radii[i == curve.radii.size() ? i - 1 : i];
    const double chord = length(stations[i + 1] - stations[i]);
    const Stretch stretch{(length_over(chord, one) + length_over(chord, other)) / 2.0,
                          (turn_over(chord, one) + turn_over(chord, other)) / 2.0};
    curve.stretches.push_back(stretch);
    curve.along += stretch.along;
    curve.turn += stretch.turn;
  }
  return curve;
}

}  // namespace pouncemark::frame
