#include "engine/solve/findings.h"

#include <algorithm>
#include <tuple>

namespace pouncemark::solve {
namespace {

Limits limits_of(const job::Job& job) {
  Limits limits;
  limits.needle_size = job.needle_size;
  limits.wire_um = job.wire_um.value_or(material::kAssumedWireUm);
  limits.foot.half_foot_um = job.half_foot_um.value_or(material::kAssumedHalfFootUm);
  limits.foot.tolerance_um = job.foot_tolerance_um.value_or(material::kAssumedFootToleranceUm);
  limits.trials = &job.trials;
  limits.foot.assumed = !job.half_foot_um || !job.foot_tolerance_um;
  return limits;
}

}  // namespace

std::vector<Finding> findings_of_laying(const Laying& laying, const Results& alone) {
  Findings findings;
  Gathering gathering;
  for (const Unlaid& row : laying.unlaid) {
    gathering.add(checks::row_not_laid(row.problem), {row.piece, "row " + row.code});
  }
  for (const PassedOver& edge : laying.passed_over) {
    gathering.add(checks::edge_passed_over(), {edge.piece, "edge " + edge.code});
  }
  gathering.move_to(&findings, "rows", alone, 0);
  return findings;
}

std::vector<Finding> findings_of(const job::Job& job, const job::Section& section,
                                 const Results& alone) {
  Findings findings;
  check_section(section, alone, 0, limits_of(job), &findings);
  check_sewing(job, section, alone, &findings);
  check_reach(job.materials, rolled_of(job.materials, section), alone, &findings);
  return findings;
}

std::vector<Finding> findings_of(const job::Job& job, const job::Panel& panel,
                                 const Results& alone) {
  Findings findings;
  check_panel(panel, alone, 0, limits_of(job), &findings);
  check_sewing(job, panel, alone, &findings);
  check_reach(job.materials, rolled_of(job.materials, panel), alone, &findings);
  return findings;
}

bool measures_alike(const job::Job& a, const job::Job& b) {
  const auto asked = [](const job::Job& job) {
    return std::tuple(job.spacing_is_clear_gap, job.crown_um, job.needle_size, job.wire_um,
                      job.half_foot_um, job.foot_tolerance_um, job.thread_tex, job.tails_um);
  };
  return asked(a) == asked(b) && a.materials == b.materials && a.trials == b.trials;
}

std::vector<Finding> all_findings(const job::Job& job, const Results& results,
                                  const SolvedPieces& pieces) {
  Findings findings;
  for (const auto member : {&SolvedPiece::of_laying, &SolvedPiece::of_checks}) {
    for (std::size_t i = 0; i < pieces.size(); ++i) {
      for (const Finding& finding : (*pieces[i]).*member) {
        findings.push_back(finding);
        findings.back().piece = static_cast<int>(i);
        if (finding.part != checks::Part::rows) continue;
        for (int& row : findings.back().at) row += results.pieces[i].first_row;
      }
    }
  }
  check_materials(job, results, &findings);
  check_bay_curves(job, results, &findings);
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
