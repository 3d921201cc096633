#include "web/model/pick.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace pouncemark::web {
namespace {

/// How far a place lies outside of a span, and how far it may.
struct Away {
  float px = 0;
  float most = 0;
};

Away away(float at, float low, float high, float reach) {
  return {std::max({low - at, at - high, 0.0f}), std::max(0.0f, (reach - (high - low)) / 2)};
}

}  // namespace

int pick(const std::vector<Grip>& grips, float x, float y, float reach) {
  int found = -1;
  float least = 0;
  for (std::size_t i = 0; i < grips.size(); ++i) {
    const Grip& grip = grips[i];
    const Away across = away(x, grip.left, grip.right, reach);
    const Away down = away(y, grip.top, grip.bottom, reach);
    if (across.px > across.most || down.px > down.most) continue;
    const float far = std::hypot(across.px, down.px);
    if (found >= 0 && far > least) continue;
    found = static_cast<int>(i);
    least = far;
  }
  return found;
}

}  // namespace pouncemark::web
