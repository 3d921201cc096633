#include <algorithm>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/material/assumed.h"
#include "web/model/words.h"
#include "web/panels/end_measures.h"
#include "web/panels/make_marks.h"

namespace pouncemark::web {
namespace {

/// Room between the staple rows of a sleeve, or from the one row to the other edge, and where
/// arrows along the rows stand in it.
struct Between {
  float row = 0;          ///< height of the row the arrows belong to
  float middle = 0;       ///< height of the arrows
  bool is_tight = false;  ///< no room for figures over the arrow
};

Between between_rows(const EndCloseup& end, const solve::Row& row, const SewnEdges& sewn) {
  const float in = end.lying.px(row.in_from_edge_um);
  constexpr float kBare = 10;
  const float upper = end.sleeve.top + (sewn.up ? in : kBare);
  const float lower = end.sleeve.bottom - (sewn.down ? in : kBare);
  Between between;
  between.is_tight = lower - upper < 76;
  between.middle = (upper + lower) / 2 + (between.is_tight ? 0.0f : 12.0f);
  between.row = sewn.up ? upper : lower;
  return between;
}

/// One gap of the row: which two points, and how it is called.
struct Gap {
  Um inner = 0;  ///< the point at its inner side
  Um step = 0;   ///< centre to centre
  Um from = 0;
  Um to = 0;
  Um figure = 0;
  bool is_clear = false;  ///< measured from crown to crown
  bool is_short = false;  ///< the last one, filled with one more point
};

Gap gap_at(const job::Job& job, const layout::Run& run, bool is_bottom) {
  const std::int64_t last = run.points() - 1;
  Gap gap;
  gap.from = run.station_um(is_bottom ? 0 : last - 1);
  gap.to = run.station_um(is_bottom ? 1 : last);
  gap.inner = is_bottom ? gap.to : gap.from;
  gap.step = run.spacing_um();
  gap.is_short = run.step_um > 0 && gap.to - gap.from != run.step_um;
  gap.figure = gap.is_short ? gap.to - gap.from : run.spacing_um();
  const Um crown = job.crown_um.value_or(material::kAssumedCrownUm);
  gap.is_clear = job.spacing_is_clear_gap && gap.figure > crown;
  if (!gap.is_clear) return gap;
  gap.from += crown / 2;
  gap.to -= crown / 2;
  gap.figure -= crown;
  return gap;
}

const solve::Row* staple_row(const Page& page) {
  const auto rows = rows_at(page.bench.now().results, page.bench.place(), solve::RowKind::staple);
  return rows.empty() || rows.front()->run.is_empty ? nullptr : rows.front();
}

SewnEdges edges_of(const Page& page, const EndCloseup& end) {
  return sewn_edges(*sleeve_at(page.bench.now().results, page.bench.place()), end.lying.face_down);
}

/// The upright lines that lead from the row to an arrow's ends.
void witness(const Brush& brush, float x, const Between& between) {
  if (between.is_tight) return;
  const float away = between.row < between.middle ? 1.0f : -1.0f;
  brush.line({x, between.row + away * 12}, {x, between.middle + away * 8}, kInk, 1.2f);
}

/// Words set on cloth of their own, so that nothing runs through a letter.
void words_on_cloth(const Brush& brush, Spot base, const std::string& words, const Ink& ink) {
  const float width = brush.width_of(words, ink.role, ink.bold);
  const float left = ink.side == Side::right ? base.x - width : base.x;
  brush.fill({left - 3, base.y - brush.rise(ink.role) - 3, left + width + 3, base.y + 5}, kCloth);
  brush.words(base, words, ink);
}

bool spacing_has_changed(const Page& page) {
  const Headline line = headline(page.bench.now(), page.bench.before(), page.bench.place());
  return line.parts.size() > 2 && line.parts[2].changed;
}

/// What the arrow goes from and to, in words beside its figure.
std::string gap_words(const Gap& gap) {
  if (gap.is_short) return gap.is_clear ? "last gap, clear" : "last gap";
  return gap.is_clear ? "clear gap" : "centre to centre";
}

/// The figure beside the arrow, at its inner side clear of the staple there, where the arrow is too
/// short to carry it.
void figure_beside(Page& page, const EndCloseup& end, const Between& between, const Gap& gap,
                   const std::string& figure, Colour colour) {
  const Brush& brush = page.brush;
  const Area& seen = end.sleeve;
  const Um crown = page.bench.now().job.crown_um.value_or(material::kAssumedCrownUm);
  const float clear = end.lying.px(crown / 2) + 12;
  const float at = end.lying.x(gap.inner) + (end.is_bottom ? clear : -clear);
  const float wide = brush.width_of(figure, Role::figure, true);
  const float far_end = end.is_bottom ? at + wide : at - wide;
  if (far_end > seen.right - 8 || far_end < seen.left + 8) return;
  const float base = between.middle + (between.is_tight ? brush.rise(Role::figure) / 2 : -9.0f);
  const Side side = end.is_bottom ? Side::left : Side::right;
  words_on_cloth(brush, {at, base}, figure, {Role::figure, true, colour, side});
  const std::string words = gap_words(gap);
  const float room = brush.width_of(words, Role::text, false) + 16;
  const bool plain = !gap.is_clear && !gap.is_short;
  // Between tight rows the next staple stands in the way of words.
  const bool blocked = between.is_tight && wide + room > end.lying.px(gap.step - crown) - 16;
  if (plain || blocked || far_end + room > seen.right || far_end - room < seen.left) return;
  const float next = end.is_bottom ? far_end + 10 : far_end - 10;
  words_on_cloth(brush, {next, base}, words, {Role::text, false, kInk, side});
}

}  // namespace

void spacing_arrow(Page& page, const EndCloseup& end) {
  const solve::Row* row = staple_row(page);
  if (row == nullptr || row->run.points() < 2) return;
  const Gap gap = gap_at(page.bench.now().job, row->run, end.is_bottom);
  const float a = end.lying.x(gap.from);
  const float b = end.lying.x(gap.to);
  const Area& seen = end.sleeve;
  if (a < seen.left || b > seen.right) return;
  const Brush& brush = page.brush;
  const Between between = between_rows(end, *row, edges_of(page, end));
  for (const float x : {a, b}) witness(brush, x, between);
  brush.arrow({a + 1, between.middle}, {b - 1, between.middle}, kInk, 2, 7, true);
  const std::string figure = mm_text(gap.figure, 2);
  const Colour colour = spacing_has_changed(page) ? kPen : kInk;
  const std::string words = gap_words(gap);
  // The ends of the arrow stand on lines that are dragged: the figure is pressed between them.
  const char* line = gap.is_short   ? "slip.last_gap"
                     : gap.is_clear ? "slip.clear_gap"
                                    : "slip.spacing";
  figure_on_bench(page, {end.is_bottom ? "spacing.bottom" : "spacing.top",
                         line,
                         {a + 9, between.middle - 28, b - 9, between.middle - 4},
                         figure + " " + words + ", show the sum"});
  const float wide = brush.width_of(figure, Role::figure, true);
  if (wide + 8 >= b - a || between.is_tight) {
    figure_beside(page, end, between, gap, figure, colour);
    return;
  }
  brush.words({(a + b) / 2, between.middle - 9}, figure,
              {Role::figure, true, colour, Side::middle});
  if (!end.is_bottom && !gap.is_short) return;
  if (b + 110 > seen.right && end.is_bottom) return;
  const Side side = end.is_bottom ? Side::left : Side::right;
  const float at = end.is_bottom ? b + 10 : a - 10;
  const bool is_centre = !gap.is_clear && !gap.is_short;
  brush.words({at, between.middle - 9}, is_centre ? "centre to" : words,
              {Role::text, false, kInk, side});
  if (!is_centre) return;
  brush.words({at, between.middle - 9 + brush.pitch(Role::text)}, "centre",
              {Role::text, false, kInk, side});
}

void left_over_arrow(Page& page, const EndCloseup& end) {
  const solve::Row* row = staple_row(page);
  if (row == nullptr || row->run.step_um == 0 || row->run.left_over_um == 0) return;
  const Ends ends = ends_of(page.bench.now(), page.bench.place());
  const layout::Run& run = row->run;
  const Um from = end.is_bottom ? ends.bottom : run.last_um();
  const Um to = end.is_bottom ? run.first_um() : ends.length - ends.top;
  if (to <= from) return;
  const float a = end.lying.x(from);
  const float b = end.lying.x(to);
  if (a < end.sleeve.left || b > end.sleeve.right) return;
  const Brush& brush = page.brush;
  const std::string words = short_mm_text(to - from, 2) + " left over";
  const Side side = end.is_bottom ? Side::left : Side::right;
  const Ink ink{Role::text, true, kInk, side};
  const float at = end.is_bottom ? a + 8 : b - 8;
  const float head = std::min(7.0f, (b - a) / 3);
  const Between between = between_rows(end, *row, edges_of(page, end));
  float y = between.middle;
  if (between.is_tight) {
    // Words between tight rows would hide staples: they stand outside the stitch row instead.
    const Um in = measured(page.bench.now().job, page.bench.now().results, page.bench.place(),
                           Measure::stitch_in_from_edge);
    y = end.sleeve.top + std::max(end.lying.px(in) - 9, 20.0f);
    for (const float x : {a, b}) brush.line({x, y - 5}, {x, between.row}, kInk, 1.2f);
    brush.words({at, y - 7}, words, ink);
  } else {
    witness(brush, end.is_bottom ? b : a, between);
    words_on_cloth(brush, {at, y + brush.rise(Role::text) + 14}, words, ink);
  }
  brush.arrow({a + 1, y}, {b - 1, y}, kPen, 2, head, true);
  page.hand.note(end.is_bottom ? "left_over.bottom" : "left_over.top", {a, y - 20, b, y + 20},
                 words);
}

void shared_words(Page& page, const EndCloseup& end) {
  if (!end.is_bottom) return;
  const float base = end.sleeve.mid_y() + page.brush.rise(Role::text) / 2;
  page.brush.start_window(end.sleeve);
  words_on_cloth(page.brush, {end.sleeve.left + 40, base}, "its joining rows are its side seams",
                 {});
  page.brush.end_window();
}

}  // namespace pouncemark::web
