#include "engine/frame/elliptic.h"

#include <algorithm>
#include <cmath>

#include "engine/base/insist.h"

namespace pouncemark::frame {
namespace {

/// The three arguments are brought together until they differ by less than this part of their mean:
/// the series then leaves out terms of the sixth power of it, less than a double can hold.
constexpr double kTogether = 1.0 / 1024.0;

/// The three arguments on their way together: each step takes all of them to a quarter of the way.
struct Three {
  double x;
  double y;
  double z;

  /// the step of the duplication theorem
  void step() {
    const double l =
        std::sqrt(x) * std::sqrt(y) + std::sqrt(y) * std::sqrt(z) + std::sqrt(z) * std::sqrt(x);
    x = (x + l) / 4.0;
    y = (y + l) / 4.0;
    z = (z + l) / 4.0;
  }
  bool are_together(double mean) const {
    const double apart = std::max({std::fabs(mean - x), std::fabs(mean - y), std::fabs(mean - z)});
    return apart <= kTogether * mean;
  }
};

}  // namespace

double carlson_rf(double x, double y, double z) {
  INSIST(x >= 0 && y >= 0 && z >= 0 && x + y > 0 && y + z > 0 && z + x > 0);
  Three at{x, y, z};
  double mean = (x + y + z) / 3.0;
  while (!at.are_together(mean)) {
    at.step();
    mean = (at.x + at.y + at.z) / 3.0;
  }
  const double a = 1.0 - at.x / mean;
  const double b = 1.0 - at.y / mean;
  const double c = -a - b;
  const double e2 = a * b - c * c;
  const double e3 = a * b * c;
  const double series = 1.0 - e2 / 10.0 + e3 / 14.0 + e2 * e2 / 24.0 - 3.0 * e2 * e3 / 44.0;
  return series / std::sqrt(mean);
}

double carlson_rd(double x, double y, double z) {
  INSIST(x >= 0 && y >= 0 && z > 0 && x + y > 0);
  Three at{x, y, z};
  double mean = (x + y + 3.0 * z) / 5.0;
  double sum = 0;
  double part = 1;
  while (!at.are_together(mean)) {
    const double root = std::sqrt(at.z);
    at.step();
    // The step's (z + l) is four times the new z.
    sum += part / (root * (at.z * 4.0));
    part /= 4.0;
    mean = (at.x + at.y + 3.0 * at.z) / 5.0;
  }
  const double a = 1.0 - at.x / mean;
  const double b = 1.0 - at.y / mean;
  const double c = -(a + b) / 3.0;
  const double e2 = a * b - 6.0 * c * c;
  const double e3 = (3.0 * a * b - 8.0 * c * c) * c;
  const double e4 = 3.0 * (a * b - c * c) * c * c;
  const double e5 = a * b * c * c * c;
  const double series = 1.0 - 3.0 * e2 / 14.0 + e3 / 6.0 + 9.0 * e2 * e2 / 88.0 - 3.0 * e4 / 22.0 -
                        9.0 * e2 * e3 / 52.0 + 3.0 * e5 / 26.0;
  return part * series / (mean * std::sqrt(mean)) + 3.0 * sum;
}

double complete_first(double m) {
  INSIST(m < 1);
  return carlson_rf(0, 1.0 - m, 1);
}

double complete_second(double m) {
  INSIST(m <= 1);
  const double rest = 1.0 - m;
  if (rest <= 0) return 1;
  // Both terms are positive, so nothing is lost toward m = 1. Source: DLMF 19.25.1.
  return rest / 3.0 * (carlson_rd(0, rest, 1) + carlson_rd(0, 1, rest));
}

}  // namespace pouncemark::frame
