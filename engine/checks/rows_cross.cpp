#include "engine/base/number_text.h"
#include "engine/checks/rules.h"

namespace pouncemark::checks {

std::optional<Finding> rows_cross(Um apart_um, Um clear_um) {
  if (apart_um >= clear_um) return std::nullopt;
  Finding finding;
  finding.code = "rows_cross";
  finding.severity = Severity::warn;
  finding.figure = mm_text_beside(apart_um, clear_um);
  finding.brief = finding.figure + " apart, needs " + short_mm_text(clear_um, 1);
  finding.sentence =
      finding.figure + " apart and no hole shared: where rows cross, the holes crowd.";
  finding.change = "Stop one row " + short_mm_text(clear_um, 1) + " short, or share a hole.";
  finding.sum = "nearest holes of the two rows " + finding.figure + ", wanted " +
                short_mm_text(clear_um, 1) + " (assumed limit) or a shared hole";
  return finding;
}

}  // namespace pouncemark::checks
