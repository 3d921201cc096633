#include "engine/layout/corner.h"

#include <algorithm>
#include <cmath>

#include "engine/geometry/tolerance.h"

namespace pouncemark::layout {
namespace {

/// The row of an edge would run backwards: its neighbours' lines meet before it, or it has no line.
bool runs_backwards(const piece::Outline& outline, const std::vector<bool>& passed_over,
                    std::size_t at, Um in_um) {
  const piece::Edge& edge = outline.edges[at];
  const std::optional<Segment> line = inward(edge, in_um);
  if (!line) return true;
  GuideLine guide;
  guide.line = edge.datum_at_end ? reversed(*line) : *line;
  guide.length_um = to_um(length(guide.line));
  const std::size_t count = outline.edges.size();
  std::optional<Um> ends[2];
  for (const bool after : {false, true}) {
    const std::size_t other = neighbour_of(passed_over, at, after);
    const bool touch = other == (after ? (at + 1) % count : (at + count - 1) % count);
    const bool at_datum = after == edge.datum_at_end;
    ends[at_datum ? 0 : 1] =
        corner_station(guide, {edge, outline.edges[other], at_datum, touch}, in_um);
  }
  return ends[0] && ends[1] && *ends[0] > *ends[1];
}

/// The rows of the edges on either side meet on the piece. Where the row between them would run
/// backwards they do so beyond it, so far enough from its edge.
bool neighbours_meet(const piece::Outline& outline, const piece::Extent& extent,
                     const std::vector<bool>& passed_over, std::size_t at, Um in_um) {
  const auto before = inward(outline.edges[neighbour_of(passed_over, at, false)], in_um);
  const auto after = inward(outline.edges[neighbour_of(passed_over, at, true)], in_um);
  if (!before || !after) return false;
  const Segment& line = outline.edges[at].line;
  const std::optional<Vec2> place = meeting(*before, *after, point_at(line, length(line) / 2.0));
  return place && holds(extent, *place);
}

}  // namespace

bool holds(const piece::Extent& extent, Vec2 place) {
  const double hair = from_um(1);
  return place.x >= extent.low.x - hair && place.x <= extent.high.x + hair &&
         place.y >= extent.low.y - hair && place.y <= extent.high.y + hair;
}

std::optional<Segment> inward(const piece::Edge& edge, Um in_um) {
  return parallel(edge.line, from_um(in_um));
}

bool Corner::is_smooth() const {
  if (!touch) return false;
  const Segment& first = at_from() ? neighbour.line : edge.line;
  const Segment& second = at_from() ? edge.line : neighbour.line;
  const Vec2 a = direction_at(first, length(first));
  const Vec2 b = direction_at(second, 0);
  return dot(a, b) > 0 && std::fabs(cross(a, b)) < tolerance::kSmoothJoint;
}

std::optional<Um> corner_station(const GuideLine& guide, const Corner& corner, Um in_um) {
  if (corner.is_smooth()) return corner.at_datum ? 0 : guide.length_um;
  const std::optional<Segment> other = inward(corner.neighbour, in_um);
  if (!other) return std::nullopt;
  const std::optional<Vec2> place = meeting(guide.line, *other, corner.place());
  if (!place) return std::nullopt;
  return to_um(station_of(guide.line, *place));
}

std::size_t neighbour_of(const std::vector<bool>& passed_over, std::size_t at, bool after) {
  const std::size_t count = passed_over.size();
  std::size_t other = at;
  do {
    other = (other + (after ? 1 : count - 1)) % count;
  } while (passed_over[other] && other != at);
  return other;
}

std::vector<bool> edges_passed_over(const piece::Outline& outline, Um in_um) {
  const std::size_t count = outline.edges.size();
  std::vector<bool> passed_over(count, false);
  std::vector<bool> has_no_room(count, false);
  const piece::Extent extent = piece::extent(outline);
  const auto look_at = [&](std::size_t at) {
    has_no_room[at] = runs_backwards(outline, passed_over, at, in_um) &&
                      neighbours_meet(outline, extent, passed_over, at, in_um);
  };
  for (std::size_t i = 0; i < count; ++i) look_at(i);
  // One edge at a time, the shortest first: what it leaves behind decides about its neighbours.
  for (std::size_t left = count; left > 3; --left) {
    std::size_t shortest = count;
    for (std::size_t i = 0; i < count; ++i) {
      if (passed_over[i] || !has_no_room[i]) continue;
      const bool is_shorter =
          shortest == count || length(outline.edges[i].line) < length(outline.edges[shortest].line);
      if (is_shorter) shortest = i;
    }
    if (shortest == count) break;
    passed_over[shortest] = true;
    for (const bool after : {false, true}) look_at(neighbour_of(passed_over, shortest, after));
  }
  return passed_over;
}

}  // namespace pouncemark::layout
