#include "engine/base/number_text.h"
#include "engine/checks/rules.h"

namespace pouncemark::checks {

std::optional<Finding> rows_apart(Um apart_um, int needle_size, int blades) {
  const Um needed = Um{needle_size} * 10 * blades;
  if (apart_um >= needed) return std::nullopt;
  Finding finding;
  finding.code = "rows_too_near";
  finding.severity = Severity::warn;
  finding.figure = mm_text(needed - apart_um, 1);
  finding.sentence = finding.figure + " short: the two rows stand " + mm_text(apart_um, 1) +
                     " apart and " + std::to_string(blades) + " needle blades are " +
                     mm_text(needed, 1) + ". The strip between them is a tear line.";
  finding.change = "Set one of the rows farther away.";
  finding.sum = std::to_string(blades) + " × " + mm_text(Um{needle_size} * 10, 2) + " = " +
                mm_text(needed, 1) + " (limit assumed)";
  return finding;
}

}  // namespace pouncemark::checks
