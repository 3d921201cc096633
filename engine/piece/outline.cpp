#include "engine/piece/outline.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/base/insist.h"
#include "engine/base/number_text.h"
#include "engine/geometry/tolerance.h"

namespace pouncemark::piece {
namespace {

std::size_t next_of(std::size_t at, std::size_t count) { return at + 1 == count ? 0 : at + 1; }

/// Roles of a rectangle's edges, anticlockwise from the bottom.
struct Roles {
  EdgeRole bottom;
  EdgeRole right;
  EdgeRole top;
  EdgeRole left;
};

Outline rectangle(Vec2 low, Vec2 high, const Roles& roles) {
  const Vec2 right_low{high.x, low.y};
  const Vec2 left_high{low.x, high.y};
  Outline outline;
  outline.edges.push_back(Edge{"bottom", roles.bottom, {low, right_low, 0}, false});
  outline.edges.push_back(Edge{"right", roles.right, {right_low, high, 0}, false});
  outline.edges.push_back(Edge{"top", roles.top, {high, left_high, 0}, true});
  outline.edges.push_back(Edge{"left", roles.left, {left_high, low, 0}, true});
  return outline;
}

std::string name_of(EdgeRole role) {
  switch (role) {
    case EdgeRole::hinge_side:
      return "hinge";
    case EdgeRole::fly_side:
      return "fly";
    case EdgeRole::top:
      return "top";
    case EdgeRole::bottom:
      return "bottom";
    case EdgeRole::side:
      return "side";
    case EdgeRole::end:
      return "end";
  }
  return {};
}

/// area between an arc and its chord, positive when the arc bulges outward
double cap_area(const Segment& line) {
  if (is_straight(line)) return 0;
  const double r = radius(line);
  const double turn = 4.0 * std::atan(2.0 * line.rise / length(line.to - line.from));
  return r * r / 2.0 * (turn - std::sin(turn));
}

/// The place lies on the line between its ends and does not touch them.
bool is_within(const Segment& line, Vec2 place) {
  const double to_ends = std::min(length(place - line.from), length(place - line.to));
  return to_ends >= tolerance::kTouchMm &&
         distance_to(line, 0, length(line), place) < tolerance::kSamePointMm;
}

/// The boxes round the two lines, arcs at their fullest, do not touch.
bool are_far_apart(const Segment& a, const Segment& b) {
  const Vec2 between = (b.from + b.to) * 0.5 - (a.from + a.to) * 0.5;
  // A place on either lies within half its chord and its rise of the chord's middle.
  const double reach = length(a.to - a.from) / 2.0 + std::fabs(a.rise) +
                       length(b.to - b.from) / 2.0 + std::fabs(b.rise);
  return dot(between, between) > reach * reach;
}

bool cross_one_another(const Segment& a, const Segment& b) {
  if (are_far_apart(a, b)) return false;
  const Meetings all = meetings(a, b);
  for (const Vec2 place : {all.a, all.b}) {
    if (all.count > 0 && is_within(a, place) && is_within(b, place)) return true;
  }
  return false;
}

bool crosses_itself(const Outline& outline) {
  const auto& edges = outline.edges;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    for (std::size_t j = i + 1; j < edges.size(); ++j) {
      if (cross_one_another(edges[i].line, edges[j].line)) return true;
    }
  }
  return false;
}

/// index of the first edge with this role; the edge count when there is none
std::size_t find_role(const Outline& outline, EdgeRole role) {
  std::size_t at = 0;
  while (at < outline.edges.size() && outline.edges[at].role != role) ++at;
  return at;
}

void set_datum_ends(Outline& outline, std::size_t hinge) {
  auto& edges = outline.edges;
  const std::size_t count = edges.size();
  edges[hinge].datum_at_end = edges[next_of(hinge, count)].role == EdgeRole::bottom;
  bool past_a_fly_side = false;
  for (std::size_t step = 1; step < count; ++step) {
    Edge& edge = edges[(hinge + step) % count];
    edge.datum_at_end = past_a_fly_side;
    past_a_fly_side = past_a_fly_side || edge.role == EdgeRole::fly_side;
  }
}

}  // namespace

Outline sleeve_outline(double left, double width, double length) {
  return rectangle({left, 0}, {left + width, length},
                   {EdgeRole::end, EdgeRole::side, EdgeRole::end, EdgeRole::side});
}

