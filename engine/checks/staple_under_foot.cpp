#include <algorithm>

#include "engine/base/number_text.h"
#include "engine/checks/rules.h"

namespace pouncemark::checks {
namespace {

std::string strike_sum(const StrikeNeed& strike) {
  const Um blade = Um{strike.needle_size} * 10;
  const Um chance =
      std::min<Um>(divide_round(100 * (strike.wire_um + blade), strike.stitch_um), 100);
  return "a crown that lies across the row is struck: (wire " + short_mm_text(strike.wire_um, 2) +
         " + needle " + short_mm_text(blade, 2) + ") ÷ stitch " +
         short_mm_text(strike.stitch_um, 2) + " = " + count_text(chance) + " %";
}

}  // namespace

std::optional<Finding> staple_under_foot(Um apart_um, const FootNeed& foot,
                                         const StrikeNeed& strike, StapleState state, bool said) {
  const Um needed = foot.half_foot_um + foot.tolerance_um;
  if (state == StapleState::out_already || apart_um >= needed) return std::nullopt;
  Finding finding;
  finding.code = "staple_under_foot";
  finding.figure = mm_text_beside(needed - apart_um, 0);
  finding.sum = "half a foot " + short_mm_text(foot.half_foot_um, 1) + " + tolerance " +
                short_mm_text(foot.tolerance_um, 1) + " = " + short_mm_text(needed, 1) +
                (foot.assumed ? " (assumed: measure your foot)" : " (entered)") + "; " +
                strike_sum(strike);
  finding.brief = (apart_um == 0 ? std::string("0") : mm_text_beside(apart_um, needed)) +
                  " apart, needs " + short_mm_text(needed, 1);
  const std::string apart = apart_um == 0
                                ? "stand on the row"
                                : "stand " + mm_text_beside(apart_um, needed) + " from the row";
  if (state == StapleState::comes_out_as_the_foot_comes) {
    finding.severity = Severity::note;
    finding.sentence = "The staples " + apart +
                       " and come out as the foot comes. Count them out as they were counted in.";
    finding.change = "Write both counts on the card.";
    return finding;
  }
  finding.severity = Severity::stop;
  finding.sentence = finding.figure + " short: the staples " + apart + " and the foot needs " +
                     short_mm_text(needed, 1) + ". The needle or foot will meet them." +
                     (said ? "" : " The job does not say when they come out.");
  finding.change = "Say when the staples come out, or set the rows farther apart.";
  return finding;
}

}  // namespace pouncemark::checks
