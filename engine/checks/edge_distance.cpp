#include "engine/checks/needle_blades.h"
#include "engine/checks/rules.h"

namespace pouncemark::checks {

std::optional<Finding> edge_distance(Um from_edge_um, int needle_size, int blades) {
  const std::optional<ShortOfBlades> lack = short_of_blades(from_edge_um, needle_size, blades);
  if (!lack) return std::nullopt;
  Finding finding;
  finding.code = "row_near_edge";
  finding.severity = Severity::warn;
  finding.figure = lack->short_by;
  finding.sentence = lack->short_by + " short: the row stands " + lack->distance +
                     " from the edge and " + lack->need +
                     ". The strip outside the row can tear away.";
  finding.brief = lack->distance + ", needs " + lack->needed;
  finding.change = "Set the row farther in, widen the lap or take a finer needle.";
  finding.sum = lack->sum;
  return finding;
}

}  // namespace pouncemark::checks
