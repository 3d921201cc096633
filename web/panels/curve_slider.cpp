#include <algorithm>

#include "engine/base/number_text.h"
#include "web/panels/curve_parts.h"

namespace pouncemark::web {
namespace {

/// Flat at the left, hung at the right; pressed, the sheet goes there by itself.
Area end_button(Page& page, const Area& area, bool is_hung) {
  const char* words = is_hung ? "Hung" : "Flat";
  const float width = button_width(page.brush, words);
  const float left = is_hung ? area.right - width : area.left;
  const Area at = area_at(left, area.mid_y() - button_height() / 2, width, button_height());
  const double to = is_hung ? 1 : 0;
  const bool is_there = page.state.curve.hung == to;
  if (button(page.brush, page.hand, is_hung ? "curve.hung" : "curve.flat", at, words,
             {is_there ? ButtonKind::chosen : ButtonKind::plain})) {
    page.later([&curve = page.state.curve, to] { bend_to(curve, to); });
  }
  return at;
}

void set_hung(Page& page, double hung) {
  page.later([&curve = page.state.curve, hung] {
    curve.hung = curve.goes_to = std::clamp(hung, 0.0, 1.0);
  });
}

}  // namespace

void curve_slider(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  const double hung = page.state.curve.hung;
  const Area flat = end_button(page, area, false);
  const Area bent = end_button(page, area, true);
  constexpr float kKnob = 11;
  const Area track = {flat.right + 12, flat.top, bent.left - 12, flat.bottom};
  const float from = track.left + kKnob;
  const float room = std::max(1.0f, track.width() - 2 * kKnob);
  const std::string words =
      "from flat to hung, " + std::to_string(static_cast<int>(hung * 100 + 0.5)) + " %";
  const Touch touch = page.hand.touch("curve.slider", track, words);
  if (touch.focused) page.hand.stands_on(kOnFigure);
  const float knob = from + room * static_cast<float>(hung);
  brush.line({from, track.mid_y()}, {from + room, track.mid_y()}, kSoft, 3);
  brush.line({from, track.mid_y()}, {knob, track.mid_y()}, kPen, 5);
  for (int i = 0; i <= 4; ++i) {
    const float x = from + room * static_cast<float>(i) / 4;
    brush.line({x, track.mid_y() + 7}, {x, track.mid_y() + 12}, kSoft, 1.5f);
  }
  brush.disc({knob, track.mid_y()}, kKnob, kPaper);
  brush.ring({knob, track.mid_y()}, kKnob, touch.over || touch.held ? kPen : kInk, 3);
  focus_ring(brush, page.hand, track, touch.focused);
  if (touch.held && page.hand.is_down())
    set_hung(page, static_cast<double>((page.hand.at().x - from) / room));
  const int step = touch.focused ? page.hand.step() + page.hand.arrow_right() : 0;
  if (step != 0) set_hung(page, hung + step * 0.05);
}

}  // namespace pouncemark::web
