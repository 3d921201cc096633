#include <algorithm>
#include <array>

#include "engine/base/number_text.h"
#include "web/panels/sew_section.h"

namespace pouncemark::web {
namespace {

void ask_box(Page& page, SewBox box, const Area& area, const char* id, const std::string& label,
             const std::string& name) {
  const SewView& view = page.state.sew.view;
  const SewBoxText& text = view.boxes[static_cast<std::size_t>(box)];
  SewTextBox set;
  set.id = id;
  set.area = area;
  set.label = text.was.empty() ? label : "was " + text.was;
  set.shown = text.shown;
  set.text = text.shown;
  set.name = name;
  set.is_changed = !text.was.empty();
  const SewKind kind = view.kinds[view.chosen];
  const TextEvent event = sew_text_box(page, set);
  const Solved& now = page.bench.now();
  const Place place = page.bench.place();
  if (event.finished) {
    if (*event.finished == text.shown) return close_box(page.state.open_box);
    return keep_typed(page, with_sew_typed(now, place, kind, box, *event.finished));
  }
  if (event.step == 0 || event.is_open) return;
  // Needles and threads step by fives, a stitch by tenths, a stack by hundredths.
  constexpr std::array<int, 4> kSteps = {5, 5, 100, 10};
  const std::int64_t figure =
      sew_measured(now, place, kind, box) + event.step * kSteps[static_cast<std::size_t>(box)];
  sew_act(page, with_sew_figure(now, place, kind, box, figure));
}

/// Needle and thread over the names of the plies, each with a line to what it measures.
void needle_boxes(Page& page, const Section& at) {
  const float top = at.mat.top + page.brush.pitch(Role::second_line) + 6;
  const float wide = sew_box_width();
  const Area needle = area_at(at.names.left + 8, top, wide, box_height());
  const Area thread = area_at(needle.right + 16, top, wide, box_height());
  if (page.state.sew.view.is_known)
    page.brush.line({at.needle_x + at.blade / 2, needle.mid_y()}, {needle.left, needle.mid_y()},
                    kInk, 1.2f);
  ask_box(page, SewBox::needle_size, needle, "box.needle_size", "needle size", "needle size");
  ask_box(page, SewBox::thread_tex, thread, "box.thread_tex", "thread, tex", "thread, tex");
}

/// The plies' names at their bands where they have room, else as near as they can be.
void ply_names(Page& page, const Section& at) {
  const Brush& brush = page.brush;
  const auto& plies = page.state.sew.view.plies;
  const float pitch = brush.pitch(Role::second_line) + 1;
  const float first = at.mat.top + brush.pitch(Role::second_line) + box_height() + 14 + pitch;
  float y = at.bands.top;
  float next = first;
  std::string aloud;
  for (const SewPly& ply : plies) {
    const float high = of_um(at, ply.thickness_um);
    const float middle = y + high / 2;
    const float base = std::max(middle + brush.rise(Role::second_line) / 2, next);
    const float left = at.names.left + 22;
    const float at_words = base - brush.rise(Role::second_line) / 2;
    brush.line({at.bands.right, middle}, {left - 5, at_words}, kSoft, 1);
    const float figure = brush.words({left, base}, ply.thickness, {Role::second_line, true, kInk});
    if (ply.is_assumed) {
      brush.dashes({left, base + 3.5f}, {left + figure, base + 3.5f}, kInk, 1.6f, 1.6f, 2.4f);
    }
    const std::string words =
        cut_short(brush, ply.name + (ply.is_assumed ? ", assumed" : ""),
                  at.names.right - left - figure - 7, Role::second_line, false);
    brush.words({left + figure + 7, base}, words, {Role::second_line, false, kInk});
    aloud += (aloud.empty() ? "" : ", ") + ply.name + " " + ply.thickness +
             (ply.is_assumed ? " assumed" : "");
    next = base + pitch;
    y += high;
  }
  page.hand.note("sew.plies", {at.names.left, at.bands.top, at.names.right, next}, aloud);
}

/// The stack on its arrow, with how it is known; pressed, the other way of knowing it is taken.
void stack_arrow(Page& page, const Section& at) {
  const Brush& brush = page.brush;
  const SewView& view = page.state.sew.view;
  const float x = at.bands.left - 16;
  if (view.is_known) {
    for (const float y : {at.bands.top, at.bands.bottom}) {
      brush.line({x - 8, y}, {at.bands.left - 2, y}, kInk, 1.5f);
    }
    brush.arrow({x, at.bands.top + 1}, {x, at.bands.bottom - 1}, kInk, 1.8f, 7, true);
  }
  const float wide = sew_box_width();
  const float high = box_height();
  const float whole = high + brush.pitch(Role::second_line) + 2 * button_height() + 14;
  const float top = std::clamp(at.bands.mid_y() - high / 2, at.mat.top + 60,
                               std::max(at.mat.top + 60, at.mat.bottom - whole));
  const Area box = area_at(x - 14 - wide, top, wide, high);
  if (view.is_from_plies) {
    const std::string figure = view.is_known ? exact_mm_text(view.stack_um) : "?";
    brush.centred(box, figure, {Role::box_figure, true, kInk});
    brush.words({box.left, box.top - 6}, "stack", {Role::second_line, false, kInk});
    page.hand.note("sew.stack", box, "stack " + (view.is_known ? figure : "not known"));
  } else {
    ask_box(page, SewBox::stack, box, "box.stack", "stack", "stack, as typed");
  }
  const auto choose = [&](float y, bool plies, const char* id, const char* words) {
    const bool is_chosen = view.is_from_plies == plies;
    const Area area = area_at(box.left, y, wide, button_height());
    const ButtonLook look{is_chosen ? ButtonKind::chosen : ButtonKind::plain,
                          page.bench.is_look_only(), Role::text,
                          plies ? "stack from its plies" : "stack as typed"};
    if (!button(brush, page.hand, id, area, words, look) || is_chosen) return;
    sew_act(page, with_stack_from_plies(page.bench.now(), page.bench.place(),
                                        view.kinds[view.chosen], plies));
  };
  choose(box.bottom + 8, false, "sew.stack.typed", "Typed");
  choose(box.bottom + 14 + button_height(), true, "sew.stack.plies", "Plies");
}

/// From hole to hole, and what is left of the sheet between them.
void stitch_arrows(Page& page, const Section& at) {
  const Brush& brush = page.brush;
  const SewView& view = page.state.sew.view;
  const float right = at.needle_x;
  const float left = right - at.stitch;
  const float wide = sew_box_width();
  const Area box = area_at((left + right - wide) / 2, at.arrows, wide, box_height());
  for (const float x : {left, right}) {
    brush.dashes({x, at.bands.bottom + at.thread}, {x, box.bottom}, kInk, 1, 4, 3);
  }
  if (at.stitch > wide + 60) {
    brush.arrow({box.left - 8, box.mid_y()}, {left + 1, box.mid_y()}, kInk, 1.8f, 7, false);
    brush.arrow({box.right + 8, box.mid_y()}, {right - 1, box.mid_y()}, kInk, 1.8f, 7, false);
  }
  brush.words({left - 10, box.mid_y() + brush.rise(Role::text) / 2}, "stitch",
              {Role::text, false, kInk, Side::right});
  ask_box(page, SewBox::stitch, box, "box.stitch", "", "stitch");
  const float y = box.bottom + 16;
  const float from = left + at.blade / 2;
  const float to = right - at.blade / 2;
  if (view.left_um <= 0) return;
  const std::string figure = short_mm_text(view.left_um, 2);
  const std::string words = " of sheet left, " + view.left_share;
  const float figure_wide = brush.width_of(figure, Role::text, true);
  const float all = figure_wide + brush.width_of(words, Role::text, false);
  const float base = y + brush.rise(Role::text) / 2;
  float x = (from + to - all) / 2;
  if (to - from > all + 40) {
    brush.arrow({x - 8, y}, {from + 1, y}, kInk, 1.5f, 6, false);
    brush.arrow({x + all + 8, y}, {to - 1, y}, kInk, 1.5f, 6, false);
  } else {
    x = std::min(x, at.bands.right - all);
  }
  x += brush.words({x, base}, figure, {Role::text, true, kInk});
  brush.words({x, base}, words, {Role::text, false, kInk});
  figure_on_bench(page, {"figure.sheet_left_mm",
                         "slip.sheet_left",
                         {x - figure_wide, y - 11, x - figure_wide + all, y + 11},
                         figure + words + ", show the sum"});
}

}  // namespace

void sew_measures(Page& page, const Section& at) {
  if (page.state.sew.view.is_known) {
    ply_names(page, at);
    stitch_arrows(page, at);
  }
  stack_arrow(page, at);
  needle_boxes(page, at);
}

}  // namespace pouncemark::web
