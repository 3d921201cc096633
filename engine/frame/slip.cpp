#include "engine/frame/slip.h"

#include <cmath>

#include "engine/base/insist.h"

namespace pouncemark::frame {

double slip_at(double apart, double turn) { return apart * turn; }

Stretch stretch_of(const Arc& arc, bool bulges) {
  return {arc.along, bulges ? arc.turn : -arc.turn};
}

double turn_to(std::span<const Stretch> stretches, double station) {
  double turn = 0;
  double left = std::fmax(station, 0.0);
  for (const Stretch& stretch : stretches) {
    turn += std::fmin(left / stretch.along, 1.0) * stretch.turn;
    left -= stretch.along;
    if (left <= 0) break;
  }
  return turn;
}

double slip_along(std::span<const Stretch> stretches, double apart, double station) {
  return slip_at(apart, turn_to(stretches, station));
}

std::optional<double> stop_along(std::span<const Stretch> stretches, double apart, double limit) {
  INSIST(apart >= 0 && limit > 0);
  double before = 0;  // slip and place where the stretch begins
  double from = 0;
  for (const Stretch& stretch : stretches) {
    const double slip = slip_at(apart, stretch.turn);
    if (std::fabs(before + slip) >= limit) {
      const double wanted = (slip > 0 ? limit : -limit) - before;
      const double stop = from + wanted * stretch.along / slip;
      if (&stretch == &stretches.back() && stop >= from + stretch.along) return std::nullopt;
      return stop;
    }
    before += slip;
    from += stretch.along;
  }
  return std::nullopt;
}

double most_slip(std::span<const Stretch> stretches, double apart) {
  double most = 0;
  double turn = 0;
  for (const Stretch& stretch : stretches) {
    turn += stretch.turn;
    most = std::fmax(most, std::fabs(slip_at(apart, turn)));
  }
  return most;
}

double ease(double radius, double apart) { return radius == 0 ? 0 : apart / std::fabs(radius); }

}  // namespace pouncemark::frame
