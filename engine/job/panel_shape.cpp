#include "engine/job/panel_shape.h"

#include <vector>

namespace pouncemark::job {

piece::EdgeRole role_of(const std::string& word) {
  if (word == "hinge_side") return piece::EdgeRole::hinge_side;
  if (word == "fly_side") return piece::EdgeRole::fly_side;
  return word == "top" ? piece::EdgeRole::top : piece::EdgeRole::bottom;
}

Result<piece::Outline> outline_of(const Panel& panel) {
  if (panel.outline.empty()) {
    return piece::panel_outline(from_um(panel.backing_um[0]), from_um(panel.backing_um[1]),
                                panel.hinge_side == "left");
  }
  std::vector<piece::Edge> edges;
  const std::size_t count = panel.outline.size();
  for (std::size_t i = 0; i < count; ++i) {
    const OutlineEdge& here = panel.outline[i];
    const OutlineEdge& next = panel.outline[i + 1 == count ? 0 : i + 1];
    piece::Edge edge;
    edge.role = role_of(here.role);
    edge.line = {{from_um(here.from_um[0]), from_um(here.from_um[1])},
                 {from_um(next.from_um[0]), from_um(next.from_um[1])},
                 from_um(here.rise_um)};
    edges.push_back(edge);
  }
  Result<piece::Outline> outline = piece::panel_outline(std::move(edges));
  if (!outline) return outline;
  return piece::moved(*outline, piece::extent(*outline).low * -1.0);
}

}  // namespace pouncemark::job
