#include "engine/base/number_text.h"
#include "engine/checks/rules.h"

namespace pouncemark::checks {

std::optional<Finding> short_last_gap(Um last_gap_um, Um asked_um) {
  if (last_gap_um <= 0 || last_gap_um >= asked_um) return std::nullopt;
  Finding finding;
  finding.code = "short_last_gap";
  finding.severity = Severity::note;
  finding.figure = mm_text_beside(last_gap_um, asked_um);
  finding.brief = "last gap " + finding.figure;
  finding.sentence = finding.figure + ": the last gap is shorter than the " +
                     short_mm_text(asked_um, 2) + " of the rest, for the sake of one more point.";
  finding.change = "Leave the left-over at an end, or take even gaps.";
  finding.sum = "what " + short_mm_text(asked_um, 2) +
                " does not fill is left over: " + short_mm_text(last_gap_um, 3);
  return finding;
}

}  // namespace pouncemark::checks
