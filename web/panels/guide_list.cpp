#include <algorithm>

#include "engine/base/number_text.h"
#include "web/panels/print_acts.h"
#include "web/panels/print_parts.h"
#include "web/widgets/slip.h"

namespace pouncemark::web {
namespace {

constexpr float kPad = 16;
constexpr float kBox = 38;

float line_height(const Brush& brush) {
  return std::max(2 * brush.pitch(Role::text) + 26, kBox + 16);
}

void draw_box(const Brush& brush, const Area& box, bool is_ticked) {
  brush.fill(box, kPaper, kCorner);
  brush.frame(box, kInk, 2, kCorner);
  if (!is_ticked) return;
  const float size = box.width();
  const Spot corners[] = {{box.left + size * 0.22f, box.top + size * 0.52f},
                          {box.left + size * 0.42f, box.top + size * 0.74f},
                          {box.left + size * 0.79f, box.top + size * 0.26f}};
  brush.outline(corners, kInk, 4.5f, false);
}

/// The box to tick at the left of a line; gives where the words begin.
float tick_box(Page& page, const GuideLine& line, const Area& area) {
  const Brush& brush = page.brush;
  const bool is_on = is_ticked(page.state.printing.ticks, line);
  const Area target = {area.left, area.top + 2, area.left + kPad + kBox + 10, area.bottom - 2};
  const std::string id = "tick." + line.key;
  const Touch touch =
      page.hand.touch(id, target, line.title + (is_on ? ", ticked" : ", not ticked"));
  draw_box(brush, area_at(area.left + kPad, area.mid_y() - kBox / 2, kBox, kBox), is_on);
  focus_ring(brush, page.hand, target, touch.focused);
  if (touch.clicked) {
    page.later([&state = page.state, line, is_on] {
      tick(state.printing.ticks, line, !is_on);
      state.printing.sentence.clear();
    });
  }
  return target.right + 6;
}

/// How many sheets, at the right of a line; gives the left edge.
float count_words(const Brush& brush, const GuideLine& line, const Area& area) {
  const float right = area.right - kPad;
  const float middle = area.mid_y();
  const std::string count = line.sheets == 0 ? "?" : count_text(line.sheets);
  const char* unit = line.sheets == 1 ? "page" : "pages";
  brush.words({right, middle - 3}, count, {Role::figure, true, kInk, Side::right});
  brush.words({right, middle + brush.pitch(Role::text) - 4}, unit,
              {Role::text, false, kInk, Side::right});
  return right - std::max(brush.width_of(count, Role::figure, true),
                          brush.width_of(unit, Role::text, false));
}

void guide_line(Page& page, std::size_t index, const Area& area) {
  const Brush& brush = page.brush;
  const PrintFigures& figures = page.state.printing.figures;
  const GuideLine& line = figures.lines[index];
  const float left = tick_box(page, line, area);
  const float right = count_words(brush, line, area) - 10;
  const float pitch = brush.pitch(Role::text);
  const bool fits = brush.width_of(line.under, Role::text, false) <= right - left;
  brush.start_window({left, area.top, right, area.bottom});
  brush.words({left, area.mid_y() - 4}, line.title, {Role::text, true, kInk});
  brush.words({left, area.mid_y() + pitch - 5}, fits ? line.under : line.short_under, {});
  brush.end_window();
  const std::string aloud =
      line.title + ", " + line.under + ": " +
      (line.sheets == 0 ? "cannot be made on this paper" : counted(line.sheets, "page", "pages"));
  const Area target = {left, area.top + 2, area.right - 2, area.bottom - 2};
  const Touch touch = page.hand.touch("guide." + line.key, target, aloud);
  if (index == figures.looked_at) brush.frame(area, kPen, 3);
  focus_ring(brush, page.hand, target, touch.focused);
  if (touch.clicked) {
    page.later([&state = page.state, key = line.key] { state.printing.looked_at = key; });
  }
}

/// The buttons that step through a long list of guides.
void list_steps(Page& page, const Area& area, std::size_t shown, std::size_t count) {
  PageState& state = page.state;
  const std::size_t first = std::min(state.first_guide, count - 1);
  const std::string of = " of " + std::to_string(count);
  std::string words = std::to_string(first + 1) + " to " + std::to_string(first + shown) + of;
  const float wide = button_width(page.brush, "Further", false);
  const Area back = area_at(area.left, area.top, wide, button_height());
  const Area on = area_at(back.right + 8, area.top, wide, button_height());
  if (button(page.brush, page.hand, "guides.back", back, "Back", {ButtonKind::plain, first == 0})) {
    page.later([&state, first, fit = shown] { state.first_guide = first - std::min(fit, first); });
  }
  if (button(page.brush, page.hand, "guides.further", on, "Further",
             {ButtonKind::plain, first + shown >= count})) {
    page.later([&state, first, shown] { state.first_guide = first + shown; });
  }
  if (on.right + 14 + page.brush.width_of(words, Role::text, false) > area.right) {
    words = "from " + std::to_string(first + 1) + of;
  }
  page.brush.words({on.right + 14, on.mid_y() + page.brush.rise(Role::text) / 2}, words, {});
}

/// All and None, at the right of the heading; gives the left edge.
float all_and_none(Page& page, const Area& area) {
  float x = area.right;
  for (const bool on : {false, true}) {
    const char* words = on ? "All" : "None";
    const float wide = button_width(page.brush, words, false);
    const Area press = area_at(x - wide, area.top - 4, wide, button_height());
    if (button(page.brush, page.hand, on ? "guides.all" : "guides.none", press, words,
               {ButtonKind::plain, false, Role::text, on ? "Tick all guides" : "Tick no guide"})) {
      page.later([&state = page.state, on] {
        for (const GuideLine& line : state.printing.figures.lines) {
          tick(state.printing.ticks, line, on);
        }
      });
    }
    x = press.left - 8;
  }
  return x;
}

}  // namespace

void choose_the_guides(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  const std::size_t count = page.state.printing.figures.lines.size();
  if (count == 0) return;
  const float limit = all_and_none(page, area) - 8;
  const float top = column_heading(page, {area.left, area.top, limit, area.bottom},
                                   "Choose the guides", "Guides");
  const std::size_t first = std::min(page.state.first_guide, count - 1);
  const float high = line_height(brush);
  const float room = area.bottom - top;
  auto fit = static_cast<std::size_t>(std::max(1.0f, room / high));
  const bool has_steps = count > fit || first > 0;
  if (has_steps) {
    fit = static_cast<std::size_t>(std::max(1.0f, (room - button_height() - 18) / high));
  }
  const std::size_t shown = std::min(count - first, fit);
  slip_paper(brush, {area.left, top, area.right, top + high * static_cast<float>(shown)});
  float y = top;
  for (std::size_t i = 0; i < shown; ++i) {
    if (i > 0) brush.line({area.left + kPad, y}, {area.right - kPad, y}, kPale, 1);
    guide_line(page, first + i, {area.left, y, area.right, y + high});
    y += high;
  }
  if (has_steps) {
    list_steps(page, {area.left, y + 14, area.right, area.bottom}, shown, count);
  }
}

}  // namespace pouncemark::web
