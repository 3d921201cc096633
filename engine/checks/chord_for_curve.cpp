#include <cstdlib>

#include "engine/base/number_text.h"
#include "engine/checks/bay_rules.h"
#include "engine/material/assumed.h"

namespace pouncemark::checks {

std::optional<Finding> chord_for_curve(Um straight_um, Um along_um, const Hung& hung) {
  constexpr Um kSame = material::kAssumedTapeLimitUm;
  const bool is_straight = std::llabs(hung.width_um - straight_um) <= kSame;
  if (!is_straight || along_um - straight_um <= 2 * kSame) return std::nullopt;
  Finding finding;
  finding.code = "chord_for_curve";
  finding.severity = Severity::warn;
  finding.figure = mm_text(along_um - straight_um, 1);
  finding.sentence =
      "The curve is " + finding.figure +
      " longer than the straight distance here. Which did you measure? The width of " + hung.words +
      " is the straight distance.";
  finding.change = "Make the piece as wide as the curve is long, or correct the chord.";
  finding.sum = exact_mm_text(along_um) + " along the curve − " + exact_mm_text(straight_um) +
                " = " + finding.figure;
  return finding;
}

}  // namespace pouncemark::checks
