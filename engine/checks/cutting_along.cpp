#include "engine/checks/sewing_rules.h"

namespace pouncemark::checks {

Finding cutting_along() {
  Finding finding;
  finding.code = "cutting_along";
  finding.severity = Severity::warn;
  finding.sentence = "This point cuts along the row and helps it tear.";
  finding.brief = "cuts along the row";
  finding.change = "Try a round point, or one that cuts across the row.";
  finding.sum = "slits in line are one long slit with bridges (common practice)";
  return finding;
}

}  // namespace pouncemark::checks
