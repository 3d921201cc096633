#include <algorithm>
#include <cstddef>
#include <string>

#include "web/host/host.h"
#include "web/panels/page.h"
#include "web/widgets/slip.h"

namespace pouncemark::web {
namespace {

constexpr float kPad = 18;
constexpr float kThreadWide = 30;

/// Where the list stands: its rows are the job just after each action, newest first, and last the
/// job that the oldest was done to.
struct ActionsForm {
  Area slip;
  float row = 0;
  float head = 0;
  float foot = 0;
  std::size_t rows = 0;
  std::size_t shown = 0;
  std::size_t first = 0;
};

/// What the list says under its rows.
std::vector<std::string> foot_words(const Page& page) {
  const History& history = page.bench.history();
  std::vector<std::string> lines;
  const auto counted = [](std::size_t count, const char* one, const char* more) {
    return count == 1 ? std::string(one) : std::to_string(count) + more;
  };
  const std::size_t undone = history.steps().size() - history.at();
  if (undone > 0) {
    lines.push_back("A new change forgets " +
                    counted(undone, "the action that is undone.", " actions that are undone."));
  }
  if (history.forgotten() > 0) {
    lines.push_back(counted(history.forgotten(), "1 older action is", " older actions are") +
                    " gone: 4 MB is all that the list may take in this browser.");
  }
  return lines;
}

ActionsForm actions_form(const Page& page) {
  const Brush& brush = page.brush;
  const Layout& layout = page.layout;
  ActionsForm form;
  form.rows = page.bench.history().steps().size() + 1;
  form.row = std::max(button_height(), 40.0f);
  form.head = 20 + brush.rise(Role::box_figure) + brush.pitch(Role::second_line) + 14;
  const float wide = std::min(660.0f, layout.width - 2 * kPageEdge);
  float foot = 12;
  for (const std::string& line : foot_words(page)) {
    const auto lines = broken(brush, line, wide - 2 * kPad, Role::second_line, false).size();
    foot += brush.pitch(Role::second_line) * static_cast<float>(lines);
  }
  const float top = stage_row_height() + 14;
  const float bottom = layout.bar.top - 8;
  const auto fit = [&](float under) {
    const float room = bottom - top - form.head - under;
    return static_cast<std::size_t>(std::max(room / form.row, 1.0f));
  };
  form.shown = std::min(form.rows, fit(foot));
  if (form.shown < form.rows) {
    foot += button_height() + 8;
    form.shown = std::min(form.rows, fit(foot));
  }
  form.foot = foot;
  const float high = form.head + form.row * static_cast<float>(form.shown) + foot;
  form.slip = {kPageEdge, bottom - high, kPageEdge + wide, bottom};
  form.first = std::min(page.state.actions.first, form.rows - form.shown);
  return form;
}

/// One row of the thread: done is sewn from hole to hole, undone is holes only, the needle stands
/// where the job does.
void thread_of_row(const Brush& brush, const Area& row, bool is_done, bool is_here, bool is_last) {
  const float x = row.left + kPad;
  const float mid = row.mid_y();
  if (is_done && !is_last)
    brush.line({x, mid + 7}, {x, row.bottom + row.height() / 2 - 7}, kThread, 3);
  brush.disc({x, mid}, 4, kInk);
  if (is_here) brush.ring({x, mid}, 9, kPen, 3);
}

void action_row(Page& page, const ActionsForm& form, std::size_t index, const Area& row) {
  const Brush& brush = page.brush;
  const History& history = page.bench.history();
  const std::size_t done = form.rows - 1 - index;
  const bool is_here = done == history.at();
  const bool is_undone = done > history.at();
  const std::string& words = done == 0 ? history.beginning() : history.steps()[done - 1].action;
  const char* state = is_here ? "stands here" : is_undone ? "undone" : "";
  std::string aloud = words;
  if (*state != '\0') aloud += std::string(", ") + state;
  const Touch touch = page.hand.touch("action." + std::to_string(done), row, aloud);
  if (touch.over || is_here) brush.fill(row, kMat);
  thread_of_row(brush, row, !is_undone, is_here, done == 0);
  const float base = row.mid_y() + brush.rise(Role::text) / 2;
  const float right = row.right - kPad;
  const Ink small{Role::second_line, is_here, is_here ? kPen : kSoft, Side::right};
  const float taken = *state == '\0' ? 0 : brush.words({right, base}, state, small) + 16;
  const float left = row.left + kPad + kThreadWide - 8;
  brush.words({left, base}, cut_short(brush, words, right - taken - left, Role::text, is_here),
              {Role::text, is_here, is_undone ? kSoft : kInk});
  // Between what is undone and where the job stands.
  if (is_here && index > form.first) brush.line({row.left, row.top}, {row.right, row.top}, kInk, 3);
  focus_ring(brush, page.hand, row.inset(6), touch.focused);
  if (touch.clicked) page.later([&bench = page.bench, done] { bench.go_to(done); });
}

void foot_of_list(Page& page, const ActionsForm& form, float y) {
  const Brush& brush = page.brush;
  PageState& state = page.state;
  const Area& slip = form.slip;
  if (form.shown < form.rows) {
    const std::size_t first = form.first;
    const std::size_t last = form.rows - form.shown;
    const float wide = button_width(brush, "Newer", false);
    const Area newer = area_at(slip.left + kPad, y + 8, wide, button_height());
    const Area older = area_at(newer.right + 8, y + 8, wide, button_height());
    const std::size_t by = form.shown;
    if (button(brush, page.hand, "actions.newer", newer, "Newer",
               {ButtonKind::plain, first == 0})) {
      page.later([&state, first, by] { state.actions.first = first - std::min(by, first); });
    }
    if (button(brush, page.hand, "actions.older", older, "Older",
               {ButtonKind::plain, first >= last})) {
      page.later([&state, first, by, last] { state.actions.first = std::min(first + by, last); });
    }
    brush.words({older.right + 14, older.mid_y() + brush.rise(Role::text) / 2},
                std::to_string(first + 1) + " to " + std::to_string(first + form.shown) + " of " +
                    std::to_string(form.rows),
                {});
    y += button_height() + 8;
  }
  y += 4 + brush.pitch(Role::second_line) * 0.75f;
  std::size_t number = 0;
  for (const std::string& line : foot_words(page)) {
    const float top = y;
    y = brush.paragraph({slip.left + kPad, y}, line, slip.width() - 2 * kPad,
                        {Role::second_line, false, kInk});
    page.hand.note("actions.note" + std::to_string(number++), {slip.left, top - 16, slip.right, y},
                   line);
  }
}

}  // namespace

void open_or_close_actions(Page& page) {
  page.later([&state = page.state, &bench = page.bench] {
    ActionsSlip& slip = state.actions;
    slip.is_open = !slip.is_open;
    // Begins a little above the action the job stands at.
    const std::size_t undone = bench.history().steps().size() - bench.history().at();
    slip.first = undone > 2 ? undone - 2 : 0;
  });
}

void actions_panel(Page& page) {
  PageState& state = page.state;
  if (!state.actions.is_open) return;
  const Brush& brush = page.brush;
  const ActionsForm form = actions_form(page);
  const Area& slip = form.slip;
  slip_paper(brush, slip);
  brush.frame(slip, kSoft, 1.5f);
  const float title = slip.top + 16 + brush.rise(Role::box_figure);
  brush.words({slip.left + kPad, title}, "Actions", {Role::box_figure, true, kInk});
  brush.words({slip.left + kPad, title + brush.pitch(Role::second_line)},
              "Newest first. Press one to go to just after it.", {Role::second_line, false, kSoft});
  const float wide = button_width(brush, "Put away", false);
  const Area away = area_at(slip.right - kPad - wide, slip.top + 12, wide, button_height());
  const bool is_away = button(brush, page.hand, "actions.away", away, "Put away");
  if (is_away || page.hand.escape()) {
    page.later([&state] { state.actions.is_open = false; });
  }
  float y = slip.top + form.head;
  brush.line({slip.left, y}, {slip.right, y}, kPale, 1);
  for (std::size_t i = form.first; i < form.first + form.shown; ++i) {
    action_row(page, form, i, {slip.left, y, slip.right, y + form.row});
    y += form.row;
    brush.line({slip.left, y}, {slip.right, y}, kPale, 1);
  }
  foot_of_list(page, form, y);
  // The wheel moves the rows and nothing else.
  const int steps = page.hand.lines_on(slip, form.row);
  if (steps != 0 && form.shown < form.rows) {
    page.later([&state, steps, form] {
      const auto last = static_cast<std::ptrdiff_t>(form.rows - form.shown);
      const auto first = static_cast<std::ptrdiff_t>(form.first) + steps;
      state.actions.first = static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(first, 0, last));
    });
  }
}

}  // namespace pouncemark::web
