#include <algorithm>
#include <array>

#include "web/host/host.h"
#include "web/panels/page.h"

namespace pouncemark::web {
namespace {

/// What stands in the bar where not everything has room.
struct BarForm {
  const char* save = "Save the job";
  float kept = 0;           ///< width of the column that says where the job is kept
  bool has_actions = true;  ///< pressing the last action opens the same list
};

constexpr float kGap = 8;
/// The last action needs so much for the start of its sentence, in two lines.
constexpr float kLeastWords = 190;

float bar_button(Page& page, std::string_view id, float x, std::string_view words,
                 const ButtonLook& look, bool* pressed) {
  const Area& bar = page.layout.bar;
  const float width = button_width(page.brush, words);
  const Area area = {x, bar.top + 6, x + width, bar.bottom - 6};
  *pressed = button(page.brush, page.hand, id, area, words, look);
  return area.right + kGap;
}

/// As wide as the sentences ever are, so that the buttons stand still when they change.
float kept_width(const Page& page) {
  constexpr std::array<std::array<const char*, 2>, 2> kWidest = {
      {{"kept in this browser 00:00", "in your file: 28 Nov 00:00"},
       {"kept 28 Nov 00:00", "file 28 Nov 00:00"}}};
  float width = 0;
  for (const char* words : kWidest[page.layout.is_compact ? 1 : 0]) {
    width = std::max(width, page.brush.width_of(words, Role::second_line, false));
  }
  return width + 4;
}

BarForm bar_form(const Page& page) {
  BarForm form;
  form.kept = kept_width(page);
  const auto left_over = [&] {
    float room = page.layout.bar.width() - 2 * kPageEdge - form.kept - 5 * kGap;
    for (const char* words : {"Undo", "Redo", form.save, "Open"}) {
      room -= button_width(page.brush, words) + kGap;
    }
    if (form.has_actions) room -= button_width(page.brush, "Actions") + kGap;
    if (page.layout.is_compact) room -= button_width(page.brush, "Start page") + kGap;
    return room;
  };
  if (left_over() < kLeastWords) form.save = "Save";
  if (left_over() < kLeastWords) form.has_actions = false;
  return form;
}

/// Lines one under the other in the middle of the bar's height.
void stacked(const Page& page, float x, const std::vector<std::string>& lines, const Ink& ink) {
  const Brush& brush = page.brush;
  const float pitch = brush.pitch(ink.role) * 0.92f;
  const auto more = static_cast<float>(lines.size()) - 1;
  float base = page.layout.bar.mid_y() + brush.rise(ink.role) / 2 - more * pitch / 2;
  for (const std::string& line : lines) {
    brush.words({x, base}, line, ink);
    base += pitch;
  }
}

/// The sentence in one line, or in two smaller ones that end with dots where it is longer still.
void fitted(const Page& page, const Area& area, const std::string& words) {
  const Brush& brush = page.brush;
  if (brush.width_of(words, Role::text, false) <= area.width()) {
    stacked(page, area.left, {words}, {});
    return;
  }
  const Ink ink{Role::second_line, false, kInk};
  auto lines = broken(brush, words, area.width(), ink.role, false);
  if (lines.size() > 2) {
    for (std::size_t i = 2; i < lines.size(); ++i) lines[1] += " " + lines[i];
    lines.resize(2);
  }
  for (std::string& line : lines) line = cut_short(brush, line, area.width(), ink.role, false);
  stacked(page, area.left, lines, ink);
}

void last_action(Page& page, const Area& area) {
  const std::string& words = page.bench.last_action();
  const Touch touch = page.hand.touch("last_action", area, words);
  if (touch.over) page.brush.fill(area.inset(1), kBench, kCorner);
  fitted(page, area.inset(kGap), words);
  focus_ring(page.brush, page.hand, area.inset(4), touch.focused);
  if (touch.clicked) open_or_close_actions(page);
}

/// Where the job is kept, at the right end of the bar. Gives the column's left edge.
float kept_column(Page& page, float right, float width) {
  const Brush& brush = page.brush;
  const Area& bar = page.layout.bar;
  const Bench& bench = page.bench;
  const Ink ink{Role::second_line, false, kInk, Side::right};
  std::vector<std::string> lines = bench.kept_lines();
  const bool is_long = std::any_of(lines.begin(), lines.end(), [&](const std::string& line) {
    return brush.width_of(line, ink.role, false) > width;
  });
  const bool is_nowhere = !bench.is_kept() && !bench.is_in_file();
  if (is_long && is_nowhere) lines = broken(brush, lines.front(), width, ink.role, false);
  if (is_long && !is_nowhere) lines = bench.kept_lines(true);
  if (lines.size() > 2) lines.resize(2);
  for (std::string& line : lines) line = cut_short(brush, line, width, ink.role, false);
  stacked(page, right, lines, ink);
  page.hand.note("kept", {right - width, bar.top, right, bar.bottom}, bench.kept_words());
  return right - width;
}

}  // namespace

void bar_panel(Page& page) {
  const Area& bar = page.layout.bar;
  const Brush& brush = page.brush;
  const Bench& bench = page.bench;
  const BarForm form = bar_form(page);
  brush.fill(bar, kFold);
  bool undo = false;
  bool redo = false;
  bool actions = false;
  bool start = false;
  float left =
      bar_button(page, "undo", kPageEdge, "Undo", {ButtonKind::main, !bench.can_undo()}, &undo);
  left = bar_button(page, "redo", left, "Redo", {ButtonKind::plain, !bench.can_redo()}, &redo);
  if (form.has_actions) {
    const bool is_open = page.state.actions.is_open;
    left = bar_button(page, "actions", left, "Actions",
                      {is_open ? ButtonKind::chosen : ButtonKind::plain}, &actions);
  }
  // Where the name has no room in the stage row, this leads back to the start page.
  if (page.layout.is_compact) left = bar_button(page, "start", left, "Start page", {}, &start);
  float right = kept_column(page, bar.right - kPageEdge, form.kept) - 2 * kGap;
  bool save = false;
  bool open = false;
  right -= button_width(brush, "Open");
  bar_button(page, "open", right, "Open", {}, &open);
  right -= button_width(brush, form.save) + kGap;
  bar_button(page, "save", right, form.save, {ButtonKind::plain, false, Role::text, "Save the job"},
             &save);
  last_action(page, {left, bar.top + 4, right - kGap, bar.bottom - 4});
  if (undo) page.later([&all = page.bench] { all.undo(); });
  if (redo) page.later([&all = page.bench] { all.redo(); });
  if (actions) open_or_close_actions(page);
  if (start) page.later([&state = page.state] { state.is_on_start = true; });
  if (open) page.later([] { host::choose_file(); });
  if (save) page.later([&all = page.bench] { save_job_file(all); });
}

void save_job_file(Bench& bench) {
  if (!bench.has_job()) return;
  host::save_file(bench.file_name(), "application/json", bench.file_bytes());
  bench.note_saved(host::moment());
}

}  // namespace pouncemark::web
