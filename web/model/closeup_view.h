#pragma once

#include "web/model/place.h"

namespace pouncemark::web {

/// Where the close-ups of a sleeve's ends stand: how far each has been moved from its end along the
/// piece, and how much larger than by itself both are drawn. Looking only; nothing of the job.
struct CloseupView {
  Place place;       ///< what lay on the bench; another thing begins at its ends
  Um bottom_um = 0;  ///< from the bottom end to where its close-up begins
  Um top_um = 0;     ///< from the top end to where its close-up ends
  double scale = 1;
  bool bottom_pressed = false;  ///< the wheel moves the one that was pressed last
  bool top_pressed = false;
  Um held_um = 0;    ///< how far from its end it stood when its frame was taken hold of
  float held_x = 0;  ///< and where the pointer was

  bool is_at_ends() const { return bottom_um == 0 && top_um == 0 && scale == 1; }
  Um& from_end(bool is_bottom) { return is_bottom ? bottom_um : top_um; }
  Um from_end(bool is_bottom) const { return is_bottom ? bottom_um : top_um; }
};

/// How far from its end a close-up stands that shows `shown` of a piece `length` long, kept on the
/// piece.
Um held_on_piece(Um from_end, Um length, Um shown);

/// Moves one close-up by `by` towards TOP (negative: towards BOTTOM).
void move_closeup(CloseupView& view, bool is_bottom, Um by, Um length, Um shown);

/// Makes both larger by a factor, from a half to four times their own size. What is in the middle
/// of a moved close-up stays there: it showed `shown`.
void scale_closeups(CloseupView& view, double factor, Um length, Um shown);

}  // namespace pouncemark::web
