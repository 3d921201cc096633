#include "web/panels/lap_closeup.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/base/number_text.h"
#include "web/model/words.h"
#include "web/panels/lying_marks.h"
#include "web/panels/make_marks.h"
#include "web/panels/place_tags.h"

namespace pouncemark::web {
namespace {

constexpr Um kIn = 12'000;
constexpr double kSeenMm = 110;  ///< across the lap

const solve::Piece& piece_of(const Page& page) {
  return page.bench.now().results.pieces[static_cast<std::size_t>(page.bench.place().piece)];
}

const job::Section& section_of(const Page& page) {
  const Solved& now = page.bench.now();
  return *section_at(now.job, now.results, page.bench.place());
}

const solve::Sleeve& sleeve_of(const Page& page, int index) {
  return piece_of(page).sleeves[static_cast<std::size_t>(index)];
}

/// The sleeve at the left lies over the one at the right.
bool left_is_over(const Page& page) { return job::left_lies_over(section_of(page)); }

/// Where the right edge of the left sleeve and the left edge of the right one stand.
struct LapEdges {
  float left_sleeve = 0;
  float right_sleeve = 0;
  float seen = 0;    ///< of the one that lies over
  float hidden = 0;  ///< of the one that lies under
};

LapEdges edges_of(const Page& page, const LapView& view) {
  LapEdges edges;
  edges.left_sleeve = view.lying.face_down ? view.upper : view.lower;
  edges.right_sleeve = view.lying.face_down ? view.lower : view.upper;
  const bool left_over = left_is_over(page);
  edges.seen = left_over ? edges.left_sleeve : edges.right_sleeve;
  edges.hidden = left_over ? edges.right_sleeve : edges.left_sleeve;
  return edges;
}

LyingPart part_of(const LapView& view) {
  LyingPart part;
  part.window = view.window;
  part.lying = view.lying;
  return part;
}

/// The folded edge in the lap, where there is one: a second line beside it within its sleeve.
void folded_edge(Page& page, const LapView& view, const LapEdges& edges) {
  const job::Section& section = section_of(page);
  if (section.make != job::Make::folded) return;
  constexpr float kApart = 6;
  const Area& seen = view.window;
  const float down = view.lying.face_down ? -1.0f : 1.0f;
  // Sewn at the left, a sleeve is folded at its right edge.
  const bool of_left = section.sewn_side.value_or(job::Side::right) == job::Side::left;
  const float edge = of_left ? edges.left_sleeve : edges.right_sleeve;
  const float inward = of_left ? -down : down;
  if (of_left == left_is_over(page)) {
    fold_line(page.brush, seen.left, seen.right, edge, inward, kApart);
    return;
  }
  const float second = edge + inward * kApart;
  page.brush.dashes({seen.left, second}, {seen.right, second}, kSheetEdge, 2, 8, 5);
}

void sheets(Page& page, const LapView& view) {
  const Brush& brush = page.brush;
  const Area& seen = view.window;
  brush.fill(seen, kSheet);
  brush.fill({seen.left, view.upper, seen.right, view.lower}, kLap);
  const float in = view.lying.px(kIn);
  const float x0 = view.lying.x(kIn);
  const float x1 = view.lying.x(piece_of(page).length_um - kIn);
  // The cloth of each sleeve ends short of its own edge, under the joining row of neither.
  const LyingPart part = part_of(view);
  draw_cloth(page, part, {x0, seen.top - 20, x1, view.lower - in}, 7);
  draw_cloth(page, part, {x0, view.upper + in, x1, seen.bottom + 20}, 7);
  const LapEdges edges = edges_of(page, view);
  brush.line({seen.left, edges.seen}, {seen.right, edges.seen}, kSheetEdge, 3);
  brush.dashes({seen.left, edges.hidden}, {seen.right, edges.hidden}, kSheetEdge, 2, 8, 5);
  brush.line({seen.left, seen.top}, {seen.left, seen.bottom}, kSheetEdge, 3);
  folded_edge(page, view, edges);
}

/// A joining row has a cross tick on every stitch.
void ticks_across(Page& page, const LapView& view, const solve::Row& row) {
  const float stitch = view.lying.px(row.run.spacing_um());
  if (stitch < 4) return;
  const float y = view.lying.y(to_um(row.guide.from.x));
  for (float x = view.lying.x(row.run.first_um()) + stitch / 2 - 1.5f; x < view.window.right;
       x += stitch) {
    page.brush.line({x, y - 4.5f}, {x, y + 4.5f}, kThread, 1.4f);
  }
}

/// The rows of this lap: its own, and the side rows of both sleeves at their edges in it.
bool is_here(const Page& page, const LapView& view, const solve::Row& row) {
  if (row.place == solve::RowPlace::lap) return row.sleeve == view.lap;
  if (row.sleeve != view.lap && row.sleeve != view.lap + 1) return false;
  const solve::Sleeve& sleeve = sleeve_of(page, row.sleeve);
  const Um across = to_um(row.guide.from.x) - sleeve.left_um;
  return (row.sleeve == view.lap) == (across > sleeve.width_um / 2);
}

/// Draws the rows and gives how far from the lap's middle they reach.
float rows(Page& page, const LapView& view) {
  RowLook look;
  look.line_px = 2.4f;
  float reach = (view.lower - view.upper) / 2;
  for (const auto kind : {solve::RowKind::stitch, solve::RowKind::staple}) {
    for (const solve::Row* row : rows_at(page.bench.now().results, page.bench.place(), kind)) {
      if (!is_here(page, view, *row)) continue;
      const float y = view.lying.y(to_um(row->guide.from.x));
      if (y < view.window.top + 3 || y > view.window.bottom - 3) continue;
      draw_row(page, part_of(view), *row, look);
      reach = std::max(reach, std::fabs(y - view.window.mid_y()));
      const bool joins = row->place == solve::RowPlace::lap && kind == solve::RowKind::stitch;
      if (joins) ticks_across(page, view, *row);
    }
  }
  return reach + 10;
}

void torn_right(Page& page, const Area& seen) {
  const int count = std::max(2, static_cast<int>(seen.height() / 9));
  const float step = (seen.height() + 6) / static_cast<float>(count);
  for (int i = 0; i < count; ++i) {
    const float y = seen.top - 3 + step * static_cast<float>(i);
    const std::array<Spot, 3> tooth = {Spot{seen.right + 1, y}, Spot{seen.right - 5, y + step / 2},
                                       Spot{seen.right + 1, y + step}};
    page.brush.shape(tooth, kBench);
  }
}

/// "2-07 lies over": pressed it goes to that sleeve. Gives its right edge.
float sleeve_label(Page& page, const LapView& view, int index, bool is_above) {
  const Brush& brush = page.brush;
  const bool is_left = index == view.lap;
  const bool is_over = is_left == left_is_over(page);
  const std::string& code = sleeve_of(page, index).code;
  const std::string words = code + (is_over ? " lies over" : " lies under");
  const float left = view.window.left + view.lying.px(kIn) + 14;
  const float wide = brush.width_of(words, Role::text, true);
  const float height = std::min(button_height(), std::max(34.0f, view.window.height() / 4));
  const float top = is_above ? view.window.top + 6 : view.window.bottom - 6 - height;
  const Area area = area_at(left - 6, top, wide + 12, height);
  const Touch touch = page.hand.touch("closeup." + code, area, words + ", go to sleeve " + code);
  brush.fill(area, touch.over ? kMat : kCloth);
  brush.words({left, area.mid_y() + brush.rise(Role::text) / 2}, words, {Role::text, true, kInk});
  focus_ring(brush, page.hand, area, touch.focused);
  if (touch.clicked) {
    const Place to{page.bench.place().piece, index};
    page.later([&bench = page.bench, to] { bench.go(to); });
  }
  return area.right;
}

void lap_measure(Page& page, const LapView& view) {
  const Brush& brush = page.brush;
  const Area& seen = view.window;
  const float x = seen.left - 14;
  brush.arrow({x, view.upper}, {x, view.lower}, kInk, 2, 7, true);
  const float width = text_size() == TextSize::large ? 84.0f : 68.0f;
  const float height = box_height() - 6;
  const Area box = area_at(x - 8 - width, seen.mid_y() - height / 2, width, height);
  // Between close steps the title alone says what the box holds.
  const bool has_room = box.top - 12 - brush.rise(Role::second_line) > seen.top + button_height();
  if (has_room)
    brush.words({box.right - 2, box.top - 8}, "lap", {Role::second_line, false, kInk, Side::right});
  Um narrowest = piece_of(page).sleeves.front().width_um;
  for (const solve::Sleeve& sleeve : piece_of(page).sleeves) {
    narrowest = std::min(narrowest, sleeve.width_um);
  }
  measure_box(page,
              {"box.lap", Measure::lap, box, "lap", {1000, std::max<Um>(narrowest - 1000, 1000)}});
}

std::string lap_words(const Page& page, int lap) {
  const auto number = [&page](int sleeve) {
    return std::to_string(sleeve_of(page, sleeve).number + 1);
  };
  return "lap " + number(lap) + " to " + number(lap + 1);
}

/// One step to the lap above or below on the screen, beside the close-up.
void lap_step(Page& page, const LapView& view, bool is_up) {
  const Brush& brush = page.brush;
  const float side = button_height();
  const float left = view.window.left - 22 - side;
  // Where the close-up is low the steps reach beyond it, so that the lap's box has room between.
  const float wanted = 2 * side + box_height() + 4;
  const float out = std::max(0.0f, (wanted - view.window.height()) / 2);
  const float top = is_up ? view.window.top - out : view.window.bottom + out - side;
  const Area area = area_at(left, top, side, side);
  const int by = is_up == view.lying.face_down ? 1 : -1;
  const int to = view.lap + by;
  const bool can = to >= 0 && to < static_cast<int>(piece_of(page).row_middles_um.size());
  const Touch touch =
      can ? page.hand.touch(is_up ? "lap.above" : "lap.below", area, "show " + lap_words(page, to))
          : Touch{};
  brush.fill(area, touch.over ? kMat : kPaper, kCorner);
  brush.frame(area, can ? kSoft : kPale, 1.5f, kCorner);
  const float sign = is_up ? -1.0f : 1.0f;
  const Spot tip{area.mid_x(), area.mid_y() + sign * 5};
  for (const float away : {-8.0f, 8.0f}) {
    brush.line({tip.x + away, tip.y - sign * 9}, tip, can ? kInk : kPale, 2.6f);
  }
  focus_ring(brush, page.hand, area, touch.focused);
  if (touch.clicked) choose_lap(page, to);
}

/// The edge that lies over is pulled for the lap, the joining row's end for what it keeps clear.
void handles(Page& page, const LapView& view) {
  const LapEdges edges = edges_of(page, view);
  const Area& seen = view.window;
  PullHandle edge;
  edge.id = "pull.lap";
  edge.words = "the edge that lies over, for the lap";
  edge.place = page.bench.place();
  edge.measure = Measure::lap;
  edge.axis = PullAxis::upright;
  edge.sign = edges.seen == view.lower ? 1 : -1;
  edge.px_per_mm = view.lying.px_per_mm;
  edge.line = {seen.left, edges.seen, seen.right - 6, edges.seen};
  pull_handle(page, std::move(edge));
  const solve::Row* joining = nullptr;
  for (const solve::Row* row :
       rows_at(page.bench.now().results, page.bench.place(), solve::RowKind::stitch)) {
    if (row->place == solve::RowPlace::lap && row->sleeve == view.lap) joining = row;
  }
  if (joining == nullptr || joining->run.is_empty) return;
  const float x = view.lying.x(joining->run.first_um());
  if (x > seen.right - 12) return;
  PullHandle end;
  end.id = "pull.joining_end";
  end.words = "bottom end of the joining row, kept clear";
  end.place = page.bench.place();
  end.measure = Measure::lap_kept_clear_bottom;
  end.px_per_mm = view.lying.px_per_mm;
  end.line = {x, view.upper - 5, x, view.lower + 5};
  pull_handle(page, std::move(end));
}

/// Which lap it is, and where its joining row stands across the section.
void title(Page& page, const LapView& view) {
  const Brush& brush = page.brush;
  const Area& seen = view.window;
  const Ink ink{Role::second_line, false, kInk};
  std::string words = lap_words(page, view.lap);
  const std::string number = std::to_string(sleeve_of(page, view.lap).number + 1);
  const std::string middle = short_mm_text(view.middle_um, 1);
  const std::string row = "joining row at ";
  const float row_width =
      brush.width_of(row, ink.role, false) + brush.width_of(middle, Role::text, true);
  const std::string where = " at the bottom end";
  const float most = seen.width() - row_width - 16;
  if (brush.width_of(words + where, ink.role, false) <= most) words += where;
  const float base = seen.top - 7;
  brush.words({seen.left, base}, words, ink);
  page.hand.note("lap.shown", {seen.left, base - 16, seen.left + 120, base + 4}, words);
  const float wide =
      brush.words({seen.right - 6, base}, middle, {Role::text, true, kInk, Side::right});
  const float left = seen.right - 6 - wide;
  brush.words({left, base}, row, {ink.role, false, kInk, Side::right});
  figure_on_bench(page, {"figure.middle." + number,
                         "slip.middle." + number,
                         {left - 4, base - 24, seen.right, base + 5},
                         row + middle + " from the left edge"});
}

}  // namespace

LapView lap_view(const Page& page, const Area& area) {
  LapView view;
  view.lap = shown_lap(page.bench, page.state.chosen_lap);
  if (view.lap < 0 || area.width() < 120) return {};
  const solve::Piece& piece = piece_of(page);
  view.window = area;
  view.middle_um = piece.row_middles_um[static_cast<std::size_t>(view.lap)];
  view.lap_um = section_of(page).lap_um;
  Lying& lying = view.lying;
  lying.px_per_mm = std::clamp(static_cast<double>(area.height()) / kSeenMm, 1.0, 4.0);
  lying.left_px = static_cast<double>(area.left);
  lying.width_um = piece.width_um;
  lying.face_down = page.state.is_face_down;
  const Um down = lying.face_down ? piece.width_um - view.middle_um : view.middle_um;
  lying.top_px = static_cast<double>(area.mid_y()) - from_um(down) * lying.px_per_mm;
  // While it is pulled the edge that lies under keeps its place; at rest the lap's middle does.
  const Solved& rest = page.bench.at_rest();
  const job::Section* was = section_at(rest.job, rest.results, page.bench.place());
  const Um wider = was == nullptr ? 0 : view.lap_um - was->lap_um;
  const float way = left_is_over(page) == lying.face_down ? -1.0f : 1.0f;
  const float moved = way * lying.px(wider) / 2;
  lying.top_px += static_cast<double>(moved);
  const float half = lying.px(view.lap_um) / 2;
  view.upper = area.mid_y() + moved - half;
  view.lower = area.mid_y() + moved + half;
  return view;
}

void lap_closeup(Page& page, const LapView& view) {
  if (view.lap < 0) return;
  sheets(page, view);
  const float reach = rows(page, view);
  torn_right(page, view.window);
  const bool down = view.lying.face_down;
  const float above = sleeve_label(page, view, down ? view.lap + 1 : view.lap, true);
  const float below = sleeve_label(page, view, down ? view.lap : view.lap + 1, false);
  const Area& seen = view.window;
  const float mid = seen.mid_y();
  const float right = seen.right - 12;
  TagRooms rooms;
  rooms.part = part_of(view);
  rooms.rooms = {Area{above + 14, seen.top + 6, right, mid - reach},
                 Area{below + 14, mid + reach, right, seen.bottom - 6}};
  rooms.until = right;
  rooms.lap = view.lap;
  place_tags(page, rooms);
  lap_step(page, view, true);
  lap_measure(page, view);
  lap_step(page, view, false);
  handles(page, view);
  title(page, view);
}

void choose_lap(Page& page, int lap) {
  const int number = sleeve_of(page, lap).number;
  page.later([&state = page.state, piece = page.bench.place().piece, number] {
    state.chosen_lap = {piece, number};
  });
}

}  // namespace pouncemark::web
