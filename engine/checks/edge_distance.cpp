#include "engine/base/number_text.h"
#include "engine/checks/rules.h"

namespace pouncemark::checks {

std::optional<Finding> edge_distance(Um from_edge_um, int needle_size, int blades) {
  const Um needed = Um{needle_size} * 10 * blades;
  if (from_edge_um >= needed) return std::nullopt;
  Finding finding;
  finding.code = "row_near_edge";
  finding.severity = Severity::warn;
  finding.figure = mm_text(needed - from_edge_um, 1);
  finding.sentence = finding.figure + " short: the row stands " + mm_text(from_edge_um, 1) +
                     " from the edge and " + std::to_string(blades) + " needle blades are " +
                     mm_text(needed, 1) + ". The strip outside the row can tear away.";
  finding.change = "Set the row farther in, widen the lap or take a finer needle.";
  finding.sum = std::to_string(blades) + " × " + mm_text(Um{needle_size} * 10, 2) + " = " +
                mm_text(needed, 1) + " (limit assumed)";
  return finding;
}

}  // namespace pouncemark::checks
