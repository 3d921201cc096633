#include <algorithm>

#include "engine/base/number_text.h"
#include "engine/checks/sewing_rules.h"

namespace pouncemark::checks {

Finding row_along_a_ply(Um left_um, Um right_um) {
  // Said alike of both long edges of a sleeve.
  const std::string less = short_mm_text(std::min(left_um, right_um), 3);
  const std::string more = short_mm_text(std::max(left_um, right_um), 3);
  Finding finding;
  finding.code = "row_along_a_ply";
  finding.severity = Severity::warn;
  finding.figure = less + " or " + more;
  finding.sentence = finding.figure +
                     ": the row runs just along the edge of a ply, and the needle may meet it or "
                     "miss it at every stitch.";
  finding.brief = less + " at one side, " + more + " at the other";
  finding.change = "Move the row or that edge by a needle blade or more.";
  finding.sum = "plies on one side of the row " + less + ", on the other " + more +
                "; the thicker is reckoned with";
  return finding;
}

}  // namespace pouncemark::checks
