#include "engine/base/number_text.h"
#include "engine/checks/bay_rules.h"

namespace pouncemark::checks {
namespace {

/// The radius measured, were all of its error on the wide side.
bool could_pass(Um radius_um, std::int64_t out_by, Um limit_um) {
  const double widest = static_cast<double>(radius_um) * (100'000.0 + static_cast<double>(out_by));
  return widest >= static_cast<double>(limit_um) * 100'000.0;
}

}  // namespace

std::optional<Finding> bay_too_tight(Um radius_um, std::int64_t out_by, const StayBent& sheet) {
  if (radius_um >= sheet.limit_um) return std::nullopt;
  const bool is_stop = out_by == 0 || !could_pass(radius_um, out_by, sheet.limit_um);
  const std::string limit = short_mm_text(sheet.limit_um, 1);
  Finding finding;
  finding.code = "bay_too_tight";
  finding.severity = is_stop ? Severity::stop : Severity::warn;
  finding.figure = mm_text_beside(sheet.limit_um - radius_um, 0);
  finding.sentence = finding.figure + " too tight: the bay turns in " +
                     mm_text_beside(radius_um, sheet.limit_um) +
                     " and this sheet may stay bent down to " + limit +
                     ". Held for years at this radius it may craze.";
  finding.change = "Take thinner sheet, or have it heat-formed by a specialist.";
  if (radius_um < sheet.sheet_um) {
    finding.sentence = finding.figure + " too tight: the bay turns in " +
                       mm_text_beside(radius_um, sheet.sheet_um) +
                       ", less than the sheet is thick.";
    finding.change = "Check chord and rise: they cannot both be right.";
  }
  if (out_by > 0) {
    finding.sentence += " The stations say so give or take " + mm_text(out_by, 1) + " %.";
    if (!is_stop) finding.change = "Measure this bay again, every 200, before anything is cut.";
  }
  finding.brief = mm_text_beside(radius_um, sheet.limit_um) + ", limit " + limit;
  finding.sum = exact_mm_text(sheet.sheet_um) + " × " + exact_mm_text(sheet.times) +
                (sheet.is_assumed ? " assumed" : "") + " = " + limit + "; " + limit + " − " +
                exact_mm_text(radius_um) + " = " + finding.figure;
  return finding;
}

}  // namespace pouncemark::checks
