#include "engine/checks/sewing_rules.h"

namespace pouncemark::checks {

Finding film_under_row() {
  Finding finding;
  finding.code = "film_under_row";
  finding.severity = Severity::warn;
  finding.sentence = "The film is left on while sewing: film sewn in stays for good.";
  finding.brief = "film under the row";
  finding.change = "Peel it back some 40 wide at the row before sewing.";
  return finding;
}

}  // namespace pouncemark::checks
