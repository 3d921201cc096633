#include <algorithm>
#include <map>

#include "engine/base/insist.h"
#include "engine/base/number_text.h"
#include "engine/job/panel_shape.h"
#include "engine/solve/rows.h"
#include "engine/solve/rows_stop.h"

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

/// What a stop makes of the row along one edge.
struct Stopped {
  bool is_cut = false;
  bool is_gone = false;      ///< it stops on an edge before this one
  bool is_too_soon = false;  ///< no room for a row before it
  Um station_um = 0;         ///< on the row's line, where it is cut
};

Stopped stopped(const job::Panel& panel, const piece::Outline& outline, std::size_t edge,
                const layout::GuideLine& guide) {
  Stopped row;
  if (!panel.rows_stop_um || outline.edges[edge].role == piece::EdgeRole::hinge_side) return row;
  const StopEdge along = stop_edge(outline, edge, guide.line);
  row.station_um = along.station_of(*panel.rows_stop_um);
  row.is_cut = row.station_um < guide.length_um - guide.clear_end_um;
  const bool has_no_room = row.station_um <= guide.clear_start_um;
  row.is_gone = has_no_room && along.before_um > 0;
  row.is_too_soon = has_no_room && !row.is_gone;
  return row;
}

Problem too_soon(Um stop_um, Um begins_um) {
  return {ProblemCode::row_stops_too_soon,
          {},
          "stops " + exact_mm_text(stop_um) + " from the hinge side, begins at " +
              exact_mm_text(begins_um),
          {}};
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
    const Stopped stop = stopped(panel, piece.outline, edges[i], guide);
    if (stop.is_gone) continue;
    if (stop.is_too_soon) {
      laying->unlaid.push_back({index, code, too_soon(*panel.rows_stop_um, guide.clear_start_um)});
      continue;
    }
    Asked asked{code,
                RowKind::point,
                RowPlace::panel,
                index,
                0,
                panel.panel_in_um,
                rule_of(guide, panel.spacing_um),
                0,
                static_cast<int>(edges[i]),
                stop.is_cut ? *panel.rows_stop_um : 0};
    if (stop.is_cut) asked.rule.kept_clear_end_um = guide.length_um - stop.station_um;
    lay(asked, guide, laying);
    asked.kind = RowKind::stitch;
    asked.rule.spacing_um =
        job::stitch_really_um(job.trials, job::RowsOf::panel_rows, panel.stitch_um);
    asked.asked_um = panel.stitch_um;
    lay(asked, guide, laying);
  }
}

}  // namespace pouncemark::solve
