#pragma once

#include <string>
#include <vector>

#include "engine/solve/solve.h"

/// Finds things in results.
namespace pouncemark::tests {

/// The row of this code and kind; an empty one without code when there is none.
inline solve::Row row_of(const solve::Results& results, const std::string& code,
                         solve::RowKind kind) {
  for (const solve::Row& row : results.rows) {
    if (row.code == code && row.kind == kind) return row;
  }
  return {};
}

/// The findings of this code.
inline std::vector<solve::Finding> findings_of(const solve::Results& results,
                                               const std::string& code) {
  std::vector<solve::Finding> found;
  for (const solve::Finding& finding : results.findings) {
    if (finding.code == code) found.push_back(finding);
  }
  return found;
}

inline int stops_in(const solve::Results& results) {
  int stops = 0;
  for (const solve::Finding& finding : results.findings) {
    stops += finding.severity == solve::Severity::stop ? 1 : 0;
  }
  return stops;
}

}  // namespace pouncemark::tests
