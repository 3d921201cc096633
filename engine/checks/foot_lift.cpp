#include "engine/base/number_text.h"
#include "engine/checks/sewing_rules.h"

namespace pouncemark::checks {
namespace {

constexpr Um kToSpareUm = 2'000;

}  // namespace

std::optional<Finding> foot_lift(Um lift_um, Um stack_um, Um step_um) {
  const Um needed = stack_um + step_um + kToSpareUm;
  if (lift_um >= needed) return std::nullopt;
  Finding finding;
  finding.code = "foot_lift_short";
  finding.severity = Severity::warn;
  finding.figure = mm_text_beside(needed - lift_um, 0);
  finding.sentence = finding.figure + " short: the foot lifts " + short_mm_text(lift_um, 3) +
                     " and this stack needs " + short_mm_text(needed, 3) + " to go under it.";
  finding.brief = short_mm_text(lift_um, 3) + ", needs " + short_mm_text(needed, 3);
  finding.change = "Feed the piece in where it is thinner, or take a machine that lifts higher.";
  finding.sum = "stack " + short_mm_text(stack_um, 3) +
                (step_um > 0 ? " + highest step " + short_mm_text(step_um, 3) : "") +
                " + 2 to spare = " + short_mm_text(needed, 3) + " (common practice)";
  return finding;
}

}  // namespace pouncemark::checks
