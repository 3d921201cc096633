#include "web/model/pick.h"

#include <algorithm>
#include <cmath>

namespace pouncemark::web {
namespace {

bool within(const EndGrip& grip, float x, float y) {
  const float away = std::fabs(x - grip.line_x);
  if (y >= grip.stop_top && y <= grip.stop_bottom) return away <= grip.stop_width / 2;
  return y >= grip.line_top && y < grip.stop_top && away <= kReachPx;
}

}  // namespace

Grip pick(const EndGrip& bottom, const EndGrip& top, float x, float y) {
  const bool at_bottom = within(bottom, x, y);
  const bool at_top = within(top, x, y);
  if (at_bottom && at_top) {
    return std::fabs(x - bottom.line_x) <= std::fabs(x - top.line_x) ? Grip::bottom_end
                                                                     : Grip::top_end;
  }
  if (at_bottom) return Grip::bottom_end;
  return at_top ? Grip::top_end : Grip::nothing;
}

Um Drag::at(float x, double px_per_mm, Um step, Um most) const {
  // A press that does not move must not round a figure that was typed finer than the step.
  if (std::fabs(x - start_x) < 1.0f) return start_um;
  const double sign = grip == Grip::top_end ? -1.0 : 1.0;
  const Um moved = to_um(sign * static_cast<double>(x - start_x) / px_per_mm);
  return std::clamp<Um>(to_step(start_um + moved, step), 0, std::max<Um>(most, 0));
}

}  // namespace pouncemark::web
