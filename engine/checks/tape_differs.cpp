#include <cstdlib>

#include "engine/base/number_text.h"
#include "engine/checks/bay_rules.h"
#include "engine/material/assumed.h"

namespace pouncemark::checks {

std::optional<Finding> tape_differs(Um taped_um, Um along_um, std::optional<Um> rise_um) {
  const Um apart = taped_um - along_um;
  if (std::llabs(apart) <= material::kAssumedTapeLimitUm) return std::nullopt;
  Finding finding;
  finding.code = "tape_differs";
  finding.severity = Severity::warn;
  finding.figure = mm_text_beside(std::llabs(apart), material::kAssumedTapeLimitUm);
  finding.sentence = finding.figure + (apart > 0 ? " longer" : " shorter") +
                     ": a tape round the timber says " + short_mm_text(taped_um, 1) +
                     ", and the curve worked out is " + mm_text(along_um, 1) + " long.";
  if (!rise_um) finding.sentence += " The tape is shorter than the straight distance.";
  finding.change = "Re-measure: chord, rise and once more round the timber.";
  const bool is_longer = apart > 0;
  finding.sum = exact_mm_text(is_longer ? taped_um : along_um) + " − " +
                exact_mm_text(is_longer ? along_um : taped_um) + " = " + finding.figure +
                ", limit " + exact_mm_text(material::kAssumedTapeLimitUm) + " assumed";
  if (rise_um) finding.sum += "; the tape would be right for a rise of " + mm_text(*rise_um, 1);
  return finding;
}

}  // namespace pouncemark::checks
