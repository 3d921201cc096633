#include "engine/layout/edge_guides.h"

#include <algorithm>
#include <optional>

#include "engine/base/number_text.h"
#include "engine/geometry/tolerance.h"
#include "engine/layout/corner.h"

namespace pouncemark::layout {
namespace {

Problem off_the_piece(const std::string& edge, Um in_um) {
  return {ProblemCode::row_off_the_piece, edge, exact_mm_text(in_um) + " in", {}};
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
  const std::vector<bool> passed_over = edges_passed_over(outline, in_um);
  std::vector<GuideLine> guides;
  std::vector<std::size_t> crossed(takes_row.size(), count);  // the edge a row may stop short of
  for (const std::size_t at : takes_row) {
    const piece::Edge& edge = edges[at];
    if (passed_over[at] && edge.role != piece::EdgeRole::fly_side) {
      guides.emplace_back();
      guides.back().is_passed_over = true;
      continue;
    }
    Result<GuideLine> guide = guide_along(edge, in_um);
    if (!guide) return guide.problem();
    const std::size_t at_datum = neighbour_of(passed_over, at, edge.datum_at_end);
    const std::size_t at_far = neighbour_of(passed_over, at, !edge.datum_at_end);
    const auto touch = [at, count](std::size_t other) {
      return other == (at + 1) % count || at == (other + 1) % count;
    };
    const Corner near{edge, edges[at_datum], true, touch(at_datum)};
    const auto start = corner_station(*guide, near, in_um);
    const auto end = corner_station(*guide, {edge, edges[at_far], false, touch(at_far)}, in_um);
    if (!start || !end) return off_the_piece(edge.name, in_um);
    const bool is_on_it = holds(extent, point_at(guide->line, from_um(*start))) &&
                          holds(extent, point_at(guide->line, from_um(*end)));
    if (*start <= *end && !is_on_it) return off_the_piece(edge.name, in_um);
    guide.value().clear_start_um = *start;
    guide.value().clear_end_um = guide->length_um - *end;
    const bool meets_a_row = at != first_hinge && has_row(at_datum);
    const bool stops_short = meets_a_row && stop_short_um > 0 && !near.is_smooth();
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
