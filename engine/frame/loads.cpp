#include "engine/frame/loads.h"

#include <cmath>

#include "engine/base/insist.h"

namespace pouncemark::frame {
namespace {

constexpr double kGravity = 9.80665;
/// Square micrometres in a square metre.
constexpr double kUm2InM2 = 1e12;

/// Moments over the supports of a beam with `spans` equal spaces, each 1 long and loaded with 1:
/// M[i-1] + 4 M[i] + M[i+1] = -1/2 inside, 0 over both ends.
std::vector<double> moments_over_supports(std::size_t spans) {
  std::vector<double> moments(spans + 1, 0.0);
  if (spans < 2) return moments;
  // Forward elimination leaves M[i] = right[i] - factor[i] M[i+1].
  std::vector<double> factor(spans, 0.0);
  std::vector<double> right(spans, 0.0);
  for (std::size_t i = 1; i < spans; ++i) {
    const double pivot = 4.0 - factor[i - 1];
    factor[i] = 1.0 / pivot;
    right[i] = (-0.5 - right[i - 1]) / pivot;
  }
  for (std::size_t i = spans - 1; i > 0; --i) {
    moments[i] = right[i] - factor[i] * moments[i + 1];
  }
  return moments;
}

}  // namespace

std::int64_t sheet_mg_m2(Um thickness_um, std::int64_t density) { return thickness_um * density; }

std::int64_t mass_mg(std::int64_t mg_m2, Um width_um, Um length_um) {
  const double area = static_cast<double>(width_um) * static_cast<double>(length_um) / kUm2InM2;
  return std::llround(static_cast<double>(mg_m2) * area);
}

std::int64_t weight_mn(std::int64_t mass_mg) {
  return std::llround(static_cast<double>(mass_mg) * kGravity / 1000.0);
}

std::int64_t equal_share_mn(std::int64_t weight_mn, std::int64_t holders) {
  INSIST(holders > 0);
  return divide_round(weight_mn, holders);
}

std::vector<double> share_of_fixings(int fixings) {
  if (fixings <= 0) return {};
  if (fixings == 1) return {1.0};
  const auto spans = static_cast<std::size_t>(fixings) - 1;
  const std::vector<double> moments = moments_over_supports(spans);
  std::vector<double> shares(spans + 1, 0.0);
  for (std::size_t i = 0; i <= spans; ++i) {
    // Each span beside the fixing leans half its load on it, and the difference of its moments.
    double share = 0;
    if (i > 0) share += 0.5 + moments[i - 1] - moments[i];
    if (i < spans) share += 0.5 + moments[i + 1] - moments[i];
    shares[i] = share / static_cast<double>(spans);
  }
  // What is the same from both ends is made the same to the last bit.
  for (std::size_t i = 0; 2 * i < spans; ++i) shares[spans - i] = shares[i];
  return shares;
}

std::vector<std::int64_t> fixing_loads_mn(std::int64_t weight_mn, int fixings) {
  std::vector<std::int64_t> loads;
  for (const double share : share_of_fixings(fixings)) {
    loads.push_back(std::llround(static_cast<double>(weight_mn) * share));
  }
  return loads;
}

}  // namespace pouncemark::frame
