#include "engine/plan/card_findings.h"

#include <algorithm>
#include <string_view>

namespace pouncemark::plan {
namespace {

using checks::Part;
using solve::RowPlace;

bool holds(const std::vector<int>& at, int index) {
  return std::find(at.begin(), at.end(), index) != at.end();
}

/// Codes that name the wrong thing and rows that are not there are nothing to the sewer of this
/// row.
bool is_about_sewing(const solve::Finding& finding) {
  const std::string_view code = finding.code;
  return !code.starts_with("code_") && code != "row_not_laid";
}

bool is_at(const solve::Finding& finding, const solve::Row& row, int index) {
  if (finding.piece >= 0 && finding.piece != row.piece) return false;
  switch (finding.part) {
    case Part::rows:
      return holds(finding.at, index);
    case Part::laps:
      return row.place == RowPlace::lap && holds(finding.at, row.sleeve);
    case Part::sleeves:
      return row.place == RowPlace::side && holds(finding.at, row.sleeve);
    case Part::whole:
      return is_about_sewing(finding);
  }
  return false;
}

}  // namespace

std::vector<const solve::Finding*> findings_at(const solve::Results& results, int row) {
  std::vector<const solve::Finding*> found;
  for (const solve::Finding& finding : results.findings) {
    if (finding.severity == solve::Severity::note) continue;
    if (is_at(finding, results.rows[static_cast<std::size_t>(row)], row)) found.push_back(&finding);
  }
  return found;
}

std::vector<const solve::Finding*> findings_of_the_job(const solve::Results& results) {
  std::vector<const solve::Finding*> found;
  for (const solve::Finding& finding : results.findings) {
    const bool is_note = finding.severity == solve::Severity::note;
    const bool is_whole = finding.part == Part::whole && finding.piece < 0;
    if (!is_note && is_whole && is_about_sewing(finding)) found.push_back(&finding);
  }
  return found;
}

std::string in_short(const solve::Finding& finding) {
  const std::string& sentence = finding.sentence;
  const std::string short_by = finding.figure + " short: ";
  const std::size_t start = sentence.starts_with(short_by) ? short_by.size() : 0;
  const std::size_t end = sentence.find(". ");
  return sentence.substr(start, end == std::string::npos ? end : end + 1 - start);
}

}  // namespace pouncemark::plan
