#include "engine/base/number_text.h"
#include "engine/checks/hanging_rules.h"

namespace pouncemark::checks {
namespace {

/// Over this part of the chord the small-bend formula is about a tenth too high.
constexpr std::int64_t kDeepIsOver = 5;

}  // namespace

std::optional<Finding> deep_curve(Um chord_um, Um rise_um, const frame::MiddlePush& push) {
  if (kDeepIsOver * rise_um <= chord_um) return std::nullopt;
  const std::string small = mm_text(push.small_bend_mn, 1) + " N";
  const std::string exact = mm_text(push.exact_mn, 1) + " N";
  Finding finding;
  finding.code = "deep_curve";
  finding.severity = Severity::warn;
  finding.figure = mm_text_beside(rise_um, chord_um / kDeepIsOver);
  finding.sentence = finding.figure + " of rise is deep for a chord of " +
                     short_mm_text(chord_um, 1) + ": the simple formula reads " + small +
                     ", large bending takes " + exact + ".";
  finding.brief = exact + ", not " + small;
  finding.change =
      "Go by the lower figure; from here on the simple one reads a tenth high or more.";
  finding.sum = finding.figure + " over " + short_mm_text(chord_um, 1) +
                " / 5 = " + short_mm_text(chord_um / kDeepIsOver, 1) +
                " (exact shape: pushed in the middle, chord fixed, ends free to slide)";
  return finding;
}

}  // namespace pouncemark::checks
