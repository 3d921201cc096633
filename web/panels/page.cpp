#include "web/panels/page.h"

#include <algorithm>
#include <utility>

#include "web/model/words.h"

namespace pouncemark::web {

Layout layout_for(float width, float height) {
  const bool large = text_size() == TextSize::large;
  Layout layout;
  layout.width = width;
  layout.height = height;
  layout.is_compact = width < (large ? 1700.0f : 1200.0f);
  const float bar_height = large ? 66.0f : 52.0f;
  const float top = stage_row_height() + 14;
  layout.bar = {0, height - bar_height, width, height};
  const float bottom = layout.bar.top - 8;
  if (layout.is_compact) {
    const float tray = large ? 97.0f : 82.0f;
    layout.middle = {kPageEdge, top, width - kPageEdge, bottom - tray - 8};
    layout.follows = {kPageEdge - 3, bottom - tray, width - kPageEdge + 3, bottom};
    return layout;
  }
  const float column = large ? 420.0f : 334.0f;
  layout.follows = {width - kPageEdge - column, top, width - kPageEdge, bottom};
  layout.middle = {kPageEdge, top, layout.follows.left - kPageEdge, bottom};
  return layout;
}

void measure_box(Page& page, const MeasureBox& box) {
  const Bench& bench = page.bench;
  const Solved& now = bench.now();
  const Place place = bench.place();
  const Um um = measured(now.job, now.results, place, box.measure);
  BoxLook look;
  look.um = um;
  look.figure = box_text(um);
  look.name = box.name;
  look.limits = box.limits;
  look.colour = box.colour;
  const Solved* before = bench.before();
  if (before != nullptr && held_within(before->results, place) == place) {
    const Um was = measured(before->job, before->results, place, box.measure);
    look.is_changed = was != um;
    const std::string words = "was " + box_text(was);
    const bool fits = page.brush.width_of(words, Role::second_line, false) <= box.was_room;
    if (look.is_changed && box.was.y > 0 && fits) {
      page.brush.words(box.was, words, {Role::second_line, false, kSoft});
    }
  }
  const auto kept = length_box(page.brush, page.hand, page.state.open_box, box.id, box.area, look);
  if (!kept) return;
  const Um is = *kept;
  page.later([&bench_now = page.bench, place, measure = box.measure, um, is] {
    const Solved& solved_now = bench_now.now();
    bench_now.edit(with_measure(solved_now.job, solved_now.results, place, measure, is),
                   action_words(solved_now.job, solved_now.results, place, measure, um, is));
  });
}

float face_switch(Page& page, float right, float top) {
  const float height = button_height();
  const bool down = page.state.is_face_down;
  const float down_width = std::max(140.0f, button_width(page.brush, "Face down"));
  const float front_width = std::max(114.0f, button_width(page.brush, "Front"));
  const Area second = {right - down_width, top, right, top + height};
  const Area first = {second.left - 8 - front_width, top, second.left - 8, top + height};
  const auto kind = [](bool chosen) { return chosen ? ButtonKind::chosen : ButtonKind::plain; };
  if (page.hand.asked(KeyAct::turn_over)) {
    page.later([&state = page.state] { state.is_face_down = !state.is_face_down; });
  }
  if (button(page.brush, page.hand, "face.front", first, "Front", {kind(!down)})) {
    page.later([&state = page.state] { state.is_face_down = false; });
  }
  if (button(page.brush, page.hand, "face.down", second, "Face down", {kind(down)})) {
    page.later([&state = page.state] { state.is_face_down = true; });
  }
  return first.left;
}

void open_or_close_sum(Page& page, const std::string& slip_id) {
  const bool has_tray = page.layout.is_compact;
  page.later([&state = page.state, slip_id, has_tray] {
    const bool is_open = state.open_sum == slip_id && (!has_tray || state.shows_all_follows);
    state.open_sum = is_open ? std::string() : slip_id;
    if (has_tray && !is_open) state.shows_all_follows = true;
  });
}

void figure_on_bench(Page& page, const FigureOnBench& figure) {
  const Area& area = figure.area;
  // 9 mm, as far as a finger is concerned.
  constexpr float kLeast = 34;
  const float by = std::max(0.0f, kLeast - area.height()) / 2;
  const float aside = std::max(0.0f, kLeast - area.width()) / 2;
  const Touch touch = page.hand.touch(
      figure.place, {area.left - aside, area.top - by, area.right + aside, area.bottom + by},
      figure.words);
  const bool is_open = page.state.open_sum == figure.slip_id;
  if (touch.over || is_open) {
    page.brush.line({area.left, area.bottom}, {area.right, area.bottom}, kInk, is_open ? 3 : 1.5f);
  }
  focus_ring(page.brush, page.hand, area, touch.focused);
  if (touch.clicked || (touch.focused && page.hand.sum_key())) {
    open_or_close_sum(page, figure.slip_id);
  }
}

namespace {

float width_of(const Brush& brush, const Headline& line) {
  float width = 0;
  for (const HeadlinePart& part : line.parts) {
    width += brush.width_of(part.words, part.large ? Role::headline : Role::verb, part.large);
  }
  return width;
}

/// The sentence in full where it fits, else its shorter words, and of those as many as fit.
void fit(const Brush& brush, float room, Headline* line) {
  if (width_of(brush, *line) <= room) return;
  for (HeadlinePart& part : line->parts) {
    if (!part.short_words.empty()) part.words = part.short_words;
  }
  while (line->parts.size() > 1 && width_of(brush, *line) > room) line->parts.pop_back();
}

}  // namespace

Headline told_headline(const Bench& bench, const PageState& state) {
  if (state.stage == Stage::curve) return state.curve.view.headline;
  const bool is_sewing = state.stage == Stage::sew && !state.sew.view.kinds.empty();
  if (is_sewing && !is_whole_hanging(bench.place())) return state.sew.view.headline;
  return headline(bench.now(), bench.before(), bench.place());
}

void headline_words(Page& page, Spot base, float limit, bool with_why) {
  Headline line = told_headline(page.bench, page.state);
  const Brush& brush = page.brush;
  const std::string whole = plain_words(line);
  fit(brush, std::min(limit, page.layout.middle.right) - base.x, &line);
  float x = base.x;
  for (const HeadlinePart& part : line.parts) {
    const Role role = part.large ? Role::headline : Role::verb;
    const float wide =
        brush.words({x, base.y}, part.words, {role, part.large, part.changed ? kPen : kInk});
    if (!part.id.empty()) {
      const Area area = {x, base.y - brush.rise(role) - 6, x + wide, base.y + 6};
      figure_on_bench(
          page, {"figure." + part.id, "slip." + part.id, area, part.words + ", show the sum"});
    }
    x += wide;
  }
  page.hand.note("headline", {base.x, base.y - 30, x, base.y + 6}, whole);
  if (with_why) {
    brush.words({base.x, base.y + brush.pitch(Role::text) + 3}, line.because,
                {Role::text, false, kSoft});
  }
}

}  // namespace pouncemark::web
