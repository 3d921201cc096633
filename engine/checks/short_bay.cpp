#include "engine/base/number_text.h"
#include "engine/checks/hanging_rules.h"

namespace pouncemark::checks {

std::optional<Finding> short_bay(Um chord_um, Um longest_um, std::int64_t push_mn) {
  if (chord_um <= 0 || 2 * chord_um > longest_um) return std::nullopt;
  const std::string push = mm_text(push_mn, 1) + " N";
  Finding finding;
  finding.code = "short_bay";
  finding.severity = Severity::note;
  finding.figure = mm_text_beside(chord_um, longest_um / 2);
  finding.sentence = finding.figure + " of chord is short: half the length needs eight times the " +
                     "push for the same rise. This bay takes " + push + ".";
  finding.brief = "short: " + push;
  finding.change = "Count the hands for this bay by itself.";
  finding.sum = "longest chord " + exact_mm_text(longest_um) +
                " ÷ 2 = " + mm_text(longest_um / 2, 1) +
                ", 2 × 2 × 2 = 8 (push goes with rise ÷ chord³)";
  return finding;
}

}  // namespace pouncemark::checks
