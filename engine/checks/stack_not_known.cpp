#include "engine/checks/sewing_rules.h"

namespace pouncemark::checks {

Finding stack_not_known(const std::string& missing) {
  Finding finding;
  finding.code = "stack_not_known";
  finding.severity = Severity::warn;
  finding.sentence = "The stack of these rows is not known: " + missing +
                     " was not entered. It is missing from their thread as well.";
  finding.brief = missing + " not entered";
  finding.change = "Enter it, or type the stack.";
  finding.sum = "the plies under the needle are added up; one of them has no thickness";
  return finding;
}

}  // namespace pouncemark::checks
