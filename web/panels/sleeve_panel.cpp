#include <algorithm>

#include "engine/base/number_text.h"
#include "web/model/words.h"
#include "web/panels/closeup_frame.h"
#include "web/panels/end_closeup.h"
#include "web/panels/how_slip.h"
#include "web/panels/making_slip.h"
#include "web/panels/page.h"
#include "web/panels/whole_strip.h"

namespace pouncemark::web {
namespace {

/// Even | Exactly 50, with the spacing that is wanted before them; gives the left edge.
float rule_switch(Page& page, float right, float top) {
  if (!has_own_rows(page)) return right;  // nothing to space
  const Solved& now = page.bench.now();
  const Place place = page.bench.place();
  const float height = button_height();
  const bool exact = rule_at(now.job, now.results, place) == job::SpacingRule::exact;
  const Um asked = measured(now.job, now.results, place, Measure::spacing);
  const std::string exactly = "Exactly " + short_mm_text(asked, 2);
  const float exact_width = std::max(140.0f, button_width(page.brush, exactly));
  const float even_width = std::max(114.0f, button_width(page.brush, "Even"));
  const float lift = (box_height() - height) / 2;
  const Area second = area_at(right - exact_width, top + lift, exact_width, height);
  const Area first = area_at(second.left - 8 - even_width, top + lift, even_width, height);
  const auto kind = [](bool chosen) { return chosen ? ButtonKind::chosen : ButtonKind::plain; };
  const auto choose = [&page, place](job::SpacingRule rule, std::string words) {
    page.later([&bench = page.bench, place, rule, words] {
      const Solved& solved = bench.now();
      if (rule_at(solved.job, solved.results, place) == rule) return;
      bench.edit(with_rule(solved.job, solved.results, place, rule),
                 "Chose " + words + " for " + name_of(solved.results, place));
    });
  };
  if (button(page.brush, page.hand, "rule.even", first, "Even", {kind(!exact)})) {
    choose(job::SpacingRule::even, "even spacing");
  }
  if (button(page.brush, page.hand, "rule.exact", second, exactly, {kind(exact)})) {
    choose(job::SpacingRule::exact, "exactly " + exact_mm_text(asked));
  }
  const float width = text_size() == TextSize::large ? 116.0f : 92.0f;
  const Area box = area_at(first.left - 16 - width, top, width, box_height());
  const bool is_gap = now.job.spacing_is_clear_gap;
  measure_box(page, {"box.spacing",
                     Measure::spacing,
                     box,
                     is_gap ? "spacing wanted, clear gap between crowns"
                            : "spacing wanted, centre to centre",
                     {100, kMostLengthUm}});
  const char* words = is_gap ? "clear gap wanted" : "spacing wanted";
  if (page.layout.is_compact) {
    page.brush.words({box.left - 10, box.mid_y() + page.brush.rise(Role::text) / 2}, words,
                     {Role::text, false, kInk, Side::right});
  } else {
    page.brush.words({box.right, box.bottom + page.brush.rise(Role::text) + 7}, words,
                     {Role::text, false, kInk, Side::right});
  }
  return page.layout.is_compact ? box.left - 22 - page.brush.width_of(words, Role::text, false)
                                : box.left;
}

/// The length, on its arrow from the bottom end to the top end.
void length_arrow(Page& page, float y, float left, float right) {
  const Brush& brush = page.brush;
  const float height = box_height() - 6;
  const bool is_large = text_size() == TextSize::large;
  const std::string words = is_large ? "long" : "long, bottom end to top end";
  const float width = is_large ? 130.0f : 104.0f;
  const float wide = brush.width_of(words, Role::text, false);
  const bool inside = right - left > width + 2 * wide + 120;
  // A short strip has no room for the box on its arrow: it stands beside it.
  const Area box =
      area_at(inside ? (left + right - width) / 2 : right + 20, y - height / 2, width, height);
  for (const float x : {left, right}) brush.line({x, y - 10}, {x, y + 12}, kInk, 2);
  if (inside) {
    brush.arrow({box.left - 10, y}, {left + 1, y}, kInk, 1.8f, 8, false);
    brush.arrow({box.right + 24 + wide, y}, {right - 1, y}, kInk, 1.8f, 8, false);
  } else {
    brush.arrow({left + 1, y}, {right - 1, y}, kInk, 1.8f, 8, true);
  }
  brush.words({box.right + 12, y + brush.rise(Role::text) / 2}, inside ? words : "long", {});
  MeasureBox length{"box.length", Measure::length, box, "length", {kLeastLengthUm, kMostLengthUm}};
  if (inside) length.was = {box.left - 96, y + brush.rise(Role::second_line) + 7};
  measure_box(page, length);
}

/// The length without its arrow, where there is no room for one; gives the right edge.
float length_beside(Page& page, float left, float top) {
  const float width = text_size() == TextSize::large ? 116.0f : 96.0f;
  const Area box = area_at(left, top, width, box_height());
  measure_box(page,
              {"box.length", Measure::length, box, "length", {kLeastLengthUm, kMostLengthUm}});
  const float base = box.mid_y() + page.brush.rise(Role::text) / 2;
  return box.right + 10 + page.brush.words({box.right + 10, base}, "long", {});
}

float place_and_headline(Page& page) {
  const Area& middle = page.layout.middle;
  if (!page.layout.is_compact) {
    const float switch_left = face_switch(page, middle.right, middle.top);
    const float how = how_opener(page, switch_left - 16, middle.top, Side::right);
    const float make = make_section_button(page, middle.left + 190, how - 8, middle.top);
    place_line(page, {middle.left, middle.top + 24}, make - 12);
    headline_words(page, {middle.left, middle.top + 76}, 1e6f, true);
    rule_switch(page, middle.right, middle.top + 50);
    return middle.top + 112;
  }
  const float height = button_height();
  const float base = middle.top + height / 2 + page.brush.rise(Role::headline) / 2;
  const float switch_left = face_switch(page, middle.right, middle.top);
  const float right = place_line(page, {middle.left, base}, switch_left - 16);
  headline_words(page, {right + 8, base}, switch_left - 16, false);
  const float second = middle.top + height + 8;
  const float lift = (box_height() - height) / 2;
  const float how =
      how_opener(page, length_beside(page, middle.left, second) + 16, second + lift, Side::left);
  const float limit = rule_switch(page, middle.right, second);
  const float words_base = second + box_height() / 2 + page.brush.rise(Role::second_line) / 2;
  if (!neighbours_line(page, {how + 14, words_base}, limit)) {
    const float width = button_width(page.brush, "Make a section");
    make_section_button(page, how + 8, std::min(limit - 8, how + 9 + width), second + lift);
  }
  return second + box_height() + 14;
}

}  // namespace

void sleeve_panel(Page& page) {
  const Area& middle = page.layout.middle;
  float y = place_and_headline(page);
  page.hand.start_group(true);
  HowTops how{y + (page.layout.is_compact ? -8.0f : 4.0f), y};
  const float tall =
      page.layout.is_compact ? 56.0f : std::clamp(middle.height() * 0.1f, 64.0f, 120.0f);
  how.snug = y + tall + (page.layout.is_compact ? 16.0f : 68.0f);
  cover_for_how(page, how);
  if (!page.layout.is_compact) {
    y += 22;
    const Area room = {middle.left, y + 30, middle.right, y + 30 + tall};
    const WholeStrip strip = strip_in(page, room);
    length_arrow(page, y, strip.sheet.left, strip.sheet.right);
    y += 30;
  }
  const Area room = {middle.left, y, middle.right, y + tall};
  const WholeStrip strip = strip_in(page, room);
  const float mats_top = strip.sheet.bottom + 5;
  const EndPair ends = end_pair(page, {middle.left, mats_top, middle.right, middle.bottom});
  const auto& bottom = ends.bottom_end;
  const auto& top = ends.top_end;
  const Um first_seen = bottom.lying.along(bottom.sleeve.right);
  const Area bottom_frame = end_frame(strip, bottom.lying.from_um, first_seen);
  const Area top_frame = end_frame(strip, top.lying.from_um, top.lying.along(top.sleeve.right));
  draw_mat(page, bottom_frame, bottom.mat, true);
  draw_mat(page, top_frame, top.mat, false);
  draw_strip(page, strip);
  const float inset = strip.lying.px(first_seen - bottom.lying.from_um) + 8;
  lying_words(page, strip.sheet, inset);
  closeup_frames(page, strip, ends);
  draw_end(page, bottom);
  draw_end(page, top);
  strip_grip(page, strip);
  closeup_moves(page, ends);
  pull_handles(page);
  page.hand.start_group(false);
  how_slip(page, how);
}

}  // namespace pouncemark::web
