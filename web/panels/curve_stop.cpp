#include <string>
#include <utility>

#include "web/panels/curve_above.h"

namespace pouncemark::web {
namespace {

void stop_box(Page& page, const Area& area) {
  const CurveView& view = page.state.curve.view;
  CurveBox box;
  box.id = "box.stop";
  box.area = area;
  box.shown = view.stop.shown;
  box.text = view.stop.is_entered ? view.stop.shown : "";
  box.name = "top and bottom rows stop, from the hinge side";
  box.is_changed = !view.stop.was.empty();
  box.is_words = !view.stop.is_entered;
  const TextEvent event = sew_text_box(page, box);
  if (!event.finished) return;
  if (*event.finished == box.text || *event.finished == box.shown)
    return close_box(page.state.open_box);
  keep_curve(page, with_rows_stop_typed(page.bench.now(), view.bay, *event.finished));
}

}  // namespace

void rows_stop(Page& page, const FromAbove& at) {
  const CurveView& view = page.state.curve.view;
  const StopLine& stop = view.stop;
  if (!stop.is_there) return;
  const Brush& brush = page.brush;
  const Area& room = at.stop;
  const float base = room.mid_y() + brush.rise(Role::text) / 2;
  const float high = button_height();
  const float wide = bay_box_width();
  const float button_wide =
      stop.button.empty() ? 0.0f : button_width(brush, stop.button.c_str()) + 10;
  std::string label = stop.is_entered ? "rows stop at" : "rows";
  if (!stop.was.empty()) label = "was " + stop.was + "; " + label;
  const std::string words =
      cut_short(brush, label, room.width() - wide - button_wide - 16, Role::text, false);
  // On a low mat the line ends at the right, the slip's own line stands before it.
  const float whole = brush.width_of(words, Role::text, false) + 8 + wide + button_wide;
  float x = at.is_low ? room.right - whole : room.left;
  const float from = x;
  x += brush.words({x, base}, words, {Role::text, false, kInk}) + 8;
  stop_box(page, area_at(x, room.mid_y() - high / 2, wide, high));
  page.hand.note("curve.stop", {from, base - 20, x - 8, base + 6},
                 stop.is_entered ? "top and bottom rows stop " + stop.shown + " from the hinge side"
                                 : "top and bottom rows run on to the fly side");
  if (stop.button.empty()) return;
  const Area area = area_at(x + wide + 10, room.mid_y() - high / 2, button_wide - 10, high);
  const ButtonLook look{ButtonKind::plain, page.bench.is_look_only()};
  if (!button(brush, page.hand, "curve.stop_at", area, stop.button.c_str(), look)) return;
  curve_act(page, with_rows_stop(page.bench.now(), view.bay, stop.offers));
}

}  // namespace pouncemark::web
