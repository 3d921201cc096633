#include "engine/base/number_text.h"
#include "engine/checks/machine_rules.h"

namespace pouncemark::checks {

std::optional<Finding> beyond_stapler(Um side_um, Um reach_um) {
  if (side_um <= reach_um) return std::nullopt;
  const std::string side = mm_text_beside(side_um, reach_um);
  const std::string reach = short_mm_text(reach_um, 1);
  Finding finding;
  finding.code = "beyond_stapler";
  finding.severity = Severity::warn;
  finding.figure = mm_text_beside(side_um - reach_um, 0);
  finding.sentence = finding.figure + " out of reach: the staples stand " + side +
                     " from the nearer edge and the stapler reaches " + reach + " in.";
  finding.brief = side + ", reaches " + reach;
  finding.change = "Staple before the work grows so wide, or take a stapler with a longer arm.";
  finding.sum = side + " − " + reach + " = " + finding.figure + " (reach as entered)";
  return finding;
}

}  // namespace pouncemark::checks