Outline panel_outline(double width, double length, bool hinge_at_left) {
  const EdgeRole left = hinge_at_left ? EdgeRole::hinge_side : EdgeRole::fly_side;
  const EdgeRole right = hinge_at_left ? EdgeRole::fly_side : EdgeRole::hinge_side;
  Outline outline =
      rectangle({0, 0}, {width, length}, {EdgeRole::bottom, right, EdgeRole::top, left});
  for (Edge& edge : outline.edges) edge.name = name_of(edge.role);
  outline.edges[0].datum_at_end = !hinge_at_left;
  outline.edges[2].datum_at_end = hinge_at_left;
  return outline;
}

Result<Outline> panel_outline(std::vector<Edge> edges) {
  Outline outline{std::move(edges)};
  const Result<bool> sound = validate(outline);
  if (!sound) return sound.problem();
  const std::size_t hinge = find_role(outline, EdgeRole::hinge_side);
  if (hinge == outline.edges.size())
    return Problem{ProblemCode::panel_without_hinge_side, {}, {}, {}};
  if (find_role(outline, EdgeRole::fly_side) == outline.edges.size()) {
    return Problem{ProblemCode::panel_without_fly_side, {}, {}, {}};
  }
  set_datum_ends(outline, hinge);
  for (Edge& edge : outline.edges) edge.name = name_of(edge.role);
  return outline;
}

Segment from_datum(const Edge& edge) { return edge.datum_at_end ? reversed(edge.line) : edge.line; }

Result<bool> validate(const Outline& outline) {
  const auto& edges = outline.edges;
  if (edges.size() < 3) {
    return Problem{ProblemCode::outline_too_few_edges,
                   {},
                   counted(static_cast<std::int64_t>(edges.size()), "edge", "edges"),
                   {}};
  }
  for (std::size_t i = 0; i < edges.size(); ++i) {
    const std::string where = "edge " + std::to_string(i + 1);
    const Segment& line = edges[i].line;
    const Segment& next = edges[next_of(i, edges.size())].line;
    const double chord = length(line.to - line.from);
    if (to_um(chord) < 1) return Problem{ProblemCode::outline_edge_too_short, where, {}, "0.001"};
    if (length(line.to - next.from) > tolerance::kSamePointMm) {
      return Problem{ProblemCode::outline_not_closed, where, {}, {}};
    }
    if (std::fabs(line.rise) > chord / 2.0 + tolerance::kSamePointMm) {
      return Problem{ProblemCode::outline_arc_too_deep, where,
                     "rise " + exact_mm_text(to_um(line.rise)),
                     "at most " + exact_mm_text(to_um(chord / 2.0))};
    }
  }
  if (area_mm2(outline) <= 0) return Problem{ProblemCode::outline_runs_clockwise, {}, {}, {}};
  if (crosses_itself(outline)) return Problem{ProblemCode::outline_crosses_itself, {}, {}, {}};
  return true;
}

Extent extent(const Outline& outline) {
  INSIST(!outline.edges.empty());
  Extent extent{outline.edges[0].line.from, outline.edges[0].line.from};
  const auto take = [&extent](Vec2 place) {
    extent.low = {std::min(extent.low.x, place.x), std::min(extent.low.y, place.y)};
    extent.high = {std::max(extent.high.x, place.x), std::max(extent.high.y, place.y)};
  };
  for (const Edge& edge : outline.edges) {
    take(edge.line.from);
    if (is_straight(edge.line)) continue;
    const double r = radius(edge.line);
    const Vec2 middle = centre(edge.line);
    for (const Vec2 way : {Vec2{r, 0}, Vec2{-r, 0}, Vec2{0, r}, Vec2{0, -r}}) {
      const double station = station_of(edge.line, middle + way);
      if (station >= 0 && station <= length(edge.line)) take(middle + way);
    }
  }
  return extent;
}

bool hinge_at_right(const Outline& outline) {
  for (const Edge& edge : outline.edges) {
    if (edge.role != EdgeRole::hinge_side) continue;
    const Extent all = extent(outline);
    return edge.line.from.x + edge.line.to.x > all.low.x + all.high.x;
  }
  return false;
}

Outline moved(Outline outline, Vec2 by) {
  for (Edge& edge : outline.edges) {
    edge.line.from = edge.line.from + by;
    edge.line.to = edge.line.to + by;
  }
  return outline;
}

double area_mm2(const Outline& outline) {
  double area = 0;
  for (const Edge& edge : outline.edges) {
    area += cross(edge.line.from, edge.line.to) / 2.0 + cap_area(edge.line);
  }
  return area;
}

}  // namespace pouncemark::piece
