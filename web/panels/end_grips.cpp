#include "web/panels/end_grips.h"

#include <algorithm>
#include <string>
#include <utility>

#include "web/panels/end_measures.h"
#include "web/panels/make_marks.h"
#include "web/widgets/steel_rule.h"

namespace pouncemark::web {
namespace {

PullHandle handle_of(const Page& page, const EndCloseup& end, Measure measure, PullAxis axis) {
  PullHandle handle;
  handle.place = page.bench.place();
  handle.measure = measure;
  handle.axis = axis;
  handle.px_per_mm = end.lying.px_per_mm;
  return handle;
}

/// The line at the kept-clear end and the rule stop that it hangs on.
void kept_clear_grip(Page& page, const EndCloseup& end, const Ends& ends) {
  const Area& seen = end.sleeve;
  const float x = end.lying.x(end.is_bottom ? ends.bottom : ends.length - ends.top);
  const float rule_bottom = seen.bottom + kRuleGap + kRuleHeight;
  PullHandle handle =
      handle_of(page, end, end.is_bottom ? Measure::kept_clear_bottom : Measure::kept_clear_top,
                PullAxis::level);
  handle.id = end.is_bottom ? "stop.bottom" : "stop.top";
  handle.words = end.is_bottom ? "rule stop at the bottom end" : "rule stop at the top end";
  handle.sign = end.is_bottom ? 1 : -1;
  handle.line = {x, seen.top - 30, x, seen.bottom + kRuleGap + 17};
  handle.dots = {x, seen.top + 3, x, seen.bottom - 3};
  handle.block = rule_stop_area({x, rule_bottom});
  handle.always = true;
  rule_stop(page.brush, {x, rule_bottom});
  pull_handle(page, std::move(handle));
}

/// The rows along one long edge; `up` is the one that is drawn above.
void side_grips(Page& page, const EndCloseup& end, bool up, bool by_tab) {
  const Solved& now = page.bench.now();
  const Area& seen = end.sleeve;
  for (const auto kind : {solve::RowKind::staple, solve::RowKind::stitch}) {
    const bool is_staple = kind == solve::RowKind::staple;
    const auto rows = rows_at(now.results, page.bench.place(), kind);
    if (rows.empty() || rows.front()->run.is_empty) continue;
    PullHandle handle =
        handle_of(page, end, is_staple ? Measure::in_from_edge : Measure::stitch_in_from_edge,
                  PullAxis::upright);
    handle.id = is_staple ? "staple_row" : "stitch_row";
    handle.id += up ? ".up" : ".down";
    if (!end.is_bottom) handle.id += ".top";
    handle.words = is_staple ? "staple row, in from the edge" : "stitch row, in from the edge";
    handle.sign = up ? 1 : -1;
    handle.by_tab = by_tab;
    const float in = end.lying.px(rows.front()->in_from_edge_um);
    const float y = up ? seen.top + in : seen.bottom - in;
    const float left = std::max(seen.left, end.lying.x(rows.front()->run.first_um()));
    const float right = std::min(seen.right, end.lying.x(rows.front()->run.last_um()));
    if (right <= left) continue;
    handle.line = {left, y, right, y};
    pull_handle(page, std::move(handle));
  }
}

/// The end of the stitch rows along one long edge, where it is not that of the staple rows.
void stitch_end_grip(Page& page, const EndCloseup& end, bool up, bool by_tab) {
  const Solved& now = page.bench.now();
  const auto rows = rows_at(now.results, page.bench.place(), solve::RowKind::stitch);
  if (rows.empty() || rows.front()->run.is_empty) return;
  PullHandle handle =
      handle_of(page, end, end.is_bottom ? Measure::stitch_clear_bottom : Measure::stitch_clear_top,
                PullAxis::level);
  handle.id = end.is_bottom ? "stitch_end.bottom" : "stitch_end.top";
  handle.id += up ? ".up" : ".down";
  handle.words = end.is_bottom ? "stitch row's end at the bottom" : "stitch row's end at the top";
  handle.sign = end.is_bottom ? 1 : -1;
  handle.by_tab = by_tab;
  const layout::Run& run = rows.front()->run;
  const float in = end.lying.px(rows.front()->in_from_edge_um);
  const float y = up ? end.sleeve.top + in : end.sleeve.bottom - in;
  const float x = end.lying.x(end.is_bottom ? run.first_um() : run.last_um());
  if (x < end.sleeve.left || x > end.sleeve.right) return;
  constexpr float kHalf = 9;
  handle.line = {x, y - kHalf, x, y + kHalf};
  page.brush.line({x, y - kHalf}, {x, y + kHalf}, kThread, 2);
  pull_handle(page, std::move(handle));
}

/// The long edge drawn below, and at the top end the end of the sheet.
void size_grips(Page& page, const EndCloseup& end) {
  const Area& seen = end.sleeve;
  PullHandle edge = handle_of(page, end, Measure::width, PullAxis::upright);
  edge.id = end.is_bottom ? "edge.bottom" : "edge.top";
  edge.words = "long edge, width of the sleeve";
  edge.by_tab = !end.is_bottom;
  edge.line = {seen.left, seen.bottom, seen.right, seen.bottom};
  pull_handle(page, std::move(edge));
  if (end.is_bottom) return;
  PullHandle sheet_end = handle_of(page, end, Measure::length, PullAxis::level);
  sheet_end.id = "sheet_end";
  sheet_end.words = "top end, length of the sleeve";
  sheet_end.line = {seen.right, seen.top, seen.right, seen.bottom};
  pull_handle(page, std::move(sheet_end));
}

/// The line where a flange ends, and the fold.
void make_grip(Page& page, const EndCloseup& end) {
  const Solved& now = page.bench.now();
  const job::Section& section = *section_at(now.job, now.results, page.bench.place());
  if (section.make == job::Make::two_leaf) return;
  const solve::Sleeve& sleeve = *sleeve_at(now.results, page.bench.place());
  const MakeLine line = make_line(section, sleeve, end.lying);
  const bool round = section.make == job::Make::round;
  PullHandle handle =
      handle_of(page, end, round ? Measure::flange : Measure::fold_radius, PullAxis::upright);
  handle.id = round ? "flange" : "fold";
  if (!end.is_bottom) handle.id += ".top";
  handle.words = round ? "flange" : "fold, inside radius";
  handle.sign = line.inward > 0 ? 1 : -1;
  handle.by_tab = end.is_bottom;
  handle.line = {end.sleeve.left, line.y, end.sleeve.right, line.y};
  pull_handle(page, std::move(handle));
}

}  // namespace

void sheet_grips(Page& page, const EndCloseup& end) {
  size_grips(page, end);
  make_grip(page, end);
}

void row_grips(Page& page, const EndCloseup& end) {
  const Solved& now = page.bench.now();
  const Place place = page.bench.place();
  const SewnEdges sewn = sewn_edges(*sleeve_at(now.results, place), end.lying.face_down);
  for (const bool up : {true, false}) {
    const bool is_first = up || !sewn.up;
    if (up ? sewn.up : sewn.down) side_grips(page, end, up, is_first && end.is_bottom);
  }
  kept_clear_grip(page, end, ends_of(now, place));
  // Pulled past the staple rows' end it stays in the hand.
  const Solved& rest = page.bench.at_rest();
  if (!stitch_ends_differ(rest.job, rest.results, place)) return;
  for (const bool up : {true, false}) {
    if (up ? sewn.up : sewn.down) stitch_end_grip(page, end, up, up || !sewn.up);
  }
}

}  // namespace pouncemark::web
