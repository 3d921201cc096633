#include "web/host/host.h"
#include "web/panels/page.h"

namespace pouncemark::web {
namespace {

float bar_button(Page& page, std::string_view id, float x, std::string_view words,
                 const ButtonLook& look, bool* pressed) {
  const Area& bar = page.layout.bar;
  const float width = button_width(page.brush, words);
  const Area area = {x, bar.top + 6, x + width, bar.bottom - 6};
  *pressed = button(page.brush, page.hand, id, area, words, look);
  return area.right + 8;
}

}  // namespace

void bar_panel(Page& page) {
  const Area& bar = page.layout.bar;
  const Brush& brush = page.brush;
  const Bench& bench = page.bench;
  brush.fill(bar, kFold);
  bool undo = false;
  bool redo = false;
  bool save = false;
  bool open = false;
  ButtonLook main{ButtonKind::main, !bench.can_undo()};
  float left = bar_button(page, "undo", kPageEdge, "Undo", main, &undo);
  left = bar_button(page, "redo", left, "Redo", {ButtonKind::plain, !bench.can_redo()}, &redo);
  bool start = false;
  // Where the name has no room in the stage row, this leads back to the start page.
  if (page.layout.is_compact) left = bar_button(page, "start", left, "Start page", {}, &start);
  if (start) page.later([&state = page.state] { state.is_on_start = true; });
  float right = bar.right - kPageEdge;
  const float base = bar.mid_y() + brush.rise(Role::text) / 2;
  const float open_width = button_width(brush, "Open");
  const float save_width = button_width(brush, "Save the job");
  const std::string kept = bench.kept_words();
  right -= brush.words({right, base}, kept, {Role::text, false, kInk, Side::right}) + 16;
  page.hand.note("kept", {right, bar.top, bar.right - kPageEdge, bar.bottom}, kept);
  bar_button(page, "open", right - open_width, "Open", {}, &open);
  right -= open_width + 8;
  bar_button(page, "save", right - save_width, "Save the job", {}, &save);
  right -= save_width + 16;
  brush.start_window({left + 8, bar.top, right, bar.bottom});
  brush.words({left + 8, base}, bench.last_action(), {});
  brush.end_window();
  page.hand.note("last_action", {left + 8, bar.top, right, bar.bottom}, bench.last_action());
  if (undo) page.later([&all = page.bench] { all.undo(); });
  if (redo) page.later([&all = page.bench] { all.redo(); });
  if (open) page.later([] { host::choose_file(); });
  if (save) page.later([&all = page.bench] { save_job_file(all); });
}

void save_job_file(Bench& bench) {
  if (!bench.has_job()) return;
  host::save_file(bench.file_name(), "application/json", bench.file_bytes());
  bench.note_saved(host::moment());
}

}  // namespace pouncemark::web
