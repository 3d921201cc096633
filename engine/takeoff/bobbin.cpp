#include "engine/takeoff/bobbin.h"

#include <cstddef>

#include "engine/base/insist.h"

namespace pouncemark::takeoff {
namespace {

constexpr double kQuarterPi = 0.78539816339744830962;

}  // namespace

double bobbin_room_mm3(const BobbinMeasures& measures) {
  const double outer = from_um(measures.outer_um);
  const double core = from_um(measures.core_um);
  if (core >= outer) return 0.0;
  return kQuarterPi * (outer * outer - core * core) * from_um(measures.width_um);
}

Um bobbin_thread_um(const BobbinMeasures& measures) {
  INSIST(measures.tex_thousandths > 0);
  // Fibre in grams, and tex is grams of a thousand metres: mm³/1000 × g/cm³ ÷ tex × 1000 is metres.
  const double grams_thousand = bobbin_room_mm3(measures) *
                                static_cast<double>(measures.packing_thousandths) / 1000.0 *
                                static_cast<double>(measures.density_thousandths) / 1000.0;
  const double metres = grams_thousand * 1000.0 / static_cast<double>(measures.tex_thousandths);
  return to_um(metres * 1000.0);
}

Um usable_um(Um thread_um, std::int64_t kept_back_thousandths) {
  constexpr std::int64_t kWhole = 100'000;
  return thread_um / kWhole * (kWhole - kept_back_thousandths) +
         thread_um % kWhole * (kWhole - kept_back_thousandths) / kWhole;
}

std::int64_t rows_a_bobbin(Um usable_um, Um row_um) {
  INSIST(row_um > 0);
  return usable_um / row_um;
}

std::vector<BobbinPlace> bobbin_plan(std::span<const Um> rows_um, Um usable_um) {
  INSIST(usable_um > 0);
  std::vector<BobbinPlace> plan;
  plan.reserve(rows_um.size());
  Um left = 0;
  std::int64_t next = 1;
  for (const Um row : rows_um) {
    BobbinPlace place;
    const bool goes_on = !plan.empty() && left >= row;
    if (goes_on) {
      place.bobbin = plan.back().bobbin;
      place.row_on_it = plan.back().row_on_it + 1;
      left -= row;
    } else {
      if (!plan.empty()) plan.back().is_last = true;
      place.bobbin = next;
      place.row_on_it = 1;
      place.takes = row > usable_um ? divide_up(row, usable_um) : 1;
      left = place.takes > 1 ? -1 : usable_um - row;
      next += place.takes;
    }
    plan.push_back(place);
  }
  if (!plan.empty()) plan.back().is_last = true;
  return plan;
}

std::int64_t bobbin_fills(std::span<const BobbinPlace> plan) {
  return plan.empty() ? 0 : plan.back().bobbin + plan.back().takes - 1;
}

}  // namespace pouncemark::takeoff
