#include "engine/material/hole_stress.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <complex>
#include <vector>

using doctest::Approx;
using pouncemark::material::row_stress;

namespace {

using Complex = std::complex<double>;
constexpr double kPi = 3.14159265358979323846;
constexpr int kTerms = 12;
constexpr int kUnknowns = 2 * kTerms;
constexpr int kPlaces = 90;

/// The sum over all holes of a row of pitch 1 of 1 ÷ (z − n)^power; 2 in closed form.
Complex over_the_row(Complex z, int power) {
  if (power == 2) {
    const Complex sine = std::sin(kPi * z);
    return kPi * kPi / (sine * sine);
  }
  Complex sum = 0;
  for (int n = -120; n <= 120; ++n) sum += std::pow(z - static_cast<double>(n), -power);
  return sum;
}

/// The greatest hoop stress at a hole of radius `a` when the row is pulled across (or along) by 1:
/// Kolosov's potentials as sums over the row, their terms fitted so that every rim is free.
/// Φ = 1/4 + Σ a_k C_k and z̄Φ' + Ψ = −2iyΦ' ± 1/2 + Σ b_k C_k, k = 2, 4, ...
double greatest(double a, bool across) {
  std::vector<std::array<double, kUnknowns + 1>> lines;
  std::vector<std::array<double, kUnknowns>> hoop;
  for (int i = 0; i < kPlaces; ++i) {
    const double t = kPi / 2 * i / (kPlaces - 1);
    const Complex z = std::polar(a, t);
    const Complex turn = std::polar(1.0, 2 * t);
    std::array<double, kUnknowns + 1> real{};
    std::array<double, kUnknowns + 1> imaginary{};
    std::array<double, kUnknowns> rim{};
    for (int k = 0; k < kTerms; ++k) {
      const int power = 2 * k + 2;
      const double scale = std::pow(a, power);
      const Complex term = scale * over_the_row(z, power);
      const Complex slope = -static_cast<double>(power) * scale * over_the_row(z, power + 1);
      const Complex of_a = 2.0 * term.real() - turn * Complex(0, -2 * z.imag()) * slope;
      const Complex of_b = -turn * term;
      const auto at = static_cast<std::size_t>(k);
      real[at] = of_a.real();
      imaginary[at] = of_a.imag();
      real[at + kTerms] = of_b.real();
      imaginary[at + kTerms] = of_b.imag();
      rim[at] = 4.0 * term.real();
    }
    const Complex far = 0.5 - turn * (across ? 0.5 : -0.5);
    real[kUnknowns] = -far.real();
    imaginary[kUnknowns] = -far.imag();
    lines.push_back(real);
    lines.push_back(imaginary);
    hoop.push_back(rim);
  }
  // Least squares by turning columns upright one after the other (modified Gram-Schmidt).
  std::vector<std::array<double, kUnknowns + 1>> q = lines;
  std::array<std::array<double, kUnknowns + 1>, kUnknowns> r{};
  for (std::size_t j = 0; j < kUnknowns; ++j) {
    double square = 0;
    for (const auto& line : q) square += line[j] * line[j];
    r[j][j] = std::sqrt(square);
    for (auto& line : q) line[j] /= r[j][j];
    for (std::size_t k = j + 1; k <= kUnknowns; ++k) {
      for (const auto& line : q) r[j][k] += line[j] * line[k];
      for (auto& line : q) line[k] -= r[j][k] * line[j];
    }
  }
  std::array<double, kUnknowns> found{};
  for (std::size_t j = kUnknowns; j-- > 0;) {
    double left = r[j][kUnknowns];
    for (std::size_t k = j + 1; k < kUnknowns; ++k) left -= r[j][k] * found[k];
    found[j] = left / r[j][j];
  }
  double most = 0;
  for (const auto& rim : hoop) {
    double stress = 1.0;
    for (std::size_t k = 0; k < kTerms; ++k) stress += rim[k] * found[k];
    most = std::fmax(most, stress);
  }
  return most;
}

}  // namespace

TEST_CASE("stress at a row of holes is that of potentials fitted here to free rims") {
  // derived: Kolosov and Muskhelishvili's potentials, least squares at the rim; no figure of the
  // table goes in.
  int seen = 0;
  for (const double by_pitch : {0.05, 0.1, 0.2, 1.4 / 6, 0.3, 1.4 / 4, 0.4, 0.45, 0.5, 0.6}) {
    CAPTURE(by_pitch);
    const auto stress = row_stress(by_pitch, 1.0);
    REQUIRE(stress.has_value());
    CHECK(stress->across == Approx(greatest(by_pitch / 2, true)).epsilon(5e-4));
    CHECK(stress->along == Approx(greatest(by_pitch / 2, false)).epsilon(5e-4));
    ++seen;
  }
  CHECK(seen == 10);
}
