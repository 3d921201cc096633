#include "web/panels/start_pictures.h"

#include <algorithm>
#include <array>
#include <string>

#include "web/model/words.h"

namespace pouncemark::web {
namespace {

/// The small job in true proportion, as it hangs: the section, then the panel. Widths as in the
/// job.
void small_job(const Brush& brush, const Area& area) {
  constexpr std::array<float, 9> kWidths = {60, 75, 90, 120, 150, 120, 90, 75, 60};
  constexpr float kLap = 18;
  constexpr float kCloth = 12;
  const float words_room = brush.width_of("29", Role::box_figure, true) +
                           brush.width_of("sleeves", Role::text, false) + 35;
  const float k = std::clamp(
      std::min(area.height() / 1420, (area.width() - 26 - words_room) / 1386), 0.03f, 0.1f);
  const float top = area.top;
  float x = area.left;
  for (const float width : kWidths) {
    const Area sleeve = area_at(x, top, width * k, 1400 * k);
    brush.fill(sleeve, kSheet);
    brush.fill(
        {sleeve.left + kCloth * k, top + 1.5f, sleeve.right - kCloth * k, sleeve.bottom - 1.5f},
        pouncemark::web::kCloth);
    brush.frame(sleeve, kSheetEdge, 1);
    x += (width - kLap) * k;
  }
  const Area panel = area_at(x + kLap * k + 26, top, 690 * k, 1420 * k);
  brush.fill(panel, kSheet);
  brush.fill({panel.left + 1, panel.top + 1, panel.right - 2, panel.bottom - 1},
             pouncemark::web::kCloth);
  brush.frame(panel, kSheetEdge, 1.5f);
  const std::array<std::array<const char*, 2>, 3> counts = {
      {{"9", "sleeves"}, {"1", "panel"}, {"29", "rows"}}};
  const float step = std::min(40.0f, area.height() / 3);
  const float figures = panel.right + 18 + brush.width_of("29", Role::box_figure, true);
  float y = top + brush.rise(Role::figure) + 10;
  for (const auto& count : counts) {
    brush.words({figures, y}, count[0], {Role::box_figure, true, kInk, Side::right});
    brush.words({figures + 9, y}, count[1], {});
    y += step;
  }
}

/// The first sleeve in true proportion with its four measures.
void first_sleeve(const Brush& brush, const Area& area) {
  const float k = area.width() / 1800;
  const Area sheet = area_at(area.left, area.top + 4, area.width(), 110 * k);
  brush.fill(sheet, kSheet);
  brush.fill({sheet.left + 2, sheet.top + 12 * k, sheet.right - 2, sheet.bottom - 12 * k}, kCloth);
  brush.frame(sheet, kSheetEdge, 1.5f);
  for (int i = 0; i < 37; ++i) {
    const float x = area.left + (18 + 49 * static_cast<float>(i)) * k;
    brush.line({x, sheet.top + 3}, {x, sheet.top + 7}, kStaple, 1.4f);
    brush.line({x, sheet.bottom - 7}, {x, sheet.bottom - 3}, kStaple, 1.4f);
  }
  const float column = area.width() * 0.55f;
  const bool fits = brush.width_of("kept clear at ends", Role::text, false) + 10 < column;
  const std::array<std::array<const char*, 2>, 4> measures = {
      {{"1800", "long"},
       {"110", "wide"},
       {"18", fits ? "kept clear at ends" : "kept clear"},
       {"50", "apart, wanted"}}};
  const float pitch = std::min(58.0f, (area.bottom - sheet.bottom) / 2);
  const float rise = brush.rise(Role::box_figure);
  for (std::size_t i = 0; i < measures.size(); ++i) {
    const float x = area.left + static_cast<float>(i % 2) * column;
    const float y = sheet.bottom + 24 + rise / 2 + static_cast<float>(i / 2) * pitch;
    brush.words({x, y}, measures[i][0], {Role::box_figure, true, kInk});
    brush.words({x, y + brush.pitch(Role::text)}, measures[i][1], {});
  }
}

/// The docket of a job: the one on the bench if there is one.
void docket(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  const Area card = {area.left, area.top, area.right, std::min(area.top + 140, area.bottom)};
  constexpr float kCut = 14;
  const std::array<Spot, 5> corners = {Spot{card.left, card.top}, Spot{card.right - kCut, card.top},
                                       Spot{card.right, card.top + kCut},
                                       Spot{card.right, card.bottom}, Spot{card.left, card.bottom}};
  brush.shape(corners, kBench);
  brush.outline(corners, kSoft, 1.5f, true);
  const float left = card.left + 20;
  brush.start_window(card.inset(4));
  if (!page.bench.has_job()) {
    brush.paragraph({left, card.top + 40},
                    "A job file ends in .json. Choose one, or drop it on this page.",
                    card.width() - 40, {});
    brush.end_window();
    return;
  }
  const Touch touch = page.hand.touch("door.back", card, "Go on with " + page.bench.now().job.name);
  if (touch.over) brush.outline(corners, kInk, 3, true);
  if (touch.clicked) page.later([&state = page.state] { state.is_on_start = false; });
  const job::Job& job = page.bench.now().job;
  brush.words({left, card.top + 34}, "Press to go on with", {Role::second_line, false, kInk});
  brush.words({left, card.top + 66},
              cut_short(brush, job.name, card.width() - 40, Role::figure, true),
              {Role::figure, true, kInk});
  const auto many = [](std::size_t count, const char* one, const char* more) {
    return std::to_string(count) + (count == 1 ? one : more);
  };
  brush.words({left, card.top + 92},
              many(job.sections.size(), " section, ", " sections, ") +
                  many(job.panels.size(), " panel", " panels"),
              {});
  std::string kept;
  for (const std::string& line : page.bench.kept_lines(true)) {
    kept += (kept.empty() ? "" : ", ") + line;
  }
  brush.words({left, card.top + 116}, cut_short(brush, kept, card.width() - 40, Role::text, false),
              {});
  brush.end_window();
}

}  // namespace

void door_picture(Page& page, std::size_t door, const Area& area) {
  if (door == 0)
    small_job(page.brush, area);
  else if (door == 1)
    first_sleeve(page.brush, area);
  else
    docket(page, area);
}

}  // namespace pouncemark::web
