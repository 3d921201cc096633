#include <algorithm>
#include <array>

#include "engine/base/number_text.h"
#include "web/model/words.h"
#include "web/panels/how_slip.h"
#include "web/panels/lying_marks.h"
#include "web/panels/page.h"
#include "web/panels/panel_grips.h"
#include "web/panels/place_tags.h"
#include "web/panels/whole_strip.h"

namespace pouncemark::web {
namespace {

using piece::EdgeRole;

/// The outline on screen, arcs in short pieces.
std::vector<Spot> edge_course(const LyingPart& part, const Segment& line) {
  std::vector<Spot> spots;
  const int pieces = is_straight(line) ? 1 : 32;
  const double whole = length(line);
  for (int i = 0; i <= pieces; ++i) {
    const Vec2 at = point_at(line, whole * i / pieces);
    spots.push_back({part.lying.x(to_um(at.y)), part.lying.y(to_um(at.x))});
  }
  return spots;
}

/// The hinge side: thick, barred inward every 6.
void hinge_edge(Page& page, const LyingPart& part, const Segment& line) {
  const auto spots = edge_course(part, line);
  page.brush.outline(spots, kThread, 5, false);
  const double whole = length(line);
  const double step = std::max(6.0, 8.0 / part.lying.px_per_mm);
  for (double at = step / 2; at < whole; at += step) {
    const Vec2 from = point_at(line, at);
    const Vec2 inward = left_of(direction_at(line, at));
    const Vec2 to = from + inward * (9.0 / part.lying.px_per_mm);
    page.brush.line({part.lying.x(to_um(from.y)), part.lying.y(to_um(from.x))},
                    {part.lying.x(to_um(to.y)), part.lying.y(to_um(to.x))}, kThread, 2);
  }
}

/// The fly side: a zigzag, never a straight line.
void fly_edge(Page& page, const LyingPart& part, const Segment& line) {
  const double whole = length(line);
  const double step = 10.0 / part.lying.px_per_mm;
  const double swing = 5.0 / part.lying.px_per_mm;
  std::vector<Spot> spots;
  int turn = 0;
  for (double at = 0; at <= whole; at += step, ++turn) {
    const Vec2 side = left_of(direction_at(line, at)) * (turn % 2 == 0 ? swing : -swing);
    const Vec2 place = point_at(line, at) + side;
    spots.push_back({part.lying.x(to_um(place.y)), part.lying.y(to_um(place.x))});
  }
  page.brush.outline(spots, kInk, 2, false);
}

void edges(Page& page, const LyingPart& part, const solve::Piece& piece) {
  for (const piece::Edge& edge : piece.outline.edges) {
    if (edge.role == EdgeRole::hinge_side)
      hinge_edge(page, part, edge.line);
    else if (edge.role == EdgeRole::fly_side)
      fly_edge(page, part, edge.line);
    else
      page.brush.outline(edge_course(part, edge.line), kSheetEdge, 2, false);
  }
}

/// The words beside the sewn and the unsewn edge.
void edge_words(Page& page, const LyingPart& part, const solve::Piece& piece, const Area& sheet) {
  for (const piece::Edge& edge : piece.outline.edges) {
    const bool hinge = edge.role == EdgeRole::hinge_side;
    if (!hinge && edge.role != EdgeRole::fly_side) continue;
    const Vec2 middle = point_at(edge.line, length(edge.line) / 2);
    const float y = part.lying.y(to_um(middle.x));
    const bool above = y < sheet.mid_y();
    const float base = above ? sheet.top - 12 : sheet.bottom + 12 + page.brush.rise(Role::text);
    const char* words = hinge ? "HINGE SIDE" : "FLY SIDE";
    const float wide =
        page.brush.words({sheet.left, base}, words, {Role::text, true, hinge ? kThread : kInk});
    if (hinge) continue;
    const float next = sheet.left + wide + 16;
    const float stop = page.brush.words({next, base}, "DO NOT SEW", {Role::text, true, kStop});
    page.brush.words({next + stop + 16, base},
                     "so that cloth and sheet can slip when the panel is curved", {});
  }
}

/// One box with its words above it, in a row of boxes; gives the next left edge.
float labelled(Page& page, std::string_view id, Measure measure, const std::string& words, float x,
               float base, Limits limits) {
  page.brush.words({x, base}, words, {});
  const float width = text_size() == TextSize::large ? 124.0f : 104.0f;
  const float wide = page.brush.width_of(words, Role::text, false);
  // Room for what it was, except where the boxes just fit.
  const float was = page.layout.is_compact ? 0.0f : 92.0f;
  const float step = std::max(width, wide + was) + 24;
  MeasureBox box{id, measure, area_at(x, base + 10, width, box_height()), words, limits};
  box.was = {x + wide + 8, base};
  box.was_room = step - wide - 16;
  measure_box(page, box);
  return x + step;
}

void boxes(Page& page, const Area& middle, float base) {
  const Limits size{kLeastLengthUm, kMostLengthUm};
  const Solved& now = page.bench.now();
  const Um width = measured(now.job, now.results, page.bench.place(), Measure::width);
  float x = middle.left;
  const job::Panel* panel = panel_at(now.job, now.results, page.bench.place());
  if (panel->outline.empty()) {
    x = labelled(page, "box.width", Measure::width, "wide", x, base, size);
    x = labelled(page, "box.length", Measure::length, "long", x, base, size);
  }
  x = labelled(page, "box.in_from_edge", Measure::in_from_edge, "in from the edge", x, base,
               {0, std::max<Um>(width / 2, 0)});
  x = labelled(page, "box.spacing", Measure::spacing, "spacing wanted", x, base,
               {100, kMostLengthUm});
  labelled(page, "box.stitch", Measure::stitch, "stitch", x, base, {100, 100'000});
}

/// How the panel lies in its room. While it is pulled it keeps its scale, and the edge that is not
/// in the hand its place.
Lying lying_in(const Page& page, const solve::Piece& piece, const Area& room) {
  const Place place = page.bench.place();
  const auto& rest = page.bench.at_rest().results.pieces[static_cast<std::size_t>(place.piece)];
  Lying lying;
  lying.px_per_mm =
      std::min(static_cast<double>(room.width()) / from_um(std::max<Um>(rest.length_um, 1)),
               static_cast<double>(room.height()) / from_um(std::max<Um>(rest.width_um, 1)));
  lying.left_px = static_cast<double>(room.left);
  lying.top_px = static_cast<double>(room.top);
  lying.width_um = piece.width_um;
  lying.face_down = page.state.is_face_down;
  if (hinge_is_up(page)) lying.top_px -= from_um(piece.width_um - rest.width_um) * lying.px_per_mm;
  return lying;
}

}  // namespace

void backed_panel(Page& page) {
  const Area& middle = page.layout.middle;
  const Solved& now = page.bench.now();
  const auto& piece = now.results.pieces[static_cast<std::size_t>(page.bench.place().piece)];
  const Brush& brush = page.brush;
  const float switch_left = face_switch(page, middle.right, middle.top);
  const float how = how_opener(page, switch_left - 16, middle.top, Side::right);
  place_line(page, {middle.left, middle.top + 24}, how - 12);
  headline_words(page, {middle.left, middle.top + 76}, 1e6f, true);
  const float base = middle.top + 76 + brush.pitch(Role::text) * 2 + 14;
  const float top = base + box_height() + 24 + brush.pitch(Role::text);
  const HowTops how_tops{
      middle.top + 84 + brush.pitch(Role::text),
      std::max(base + box_height() + 16, middle.bottom - 6.6f * button_height())};
  cover_for_how(page, how_tops);
  boxes(page, middle, base);
  const Area room = {middle.left + 6, top, middle.right - 6,
                     middle.bottom - brush.pitch(Role::text) - 14};
  LyingPart part;
  part.lying = lying_in(page, piece, room);
  const Area sheet = area_at(room.left, static_cast<float>(part.lying.top_px),
                             part.lying.px(piece.length_um), part.lying.px(piece.width_um));
  part.window = sheet.inset(-8);
  brush.fill(sheet, kSheet);
  LyingPart cloth = part;
  cloth.window = sheet;
  draw_cloth(page, cloth, sheet.inset(part.lying.px(8'000)), 7);
  edges(page, part, piece);
  RowLook look;
  look.line_px = 2.0f;
  for (const auto kind : {solve::RowKind::stitch, solve::RowKind::point}) {
    for (const solve::Row* row : rows_at(now.results, page.bench.place(), kind)) {
      draw_row(page, part, *row, look);
    }
  }
  lying_words(page, sheet, 60);
  edge_words(page, part, piece, sheet);
  tags_on_panel(page, part, sheet);
  panel_grips(page, part.lying, sheet);
  pull_handles(page);
  how_slip(page, how_tops);
}

}  // namespace pouncemark::web
