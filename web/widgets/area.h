#pragma once

namespace pouncemark::web {

/// A place on the screen, CSS pixels from the upper left corner.
struct Spot {
  float x = 0;
  float y = 0;
};

/// A rectangle on the screen, CSS pixels.
struct Area {
  float left = 0;
  float top = 0;
  float right = 0;
  float bottom = 0;

  float width() const { return right - left; }
  float height() const { return bottom - top; }
  float mid_x() const { return (left + right) / 2; }
  float mid_y() const { return (top + bottom) / 2; }
  bool holds(Spot at) const { return at.x >= left && at.x < right && at.y >= top && at.y < bottom; }
  /// The same, `by` smaller on every side (larger when negative).
  Area inset(float by) const { return {left + by, top + by, right - by, bottom - by}; }
};

/// A rectangle by its upper left corner and its sides.
inline Area area_at(float left, float top, float width, float height) {
  return {left, top, left + width, top + height};
}

}  // namespace pouncemark::web
