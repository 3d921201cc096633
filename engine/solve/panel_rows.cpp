#include <algorithm>
#include <map>

#include "engine/base/insist.h"
#include "engine/job/panel_shape.h"
#include "engine/solve/rows.h"

namespace pouncemark::solve {
namespace {

/// Edges that take a row: those asked for, the hinge side first; a fly side is left out here and
/// becomes a finding.
std::vector<std::size_t> edges_with_rows(const job::Panel& panel, const piece::Outline& outline) {
  const auto asked = [&panel](piece::EdgeRole role) {
    if (!panel.rows_on) return true;
    return std::any_of(panel.rows_on->begin(), panel.rows_on->end(),
                       [role](const std::string& word) { return job::role_of(word) == role; });
  };
  std::vector<std::size_t> edges;
  for (const piece::EdgeRole role :
       {piece::EdgeRole::hinge_side, piece::EdgeRole::top, piece::EdgeRole::bottom}) {
    for (std::size_t i = 0; i < outline.edges.size(); ++i) {
      if (outline.edges[i].role == role && asked(role)) edges.push_back(i);
    }
  }
  return edges;
}

layout::RunRule rule_of(const layout::GuideLine& guide, Um spacing) {
  layout::RunRule rule;
  rule.edge_length_um = guide.length_um;
  rule.kept_clear_start_um = guide.clear_start_um;
  rule.kept_clear_end_um = guide.clear_end_um;
  rule.spacing_um = spacing;
  return rule;
}

Um stop_short_um(const job::Panel& panel) {
  if (panel.corners == job::Corners::share_hole) return 0;
  return panel.corner_clear_um.value_or(material::kAssumedCornerClearUm);
}

}  // namespace

Piece panel_piece(const job::Panel& panel, int entry) {
  const Result<piece::Outline> outline = job::outline_of(panel);
  INSIST(outline.is_ok());
  const piece::Extent extent = piece::extent(*outline);
  Piece piece;
  piece.code = panel.code;
  piece.kind = PieceKind::panel;
  piece.entry = entry;
  piece.width_um = to_um(extent.high.x - extent.low.x);
  piece.length_um = to_um(extent.high.y - extent.low.y);
  piece.outline = *outline;
  return piece;
}

void lay_panel(const job::Job& job, const job::Panel& panel, const Piece& piece, int index,
               Laying* laying) {
  const std::vector<std::size_t> edges = edges_with_rows(panel, piece.outline);
  const auto guides =
      layout::guides_round(piece.outline, panel.panel_in_um, edges, stop_short_um(panel));
  if (!guides) {
    laying->unlaid.push_back({index, panel.code + " " + guides.problem().where, guides.problem()});
    return;
  }
  std::map<std::string, int> used;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    const layout::GuideLine& guide = (*guides)[i];
    const std::string& name = piece.outline.edges[edges[i]].name;
    const int times = ++used[name];
    const std::string code =
        panel.code + " " + name + (times > 1 ? " " + std::to_string(times) : "");
    if (guide.is_passed_over) {
      laying->passed_over.push_back({index, code});
      continue;
    }
    Asked asked{code,
                RowKind::point,
                RowPlace::panel,
                index,
                0,
                panel.panel_in_um,
                rule_of(guide, panel.spacing_um),
                0};
    lay(asked, guide, laying);
    asked.kind = RowKind::stitch;
    asked.rule.spacing_um =
        job::stitch_really_um(job.trials, job::RowsOf::panel_rows, panel.stitch_um);
    asked.asked_um = panel.stitch_um;
    lay(asked, guide, laying);
  }
}

}  // namespace pouncemark::solve
