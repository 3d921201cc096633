#include "engine/solve/findings.h"

#include <algorithm>

namespace pouncemark::solve {
namespace {

Limits limits_of(const job::Job& job) {
  Limits limits;
  limits.needle_size = job.needle_size;
  limits.wire_um = job.wire_um.value_or(material::kAssumedWireUm);
  limits.foot.half_foot_um = job.half_foot_um.value_or(material::kAssumedHalfFootUm);
  limits.foot.tolerance_um = job.foot_tolerance_um.value_or(material::kAssumedFootToleranceUm);
  limits.foot.assumed = !job.half_foot_um || !job.foot_tolerance_um;
  return limits;
}

}  // namespace

std::vector<Finding> find_findings(const job::Job& job, const Results& results,
                                   const Laying& laying) {
  Findings findings;
  Gathering gathering;
  for (const Unlaid& row : laying.unlaid) {
    gathering.add(checks::row_not_laid(row.problem), {row.piece, "row " + row.code});
  }
  for (const PassedOver& edge : laying.passed_over) {
    gathering.add(checks::edge_passed_over(), {edge.piece, "edge " + edge.code});
  }
  gathering.move_to(&findings, "rows", results, 0);
  const Limits limits = limits_of(job);
  for (std::size_t i = 0; i < results.pieces.size(); ++i) {
    const Piece& piece = results.pieces[i];
    const auto entry = static_cast<std::size_t>(piece.entry);
    if (piece.kind == PieceKind::section) {
      check_section(job.sections[entry], results, static_cast<int>(i), limits, &findings);
    } else {
      check_panel(job.panels[entry], results, static_cast<int>(i), limits, &findings);
    }
  }
  check_codes(job, results, &findings);
  const std::int64_t staples = results.totals.side_staples + results.totals.lap_staples;
  if (staples > 0) findings.push_back(checks::staple_holes(staples));
  findings.push_back(checks::always_said());
  std::stable_sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
    return static_cast<int>(a.severity) < static_cast<int>(b.severity);
  });
  return findings;
}

}  // namespace pouncemark::solve
