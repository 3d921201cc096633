#include "engine/layout/edge_guides.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "engine/base/number_text.h"
#include "engine/geometry/tolerance.h"

namespace pouncemark::layout {
namespace {

Problem off_the_piece(const std::string& edge, Um in_um) {
  return {ProblemCode::row_off_the_piece, edge, exact_mm_text(in_um) + " in", {}};
}

std::optional<Segment> inward(const piece::Edge& edge, Um in_um) {
  return parallel(edge.line, from_um(in_um));
}

/// One end of an edge and the edge it meets there.
struct Corner {
  const piece::Edge& edge;
  const piece::Edge& neighbour;
  bool at_datum;

  bool at_from() const { return at_datum != edge.datum_at_end; }
  Vec2 place() const { return at_from() ? edge.line.from : edge.line.to; }
  /// True when one edge runs into the other without a turn that could be seen.
  bool is_smooth() const {
    const Segment& first = at_from() ? neighbour.line : edge.line;
    const Segment& second = at_from() ? edge.line : neighbour.line;
    const Vec2 a = direction_at(first, length(first));
    const Vec2 b = direction_at(second, 0);
    return dot(a, b) > 0 && std::fabs(cross(a, b)) < tolerance::kSmoothJoint;
  }
};

/// Station on the edge's guide where it meets the line of its neighbour; where the edges run into
/// one another so do their guides, at their ends.
std::optional<Um> corner_station(const GuideLine& guide, const Corner& corner, Um in_um) {
  if (corner.is_smooth()) return corner.at_datum ? 0 : guide.length_um;
  const std::optional<Segment> other = inward(corner.neighbour, in_um);
  if (!other) return std::nullopt;
  const std::optional<Vec2> place = meeting(guide.line, *other, corner.place());
  if (!place) return std::nullopt;
  return to_um(station_of(guide.line, *place));
}

/// First station of `guide` from its corner on that is `clear_um` from the other row's line.
Um station_short_of(const GuideLine& guide, const GuideLine& other, Um clear_um) {
  const double first = from_um(other.clear_start_um);
  const double last = from_um(other.length_um - other.clear_end_um);
  const auto is_clear = [&](Um station) {
    const Vec2 place = point_at(guide.line, from_um(station));
    return distance_to(other.line, first, last, place) + tolerance::kSamePointMm >=
           from_um(clear_um);
  };
  Um near = guide.clear_start_um;
  Um far = guide.length_um - guide.clear_end_um;
  if (near >= far || !is_clear(far)) return std::max(near + clear_um, far + 1);
  while (far - near > 1) {
    const Um between = near + (far - near) / 2;
    (is_clear(between) ? far : near) = between;
  }
  return far;
}

bool holds(const piece::Extent& extent, Vec2 place) {
  const double hair = from_um(1);
  return place.x >= extent.low.x - hair && place.x <= extent.high.x + hair &&
         place.y >= extent.low.y - hair && place.y <= extent.high.y + hair;
}

}  // namespace

Result<GuideLine> guide_along(const piece::Edge& edge, Um in_um) {
  if (edge.role == piece::EdgeRole::fly_side) {
    return Problem{ProblemCode::row_on_fly_side, edge.name, {}, {}};
  }
  const std::optional<Segment> line = inward(edge, in_um);
  if (!line) return off_the_piece(edge.name, in_um);
  GuideLine guide;
  guide.line = edge.datum_at_end ? reversed(*line) : *line;
  guide.length_um = to_um(length(guide.line));
  return guide;
}

Result<std::vector<GuideLine>> guides_round(const piece::Outline& outline, Um in_um,
                                            const std::vector<std::size_t>& takes_row,
                                            Um stop_short_um) {
  const auto& edges = outline.edges;
  const std::size_t count = edges.size();
  const auto has_row = [&](std::size_t edge) {
    return std::find(takes_row.begin(), takes_row.end(), edge) != takes_row.end();
  };
  std::size_t first_hinge = 0;
  while (first_hinge < count && edges[first_hinge].role != piece::EdgeRole::hinge_side) {
    ++first_hinge;
  }
  const piece::Extent extent = piece::extent(outline);
  std::vector<GuideLine> guides;
  std::vector<std::size_t> crossed(takes_row.size(), count);  // the edge a row may stop short of
  for (const std::size_t at : takes_row) {
    const piece::Edge& edge = edges[at];
    Result<GuideLine> guide = guide_along(edge, in_um);
    if (!guide) return guide.problem();
    const std::size_t before = at == 0 ? count - 1 : at - 1;
    const std::size_t after = at + 1 == count ? 0 : at + 1;
    const std::size_t at_datum = edge.datum_at_end ? after : before;
    const std::size_t at_far = edge.datum_at_end ? before : after;
    const auto start = corner_station(*guide, {edge, edges[at_datum], true}, in_um);
    const auto end = corner_station(*guide, {edge, edges[at_far], false}, in_um);
    if (!start || !end) return off_the_piece(edge.name, in_um);
    const bool is_on_it = holds(extent, point_at(guide->line, from_um(*start))) &&
                          holds(extent, point_at(guide->line, from_um(*end)));
    if (*start <= *end && !is_on_it) return off_the_piece(edge.name, in_um);
    guide.value().clear_start_um = *start;
    guide.value().clear_end_um = guide->length_um - *end;
    const Corner corner{edge, edges[at_datum], true};
    const bool meets_a_row = at != first_hinge && has_row(at_datum);
    const bool stops_short = meets_a_row && stop_short_um > 0 && !corner.is_smooth();
    if (stops_short) crossed[guides.size()] = at_datum;
    guide.value().first_is_shared = meets_a_row && !stops_short;
    guides.push_back(*guide);
  }
  for (std::size_t i = 0; i < guides.size(); ++i) {
    if (crossed[i] == count) continue;
    const auto other = std::find(takes_row.begin(), takes_row.end(), crossed[i]);
    const auto& owner = guides[static_cast<std::size_t>(other - takes_row.begin())];
    guides[i].clear_start_um = station_short_of(guides[i], owner, stop_short_um);
  }
  return guides;
}

}  // namespace pouncemark::layout
