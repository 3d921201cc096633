#include "engine/base/number_text.h"
#include "engine/checks/bay_rules.h"

namespace pouncemark::checks {

std::optional<Finding> bay_short(Um along_um, const Hung& hung) {
  if (hung.width_um <= along_um) return std::nullopt;
  const std::string likely =
      hung.likely_um > 0 ? ", give or take " + mm_text(hung.likely_um, 1) : std::string();
  Finding finding;
  finding.code = "bay_short";
  finding.severity = Severity::warn;
  finding.figure = mm_text_beside(hung.width_um - along_um, 0);
  finding.sentence = "The bay is " + finding.figure + " shorter than " + hung.words + ": " +
                     mm_text_beside(along_um, hung.width_um) + " along its curve, and the piece " +
                     mm_text_beside(hung.width_um, along_um) + " wide" + likely + ".";
  finding.change = "Measure the bay again, or make the piece narrower before anything is cut.";
  finding.sum =
      exact_mm_text(hung.width_um) + " − " + exact_mm_text(along_um) + " = " + finding.figure;
  return finding;
}

}  // namespace pouncemark::checks
