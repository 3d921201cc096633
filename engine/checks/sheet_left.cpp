#include <algorithm>

#include "engine/base/number_text.h"
#include "engine/checks/sewing_rules.h"

namespace pouncemark::checks {
namespace {

constexpr std::int64_t kWhole = 1000;

}  // namespace

std::string percent_text(std::int64_t permille) {
  const std::int64_t tenth = permille % 10;
  return count_text(permille / 10) + (tenth == 0 ? "" : "." + std::to_string(tenth)) + " %";
}

std::int64_t sheet_left_permille(Um stitch_um, int needle_size) {
  const Um left = stitch_um - Um{needle_size} * 10;
  return divide_round(std::max<Um>(left, 0) * kWhole, stitch_um);
}

std::optional<Finding> sheet_left(Um stitch_um, int needle_size) {
  const Um hole = Um{needle_size} * 10;
  if ((stitch_um - hole) * kWhole >= kLeastSheetPermille * stitch_um) return std::nullopt;
  const Um least = divide_up(divide_up(hole * kWhole, kWhole - kLeastSheetPermille), 100) * 100;
  const std::string stitch = short_mm_text(stitch_um, 3);
  const std::string blade = mm_text(hole, 2);
  Finding finding;
  finding.code = "sheet_left";
  finding.severity = Severity::warn;
  // Never shown as the limit itself.
  finding.figure =
      percent_text(std::min(sheet_left_permille(stitch_um, needle_size), kLeastSheetPermille - 1));
  finding.sentence = finding.figure + " of the sheet is left between holes " + blade +
                     " wide and " + stitch + " apart, and 65 is the least: a tear line.";
  finding.brief = finding.figure + " left, needs 65 %";
  finding.change =
      "Lengthen the stitch to " + short_mm_text(least, 1) + " or more, or take a finer needle.";
  finding.sum = "(" + stitch + " − " + blade + ") ÷ " + stitch + " = " + finding.figure +
                "; a hole is as wide as the blade (assumed), 65 % common practice";
  return finding;
}

}  // namespace pouncemark::checks
