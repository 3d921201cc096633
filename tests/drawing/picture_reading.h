#pragma once

#include <algorithm>
#include <cstdint>
#include <limits>
#include <string>
#include <variant>
#include <vector>

#include "engine/drawing/drawing.h"

/// Looks at a picture from outside: its strokes, fills and words, and how far they reach.
namespace pouncemark::tests {

template <typename Kind>
std::vector<Kind> all_of(const drawing::Drawing& picture) {
  std::vector<Kind> out;
  for (const drawing::Item& item : picture.items) {
    if (const Kind* found = std::get_if<Kind>(&item)) out.push_back(*found);
  }
  return out;
}

/// Whether some run of words on the picture holds these.
inline bool says(const drawing::Drawing& picture, const std::string& words) {
  for (const drawing::Text& text : all_of<drawing::Text>(picture)) {
    if (text.words.find(words) != std::string::npos) return true;
  }
  return false;
}

/// The box of the steps' ends; control points are left out.
inline drawing::Box reach_of(const std::vector<drawing::PathStep>& steps) {
  constexpr std::int64_t kFar = std::numeric_limits<std::int64_t>::max();
  drawing::Box box{{kFar, kFar}, {-kFar, -kFar}};
  for (const drawing::PathStep& step : steps) {
    box.low = {std::min(box.low.x, step.to.x), std::min(box.low.y, step.to.y)};
    box.high = {std::max(box.high.x, step.to.x), std::max(box.high.y, step.to.y)};
  }
  return box;
}

/// The box of all filled areas together.
inline drawing::Box fills_reach(const drawing::Drawing& picture) {
  std::vector<drawing::PathStep> steps;
  for (const drawing::Fill& fill : all_of<drawing::Fill>(picture)) {
    steps.insert(steps.end(), fill.steps.begin(), fill.steps.end());
  }
  return reach_of(steps);
}

inline bool operator==(const drawing::Box& a, const drawing::Box& b) {
  return a.low == b.low && a.high == b.high;
}

/// Whether every place of the steps, control points too, has its mirror place among the steps.
inline bool is_mirrored(const std::vector<drawing::PathStep>& steps, drawing::Spot centre,
                        bool across) {
  std::vector<drawing::Spot> spots;
  for (const drawing::PathStep& step : steps) {
    spots.push_back(step.to);
    if (step.step == drawing::Step::curve) spots.insert(spots.end(), {step.a, step.b});
  }
  return std::all_of(spots.begin(), spots.end(), [&](drawing::Spot spot) {
    const drawing::Spot mirror = across ? drawing::Spot{2 * centre.x - spot.x, spot.y}
                                        : drawing::Spot{spot.x, 2 * centre.y - spot.y};
    return std::find(spots.begin(), spots.end(), mirror) != spots.end();
  });
}

}  // namespace pouncemark::tests
