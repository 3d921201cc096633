#include "web/panels/end_measures.h"

#include <algorithm>

#include "engine/base/number_text.h"
#include "web/model/choices.h"
#include "web/model/words.h"
#include "web/panels/make_marks.h"

namespace pouncemark::web {
namespace {

constexpr float kArrowUp = 18;  ///< the kept-clear arrow stands this far above the sheet

bool is_large() { return text_size() == TextSize::large; }
float box_width() { return is_large() ? 116.0f : 92.0f; }

/// What the box holds, and what it was: at its inner side, or where that is too narrow on one line
/// at its outer side, clear of the arrow.
void kept_clear_words(Page& page, const EndCloseup& end, const Ends& ends, const Area& box) {
  const Brush& brush = page.brush;
  const float base = box.top + brush.rise(Role::text) + 5;
  std::string words = end.is_bottom ? "in from the bottom end" : "in from the top end";
  const float wide = brush.width_of(words, Role::text, false);
  const float edge = end.lying.x(end.is_bottom ? 0 : ends.length);
  const bool inner =
      end.is_bottom ? box.right + 24 + wide <= end.mat.right : box.left - 24 - wide >= end.mat.left;
  const Side side = end.is_bottom == inner ? Side::left : Side::right;
  const float at = side == Side::left ? box.right + 12 : box.left - 12;
  const bool outer =
      end.is_bottom ? box.left - 12 - wide >= edge - 40 : box.right + 12 + wide <= edge + 40;
  if (!inner && !outer) return;
  brush.words({at, base}, words, {Role::text, false, kInk, side});
  if (!inner) return;
  const Solved* before = page.bench.before();
  const Place place = page.bench.place();
  if (before == nullptr || held_within(before->results, place) != place) return;
  const Ends old = ends_of(*before, place);
  const Um was = end.is_bottom ? old.bottom : old.top;
  if (was == (end.is_bottom ? ends.bottom : ends.top)) return;
  brush.words({at, base + brush.pitch(Role::text)}, "was " + mm_text(was, 1),
              {Role::text, false, kSoft, side});
}

}  // namespace

Ends ends_of(const Solved& solved, Place place) {
  const auto figure = [&](Measure measure) {
    return measured(solved.job, solved.results, place, measure);
  };
  return {figure(Measure::length), figure(Measure::width), figure(Measure::kept_clear_bottom),
          figure(Measure::kept_clear_top), figure(Measure::spacing)};
}

void kept_clear_box(Page& page, const EndCloseup& end, const Ends& ends) {
  const Brush& brush = page.brush;
  const Area& seen = end.sleeve;
  const float edge = end.lying.x(end.is_bottom ? 0 : ends.length);
  const Um now = end.is_bottom ? ends.bottom : ends.length - ends.top;
  const float x = end.lying.x(now);
  brush.line({edge, seen.top - 30}, {edge, seen.top}, kInk, 2);
  brush.arrow({std::min(edge, x) + 1, seen.top - kArrowUp},
              {std::max(edge, x) - 1, seen.top - kArrowUp}, kPen, 2.4f, 8, true);
  const float height = box_height();
  const float width = box_width();
  const float top = seen.top - 12 - height;
  const float left = end.is_bottom
                         ? std::clamp(x + 12, edge, std::max(edge, end.mat.right - width - 16))
                         : std::clamp(x - 12 - width, end.mat.left + 8, edge - width);
  const Area box = area_at(left, top, width, height);
  const Um most = std::max<Um>(ends.length, 0);
  measure_box(page, {end.is_bottom ? "box.kept_clear" : "box.kept_clear_top",
                     end.is_bottom ? Measure::kept_clear_bottom : Measure::kept_clear_top,
                     box,
                     end.is_bottom ? "kept clear at the bottom end" : "kept clear at the top end",
                     {0, most}});
  kept_clear_words(page, end, ends, box);
}

void edge_boxes(Page& page, const EndCloseup& end, const Ends& ends) {
  const Brush& brush = page.brush;
  const Area& seen = end.sleeve;
  const Solved& now = page.bench.now();
  const Place place = page.bench.place();
  const Um staple = measured(now.job, now.results, place, Measure::in_from_edge);
  const Um stitch = measured(now.job, now.results, place, Measure::stitch_in_from_edge);
  // The staple row is measured at the upper edge and the stitch row at the lower one, where both
  // are sewn; else both at the edge that is.
  const SewnEdges sewn = sewn_edges(*sleeve_at(now.results, place), end.lying.face_down);
  const bool both = sewn.up && sewn.down;
  const float edge = seen.left;
  const float last = end.lying.x(ends.bottom);
  const auto measure = [&](Um in, bool at_top, float x, float until, Colour colour) {
    const float from = at_top ? seen.top : seen.bottom;
    const float row = at_top ? from + end.lying.px(in) : from - end.lying.px(in);
    brush.line({edge - 24, from}, {edge - 4, from}, kInk, 1.2f);
    brush.arrow({x, std::min(from, row) + 1}, {x, std::max(from, row) - 1}, colour, 1.8f, 6, true);
    brush.line({edge - 22, row}, {until, row}, colour, 1);
    return (from + row) / 2;
  };
  const float staple_y = measure(staple, sewn.up, edge - (both ? 14.0f : 20.0f), last - 10, kInk);
  const float stitch_y = measure(stitch, !sewn.down, edge - (both ? 14.0f : 8.0f), last, kThread);
  const float width = end.gutter - 30;
  const float left = end.mat.left + 4;
  const float height = is_large() ? 46.0f : 38.0f;
  const float apart = height + 10;
  float first = staple_y - height / 2;
  float second = std::max(stitch_y - height / 2, first + apart);
  if (!both && !sewn.up) {
    second = std::min(stitch_y - height / 2, seen.bottom - height + 4);
    first = second - apart;
  }
  const Limits limits{0, std::max<Um>(ends.width / 2, 0)};
  const float was_room = end.sleeve.left - left - 6;
  measure_box(page, {"box.in_from_edge",
                     Measure::in_from_edge,
                     area_at(left, first, width, height),
                     "staple row, in from the edge",
                     limits,
                     kInk,
                     {left, first - 7},
                     was_room});
  measure_box(page, {"box.stitch_in_from_edge",
                     Measure::stitch_in_from_edge,
                     area_at(left, second, width, height),
                     "stitch row, in from the edge",
                     limits,
                     kThread,
                     {left, second + height + 18},
                     was_room});
  if (second - first > height + 76) {
    const float base = first + height + 18;
    brush.words({left, base}, "in from", {Role::second_line, false, kInk});
    brush.words({left, base + 19}, "the edge", {Role::second_line, false, kInk});
  }
}

void stitch_end_box(Page& page, const EndCloseup& end) {
  const Solved& rest = page.bench.at_rest();
  if (!stitch_ends_differ(rest.job, rest.results, page.bench.place())) return;
  const Brush& brush = page.brush;
  const std::string words = "stitch rows, in from the end";
  const float wide = brush.width_of(words, Role::text, false);
  const float height = is_large() ? 46.0f : 38.0f;
  const float top = end.sleeve.bottom + kRuleGap + kRuleHeight + 9;
  // At the inner side, clear of the rule stop; without words where those would reach it.
  const bool bottom = end.is_bottom;
  const float left = bottom ? end.sleeve.right - box_width() - 4 : end.sleeve.left + 4;
  measure_box(page, {bottom ? "box.stitch_clear" : "box.stitch_clear_top",
                     bottom ? Measure::stitch_clear_bottom : Measure::stitch_clear_top,
                     area_at(left, top, box_width(), height),
                     bottom ? "stitch rows, kept clear at the bottom end"
                            : "stitch rows, kept clear at the top end",
                     {0, kMostLengthUm},
                     kThread});
  const Ends ends = ends_of(page.bench.now(), page.bench.place());
  const float stop = end.lying.x(bottom ? ends.bottom : ends.length - ends.top);
  const float at = bottom ? left - 10 : left + box_width() + 10;
  if (bottom ? at - wide < stop + 40 : at + wide > stop - 40) return;
  brush.words({at, top + height / 2 + brush.rise(Role::text) / 2}, words,
              {Role::text, false, kThread, bottom ? Side::right : Side::left});
}

void width_box(Page& page, const EndCloseup& end) {
  const Brush& brush = page.brush;
  const Area& seen = end.sleeve;
  const float x = seen.right + 14;
  for (const float y : {seen.top, seen.bottom}) brush.line({x - 8, y}, {x + 8, y}, kInk, 1.2f);
  brush.arrow({x, seen.top + 1}, {x, seen.bottom - 1}, kInk, 1.8f, 6, true);
  const float height = is_large() ? 46.0f : 38.0f;
  const Solved& now = page.bench.now();
  const Held held = held_between(now.job, now.results, page.bench.place(), Measure::width);
  const Area box = area_at(x + 10, seen.mid_y() - height / 2, end.gutter - 30, height);
  measure_box(page, {"box.width",
                     Measure::width,
                     box,
                     "width",
                     {held.least, held.most},
                     kInk,
                     {box.left, box.bottom + 38}});
  brush.words({box.left, box.bottom + 18}, "wide", {Role::second_line, false, kInk});
}

void lap_words(Page& page, const EndCloseup& end) {
  const Solved& now = page.bench.now();
  const Place place = page.bench.place();
  const auto& piece = now.results.pieces[static_cast<std::size_t>(place.piece)];
  const auto count = static_cast<int>(piece.sleeves.size());
  const job::Section* section = section_at(now.job, now.results, place);
  const float stitch =
      end.lying.px(measured(now.job, now.results, place, Measure::stitch_in_from_edge));
  // Between the edge and the rows: nowhere else do they touch no line. At the other end the
  // kept-clear line would run through them.
  if (end.is_bottom || count < 2 || std::min(stitch, end.lying.px(section->lap_um)) < 23) return;
  if (is_large()) return;
  // A joining row that is drawn in the lap leaves no room for words there.
  const bool shared = section->side_seams == job::SideSeams::shared;
  const bool folded = section->make == job::Make::folded;
  const bool sewn_left = section->sewn_side.value_or(job::Side::right) == job::Side::left;
  const bool fold_up = sewn_left == end.lying.face_down;
  const std::string lap = "lap " + short_mm_text(section->lap_um, 1) + ": lies ";
  const auto say = [&](int neighbour, const char* how, bool up) {
    const auto& code = piece.sleeves[static_cast<std::size_t>(neighbour)].code;
    const float fold = folded && up == fold_up ? 8.0f : 0.0f;
    const float clear = shared ? end.lying.px(section->lap_um) + 2 : fold;
    const float base = up ? end.sleeve.top + 17 + clear : end.sleeve.bottom - 6 - clear;
    page.brush.words({end.sleeve.left + 16, base}, lap + how + code,
                     {Role::second_line, false, kInk});
  };
  const bool left_over = job::left_lies_over(*section);
  const char* of_left = left_over ? "under " : "over ";
  const char* of_right = left_over ? "over " : "under ";
  if (place.sleeve > 0) say(place.sleeve - 1, of_left, !end.lying.face_down);
  if (place.sleeve + 1 < count) say(place.sleeve + 1, of_right, end.lying.face_down);
}

}  // namespace pouncemark::web
