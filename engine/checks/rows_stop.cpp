#include "engine/base/number_text.h"
#include "engine/checks/rules.h"

namespace pouncemark::checks {

std::optional<Finding> rows_stop_soon(Um stop_um, Um run_um, Um spacing_um) {
  if (run_um >= spacing_um) return std::nullopt;
  Finding finding;
  finding.code = "rows_stop_soon";
  finding.severity = Severity::warn;
  finding.figure = mm_text_beside(run_um, spacing_um);
  finding.brief = finding.figure + " long, one gap is " + short_mm_text(spacing_um, 2);
  finding.sentence = finding.figure + " of the row is left where it stops " +
                     short_mm_text(stop_um, 1) + " from the hinge side: less than one gap of " +
                     short_mm_text(spacing_um, 2) + ".";
  finding.change = "Let the rows run farther, or take them off these edges.";
  finding.sum = "first point to last " + finding.figure;
  return finding;
}

Finding rows_stop_beyond(Um stop_um, Um ends_um) {
  Finding finding;
  finding.code = "rows_stop_beyond";
  finding.severity = Severity::warn;
  finding.figure = mm_text_beside(stop_um, ends_um);
  finding.brief = "ends at " + mm_text_beside(ends_um, stop_um) + " as it is";
  finding.sentence = finding.figure + " from the hinge side lies beyond the row, which ends at " +
                     mm_text_beside(ends_um, stop_um) + ": nothing stops there.";
  finding.change = "Type a smaller distance, or let the rows run on.";
  finding.sum = "from the hinge side along the edge, as entered";
  return finding;
}

}  // namespace pouncemark::checks
