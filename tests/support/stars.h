#pragma once

#include <cmath>
#include <cstdint>
#include <vector>

#include "engine/layout/stack_profile.h"
#include "tests/support/random.h"

/// Plies of any shape, and where a place lies to them.
namespace pouncemark::tests {

/// The edges of an upright rectangle, anticlockwise.
inline std::vector<Segment> box(double left, double low, double right, double high) {
  return {{{left, low}, {right, low}, 0},
          {{right, low}, {right, high}, 0},
          {{right, high}, {left, high}, 0},
          {{left, high}, {left, low}, 0}};
}

/// A ply with corners all round a middle, so that it never crosses itself: near ones and far ones,
/// sometimes with edges that bend a little.
inline layout::PlyShape any_star(Dice& dice, bool may_bend = true) {
  layout::PlyShape ply;
  ply.thickness_um = dice.between(1, 2'000);
  const std::int64_t corners = dice.between(4, 14);
  const auto middle_x = static_cast<double>(dice.between(-60, 60));
  const auto middle_y = static_cast<double>(dice.between(-60, 60));
  std::vector<Vec2> places;
  for (std::int64_t i = 0; i < corners; ++i) {
    const auto far = static_cast<double>(dice.between(15'000, 90'000)) / 1'000.0;
    const double turn = 6.283185307179586 * static_cast<double>(i) / static_cast<double>(corners);
    places.push_back({std::round(middle_x * 1'000 + far * 1'000 * std::cos(turn)) / 1'000,
                      std::round(middle_y * 1'000 + far * 1'000 * std::sin(turn)) / 1'000});
  }
  const bool bends = may_bend && dice.once_in(2);
  for (std::size_t i = 0; i < places.size(); ++i) {
    const Vec2 to = places[(i + 1) % places.size()];
    const double rise = bends ? static_cast<double>(dice.between(-200, 200)) / 1'000.0 : 0;
    ply.edges.push_back({places[i], to, rise});
  }
  return ply;
}

/// 1 within, 0 without, -1 nearer to an edge than a hundredth or than the edge bends. Adds up the
/// turns that the outline makes about the place: another way than the profile's.
inline int is_within(const layout::PlyShape& ply, Vec2 place) {
  double turns = 0;
  for (const Segment& edge : ply.edges) {
    const Vec2 from = edge.from - place;
    const Vec2 to = edge.to - place;
    const double near = 0.01 + std::fabs(edge.rise);
    const double along = dot(to - from, from * -1.0) / dot(to - from, to - from);
    const double part = std::fmin(std::fmax(along, 0.0), 1.0);
    if (length(from + (to - from) * part) < near) return -1;
    turns += std::atan2(cross(from, to), dot(from, to));
  }
  return std::fabs(turns) > 3 ? 1 : 0;
}

}  // namespace pouncemark::tests
