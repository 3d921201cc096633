#include "engine/frame/wood.h"

#include <array>
#include <cmath>

namespace pouncemark::frame {
namespace {

constexpr std::string_view kTable = "FPL-GTR-190, table 13-5";
constexpr std::string_view kMemory = "as FPL-GTR-190, from memory";

constexpr std::array<Timber, 11> kTimbers = {{
    {"beech", 190, 431, kTable},
    {"white oak", 180, 365, kTable},
    {"red oak", 158, 369, kTable},
    {"yellow birch", 256, 338, kTable},
    {"hard maple", 165, 353, kTable},
    {"basswood", 230, 330, kTable},
    {"aspen", 119, 234, kTable},
    {"cherry", 126, 248, kTable},
    {"walnut", 190, 274, kTable},
    {"Douglas fir", 165, 267, kMemory},
    {"Sitka spruce", 148, 263, kMemory},
}};

constexpr std::int64_t kHottestMc = 60'000;
constexpr std::int64_t kWettestMpct = 100'000;

bool is_in_table(std::int64_t mpct) { return mpct >= kDriestMpct && mpct <= kDampestMpct; }

}  // namespace

std::span<const Timber> timbers() { return kTimbers; }

std::optional<Timber> timber_named(std::string_view name) {
  for (const Timber& timber : kTimbers) {
    if (timber.name == name) return timber;
  }
  return std::nullopt;
}

std::optional<Um> growth_across_um(const Timber& timber, Sawn sawn, Um width_um,
                                   std::int64_t from_mpct, std::int64_t to_mpct) {
  if (!is_in_table(from_mpct) || !is_in_table(to_mpct)) return std::nullopt;
  const std::int64_t each = sawn == Sawn::flat ? timber.flat : timber.quarter;
  // Hundred-thousandths a percent times thousandths of a percent.
  return divide_round(width_um * each * (to_mpct - from_mpct), 100'000'000);
}

std::optional<std::int64_t> settles_at_mpct(std::int64_t temperature_mc, std::int64_t damp_mpct) {
  if (temperature_mc < 0 || temperature_mc > kHottestMc) return std::nullopt;
  if (damp_mpct < 0 || damp_mpct > kWettestMpct) return std::nullopt;
  // In thousands of degrees, so that the published coefficients keep their figures.
  const double t = static_cast<double>(temperature_mc) / 1'000'000.0;
  const double h = static_cast<double>(damp_mpct) / 100'000.0;
  const double w = 349.0 + 1290.0 * t + 13'500.0 * t * t;
  const double k = 0.805 + 0.736 * t - 2.73 * t * t;
  const double k1 = 6.27 - 9.38 * t - 303.0 * t * t;
  const double k2 = 1.91 + 40.7 * t - 293.0 * t * t;
  const double kh = k * h;
  const double bound = k1 * kh + k1 * k2 * kh * kh;
  const double doubly = k1 * kh + 2.0 * k1 * k2 * kh * kh;
  return std::llround(1'800'000.0 / w * (kh / (1.0 - kh) + doubly / (1.0 + bound)));
}

}  // namespace pouncemark::frame
