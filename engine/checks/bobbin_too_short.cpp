#include "engine/base/number_text.h"
#include "engine/checks/sewing_rules.h"

namespace pouncemark::checks {

std::optional<Finding> bobbin_too_short(Um row_um, Um usable_um) {
  if (row_um <= usable_um) return std::nullopt;
  const std::string row = metres_text(row_um, 2);
  const std::string usable = metres_text(usable_um, 2);
  Finding finding;
  finding.code = "bobbin_too_short";
  finding.severity = Severity::warn;
  finding.figure = metres_text(row_um - usable_um, 2) + " m";
  finding.sentence = finding.figure + " short: the bobbin would end inside the row. It gives " +
                     usable + " m and the row takes " + row + ".";
  finding.brief = usable + " m, needs " + row;
  finding.change = "Take a larger bobbin or wind it fuller; a join is holes more in the row.";
  finding.sum = row + " − " + usable + " = " + metres_text(row_um - usable_um, 2) +
                " m, what is kept back not counted";
  return finding;
}

}  // namespace pouncemark::checks
