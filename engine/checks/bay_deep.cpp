#include "engine/base/number_text.h"
#include "engine/checks/bay_rules.h"

namespace pouncemark::checks {

std::optional<Finding> bay_deep(Um chord_um, Um rise_um) {
  if (2 * rise_um <= chord_um) return std::nullopt;
  Finding finding;
  finding.code = "bay_deep";
  finding.severity = Severity::warn;
  finding.figure = mm_text_beside(rise_um, chord_um / 2);
  finding.sentence = "Deeper than a half circle? The rise of " + finding.figure +
                     " is more than half of the chord of " + short_mm_text(chord_um, 1) + ".";
  finding.change = "Check chord and rise; leave them if the bay is so deep.";
  finding.sum = exact_mm_text(chord_um) + " ÷ 2 = " + exact_mm_text(chord_um / 2) + ", rise " +
                finding.figure;
  return finding;
}

}  // namespace pouncemark::checks
