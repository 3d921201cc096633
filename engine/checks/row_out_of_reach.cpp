#include "engine/base/number_text.h"
#include "engine/checks/machine_rules.h"

namespace pouncemark::checks {

std::optional<Finding> row_out_of_reach(Um side_um, Um roll_um, const takeoff::Arm& arm) {
  if (takeoff::under_arm(side_um, roll_um, arm) != takeoff::UnderArm::does_not_fit) {
    return std::nullopt;
  }
  const Um throat = *arm.throat_um;
  const std::string side = mm_text_beside(side_um, throat);
  const std::string across = mm_text(roll_um, 1);
  Finding finding;
  finding.code = "row_out_of_reach";
  finding.severity = Severity::stop;
  finding.figure = mm_text_beside(side_um - throat, 0);
  finding.sentence = finding.figure + " too wide: " + side +
                     " would lie right of the needle and the arm takes " +
                     short_mm_text(throat, 1) + "; rolled it is " + across +
                     " across. This row cannot be reached.";
  finding.brief = side + ", the arm takes " + short_mm_text(throat, 1);
  finding.change = "Change the order of joining, or sew it on a machine with a longer arm.";
  finding.sum = side + " − " + short_mm_text(throat, 1) + " = " + finding.figure +
                " (arm as entered); roll " + across + " against " +
                (arm.under_arm_um ? short_mm_text(*arm.under_arm_um, 1) + " under the arm"
                                  : short_mm_text(throat, 1) + " of the arm");
  return finding;
}

}  // namespace pouncemark::checks
