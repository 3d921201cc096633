#include "web/panels/pull_handle.h"

#include <algorithm>
#include <cstddef>
#include <utility>

#include <imgui.h>

#include "web/model/words.h"
#include "web/panels/page.h"

namespace pouncemark::web {
namespace {

bool is_empty(const Area& area) { return area.width() <= 0 && area.height() <= 0; }

float along(const PullHandle& handle, Spot at) {
  return handle.axis == PullAxis::level ? at.x : at.y;
}

/// The line and its block, for taking hold; a handle without a block has its line twice.
std::vector<Grip> grips_of(const std::vector<PullHandle>& handles) {
  std::vector<Grip> grips;
  for (const PullHandle& handle : handles) {
    for (const Area& area : {is_empty(handle.block) ? handle.line : handle.block, handle.line}) {
      grips.push_back(Grip{area.left, area.top, area.right, area.bottom});
    }
  }
  return grips;
}

/// Where it is noted: what is drawn, as large as the hand finds it.
Area noted(const PullHandle& handle, float reach) {
  Area area = is_empty(handle.block) ? handle.line : handle.block;
  const float wider = std::max(0.0f, (reach - area.width()) / 2);
  const float higher = std::max(0.0f, (reach - area.height()) / 2);
  return {area.left - wider, area.top - higher, area.right + wider, area.bottom + higher};
}

/// Moves a figure as far as it goes, and remembers why it goes no further.
Resisted follow(PullState& state, const Solved& start, const Pull& pull, Um asked,
                const std::string& id) {
  Resisted held = held_back(start, pull.place, pull.measure, asked);
  state.reason = held.reason;
  state.reason_of = id;
  return held;
}

void take_hold(Page& page, const PullHandle& handle) {
  PullState& state = page.state.pulling;
  const Solved& now = page.bench.now();
  state.id = handle.id;
  state.is_there = true;
  state.bench_place = page.bench.place();
  state.reason.clear();
  state.pull = {handle.place,
                handle.measure,
                handle.axis,
                handle.sign,
                handle.px_per_mm,
                measured(now.job, now.results, handle.place, handle.measure),
                along(handle, page.hand.at())};
  state.asked_um = state.pull.start_um;
}

void move_held(Page& page, const PullHandle& handle) {
  const Pull pull = page.state.pulling.pull;
  const Um asked =
      pull.asked(along(handle, page.hand.at()), drag_step(page.hand.shift(), page.hand.ctrl()));
  if (!handle.refuses.empty()) {
    page.state.pulling.reason = asked == pull.start_um ? std::string() : handle.refuses;
    page.state.pulling.reason_of = handle.id;
    return;
  }
  if (asked == page.state.pulling.asked_um) return;
  page.state.pulling.asked_um = asked;
  page.later([&bench = page.bench, &state = page.state.pulling, pull, asked, id = handle.id] {
    const Solved& start = bench.at_rest();
    const Resisted held = follow(state, start, pull, asked, id);
    const Solved& now = bench.now();
    if (held.um == measured(now.job, now.results, pull.place, pull.measure)) return;
    bench.try_out(
        with_measure(start.job, start.results, pull.place, pull.measure, held.um),
        action_words(start.job, start.results, pull.place, pull.measure, pull.start_um, held.um));
  });
}

/// Where it came back to where it was, nothing was done.
void let_go(Page& page) {
  page.later([&bench = page.bench, &state = page.state.pulling] {
    const Pull& pull = state.pull;
    if (bench.is_moving()) {
      const Solved& now = bench.now();
      const bool is_back =
          measured(now.job, now.results, pull.place, pull.measure) == pull.start_um;
      is_back ? bench.put_back() : bench.let_go();
    }
    state.id.clear();
    state.reason.clear();
  });
}

void put_back(Page& page) {
  page.later([&bench = page.bench, &state = page.state.pulling] {
    state.id.clear();
    state.reason.clear();
    bench.put_back();
  });
}

/// The arrow keys move it the way they point, each press an action of its own.
void move_by_keys(Page& page, const PullHandle& handle) {
  Hand& hand = page.hand;
  hand.stands_on(kOnGrip);
  const int by = handle.axis == PullAxis::level ? hand.arrow_right() : -hand.arrow_up();
  if (by == 0 || !page.state.open_box.id.empty()) return;
  if (!handle.refuses.empty()) {
    page.state.pulling.reason = handle.refuses;
    page.state.pulling.reason_of = handle.id;
    return;
  }
  Pull pull;
  pull.place = handle.place;
  pull.measure = handle.measure;
  const Um step = by * handle.sign * key_step(hand.shift(), hand.ctrl());
  page.later([&bench = page.bench, &state = page.state.pulling, pull, step, id = handle.id] {
    const Solved& now = bench.now();
    const Um um = measured(now.job, now.results, pull.place, pull.measure);
    const Resisted held = follow(state, now, pull, um + step, id);
    if (held.um == um) return;
    bench.edit(with_measure(now.job, now.results, pull.place, pull.measure, held.um),
               action_words(now.job, now.results, pull.place, pull.measure, um, held.um));
  });
}

/// The small slip beside the hand: the figure, and why it goes no further.
void slip_at(Page& page, Spot at, bool is_upright, const std::string& figure,
             const std::string& reason) {
  const Brush& brush = page.brush;
  constexpr float kMostWide = 280;
  constexpr float kInside = 10;
  const auto lines = broken(brush, reason, kMostWide, Role::text, false);
  float wide = figure.empty() ? 0 : brush.width_of(figure, Role::figure, true);
  for (const auto& line : lines) {
    wide = std::max(wide, brush.width_of(line, Role::text, false));
  }
  const float first = figure.empty() ? 0 : brush.rise(Role::figure) + 12;
  const float high =
      first + 2 * kInside +
      (reason.empty() ? -8 : brush.pitch(Role::text) * static_cast<float>(lines.size()));
  // A finger hides what is below it; what moves level must not lie under the slip.
  const bool compact = page.layout.is_compact;
  const float apart = !is_upright ? (compact ? 54.0f : 26.0f) : (compact ? 12.0f : 8.0f);
  const float beside = compact ? 44.0f : 24.0f;
  const float most = page.layout.middle.right - wide - 2 * kInside - 8;
  const float left = std::clamp(at.x + beside, 8.0f, std::max(most, 8.0f));
  const float top = at.y - apart - high > 8 ? at.y - apart - high : at.y + apart;
  const Area slip = area_at(left, top, wide + 2 * kInside + 4, high);
  brush.fill({slip.left + kPaperEdge, slip.top + kPaperEdge, slip.right + kPaperEdge,
              slip.bottom + kPaperEdge},
             kFold);
  brush.fill(slip, kPaper);
  brush.fill({slip.left, slip.top, slip.left + 4, slip.bottom}, reason.empty() ? kPen : kStop);
  const float x = slip.left + kInside + 4;
  if (!figure.empty()) {
    const float base = slip.top + kInside + brush.rise(Role::figure) + 2;
    brush.words({x, base}, figure, {Role::figure, true, kPen});
    page.hand.note("pull.figure", slip, figure);
  }
  if (reason.empty()) return;
  brush.paragraph({x, slip.top + first + kInside + brush.rise(Role::text) + 2}, reason, kMostWide,
                  {});
  page.hand.note("pull.reason", slip, reason);
}

void draw_slip(Page& page, const PullHandle& handle, bool is_held) {
  const PullState& state = page.state.pulling;
  const bool resists = !state.reason.empty() && state.reason_of == handle.id;
  if (!is_held && !resists) return;
  std::string figure;
  // A rule stop hangs on the line that its box stands at: there the figure is read.
  const bool has_box = !is_empty(handle.block);
  if (has_box && !resists) return;
  if (handle.refuses.empty() && !has_box) {
    const Solved& now = page.bench.now();
    figure = box_text(measured(now.job, now.results, handle.place, handle.measure));
  }
  if (is_held && !page.bench.is_moving() && !resists) return;
  const Area area = noted(handle, 0);
  const Spot at = is_held ? page.hand.at() : Spot{area.mid_x(), area.mid_y()};
  slip_at(page, at, handle.axis == PullAxis::upright, figure,
          resists ? state.reason : std::string());
}

/// Under the pointer a line that is not drawn for itself shows that it can be taken.
void show_what_is_taken(Page& page, const PullHandle& handle) {
  const Area& line = handle.line;
  if (is_empty(handle.block))
    page.brush.line({line.left, line.top}, {line.right, line.bottom}, kPen, 2);
  else
    page.brush.frame(handle.block.inset(-3), kInk, 2, kCorner);
}

ImGuiMouseCursor shape_for(const PullHandle& handle, const PullState& state) {
  if (state.id == handle.id && !state.reason.empty()) return ImGuiMouseCursor_NotAllowed;
  return handle.axis == PullAxis::level ? ImGuiMouseCursor_ResizeEW : ImGuiMouseCursor_ResizeNS;
}

void hold_or_move(Page& page, const PullHandle& handle, const Touch& touch) {
  PullState& state = page.state.pulling;
  if (state.id != handle.id) {
    if (touch.taken) return take_hold(page, handle);
    if (touch.focused && state.id.empty()) move_by_keys(page, handle);
    return;
  }
  if (page.hand.escape() || page.bench.place() != state.bench_place) return put_back(page);
  move_held(page, handle);
  if (!page.hand.is_down()) let_go(page);
}

}  // namespace

void pull_handle(Page& page, PullHandle handle) {
  const Brush& brush = page.brush;
  const Solved& now = page.bench.now();
  const Solved* before = page.bench.before();
  const PullState& state = page.state.pulling;
  const Um um = measured(now.job, now.results, handle.place, handle.measure);
  Um was = um;
  if (handle.refuses.empty() && before != nullptr &&
      is_same_thing(before->results, now.results, handle.place)) {
    was = measured(before->job, before->results, handle.place, handle.measure);
  }
  const Area& line = handle.line;
  if (was != um) {
    const auto px = static_cast<float>(from_um(was - um) * handle.px_per_mm * handle.sign);
    const Area dots = is_empty(handle.dots) ? line : handle.dots;
    const float x = handle.axis == PullAxis::level ? px : 0;
    const float y = handle.axis == PullAxis::level ? 0 : px;
    brush.dashes({dots.left + x, dots.top + y}, {dots.right + x, dots.bottom + y}, kSoft, 2, 2, 4);
  }
  const bool moves = page.bench.is_moving() && was != um && !state.id.empty();
  if (moves)
    brush.dashes({line.left, line.top}, {line.right, line.bottom}, kPen, 3, 9, 5);
  else if (handle.always)
    brush.line({line.left, line.top}, {line.right, line.bottom}, kPen, 2);
  page.state.pulling.handles.push_back(std::move(handle));
}

void pull_handles(Page& page) {
  PullState& state = page.state.pulling;
  const std::vector<PullHandle> handles = std::exchange(state.handles, {});
  const bool can_pull = !page.bench.is_look_only() && page.state.open_box.id.empty();
  const float reach = page.layout.is_compact ? kCompactReachPx : kReachPx;
  const Spot at = page.hand.at();
  const int grip = can_pull ? pick(grips_of(handles), at.x, at.y, reach) : -1;
  state.is_there = false;
  for (std::size_t i = 0; i < handles.size(); ++i) {
    const PullHandle& handle = handles[i];
    const bool is_held = state.id == handle.id;
    state.is_there = state.is_there || is_held;
    const bool is_nearest = grip >= 0 && static_cast<std::size_t>(grip) / 2 == i;
    const Area area = noted(handle, reach);
    const Touch touch =
        page.hand.hold({handle.id, area, handle.words, true}, is_nearest, handle.by_tab);
    if (touch.over || is_held) ImGui::SetMouseCursor(shape_for(handle, state));
    focus_ring(page.brush, page.hand, noted(handle, 0).inset(-4), touch.focused);
    if (touch.over && !is_held && state.id.empty()) show_what_is_taken(page, handle);
    if (can_pull) hold_or_move(page, handle, touch);
    draw_slip(page, handle, is_held);
  }
  if (state.id.empty() && state.reason_of != page.hand.focused()) state.reason.clear();
}

void drop_lost_pull(Page& page) {
  PullState& state = page.state.pulling;
  if (!state.id.empty() && !state.is_there) put_back(page);
  state.is_there = false;
}

}  // namespace pouncemark::web
