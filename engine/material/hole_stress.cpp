#include "engine/material/hole_stress.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace pouncemark::material {
namespace {

constexpr std::size_t kKnown = 10;
using Known = std::array<double, kKnown>;

/// Exact values of one infinite row of round holes, from periodic complex potentials; at 0 those of
/// one hole alone (Kirsch).
constexpr Known kHoleByPitch = {0, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8};
constexpr Known kAcross = {3,       3.00002, 3.00040, 3.00626, 3.03078,
                           3.09614, 3.24112, 3.54633, 4.20377, 5.75528};
constexpr Known kAlong = {3,       2.98368, 2.93628, 2.76764, 2.54661,
                          2.32611, 2.13919, 1.99517, 1.88671, 1.80184};

/// Lagrange's curve through four known values, two on either side where there are.
double between(const Known& values, double at) {
  const auto beyond = std::upper_bound(kHoleByPitch.begin(), kHoleByPitch.end(), at);
  const auto next = static_cast<std::ptrdiff_t>(beyond - kHoleByPitch.begin());
  const auto first = static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(next - 2, 0, kKnown - 4));
  double sum = 0;
  for (std::size_t i = first; i < first + 4; ++i) {
    double term = values[i];
    for (std::size_t j = first; j < first + 4; ++j) {
      if (j != i) term *= (at - kHoleByPitch[j]) / (kHoleByPitch[i] - kHoleByPitch[j]);
    }
    sum += term;
  }
  return sum;
}

}  // namespace

double sheet_left(double hole, double apart) { return 1.0 - hole / apart; }

std::optional<RowStress> row_stress(double hole, double apart) {
  const double by_pitch = hole / apart;
  if (by_pitch > kHoleByPitch.back()) return std::nullopt;
  return RowStress{between(kAcross, by_pitch), between(kAlong, by_pitch)};
}

double strip_stress(double hole, double width) {
  const double r = hole / width;
  return 3.0 - 3.13 * r + 3.66 * r * r - 1.53 * r * r * r;
}

double shear_out_n(double thickness, double hole, double from_edge, double shear_mpa) {
  return std::max(0.0, 2.0 * thickness * (from_edge - hole / 2.0) * shear_mpa);
}

double bearing_n(double thickness, double hole, double bearing_mpa) {
  return hole * thickness * bearing_mpa;
}

double seam_strength_n_mm(double thread_n, double stitch) { return 1.5 * thread_n / stitch; }

double droop_modulus_mpa(double density, double length, double droop, double thickness) {
  constexpr double kGravity = 9.80665;
  const double newtons_mm3 = density * kGravity / 1'000'000.0;
  const double square = length * length;
  return 1.5 * newtons_mm3 * square * square / (droop * thickness * thickness);
}

}  // namespace pouncemark::material
