#include "engine/frame/fixings.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/base/insist.h"

namespace pouncemark::frame {
namespace {

constexpr Um kShownTo = 500;

/// Growth by kind of sheet, thousandths of a millionth a degree.
constexpr std::array<std::int64_t, 5> kSheetGrowth = {68'000, 17'000, 72'000, 80'000, 60'000};

/// Thousandths of a millionth, times thousandths of a degree.
constexpr double kUnits = 1e12;

}  // namespace

material::Value sheet_growth(material::Sheet sheet) {
  material::Value value;
  value.is_known = true;
  value.thousandths = kSheetGrowth[static_cast<std::size_t>(sheet)];
  value.standing = material::Standing::supplier;
  value.source = "suppliers' data sheets, the largest of them";
  return value;
}

Um move_um(Um from_tight_um, const Warming& warming) {
  const double growth = static_cast<double>(warming.sheet - warming.timber);
  const double degrees = static_cast<double>(warming.by_mk);
  return std::llround(static_cast<double>(from_tight_um) * growth * degrees / kUnits);
}

Um farthest_um(Um tight_um, Um last_um) {
  INSIST(tight_um >= 0 && tight_um <= last_um);
  return std::max(tight_um, last_um - tight_um);
}

Um slot_um(const SlotNeed& need) {
  return need.screw_um + 2 * (std::abs(need.move_um) + std::abs(need.damp_um)) +
         2 * need.tolerance_um;
}

Um slot_shown_um(Um slot_um) {
  INSIST(slot_um >= 0);
  return divide_up(slot_um, kShownTo) * kShownTo;
}

Um screw_from_middle_um(Um from_tight_um, const Warming& from_middle_to_today) {
  return -move_um(from_tight_um, from_middle_to_today);
}

}  // namespace pouncemark::frame
