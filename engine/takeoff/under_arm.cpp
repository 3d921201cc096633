#include "engine/takeoff/under_arm.h"

#include <algorithm>
#include <cmath>

namespace pouncemark::takeoff {
namespace {

constexpr double kPi = 3.14159265358979323846;

}  // namespace

Um smaller_side_um(Um width_um, Um row_um) {
  return std::max<Um>(0, std::min(row_um, width_um - row_um));
}

Um roll_across_um(Um side_um, Um thickness_um, Um radius_um) {
  const double radius = from_um(radius_um);
  const double section = from_um(side_um) * from_um(thickness_um) / kPi;
  return to_um(2.0 * std::sqrt(radius * radius + section));
}

UnderArm under_arm(Um side_um, Um roll_um, const Arm& arm) {
  if (!arm.throat_um) return UnderArm::not_known;
  if (side_um <= *arm.throat_um) return UnderArm::flat;
  if (roll_um > *arm.throat_um) return UnderArm::does_not_fit;
  if (!arm.under_arm_um) return UnderArm::not_known;
  return roll_um <= *arm.under_arm_um ? UnderArm::rolled : UnderArm::does_not_fit;
}

std::vector<Join> joins_one_by_one(const std::vector<Um>& widths_um, Um lap_um) {
  std::vector<Join> joins;
  if (widths_um.empty()) return joins;
  Um run = widths_um.front();
  for (std::size_t i = 1; i < widths_um.size(); ++i) {
    Join join;
    join.row_um = run - lap_um / 2;
    run += widths_um[i] - lap_um;
    join.run_um = run;
    join.side_um = smaller_side_um(run, join.row_um);
    joins.push_back(join);
  }
  return joins;
}

Um widest_side_um(const std::vector<Join>& joins) {
  Um widest = 0;
  for (const Join& join : joins) widest = std::max(widest, join.side_um);
  return widest;
}

}  // namespace pouncemark::takeoff
