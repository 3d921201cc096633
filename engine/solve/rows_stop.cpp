#include "engine/solve/rows_stop.h"

namespace pouncemark::solve {
namespace {

/// Never up: of a place before the first as of one after it.
Um divide_down(Um value, Um by) { return value / by - (value % by < 0 ? 1 : 0); }

}  // namespace

Um StopEdge::station_of(Um stop_um) const {
  return divide_down((stop_um - before_um) * line_um, edge_um);
}

Um StopEdge::from_hinge_of(Um station_um) const {
  return before_um + divide_down(station_um * edge_um, line_um);
}

StopEdge stop_edge(const piece::Outline& outline, std::size_t edge, const Segment& line) {
  const auto& edges = outline.edges;
  StopEdge found;
  found.edge_um = to_um(length(edges[edge].line));
  found.line_um = to_um(length(line));
  const std::size_t step = edges[edge].datum_at_end ? 1 : edges.size() - 1;
  for (std::size_t at = (edge + step) % edges.size();
       at != edge && edges[at].role != piece::EdgeRole::hinge_side;
       at = (at + step) % edges.size()) {
    found.before_um += to_um(length(edges[at].line));
  }
  return found;
}

bool can_stop(const Piece& piece, const Row& row) {
  if (row.edge < 0) return false;
  const piece::EdgeRole role = piece.outline.edges[static_cast<std::size_t>(row.edge)].role;
  return role == piece::EdgeRole::top || role == piece::EdgeRole::bottom;
}

Um ends_from_hinge_um(const Piece& piece, const Row& row) {
  return stop_edge(piece.outline, static_cast<std::size_t>(row.edge), row.guide)
      .from_hinge_of(row.run.last_um());
}

}  // namespace pouncemark::solve
