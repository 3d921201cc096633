#include "engine/base/number_text.h"
#include "engine/checks/sewing_rules.h"

namespace pouncemark::checks {
namespace {

/// What is left over of a leg is bent over and holds.
constexpr Um kClinchUm = 2'000;

}  // namespace

std::optional<Finding> staple_leg(Um leg_um, Um stack_um) {
  const Um needed = stack_um + kClinchUm;
  if (leg_um >= needed) return std::nullopt;
  Finding finding;
  finding.code = "staple_leg_short";
  finding.severity = Severity::warn;
  finding.figure = mm_text_beside(needed - leg_um, 0);
  finding.sentence = finding.figure + " short: legs of " + short_mm_text(leg_um, 3) +
                     " do not go through a stack of " + short_mm_text(stack_um, 3) + " and clinch.";
  finding.brief = short_mm_text(leg_um, 3) + ", needs " + short_mm_text(needed, 3);
  finding.change = "Take staples with legs of " + short_mm_text(needed, 3) + " or more.";
  finding.sum = "stack " + short_mm_text(stack_um, 3) +
                " + 2 to bend over = " + short_mm_text(needed, 3) + " (common practice)";
  return finding;
}

}  // namespace pouncemark::checks
