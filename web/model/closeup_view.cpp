#include "web/model/closeup_view.h"

#include <algorithm>
#include <cmath>

namespace pouncemark::web {

Um held_on_piece(Um from_end, Um length, Um shown) {
  return std::clamp<Um>(from_end, 0, std::max<Um>(length - shown, 0));
}

void move_closeup(CloseupView& view, bool is_bottom, Um by, Um length, Um shown) {
  Um& from_end = view.from_end(is_bottom);
  from_end = held_on_piece(from_end + (is_bottom ? by : -by), length, shown);
}

void scale_closeups(CloseupView& view, double factor, Um length, Um shown) {
  constexpr double kLeast = 0.5;
  constexpr double kMost = 4;
  // Close to its own size it is its own size, so that it can be met again.
  constexpr double kNear = 0.03;
  double scale = std::clamp(view.scale * factor, kLeast, kMost);
  if (std::abs(scale - 1) < kNear) scale = 1;
  const Um then = to_um(from_um(shown) * view.scale / scale);
  for (const bool is_bottom : {true, false}) {
    Um& from_end = view.from_end(is_bottom);
    if (from_end != 0) from_end = held_on_piece(from_end + (shown - then) / 2, length, then);
  }
  view.scale = scale;
}

}  // namespace pouncemark::web
