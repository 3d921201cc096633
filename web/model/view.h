#pragma once

#include <cstdint>

#include "engine/geometry/units.h"
#include "engine/layout/run.h"

namespace pouncemark::web {

/// Where a piece lies on the screen: on its side, BOTTOM at the left, the piece's left edge up
/// (face down: its right edge up). Screen places are CSS pixels, y downwards.
struct Lying {
  double left_px = 0;  ///< where station `from_um` stands
  double top_px = 0;   ///< where the upper edge stands
  double px_per_mm = 1;
  Um from_um = 0;   ///< station at `left_px`
  Um width_um = 0;  ///< across the piece
  bool face_down = false;

  /// Screen place of a station measured from BOTTOM.
  float x(Um along) const;
  /// Screen place of a distance from the piece's left edge.
  float y(Um across) const;
  /// Station under a screen place, micrometres.
  Um along(float x_px) const;
  float px(Um length) const;
};

/// Indices of a row's points, both ends counted in; `last` < `first` where there are none.
struct IndexSpan {
  std::int64_t first = 0;
  std::int64_t last = -1;
  std::int64_t count() const { return last - first + 1; }
};

/// The points of a run whose stations lie between two stations (both counted in): found by halving,
/// never by making the points.
IndexSpan points_between(const layout::Run& run, Um from, Um to);

/// Points nearer to one another than this are drawn as a band.
inline constexpr double kBandBelowPx = 4.0;

/// True when the points of a run would stand too close to be seen one by one.
bool is_band(const layout::Run& run, double px_per_mm);

/// The nearest whole multiple of `step` to `um`; `step` > 0.
Um to_step(Um um, Um step);

/// What a drag moves by: 0.5, with Shift 5, with Ctrl 0.1.
Um drag_step(bool shift, bool ctrl);

}  // namespace pouncemark::web
