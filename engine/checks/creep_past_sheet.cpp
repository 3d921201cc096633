#include "engine/base/number_text.h"
#include "engine/checks/bay_rules.h"

namespace pouncemark::checks {

std::optional<Finding> creep_past_sheet(Um creep_um, Um bare_um, bool is_assumed) {
  if (creep_um <= bare_um) return std::nullopt;
  const std::string bare = short_mm_text(bare_um, 1);
  Finding finding;
  finding.code = "creep_past_sheet";
  finding.severity = Severity::warn;
  finding.figure = mm_text_beside(creep_um - bare_um, 0);
  finding.sentence = "The cloth would creep " + finding.figure +
                     " past the sheet's edge: it moves " + mm_text_beside(creep_um, bare_um) +
                     " out and ends " + bare + " from the fly side.";
  finding.brief = mm_text_beside(creep_um, bare_um) + " out, " + bare + " bare";
  finding.change = "Let the cloth end farther from the fly side.";
  finding.sum = exact_mm_text(creep_um) + " − " + exact_mm_text(bare_um) +
                (is_assumed ? " assumed" : "") + " = " + finding.figure;
  return finding;
}

}  // namespace pouncemark::checks
