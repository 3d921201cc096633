#pragma once

#include <vector>

namespace pouncemark::web {

/// A thing the hand can take hold of, as it is drawn; a line has no width. CSS pixels.
struct Grip {
  float left = 0;
  float top = 0;
  float right = 0;
  float bottom = 0;
};

/// What a finger needs to take hold, CSS pixels: 9 mm, and more where everything is for fingers.
inline constexpr float kReachPx = 34;
inline constexpr float kCompactReachPx = 48;

/// Index of the thing under a place on the screen, each at least `reach` wide and high to the hand:
/// the nearest where several are within reach, of equals the last, which lies on top; -1: none.
int pick(const std::vector<Grip>& grips, float x, float y, float reach);

}  // namespace pouncemark::web
