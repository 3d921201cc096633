#include "engine/base/number_text.h"
#include "engine/checks/hanging_rules.h"
#include "engine/frame/wave.h"

namespace pouncemark::checks {

std::optional<Finding> held_at_both_ends(Um apart_um, Um growth_um, Um play_um) {
  if (apart_um <= 0 || growth_um <= play_um) return std::nullopt;
  const Um more = growth_um - play_um;
  Finding finding;
  finding.code = "held_at_both_ends";
  finding.severity = Severity::stop;
  finding.figure = mm_text(more, 1);
  finding.sentence = mm_text_beside(growth_um, play_um) + " of growth between two tight fixings " +
                     short_mm_text(apart_um, 1) + " apart: it cannot grow, it will buckle.";
  finding.brief = finding.figure + " cannot go anywhere";
  finding.change = "Keep one fixing tight and cut slots for the rest.";
  finding.sum = mm_text_beside(growth_um, play_um) + " − " + short_mm_text(play_um, 1) +
                " of play = " + finding.figure + " too long, one bulge of about " +
                mm_text(to_um(frame::bulge_height(from_um(apart_um), from_um(more))), 0) +
                " (half a wave between the fixings)";
  return finding;
}

}  // namespace pouncemark::checks
