#include <cstdlib>

#include "engine/base/number_text.h"
#include "engine/checks/hanging_rules.h"

namespace pouncemark::checks {

std::optional<Finding> hanging_temperature(std::int64_t planned_mc, std::int64_t today_mc,
                                           std::int64_t off_mk, Um shift_um) {
  const std::int64_t off = today_mc - planned_mc;
  if (std::abs(off) <= off_mk) return std::nullopt;
  const std::string way = off < 0 ? "colder" : "warmer";
  const std::string end = shift_um < 0 ? "inward, toward" : "outward, away from";
  Finding finding;
  finding.code = "hanging_temperature";
  finding.severity = Severity::note;
  finding.figure = short_mm_text(std::abs(off), 1) + " °C";
  finding.sentence = finding.figure + " " + way + " than planned: the sheet has yet to " +
                     (off < 0 ? "grow." : "shrink.");
  finding.brief = finding.figure + " " + way;
  finding.change = "Set the farthest screw " + mm_text(std::abs(shift_um), 1) +
                   " from the middle of its slot, " + end +
                   " the tight fixing, and nearer ones in proportion.";
  finding.sum = short_mm_text(today_mc, 1) + " − " + short_mm_text(planned_mc, 1) + " = " +
                short_mm_text(off, 1) + " °C, limit " + short_mm_text(off_mk, 1);
  return finding;
}

}  // namespace pouncemark::checks
