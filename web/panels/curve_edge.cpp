#include <algorithm>
#include <cmath>
#include <string>

#include "web/panels/curve_above.h"

namespace pouncemark::web {

void free_edge(Page& page, const FromAbove& at) {
  const CurveView& view = page.state.curve.view;
  if (!view.holds_panel) return;
  const Brush& brush = page.brush;
  const CurveShape& shape = page.state.curve.shape;
  const Area& area = at.close;
  const float line = brush.pitch(Role::text);
  const std::string caption = std::string("free edge, ") + kTimes +
                              std::to_string(static_cast<int>(at.times)) + " the picture";
  brush.fill(area, kPaper);
  brush.frame(area, kPale, 1.2f);
  const std::string words = "creep " + shape.creep_words;
  Area room = area;
  if (at.is_low) {
    room.left += brush.width_of(words, Role::figure, true) + 24;
  } else {
    brush.words({area.left + 8, area.top + line}, caption, {Role::second_line, false, kSoft});
  }
  const float way = view.fly_is_right ? 1.0f : -1.0f;
  const float scale = at.times * at.px;
  const float inner = view.fly_is_right ? room.left : room.right;
  const float outer = (view.fly_is_right ? room.right : room.left) - way * (at.is_low ? 8 : 34);
  const float flat = outer - way * static_cast<float>(from_um(view.short_of_fly_um)) * scale;
  const float now = flat + way * static_cast<float>(shape.creep) * scale;
  const float top = at.is_low ? area.top + 6 : area.top + line + 8;
  const auto ply = [&](float y, float to, Colour fill, Colour edge) {
    const Area one = {std::min(inner, to), y, std::max(inner, to), y + 12};
    brush.fill(one, fill);
    brush.frame(one, edge, 1.5f);
  };
  brush.start_window(room);
  ply(top, outer, kSheet, kSheetEdge);
  ply(top + 12, now, kCloth, kWeave);
  brush.dashes({flat, top + 8}, {flat, top + 34}, kInk, 1.5f, 4, 3);
  if (std::fabs(now - flat) > 3) {
    brush.arrow({flat, top + 31}, {now, top + 31}, kPen, 2, std::min(7.0f, std::fabs(now - flat)),
                false);
  }
  brush.end_window();
  const float base = at.is_low ? area.mid_y() + brush.rise(Role::figure) / 2 : area.bottom - 8;
  const float wide = brush.words({area.left + 8, base}, words, {Role::figure, true, kInk});
  figure_on_bench(page, {"figure.edge",
                         "slip.creep",
                         {area.left + 8, base - 20, area.left + 8 + wide, base + 4},
                         words + ", drawn " + caption.substr(11) + ", show the sum"});
}

}  // namespace pouncemark::web
