#include "engine/frame/slip.h"

#include <cmath>

#include "engine/base/insist.h"

namespace pouncemark::frame {

double slip_at(double apart, double turn) { return apart * turn; }

double turn_to(std::span<const Stretch> stretches, double station) {
  double turn = 0;
  double left = std::fmax(station, 0.0);
  for (const Stretch& stretch : stretches) {
    const double share = std::fmin(left / stretch.arc.along, 1.0);
    turn += (stretch.bulges ? 1.0 : -1.0) * share * stretch.arc.turn;
    left -= stretch.arc.along;
    if (left <= 0) break;
  }
  return turn;
}

double slip_along(std::span<const Stretch> stretches, double apart, double station) {
  return slip_at(apart, turn_to(stretches, station));
}

std::optional<double> stop_at(const Arc& arc, double apart, double limit) {
  INSIST(apart >= 0 && limit > 0);
  if (arc.is_flat() || apart == 0) return std::nullopt;
  const double stop = limit * arc.radius / apart;
  if (stop >= arc.along) return std::nullopt;
  return stop;
}

double ease(const Arc& arc, double apart) { return arc.is_flat() ? 0 : apart / arc.radius; }

}  // namespace pouncemark::frame
