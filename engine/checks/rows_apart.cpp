#include "engine/checks/needle_blades.h"
#include "engine/checks/rules.h"

namespace pouncemark::checks {

std::optional<Finding> rows_apart(Um apart_um, int needle_size, int blades) {
  const std::optional<ShortOfBlades> lack = short_of_blades(apart_um, needle_size, blades);
  if (!lack) return std::nullopt;
  Finding finding;
  finding.code = "rows_too_near";
  finding.severity = Severity::warn;
  finding.figure = lack->short_by;
  finding.sentence = lack->short_by + " short: the two rows stand " + lack->distance +
                     " apart and " + lack->need + ". The strip between them is a tear line.";
  finding.brief = lack->distance + " apart, needs " + lack->needed;
  finding.change = "Set one of the rows farther away.";
  finding.sum = lack->sum;
  return finding;
}

}  // namespace pouncemark::checks
