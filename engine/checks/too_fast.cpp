#include "engine/base/number_text.h"
#include "engine/checks/sewing_rules.h"

namespace pouncemark::checks {
namespace {

constexpr std::int64_t kMostStitches = 400'000;

}  // namespace

std::optional<Finding> too_fast(std::int64_t stitches_a_minute, std::string_view sheet,
                                std::int64_t softens) {
  if (stitches_a_minute <= kMostStitches) return std::nullopt;
  Finding finding;
  finding.code = "too_fast";
  finding.severity = Severity::warn;
  finding.figure = exact_mm_text(stitches_a_minute);
  finding.sentence = finding.figure + " stitches a minute: a hot needle melts the sheet; " +
                     std::string(sheet) + " softens near " + exact_mm_text(softens) + " °C.";
  finding.brief = finding.figure + ", at most 400";
  finding.change = "Slow down to 400 or fewer.";
  finding.sum = "200 to 400 stitches a minute in plastic sheet (common practice)";
  return finding;
}

}  // namespace pouncemark::checks
