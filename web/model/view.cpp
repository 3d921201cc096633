#include "web/model/view.h"

namespace pouncemark::web {

float Lying::px(Um length) const {
  return static_cast<float>(pouncemark::from_um(length) * px_per_mm);
}

float Lying::x(Um along_um) const {
  return static_cast<float>(left_px + pouncemark::from_um(along_um - from_um) * px_per_mm);
}

float Lying::y(Um across) const {
  const Um down = face_down ? width_um - across : across;
  return static_cast<float>(top_px + pouncemark::from_um(down) * px_per_mm);
}

Um Lying::along(float x_px) const {
  return from_um + to_um((static_cast<double>(x_px) - left_px) / px_per_mm);
}

IndexSpan points_between(const layout::Run& run, Um from, Um to) {
  IndexSpan span;
  if (run.is_empty || to < from) return span;
  const auto first_at_least = [&run](Um station) {
    std::int64_t low = 0;
    std::int64_t high = run.points();
    while (low < high) {
      const std::int64_t middle = low + (high - low) / 2;
      if (run.station_um(middle) < station)
        low = middle + 1;
      else
        high = middle;
    }
    return low;
  };
  span.first = first_at_least(from);
  span.last = first_at_least(to + 1) - 1;
  return span;
}

bool is_band(const layout::Run& run, double px_per_mm) {
  if (run.gaps == 0) return false;
  const double pitch_mm = pouncemark::from_um(run.length_um) / static_cast<double>(run.gaps);
  return pitch_mm * px_per_mm < kBandBelowPx;
}

Um to_step(Um um, Um step) { return divide_round(um, step) * step; }

Um drag_step(bool shift, bool ctrl) {
  constexpr Um kFine = 100;
  constexpr Um kPlain = 500;
  constexpr Um kCoarse = 5000;
  if (ctrl) return kFine;
  return shift ? kCoarse : kPlain;
}

}  // namespace pouncemark::web
