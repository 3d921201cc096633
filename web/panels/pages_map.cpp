#include <algorithm>
#include <cmath>

#include "engine/base/number_text.h"
#include "web/panels/print_acts.h"
#include "web/panels/print_parts.h"
#include "web/widgets/slip.h"

namespace pouncemark::web {
namespace {

/// The piece on the screen, upright and in true proportion.
struct MapView {
  const PageMap& map;
  Area area;
  float px_per_mm = 1;

  float x(Um um) const { return area.left + static_cast<float>(from_um(um)) * px_per_mm; }
  float y(Um um) const { return area.bottom - static_cast<float>(from_um(um)) * px_per_mm; }
  Spot at(solve::PlaceUm place) const { return {x(place.x), y(place.y)}; }
  Area of(const MapPage& page) const {
    return {x(page.left), y(page.high), x(page.right), y(page.low)};
  }
  Um across(float px) const { return to_um(static_cast<double>((px - area.left) / px_per_mm)); }
  Um up(float px) const { return to_um(static_cast<double>((area.bottom - px) / px_per_mm)); }
};

MapView view_in(const PageMap& map, const Area& room) {
  const auto wide = static_cast<float>(from_um(map.width_um));
  const auto high = static_cast<float>(from_um(map.length_um));
  const float k = std::min(room.width() / wide, room.height() / high);
  const float left = room.left + (room.width() - wide * k) / 2;
  return {map, area_at(left, room.top, wide * k, high * k), k};
}

/// One page: its number, or that it is left out, as far as there is room to say so.
void draw_page(Page& page, const MapView& view, const MapPage& one, bool is_shown) {
  const Brush& brush = page.brush;
  const Area cell = view.of(one);
  const bool is_out = one.printed_as == 0;
  brush.fill(cell, is_out ? kFold : is_shown ? kPen : kPaper);
  brush.frame(cell, kInk, 1);
  const float pitch = brush.pitch(Role::text);
  if (is_out) {
    const bool has_room = cell.width() >= brush.width_of("left", Role::text, false) + 6 &&
                          cell.height() >= 2 * pitch + 4;
    if (!has_room) return;
    brush.words({cell.mid_x(), cell.mid_y() - 3}, "left", {Role::text, false, kInk, Side::middle});
    brush.words({cell.mid_x(), cell.mid_y() + pitch - 6}, "out",
                {Role::text, false, kInk, Side::middle});
    return;
  }
  const std::string number = std::to_string(one.number);
  const float wide = brush.width_of(number, Role::text, true);
  if (wide + 6 > cell.width() || brush.rise(Role::text) + 6 > cell.height()) return;
  brush.centred(cell, number, {Role::text, true, is_shown ? kWhite : kInk});
}

/// Steps of a given length along an edge: the place, and the inward direction on the screen.
template <typename Use>
void walk(const MapView& view, const MapEdge& edge, float step, const Use& use) {
  for (std::size_t i = 0; i + 1 < edge.places.size(); ++i) {
    const Spot from = view.at(edge.places[i]);
    const Spot to = view.at(edge.places[i + 1]);
    const float size = std::hypot(to.x - from.x, to.y - from.y);
    if (size < 1) continue;
    const Spot along = {(to.x - from.x) / size, (to.y - from.y) / size};
    for (float gone = 0; gone <= size; gone += step) {
      // The piece lies at the left of the walk; the screen's y runs downwards.
      use(Spot{from.x + along.x * gone, from.y + along.y * gone}, Spot{along.y, -along.x});
    }
  }
}

void draw_edge(const Brush& brush, const MapView& view, const MapEdge& edge) {
  const bool is_hinge = edge.role == piece::EdgeRole::hinge_side;
  if (edge.role == piece::EdgeRole::fly_side) {
    std::vector<Spot> corners;
    bool is_out = false;
    walk(view, edge, 6, [&](Spot at, Spot inward) {
      const float by = is_out ? -4.0f : 4.0f;
      corners.push_back({at.x - inward.x * by, at.y - inward.y * by});
      is_out = !is_out;
    });
    brush.outline(corners, kInk, 2, false);
    return;
  }
  for (std::size_t i = 0; i + 1 < edge.places.size(); ++i) {
    brush.line(view.at(edge.places[i]), view.at(edge.places[i + 1]), is_hinge ? kThread : kInk,
               is_hinge ? 5.0f : 2.0f);
  }
  if (!is_hinge) return;
  walk(view, edge, 14, [&](Spot at, Spot inward) {
    brush.line(at, {at.x + inward.x * 7, at.y + inward.y * 7}, kThread, 2);
  });
}

/// "HINGE SIDE" beside the edge where it is upright and there is room.
void hinge_words(const Brush& brush, const MapView& view, const Area& room) {
  const float wide = brush.width_of("HINGE SIDE", Role::text, true);
  for (const MapEdge& edge : view.map.edges) {
    if (edge.role != piece::EdgeRole::hinge_side || wide > view.area.height()) continue;
    const float x = view.at(edge.places.front()).x;
    const bool at_left = x < view.area.mid_x();
    const float middle = view.area.mid_y();
    const float rise = brush.rise(Role::text);
    const Ink ink = {Role::text, true, kThread};
    if (at_left && x - 10 - rise >= room.left) {
      brush.turned_words({x - 10, middle + wide / 2}, "HINGE SIDE", ink, 1);
    } else if (!at_left && x + 10 + rise <= room.right) {
      brush.turned_words({x + 10, middle - wide / 2}, "HINGE SIDE", ink, 3);
    }
  }
}

/// What is to be known of the sides, in two lines under the map.
struct SideWords {
  std::string plain;
  std::string strong;
};

SideWords side_words(const MapView& view) {
  for (const MapEdge& edge : view.map.edges) {
    if (edge.role != piece::EdgeRole::fly_side) continue;
    const bool at_left = view.at(edge.places.front()).x < view.area.mid_x();
    return {std::string("Fly side at the ") + (at_left ? "left:" : "right:"), "DO NOT SEW"};
  }
  return {"Page 1 is at the bottom, left.", ""};
}

/// Pressing a page shows it in the file.
void touch_map(Page& page, const MapView& view) {
  const PrintStage& stage = page.state.printing;
  const GuideLine& line = stage.figures.lines[stage.figures.looked_at];
  const std::string aloud = "page map of " + line.title + ", " +
                            counted(line.sheets, "page", "pages") + ", " +
                            count_text(line.left_out) + " left out";
  const Touch touch = page.hand.touch("map", view.area, aloud);
  focus_ring(page.brush, page.hand, view.area, touch.focused);
  for (const MapPage& one : view.map.pages) {
    page.hand.note("page." + std::to_string(one.number), view.of(one),
                   one.printed_as == 0 ? "left out" : "page " + std::to_string(one.number));
  }
  if (!host::can_show_printed()) return;
  std::int64_t wanted = 0;
  if (touch.clicked) {
    const Spot at = page.hand.at();
    const MapPage* one = page_at(view.map, view.across(at.x), view.up(at.y));
    if (one != nullptr) wanted = one->printed_as;
  }
  if (touch.focused) page.hand.stands_on(kOnCloseup);
  const int by =
      (page.hand.asked(KeyAct::move_on) ? 1 : 0) - (page.hand.asked(KeyAct::move_back) ? 1 : 0);
  if (touch.focused && by != 0 && stage.is_viewing) {
    wanted = stepped_page(stage.view_page, by, line.sheets);
  }
  if (wanted == 0) return;
  page.later(
      [&bench = page.bench, &state = page.state, wanted] { view_page(bench, state, wanted); });
}

void draw_map(Page& page, const Area& room) {
  const PrintStage& stage = page.state.printing;
  const PrintFigures& figures = stage.figures;
  const MapView view = view_in(figures.map, room.inset(0));
  const bool is_shown = stage.is_viewing && stage.viewed == figures.lines[figures.looked_at].key;
  for (const MapPage& one : figures.map.pages) {
    draw_page(page, view, one, is_shown && one.printed_as == stage.view_page);
  }
  for (const MapEdge& edge : figures.map.edges) draw_edge(page.brush, view, edge);
  hinge_words(page.brush, view, {room.left - 24, room.top, room.right + 24, room.bottom});
  touch_map(page, view);
  const float base = view.area.bottom + page.brush.pitch(Role::text) + 6;
  const SideWords sides = side_words(view);
  page.brush.words({room.left - 24, base}, sides.plain, {});
  page.brush.words({room.left - 24, base + page.brush.pitch(Role::text)}, sides.strong,
                   {Role::text, true, kInk});
  page.hand.note("map.sides", {room.left, base - 16, room.right, base + 4},
                 sides.plain + " " + sides.strong);
}

/// FRONT, and beside it how many pages, whose sum is shown when they are pressed.
float front_and_count(Page& page, const Area& area, const GuideLine& line) {
  const Brush& brush = page.brush;
  PrintStage& stage = page.state.printing;
  const std::string words = counted(line.sheets, "page", "pages");
  const float wide = brush.width_of(words, Role::text, true) + 16;
  const float high = button_height();
  const Area count = area_at(area.right - wide, area.top, wide, high);
  const Area front = {area.left, area.top + 4, count.left - 12, area.top + high - 4};
  brush.frame(front, kInk, 2);
  brush.centred(front, "FRONT", {Role::text, true, kInk});
  const Touch touch = page.hand.touch("count.guide", count, words + ", show the sum");
  brush.centred(count, words, {Role::text, true, kInk});
  if (touch.over || stage.open_sum == "count.guide") {
    brush.line({count.left + 8, count.bottom - 6}, {count.right - 8, count.bottom - 6}, kInk, 2);
  }
  focus_ring(brush, page.hand, count, touch.focused);
  if (touch.clicked || (touch.focused && page.hand.sum_key())) {
    page.later([&stage] {
      stage.open_sum = stage.open_sum == "count.guide" ? std::string() : "count.guide";
    });
  }
  return count.bottom + 10;
}

/// The piece's own title, FRONT and the count of pages.
float map_heading(Page& page, const Area& area, const GuideLine& line) {
  const auto& pieces = page.bench.now().results.pieces;
  std::string words = line.title;
  std::string in_short = line.title;
  if (line.piece >= 0) {
    in_short = piece_title(pieces[static_cast<std::size_t>(line.piece)], false);
    std::string what = line.title.substr(0, line.title.find(','));
    what[0] = static_cast<char>(what[0] - 'A' + 'a');
    words = in_short + ", " + (line.kind == GuideKind::full_face ? "pages to tape" : what);
  }
  const float top = column_heading(page, area, words, in_short);
  return front_and_count(page, {area.left, top, area.right, area.bottom}, line);
}

/// The button that shows the file; where the browser cannot, the one that saves it.
void map_foot(Page& page, const Area& area, const GuideLine& line) {
  const Brush& brush = page.brush;
  const float high = button_height();
  const bool can_show = host::can_show_printed();
  const std::string words = can_show ? "Look at the file" : "Save this guide";
  const Area press = {area.left, area.bottom - high, area.right, area.bottom};
  if (button(brush, page.hand, can_show ? "print.look" : "print.this", press, words,
             {ButtonKind::plain, page.state.printing.is_printing || line.sheets == 0})) {
    page.later([&bench = page.bench, &state = page.state, can_show, line] {
      if (can_show)
        view_page(bench, state, 1);
      else
        print_guides(bench, state, {line}, host::Then::save);
    });
  }
}

}  // namespace

void pages_map(Page& page, const Area& area) {
  const PrintFigures& figures = page.state.printing.figures;
  if (figures.lines.empty()) return;
  const GuideLine& line = figures.lines[figures.looked_at];
  const float top = map_heading(page, area, line);
  const float pitch = page.brush.pitch(Role::text);
  map_foot(page, area, line);
  const float foot = area.bottom - button_height() - 2 * pitch - 14;
  if (figures.map.pages.empty()) {
    page.brush.paragraph({area.left, top + pitch}, guide_words(line.kind), area.width(), {});
    return;
  }
  draw_map(page, {area.left + 24, top, area.right - 24, foot});
}

}  // namespace pouncemark::web
