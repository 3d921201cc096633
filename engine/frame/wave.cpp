#include "engine/frame/wave.h"

#include <cmath>
#include <numbers>

#include "engine/base/insist.h"

namespace pouncemark::frame {
namespace {

using std::numbers::pi;

/// √(1+q²)·E(m), m = q²/(1+q²), by the arithmetic-geometric mean. source: Abramowitz & Stegun 17.6.
double stretched_e(double q) {
  constexpr int kSteps = 12;  // the difference is squared by each; ten are enough for any double
  const double hypotenuse = std::sqrt(1.0 + q * q);
  double a = 1.0;
  double b = 1.0 / hypotenuse;
  double c = q / hypotenuse;
  double sum = c * c / 2.0;
  double weight = 0.5;
  for (int i = 0; i < kSteps; ++i) {
    c = (a - b) / 2.0;
    const double next = (a + b) / 2.0;
    b = std::sqrt(a * b);
    a = next;
    weight *= 2.0;
    sum += weight * c * c;
  }
  return hypotenuse * pi / (2.0 * a) * (1.0 - sum);
}

double q_of(const Wave& wave) { return 2.0 * pi * wave.height / wave.length; }

}  // namespace

double along(const Wave& wave) {
  INSIST(wave.length > 0 && wave.height >= 0);
  if (wave.height == 0) return wave.length;
  return 2.0 * wave.length / pi * stretched_e(q_of(wave));
}

double tightest_radius(const Wave& wave) {
  if (wave.height == 0) return 0;
  const double share = wave.length / (2.0 * pi);
  return share * share / wave.height;
}

double steepest_slope(const Wave& wave) { return std::atan(q_of(wave)); }

std::optional<Wave> wave_along(double length, double wanted) {
  INSIST(length > 0);
  if (wanted < length) return std::nullopt;
  // Up and down again the curve is longer than four heights, so half the length is more than
  // enough.
  constexpr int kHalvings = 100;
  double least = 0;
  double most = wanted / 2.0;
  for (int i = 0; i < kHalvings; ++i) {
    const double middle = (least + most) / 2.0;
    (along({middle, length}) < wanted ? least : most) = middle;
  }
  return Wave{least, length};
}

double bulge_height(double length, double surplus) {
  INSIST(length > 0 && surplus >= 0);
  return wave_along(2.0 * length, 2.0 * (length + surplus))->height;
}

}  // namespace pouncemark::frame
