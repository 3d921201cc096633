#include "web/widgets/set_words.h"

#include <algorithm>
#include <cstddef>

namespace pouncemark::web {
namespace {

/// Edges put on whole pixels may differ by as much without anything being hidden.
constexpr float kRounding = 1;

bool meet(const Area& a, const Area& b) {
  return a.left < b.right - kRounding && b.left < a.right - kRounding &&
         a.top < b.bottom - kRounding && b.top < a.bottom - kRounding;
}

bool lies_within(const Area& inner, const Area& outer) {
  return inner.left >= outer.left - kRounding && inner.right <= outer.right + kRounding &&
         inner.top >= outer.top - kRounding && inner.bottom <= outer.bottom + kRounding;
}

/// Inside a convex shape whose corners run either way; on its edge counts as outside.
bool holds(std::span<const Spot> corners, Spot at) {
  int left = 0;
  int right = 0;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Spot a = corners[i];
    const Spot b = corners[(i + 1) % corners.size()];
    const float side = (b.x - a.x) * (at.y - a.y) - (b.y - a.y) * (at.x - a.x);
    (side > 0 ? left : right) += 1;
  }
  return left == 0 || right == 0;
}

/// How many of nine places of a run, from corner to corner, lie inside the shape.
int places_inside(std::span<const Spot> corners, const Area& area) {
  int inside = 0;
  const Area seen = area.inset(kRounding);
  for (const float x : {seen.left, seen.mid_x(), seen.right}) {
    for (const float y : {seen.top, seen.mid_y(), seen.bottom}) {
      if (holds(corners, {x, y})) ++inside;
    }
  }
  return inside;
}

constexpr int kAllPlaces = 9;

}  // namespace

void SetWords::set(std::string_view words, const Area& area, float em_px, const Area& window) {
  if (!is_on_ || words.empty() || !meet(area, window)) return;
  runs_.push_back(SetRun{std::string(words), area, em_px, !lies_within(area, window)});
}

void SetWords::cover(const Area& area) {
  if (!is_on_) return;
  const auto gone = std::remove_if(runs_.begin(), runs_.end(), [&area](const SetRun& run) {
    return lies_within(run.area, area);
  });
  runs_.erase(gone, runs_.end());
  for (SetRun& run : runs_) run.is_cut = run.is_cut || meet(run.area, area);
}

void SetWords::lay(const Area& slip) {
  if (!is_on_) return;
  const auto gone = std::remove_if(runs_.begin(), runs_.end(),
                                   [&slip](const SetRun& run) { return meet(run.area, slip); });
  runs_.erase(gone, runs_.end());
}

void SetWords::cover(std::span<const Spot> corners) {
  if (!is_on_ || corners.size() < 3) return;
  const auto gone = std::remove_if(runs_.begin(), runs_.end(), [corners](const SetRun& run) {
    return places_inside(corners, run.area) == kAllPlaces;
  });
  runs_.erase(gone, runs_.end());
  for (SetRun& run : runs_) run.is_cut = run.is_cut || places_inside(corners, run.area) > 0;
}

}  // namespace pouncemark::web
