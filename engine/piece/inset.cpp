#include "engine/piece/inset.h"

#include <cmath>
#include <cstddef>
#include <optional>

#include "engine/base/insist.h"
#include "engine/geometry/tolerance.h"

namespace pouncemark::piece {
namespace {

/// The line inside one edge that still takes part, and where it begins and ends.
struct Side {
  Segment line;
  Vec2 vertex;  ///< where its edge begins
  double first = 0;
  double last = 0;
};

/// Where one line ends and the next begins: the same place but at a joint without a turn.
struct Joint {
  Vec2 end;
  Vec2 begin;
};

Joint joint_of(const Side& side, const Side& next) {
  const Vec2 end = side.line.to;
  const Vec2 begin = next.line.from;
  const Vec2 a = direction_at(side.line, length(side.line));
  const Vec2 b = direction_at(next.line, 0);
  const bool is_smooth = dot(a, b) > 0 && std::fabs(cross(a, b)) < tolerance::kSmoothJoint;
  if (is_smooth) return {end, begin};
  const std::optional<Vec2> place = meeting(side.line, next.line, next.vertex);
  if (!place) return {end, begin};
  return {*place, *place};
}

void find_ends(std::vector<Side>* sides) {
  const std::size_t count = sides->size();
  for (std::size_t i = 0; i < count; ++i) {
    Side& side = (*sides)[i];
    Side& next = (*sides)[(i + 1) % count];
    const Joint joint = joint_of(side, next);
    side.last = station_of(side.line, joint.end);
    next.first = station_of(next.line, joint.begin);
  }
}

/// The side that runs backwards most; as many as there are where none does.
std::size_t most_backwards(const std::vector<Side>& sides) {
  std::size_t worst = sides.size();
  double most = -tolerance::kSamePointMm;
  for (std::size_t i = 0; i < sides.size(); ++i) {
    const double forward = sides[i].last - sides[i].first;
    if (forward >= most) continue;
    most = forward;
    worst = i;
  }
  return worst;
}

/// The part of a line between two stations.
Segment part_of(const Side& side) {
  Segment part{point_at(side.line, side.first), point_at(side.line, side.last), 0};
  if (is_straight(side.line)) return part;
  const double r = radius(side.line);
  const double rise = r * (1.0 - std::cos((side.last - side.first) / r / 2.0));
  part.rise = side.line.rise > 0 ? rise : -rise;
  return part;
}

bool bends(const std::vector<Side>& sides) {
  for (const Side& side : sides) {
    if (!is_straight(side.line)) return true;
  }
  return false;
}

}  // namespace

std::vector<Segment> inset(const Outline& outline, const std::vector<Um>& in_um) {
  INSIST(in_um.size() == outline.edges.size());
  std::vector<Side> sides;
  for (std::size_t i = 0; i < in_um.size(); ++i) {
    const Segment& edge = outline.edges[i].line;
    const std::optional<Segment> line = parallel(edge, from_um(in_um[i]));
    if (line) sides.push_back({*line, edge.from, 0, 0});
  }
  while (sides.size() >= 2) {
    if (sides.size() == 2 && !bends(sides)) return {};
    find_ends(&sides);
    const std::size_t worst = most_backwards(sides);
    if (worst == sides.size()) break;
    sides.erase(sides.begin() + static_cast<std::ptrdiff_t>(worst));
  }
  if (sides.size() < 2) return {};
  Outline inside;
  const auto add = [&inside](const Segment& line) {
    if (length(line.to - line.from) > tolerance::kSamePointMm) {
      inside.edges.push_back({{}, EdgeRole::side, line, false});
    }
  };
  for (std::size_t i = 0; i < sides.size(); ++i) {
    const Segment part = part_of(sides[i]);
    add(part);
    add({part.to, part_of(sides[(i + 1) % sides.size()]).from, 0});
  }
  if (inside.edges.size() < 2 || area_mm2(inside) <= 0) return {};
  std::vector<Segment> lines;
  for (const Edge& edge : inside.edges) lines.push_back(edge.line);
  return lines;
}

}  // namespace pouncemark::piece
