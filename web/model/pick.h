#pragma once

#include "web/model/view.h"

namespace pouncemark::web {

/// What the hand can take hold of at the ends of a sleeve.
enum class Grip { nothing, bottom_end, top_end };

/// One end close-up as far as the hand is concerned: its rule stop, and the kept-clear line above
/// it.
struct EndGrip {
  float line_x = 0;    ///< where the kept-clear line stands
  float line_top = 0;  ///< how far it reaches
  float stop_top = 0;  ///< upper edge of the rule stop
  float stop_bottom = 0;
  float stop_width = 0;
};

/// How near to a line the pointer must come, CSS pixels: 9 mm of finger is wider than a line.
inline constexpr float kReachPx = 7;

/// What lies under a place on the screen; the nearer one where both ends are within reach.
Grip pick(const EndGrip& bottom, const EndGrip& top, float x, float y);

/// A kept-clear end being dragged.
struct Drag {
  Grip grip = Grip::nothing;
  Um start_um = 0;    ///< the figure when it was taken hold of
  float start_x = 0;  ///< where the pointer was then

  /// The figure for a pointer at `x`: whole steps, at least 0, at most `most`.
  Um at(float x, double px_per_mm, Um step, Um most) const;
};

}  // namespace pouncemark::web
