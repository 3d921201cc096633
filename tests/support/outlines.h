#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>
#include <vector>

#include "engine/geometry/units.h"
#include "engine/piece/outline.h"
#include "tests/support/random.h"

/// Outlines to try rows on.
namespace pouncemark::tests {

/// One corner of an outline and the edge that begins there.
struct Corner {
  piece::EdgeRole role = piece::EdgeRole::top;
  Vec2 from;
  double rise = 0;
};

/// The edges of a closed walk through these corners.
inline std::vector<piece::Edge> edges_through(const std::vector<Corner>& corners) {
  std::vector<piece::Edge> edges;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Corner& here = corners[i];
    const Corner& next = corners[i + 1 == corners.size() ? 0 : i + 1];
    edges.push_back({"", here.role, {here.from, next.from, here.rise}, false});
  }
  return edges;
}

inline piece::Outline outline_through(const std::vector<Corner>& corners) {
  return {edges_through(corners)};
}

/// Five edges, 900 x 1400: hinge side at the left, the right upper corner cut off.
inline std::vector<Corner> five_edged() {
  using piece::EdgeRole;
  return {{EdgeRole::hinge_side, {0, 1400}},
          {EdgeRole::bottom, {0, 0}},
          {EdgeRole::fly_side, {900, 0}},
          {EdgeRole::top, {900, 1000}},
          {EdgeRole::top, {600, 1400}}};
}

/// Four edges, 800 x 1200, the top an arc that rises 120 over its chord (negative: sinks).
inline std::vector<Corner> arched(double rise) {
  using piece::EdgeRole;
  return {{EdgeRole::hinge_side, {0, 1200}},
          {EdgeRole::bottom, {0, 0}},
          {EdgeRole::fly_side, {800, 0}},
          {EdgeRole::top, {800, 1200}, rise}};
}

/// A convex panel of 3 to 9 edges, its corners on a circle of 300 to 1,500, none close together:
/// one hinge side, one fly side, bottom between them on one way round and top on the other.
inline std::vector<Corner> random_convex(Dice& dice) {
  using piece::EdgeRole;
  const std::int64_t count = dice.between(3, 9);
  const auto size = static_cast<double>(dice.between(300, 1'500));
  const std::int64_t fly = dice.between(1, count - 1);
  std::vector<Corner> corners;
  for (std::int64_t i = 0; i < count; ++i) {
    const auto away = static_cast<double>(dice.between(200, 800)) / 1000.0;
    const double turn = (static_cast<double>(i) + away) / static_cast<double>(count) * 6.283185307;
    const EdgeRole role = i == 0     ? EdgeRole::hinge_side
                          : i == fly ? EdgeRole::fly_side
                          : i < fly  ? EdgeRole::bottom
                                     : EdgeRole::top;
    const Um x = to_um(size * std::cos(turn));
    const Um y = to_um(size * std::sin(turn));
    corners.push_back({role, {from_um(x), from_um(y)}, 0});
  }
  return corners;
}

/// Distance of a place from a line between its ends, an arc's as well.
inline double distance_from(const Segment& line, Vec2 place) {
  const double ends = std::min(length(place - line.from), length(place - line.to));
  const double station = station_of(line, place);
  if (station < 0 || station > length(line)) return ends;
  return std::min(ends, length(place - point_at(line, station)));
}

}  // namespace pouncemark::tests
