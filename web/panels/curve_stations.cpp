#include <algorithm>
#include <string>
#include <utility>

#include "web/panels/curve_parts.h"
#include "web/panels/sew_parts.h"

namespace pouncemark::web {
namespace {

float figure_width() { return text_size() == TextSize::large ? 124.0f : 100.0f; }

/// A new station, typed as two figures.
void add_box(Page& page, const Area& area) {
  CurveBox box;
  box.id = "stations.add";
  box.area = area;
  box.name = "add a station: along and off, as 400 61";
  const auto typed = curve_box(page, box);
  if (!typed.finished) return;
  if (typed.finished->empty()) return close_box(page.state.open_box);
  keep_curve(page,
             with_stations_added(page.bench.now().job, page.state.curve.view.bay, *typed.finished));
}

void station_box(Page& page, int station, StationBox which, const Area& area) {
  const bool is_along = which == StationBox::along;
  const StationLine& line = page.state.curve.stations.lines[static_cast<std::size_t>(station)];
  const std::string number = std::to_string(station + 1);
  CurveBox box;
  box.id = "station." + number + (is_along ? ".along" : ".off");
  box.area = area;
  box.shown = is_along ? line.along : line.off;
  box.name = "station " + number + (is_along ? ", along the batten" : ", off the batten");
  const TextEvent event = curve_box(page, box);
  const job::Job& job = page.bench.now().job;
  const int bay = page.state.curve.view.bay;
  if (event.finished) {
    if (*event.finished == box.shown) return close_box(page.state.open_box);
    return keep_curve(page, with_station_typed(job, bay, station, which, *event.finished));
  }
  if (event.step == 0 || event.is_open) return;
  curve_act(page, with_station_stepped(job, bay, station, which, event.step * 1'000));
}

void station_line(Page& page, const Area& area, int station) {
  const Brush& brush = page.brush;
  const StationLine& line = page.state.curve.stations.lines[static_cast<std::size_t>(station)];
  const std::string number = std::to_string(station + 1);
  const float base = area.mid_y() + brush.rise(Role::text) / 2;
  const float top = area.mid_y() - box_height() / 2;
  brush.words({area.left, base}, number, {Role::text, true, kInk});
  float x = area.left + 36;
  for (const StationBox which : {StationBox::along, StationBox::off}) {
    station_box(page, station, which, area_at(x, top, figure_width(), box_height()));
    x += figure_width() + 10;
  }
  const char* words = "Take away";
  const float wide = button_width(brush, words);
  const Area away =
      area_at(area.right - wide, area.mid_y() - button_height() / 2, wide, button_height());
  brush.words({x + 6, base}, cut_short(brush, line.radius, away.left - x - 14, Role::text, false),
              {});
  const std::string aloud = "take station " + number + " away";
  const ButtonLook look{ButtonKind::plain, page.bench.is_look_only(), Role::text, aloud};
  if (button(brush, page.hand, "station." + number + ".away", away, words, look)) {
    curve_act(page, without_station(page.bench.now().job, page.state.curve.view.bay, station));
  }
}

/// The tape round the timber; gives where the next may begin.
float taped(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  const StationsView& view = page.state.curve.stations;
  CurveBox box;
  box.id = "stations.taped";
  box.area = area_at(area.left, area.top, figure_width(), box_height());
  box.shown = view.taped;
  box.name = "taped round the timber";
  brush.words({box.area.right + 10, box.area.mid_y() + brush.rise(Role::text) / 2}, "taped round",
              {});
  const TextEvent event = curve_box(page, box);
  const float base = box.area.bottom + brush.pitch(Role::text);
  float y = base;
  if (!view.taped_said.empty()) {
    y = brush.paragraph({area.left, base}, view.taped_said, area.width(),
                        {Role::text, true, view.is_far_off ? kWarn : kInk});
    page.hand.note("stations.taped.said", {area.left, base - 16, area.right, y}, view.taped_said);
  }
  if (event.finished && *event.finished == view.taped) {
    close_box(page.state.open_box);
  } else if (event.finished) {
    keep_curve(page, with_taped(page.bench.now().job, page.state.curve.view.bay, *event.finished));
  }
  return y + 10;
}

/// What is asked of stations and why, as far as there is room for whole sentences.
void asked(Page& page, Area area) {
  const Brush& brush = page.brush;
  const auto& said = page.state.curve.stations.said;
  for (std::size_t i = 0; i < said.size(); ++i) {
    const auto lines = broken(brush, said[i], area.width(), Role::text, false);
    const float high = static_cast<float>(lines.size()) * brush.pitch(Role::text);
    if (area.top + high > area.bottom) continue;
    const Ink ink{Role::text, false, i == 0 ? kInk : kSoft};
    brush.paragraph({area.left, area.top + brush.rise(Role::text) + 4}, said[i], area.width(), ink);
    page.hand.note("stations.said." + std::to_string(i),
                   {area.left, area.top, area.right, area.top + high}, said[i]);
    area.top += high + 10;
  }
}

}  // namespace

void stations_slip(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  const float line = std::max(box_height(), button_height()) + 6;
  const float list_width = std::min(area.width() * 0.6f, 560.0f);
  const float pitch = brush.pitch(Role::second_line);
  const Area add = area_at(area.left + 36, area.top, 2 * figure_width() + 10, box_height());
  add_box(page, add);
  brush.words({add.right + 12, add.mid_y() + brush.rise(Role::text) / 2}, "adds one, as 400 61",
              {Role::text, false, kSoft});
  const float head = add.bottom + pitch + 2;
  const char* const words[] = {"along", "off", "radius there"};
  for (int i = 0; i < 3; ++i) {
    brush.words(
        {add.left + static_cast<float>(i) * (figure_width() + 10) + (i == 2 ? 6.0f : 0.0f), head},
        words[i], {Role::second_line, false, kInk});
  }
  const Area list = {area.left, head + 4, area.left + list_width, area.bottom};
  const auto& lines = page.state.curve.stations.lines;
  const ListPart part = list_part(page, list, line, lines.size(), "stations.more", "More stations");
  float top = list.top;
  for (std::size_t i = part.first; i < part.first + part.shown; ++i, top += line) {
    station_line(page, area_at(list.left, top, list.width(), line), static_cast<int>(i));
  }
  Area beside = {list.right + 32, area.top, area.right, area.bottom};
  beside.top = taped(page, beside);
  asked(page, beside);
}

}  // namespace pouncemark::web
