#include "engine/checks/sewing_rules.h"

namespace pouncemark::checks {

Finding staple_may_rust() {
  Finding finding;
  finding.code = "staple_may_rust";
  finding.severity = Severity::warn;
  finding.sentence = "These staples stay and are not stainless: they may rust and stain.";
  finding.brief = "not stainless";
  finding.change = "Take stainless ones or take them out; if they stay, write down why.";
  return finding;
}

}  // namespace pouncemark::checks
