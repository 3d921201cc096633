#include "web/panels/end_measures.h"

#include <algorithm>

#include "engine/base/number_text.h"
#include "web/model/words.h"

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
      end.is_bottom ? box.right + 12 + wide <= end.mat.right : box.left - 12 - wide >= end.mat.left;
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

void spacing_arrow(Page& page, const EndCloseup& end) {
  const Solved& now = page.bench.now();
  const auto rows = rows_at(now.results, page.bench.place(), solve::RowKind::staple);
  if (rows.empty() || rows.front()->run.points() < 2) return;
  const layout::Run& run = rows.front()->run;
  const std::int64_t last = run.points() - 1;
  const float a = end.lying.x(run.station_um(end.is_bottom ? 0 : last - 1));
  const float b = end.lying.x(run.station_um(end.is_bottom ? 1 : last));
  if (a < end.sleeve.left || b > end.sleeve.right) return;
  const Brush& brush = page.brush;
  const float from_row = end.lying.px(rows.front()->in_from_edge_um);
  const bool tight = end.sleeve.height() - 2 * from_row < 76;
  const float middle = end.sleeve.mid_y() + (tight ? 0.0f : 12.0f);
  if (!tight) {
    for (const float x : {a, b}) {
      brush.line({x, end.sleeve.top + from_row + 12}, {x, middle + 8}, kInk, 1.2f);
    }
  }
  brush.arrow({a + 1, middle}, {b - 1, middle}, kInk, 2, 7, true);
  const Headline line = headline(now, page.bench.before(), page.bench.place());
  const bool changed = line.parts.size() > 2 && line.parts[2].changed;
  const std::string figure = mm_text(run.spacing_um(), 2);
  const float wide = brush.width_of(figure, Role::figure, true);
  // Too narrow for the figure: it stands beside the arrow, on the inner side.
  const bool fits = wide + 8 < b - a && !tight;
  // Clear of the staple's leg; on cloth of its own where the next staple is near.
  const float beside = end.lying.px(6'000) + 12;
  const Side side = fits ? Side::middle : end.is_bottom ? Side::left : Side::right;
  const float at = side == Side::middle ? (a + b) / 2 : end.is_bottom ? b + beside : a - beside;
  const float far_end = side == Side::left ? at + wide : at - wide;
  if (side != Side::middle && (far_end > end.sleeve.right - 8 || far_end < end.sleeve.left + 8)) {
    return;
  }
  if (tight) {
    const float left = side == Side::left ? at : at - wide;
    const float high = brush.rise(Role::figure) / 2 + 2;
    brush.fill({left - 3, middle - high, left + wide + 3, middle + high}, kCloth);
  }
  const float base = tight ? middle + brush.rise(Role::figure) / 2 : middle - 9;
  brush.words({at, base}, figure, {Role::figure, true, changed ? kPen : kInk, side});
  if (!end.is_bottom || !fits) return;
  if (b + 110 > end.sleeve.right) return;
  brush.words({b + 10, middle - 9}, "centre to", {});
  brush.words({b + 10, middle - 9 + brush.pitch(Role::text)}, "centre", {});
}

void edge_boxes(Page& page, const EndCloseup& end, const Ends& ends) {
  const Brush& brush = page.brush;
  const Area& seen = end.sleeve;
  const Solved& now = page.bench.now();
  const Um staple = measured(now.job, now.results, page.bench.place(), Measure::in_from_edge);
  const Um stitch =
      measured(now.job, now.results, page.bench.place(), Measure::stitch_in_from_edge);
  const float edge = seen.left;
  const float width = end.gutter - 30;
  const float left = end.mat.left + 4;
  const float height = is_large() ? 46.0f : 38.0f;
  const float row_y = seen.top + end.lying.px(staple);
  const float seam_y = seen.bottom - end.lying.px(stitch);
  const Limits limits{0, std::max<Um>(ends.width / 2, 0)};
  brush.line({edge - 24, seen.top}, {edge - 4, seen.top}, kInk, 1.2f);
  brush.arrow({edge - 14, seen.top + 1}, {edge - 14, row_y}, kInk, 1.8f, 6, true);
  brush.line({edge - 22, row_y}, {end.lying.x(ends.bottom) - 10, row_y}, kInk, 1);
  brush.arrow({edge - 14, seam_y}, {edge - 14, seen.bottom - 1}, kThread, 1.8f, 6, true);
  brush.line({edge - 22, seam_y}, {end.lying.x(ends.bottom), seam_y}, kThread, 1);
  const float first = (seen.top + row_y) / 2 - height / 2;
  const float second = std::max((seen.bottom + seam_y) / 2 - height / 2, first + height + 10);
  measure_box(page, {"box.in_from_edge", Measure::in_from_edge, area_at(left, first, width, height),
                     "staple row, in from the edge", limits});
  measure_box(page, {"box.stitch_in_from_edge", Measure::stitch_in_from_edge,
                     area_at(left, second, width, height), "stitch row, in from the edge", limits,
                     kThread});
  if (second - first > height + 76) {
    const float base = first + height + 18;
    brush.words({left, base}, "in from", {Role::second_line, false, kInk});
    brush.words({left, base + 19}, "the edge", {Role::second_line, false, kInk});
  }
}

void width_box(Page& page, const EndCloseup& end) {
  const Brush& brush = page.brush;
  const Area& seen = end.sleeve;
  const float x = seen.right + 14;
  for (const float y : {seen.top, seen.bottom}) brush.line({x - 8, y}, {x + 8, y}, kInk, 1.2f);
  brush.arrow({x, seen.top + 1}, {x, seen.bottom - 1}, kInk, 1.8f, 6, true);
  const float height = is_large() ? 46.0f : 38.0f;
  const Solved& now = page.bench.now();
  const job::Section* section = section_at(now.job, now.results, page.bench.place());
  const Um least = section->count > 1 ? section->lap_um + kLeastLengthUm : kLeastLengthUm;
  const Area box = area_at(x + 10, seen.mid_y() - height / 2, end.gutter - 30, height);
  measure_box(page, {"box.width", Measure::width, box, "width", {least, kMostLengthUm}});
  brush.words({box.left, box.bottom + 18}, "wide", {Role::second_line, false, kInk});
}

void lap_words(Page& page, const EndCloseup& end) {
  const Solved& now = page.bench.now();
  const Place place = page.bench.place();
  const auto& piece = now.results.pieces[static_cast<std::size_t>(place.piece)];
  const auto count = static_cast<int>(piece.sleeves.size());
  const job::Section* section = section_at(now.job, now.results, place);
  if (count < 2 || end.lying.px(section->lap_um) < 18 || is_large()) return;
  const std::string lap = "lap " + short_mm_text(section->lap_um, 1) + ": lies ";
  const auto say = [&](int neighbour, const char* how, bool up) {
    const auto& code = piece.sleeves[static_cast<std::size_t>(neighbour)].code;
    const float base = up ? end.sleeve.top + 16 : end.sleeve.bottom - 6;
    page.brush.words({end.sleeve.left + 16, base}, lap + how + code,
                     {Role::second_line, false, kInk});
  };
  if (place.sleeve > 0) say(place.sleeve - 1, "under ", !end.lying.face_down);
  if (place.sleeve + 1 < count) say(place.sleeve + 1, "over ", end.lying.face_down);
}

}  // namespace pouncemark::web
