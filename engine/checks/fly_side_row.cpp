#include "engine/checks/rules.h"

namespace pouncemark::checks {

Finding fly_side_row() {
  Finding finding;
  finding.code = "fly_side_row";
  finding.severity = Severity::stop;
  finding.sentence =
      "This edge must stay unsewn, so that cloth and sheet can slip when the panel is curved. "
      "No row was laid on it.";
  finding.change = "Take fly_side out of rows_on.";
  finding.sum = "fly side: never a row (common practice)";
  return finding;
}

}  // namespace pouncemark::checks
