#include "web/panels/making_slip.h"
#include "web/panels/page.h"

namespace pouncemark::web {

/// The bench of a job without a section and without a panel.
void empty_panel(Page& page) {
  const Area& middle = page.layout.middle;
  const Brush& brush = page.brush;
  const float y = middle.top + brush.rise(Role::headline) + 24;
  brush.words({middle.left, y}, "Nothing lies on the bench", {Role::headline, true, kInk});
  brush.words({middle.left, y + 40}, "This job has no section and no panel yet.", {Role::verb});
  const char* words = "Start with a sleeve";
  const Area press = area_at(middle.left, y + 64, button_width(brush, words), button_height() + 6);
  if (button(brush, page.hand, "empty.sleeve", press, words, {ButtonKind::main})) {
    page.later([&bench = page.bench] { bench.start_with_sleeve(); });
  }
  const char* add = "Add a panel";
  const Area panel = area_at(press.right + 12, press.top, button_width(brush, add), press.height());
  if (button(brush, page.hand, "empty.panel", panel, add)) open_making(page, MakingAsk::panel);
}

}  // namespace pouncemark::web
