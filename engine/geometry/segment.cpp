#include "engine/geometry/segment.h"

#include <cmath>

#include "engine/base/insist.h"
#include "engine/geometry/tolerance.h"

namespace pouncemark {
namespace {

/// the places where a line through `p` with direction `d` (length 1) meets a circle
Meetings line_and_circle(Vec2 p, Vec2 d, Vec2 middle, double r) {
  const double along = dot(middle - p, d);
  const Vec2 foot = p + d * along;
  const double away = cross(d, middle - p);
  if (std::fabs(away) > r + tolerance::kSamePointMm) return {};
  const double half = std::sqrt(std::fmax(r * r - away * away, 0.0));
  return {2, foot + d * half, foot - d * half};
}

Meetings circle_and_circle(Vec2 m1, double r1, Vec2 m2, double r2) {
  const Vec2 between = m2 - m1;
  const double apart = length(between);
  if (apart < tolerance::kSamePointMm) return {};
  const double along = (apart * apart + r1 * r1 - r2 * r2) / (2 * apart);
  const double rest = r1 * r1 - along * along;
  if (rest < 0) return {};
  const Vec2 d = between * (1.0 / apart);
  const Vec2 foot = m1 + d * along;
  const Vec2 side = left_of(d) * std::sqrt(rest);
  return {2, foot + side, foot - side};
}

Meetings line_and_line(const Segment& a, const Segment& b) {
  const Vec2 da = unit(a.to - a.from);
  const Vec2 db = unit(b.to - b.from);
  const double turn = cross(da, db);
  if (std::fabs(turn) < tolerance::kParallel) return {};
  const Vec2 place = a.from + da * (cross(b.from - a.from, db) / turn);
  return {1, place, place};
}

/// turn from the first end of the arc to its last, signed: positive is anticlockwise
double whole_turn(const Segment& arc) {
  const double chord = length(arc.to - arc.from);
  return 4.0 * std::atan(2.0 * arc.rise / chord);
}

Vec2 turned(Vec2 v, double angle) {
  const double c = std::cos(angle);
  const double s = std::sin(angle);
  return {c * v.x - s * v.y, s * v.x + c * v.y};
}

}  // namespace

bool is_straight(const Segment& segment) { return std::fabs(segment.rise) < tolerance::kCurveMm; }

double radius(const Segment& arc) {
  INSIST(!is_straight(arc));
  const double chord = length(arc.to - arc.from);
  const double rise = std::fabs(arc.rise);
  return chord * chord / (8.0 * rise) + rise / 2.0;
}

Vec2 centre(const Segment& arc) {
  const Vec2 middle = (arc.from + arc.to) * 0.5;
  const Vec2 left = left_of(unit(arc.to - arc.from));
  const double side = arc.rise > 0 ? 1.0 : -1.0;
  return middle + left * (side * (radius(arc) - std::fabs(arc.rise)));
}

double length(const Segment& segment) {
  if (is_straight(segment)) return length(segment.to - segment.from);
  return radius(segment) * std::fabs(whole_turn(segment));
}

Vec2 point_at(const Segment& segment, double station) {
  if (is_straight(segment)) {
    return segment.from + unit(segment.to - segment.from) * station;
  }
  const Vec2 middle = centre(segment);
  const double way = segment.rise > 0 ? 1.0 : -1.0;
  return middle + turned(segment.from - middle, way * station / radius(segment));
}

Vec2 direction_at(const Segment& segment, double station) {
  if (is_straight(segment)) return unit(segment.to - segment.from);
  const Vec2 spoke = unit(point_at(segment, station) - centre(segment));
  return segment.rise > 0 ? left_of(spoke) : left_of(spoke) * -1.0;
}

double station_of(const Segment& segment, Vec2 place) {
  if (is_straight(segment)) {
    return dot(place - segment.from, unit(segment.to - segment.from));
  }
  // Measured from the crown, so that both ends of a half circle are found where they are.
  const Vec2 middle = centre(segment);
  const Vec2 right = left_of(unit(segment.to - segment.from)) * -1.0;
  const Vec2 crown = right * segment.rise;
  const Vec2 b = place - middle;
  const double way = segment.rise > 0 ? 1.0 : -1.0;
  const double past_crown = radius(segment) * way * std::atan2(cross(crown, b), dot(crown, b));
  return length(segment) / 2.0 + past_crown;
}

Segment reversed(const Segment& segment) { return {segment.to, segment.from, -segment.rise}; }

std::optional<Segment> parallel(const Segment& segment, double distance) {
  if (is_straight(segment)) {
    const Vec2 shift = left_of(unit(segment.to - segment.from)) * distance;
    return Segment{segment.from + shift, segment.to + shift, 0};
  }
  const double r = radius(segment);
  const double changed = segment.rise > 0 ? r - distance : r + distance;
  if (changed <= tolerance::kSamePointMm) return std::nullopt;
  const Vec2 middle = centre(segment);
  const double factor = changed / r;
  return Segment{middle + (segment.from - middle) * factor, middle + (segment.to - middle) * factor,
                 segment.rise * factor};
}

Meetings meetings(const Segment& a, const Segment& b) {
  if (is_straight(a) && is_straight(b)) return line_and_line(a, b);
  if (is_straight(a)) {
    return line_and_circle(a.from, unit(a.to - a.from), centre(b), radius(b));
  }
  if (is_straight(b)) return meetings(b, a);
  return circle_and_circle(centre(a), radius(a), centre(b), radius(b));
}

std::optional<Vec2> meeting(const Segment& a, const Segment& b, Vec2 near) {
  const Meetings all = meetings(a, b);
  if (all.count == 0) return std::nullopt;
  return length(all.a - near) <= length(all.b - near) ? all.a : all.b;
}

double distance_to(const Segment& line, double first, double last, Vec2 place) {
  const Vec2 a = point_at(line, first);
  const Vec2 b = point_at(line, last);
  const double to_ends = std::fmin(length(place - a), length(place - b));
  if (is_straight(line)) {
    const Vec2 way = direction_at(line, 0);
    const bool is_beside = dot(place - a, way) > 0 && dot(b - place, way) > 0;
    return is_beside ? std::fabs(cross(way, place - a)) : to_ends;
  }
  const Vec2 middle = centre(line);
  const double turn = line.rise > 0 ? 1.0 : -1.0;
  const bool is_beside = turn * cross(a - middle, place - middle) >= 0 &&
                         turn * cross(place - middle, b - middle) >= 0;
  return is_beside ? std::fabs(length(place - middle) - radius(line)) : to_ends;
}

}  // namespace pouncemark
