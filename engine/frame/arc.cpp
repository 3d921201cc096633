#include "engine/frame/arc.h"

#include <cmath>

#include "engine/base/insist.h"
#include "engine/geometry/tolerance.h"

namespace pouncemark::frame {

Arc arc_of(double chord, double rise) {
  INSIST(chord > 0 && rise >= 0);
  Arc arc{chord, rise, 0, 0, chord};
  if (rise < tolerance::kCurveMm) return arc;
  arc.radius = chord * chord / (8.0 * rise) + rise / 2.0;
  arc.turn = 4.0 * std::atan(2.0 * rise / chord);
  arc.along = arc.radius * arc.turn;
  return arc;
}

std::optional<Arc> arc_along(double chord, double along) {
  INSIST(chord > 0);
  if (along < chord) return std::nullopt;
  // A quarter of the turn, halved in on: along grows with it without end, from the chord on.
  constexpr int kHalvings = 100;
  double least = 0;
  double most = 1;  // the tangent of a quarter of the turn of a half circle
  while (arc_of(chord, most * chord / 2.0).along < along) most *= 2.0;
  for (int i = 0; i < kHalvings; ++i) {
    const double middle = (least + most) / 2.0;
    (arc_of(chord, middle * chord / 2.0).along < along ? least : most) = middle;
  }
  return arc_of(chord, least * chord / 2.0);
}

}  // namespace pouncemark::frame
