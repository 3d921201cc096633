#include "engine/base/number_text.h"
#include "engine/checks/sewing_rules.h"

namespace pouncemark::checks {
namespace {

Finding differs(const std::string& what, const std::string& now, const std::string& approved) {
  Finding finding;
  finding.code = "not_as_approved";
  finding.severity = Severity::warn;
  finding.figure = now;
  finding.sentence = "Not what was approved: " + what + " " + now + " instead of " + approved + ".";
  finding.brief = what + " " + now + ", approved " + approved;
  finding.change = "Set it as on the trial seam, or sew and sign another.";
  finding.sum = "the chosen trial seam was sewn with " + what + " " + approved;
  return finding;
}

Finding trial(const char* code, Severity severity, const char* sentence, const char* change) {
  Finding finding;
  finding.code = code;
  finding.severity = severity;
  finding.sentence = sentence;
  finding.change = change;
  return finding;
}

}  // namespace

std::optional<Finding> needle_not_as_approved(int needle_size, int approved) {
  if (needle_size == approved) return std::nullopt;
  return differs("needle", std::to_string(needle_size), std::to_string(approved));
}

std::optional<Finding> thread_not_as_approved(int tex, int approved) {
  if (tex == approved) return std::nullopt;
  return differs("thread tex", std::to_string(tex), std::to_string(approved));
}

std::optional<Finding> stitch_not_as_approved(Um stitch_um, Um approved_um) {
  if (stitch_um == approved_um) return std::nullopt;
  return differs("stitch", short_mm_text(stitch_um, 3), short_mm_text(approved_um, 3));
}

Finding trial_marred(bool whitens, bool cracks) {
  const char* sentence = whitens && cracks ? "The chosen trial seam whitens and cracks the sheet."
                         : cracks          ? "The chosen trial seam cracks the sheet."
                                           : "The chosen trial seam whitens the sheet.";
  return trial("trial_marred", Severity::warn, sentence,
               "Choose one that does not: another needle or a longer stitch.");
}

Finding trial_not_chosen() {
  return trial("trial_open", Severity::note, "Hold point H3 is open: no trial seam is chosen.",
               "Choose the one to sew by, and sign it.");
}

Finding trial_not_signed() {
  return trial("trial_open", Severity::note,
               "Hold point H3 is open: no one has signed the chosen trial seam.",
               "Write name and date beside it before the first row.");
}

}  // namespace pouncemark::checks
