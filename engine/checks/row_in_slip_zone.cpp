#include "engine/base/number_text.h"
#include "engine/checks/bay_rules.h"
#include "engine/material/assumed.h"

namespace pouncemark::checks {

std::optional<Finding> row_in_slip_zone(Um row_ends_um, const SlipZone& zone) {
  if (row_ends_um <= zone.stop_um || zone.ease <= material::kAssumedEaseLimit) return std::nullopt;
  const std::string limit = exact_mm_text(zone.limit_um) + " assumed";
  Finding finding;
  finding.code = "row_in_slip_zone";
  finding.severity = Severity::warn;
  finding.figure = mm_text(zone.stop_um, 1);
  finding.sentence = finding.figure +
                     " from the hinge side on, the row holds cloth that wants to move, up to " +
                     mm_text(zone.slip_um, 1) + " when the piece is bent.";
  finding.brief = "wants to move from " + finding.figure + " on";
  finding.sentence += " Woven cloth would have to give " + mm_text(zone.ease, 2) + " %.";
  finding.change = "Stop the row there, or sew it with the piece bent as it will hang.";
  finding.sum = "limit " + limit + ", met at " + finding.figure;
  if (zone.radius_um > 0) {
    finding.sum = limit + " × " + exact_mm_text(zone.radius_um) + " ÷ " +
                  exact_mm_text(zone.apart_um) + " = " + finding.figure;
  }
  return finding;
}

}  // namespace pouncemark::checks
