#include "engine/frame/wave.h"

#include <cmath>
#include <numbers>

#include "engine/base/insist.h"
#include "engine/frame/elliptic.h"

namespace pouncemark::frame {
namespace {

using std::numbers::pi;

double q_of(const Wave& wave) { return 2.0 * pi * wave.height / wave.length; }

}  // namespace

double along(const Wave& wave) {
  INSIST(wave.length > 0 && wave.height >= 0);
  if (wave.height == 0) return wave.length;
  // √(1+q²)·E(q²/(1+q²)) is E(-q²). source: DLMF 19.7.5.
  const double q = q_of(wave);
  return 2.0 * wave.length / pi * complete_second(-q * q);
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
