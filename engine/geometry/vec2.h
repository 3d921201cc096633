#pragma once

#include <cmath>

namespace pouncemark {

/// A place or a displacement in millimetres, x to the right, y up.
struct Vec2 {
  double x = 0;
  double y = 0;
};

inline Vec2 operator+(Vec2 a, Vec2 b) { return {a.x + b.x, a.y + b.y}; }
inline Vec2 operator-(Vec2 a, Vec2 b) { return {a.x - b.x, a.y - b.y}; }
inline Vec2 operator*(Vec2 a, double factor) { return {a.x * factor, a.y * factor}; }

/// Sum of products; zero when the two stand square to one another.
inline double dot(Vec2 a, Vec2 b) { return a.x * b.x + a.y * b.y; }

/// Positive when `b` points to the left of `a`.
inline double cross(Vec2 a, Vec2 b) { return a.x * b.y - a.y * b.x; }

/// Length in millimetres.
inline double length(Vec2 a) { return std::sqrt(a.x * a.x + a.y * a.y); }

/// A quarter turn to the left.
inline Vec2 left_of(Vec2 a) { return {-a.y, a.x}; }

/// The same direction with length 1; {0, 0} stays {0, 0}.
inline Vec2 unit(Vec2 a) {
  const double size = length(a);
  return size > 0 ? a * (1.0 / size) : Vec2{};
}

}  // namespace pouncemark
