#include "web/panels/place_tags.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <vector>

#include "web/panels/findings_list.h"
#include "web/widgets/tag.h"

namespace pouncemark::web {
namespace {

using checks::Part;

/// A finding by its place in the list.
struct Tagged {
  std::size_t listed = 0;
  const solve::Finding& finding;
};

bool is_in(const std::vector<int>& at, int one) {
  return std::find(at.begin(), at.end(), one) != at.end();
}

/// The row belongs to what is shown: a lap and the edges beside it, a sleeve, a panel.
bool is_shown(const Page& page, const TagRooms& rooms, const solve::Row& row) {
  const int sleeve = page.bench.place().sleeve;
  if (rooms.lap < 0) return sleeve < 0 || row.sleeve == sleeve;
  return row.sleeve == rooms.lap ||
         (row.place == solve::RowPlace::side && row.sleeve == rooms.lap + 1);
}

/// The row is one the finding is about.
bool is_its_row(const solve::Finding& finding, const solve::Row& row, int index) {
  const bool is_staple = finding.code == "staple_under_foot";
  if (finding.part == Part::rows) return is_in(finding.at, index);
  if ((row.kind == solve::RowKind::staple) != is_staple) return false;
  if (finding.part == Part::laps) {
    return row.place == solve::RowPlace::lap && is_in(finding.at, row.sleeve);
  }
  if (finding.part == Part::sleeves) {
    return row.place == solve::RowPlace::side && is_in(finding.at, row.sleeve);
  }
  return row.kind == solve::RowKind::stitch;
}

/// The place of a row's point that is nearest to `x` on the screen.
Spot point_near(const TagRooms& rooms, const solve::Row& row, float x) {
  const Lying& lying = rooms.part.lying;
  const auto at = [&](std::int64_t index) {
    const solve::PlaceUm place = solve::point_um(row, index);
    return Spot{lying.x(place.y), lying.y(place.x - rooms.part.sleeve_left_um)};
  };
  const Spot first = at(0);
  const Spot last = at(row.run.points() - 1);
  const float way = last.x - first.x;
  if (std::fabs(way) < 1) return at(row.run.points() / 2);
  const float part = std::clamp((x - first.x) / way, 0.0f, 1.0f);
  return at(static_cast<std::int64_t>(std::lround(part * static_cast<float>(row.run.gaps))));
}

/// Where the line from a tag leads: the nearest row it is about, at a point within sight.
bool target_of(const Page& page, const Tagged& tagged, const TagRooms& rooms, Spot from,
               Spot* target) {
  const solve::Results& results = page.bench.now().results;
  const auto& piece = results.pieces[static_cast<std::size_t>(page.bench.place().piece)];
  const Area& seen = rooms.part.window;
  bool found = false;
  for (int i = piece.first_row; i < piece.first_row + piece.row_count; ++i) {
    const solve::Row& row = results.rows[static_cast<std::size_t>(i)];
    if (row.run.is_empty || !is_shown(page, rooms, row)) continue;
    if (!is_its_row(tagged.finding, row, i)) continue;
    const Spot spot = point_near(rooms, row, std::min(from.x, rooms.until));
    if (!seen.holds(spot) || spot.x > rooms.until) continue;
    if (found && std::fabs(spot.y - from.y) >= std::fabs(target->y - from.y)) continue;
    *target = spot;
    found = true;
  }
  return found;
}

/// The tag with its words on paper, or alone; gives false where it has no room.
bool tag_in(Page& page, const Tagged& tagged, const TagRooms& rooms, const Area& room) {
  const Brush& brush = page.brush;
  const TagKind kind = kind_of(tagged.finding.severity);
  const Colour colour = tag_colour(kind);
  constexpr float kInside = 6;
  const float high = tag_height() + 2 * kInside;
  const float alone = tag_width(brush, kind) + 2 * kInside;
  const std::string& brief = tagged.finding.brief;
  const float full = alone + brush.width_of(brief, Role::text, true) + 16;
  const bool has_words = !brief.empty() && full <= room.width();
  const float wide = has_words ? full : alone;
  if (wide > room.width() || high > room.height()) return false;
  const bool is_above = room.mid_y() < rooms.part.window.mid_y();
  const float top = is_above ? room.top : room.bottom - high;
  const Area paper = area_at(room.right - wide, top, wide, high);
  const Spot from{paper.left + wide * 0.45f, is_above ? paper.bottom : paper.top};
  Spot target;
  if (target_of(page, tagged, rooms, from, &target)) {
    brush.arrow(from, target, colour, 2, 8, false);
  }
  const std::string name = std::to_string(tagged.listed);
  const Touch touch =
      page.hand.touch("tag." + name, paper, tagged.finding.place + ": " + tagged.finding.sentence);
  brush.fill(paper, touch.over ? kMat : kPaper);
  const float right = tag(brush, {paper.left + kInside, paper.top + kInside}, kind);
  if (has_words) {
    brush.words({right + 10, paper.mid_y() + brush.rise(Role::text) / 2}, brief,
                {Role::text, true, colour});
  }
  focus_ring(brush, page.hand, paper, touch.focused);
  if (touch.clicked) open_or_close_sum(page, "finding." + name);
  return true;
}

bool is_about(const Page& page, const solve::Finding& finding, int lap) {
  const solve::Results& results = page.bench.now().results;
  const Place place = page.bench.place();
  if (finding.piece != place.piece || finding.severity == solve::Severity::note) return false;
  if (lap >= 0) return is_about_lap(results, finding, lap);
  if (place.sleeve < 0) return true;
  // A joining row is not drawn on a sleeve of its own: its lap is where to see it.
  return finding.part != Part::laps && is_about_sleeve(results, finding, place.sleeve);
}

}  // namespace

void place_tags(Page& page, const TagRooms& rooms) {
  const auto& listed = page.state.found.listed;
  std::size_t room = 0;
  for (std::size_t i = 0; i < listed.size() && room < rooms.rooms.size(); ++i) {
    const solve::Finding& finding = page.bench.now().results.findings[listed[i].index];
    if (!is_about(page, finding, rooms.lap)) continue;
    // Where one has no room the next one may, without words.
    while (room < rooms.rooms.size() && !tag_in(page, {i, finding}, rooms, rooms.rooms[room])) {
      ++room;
    }
    ++room;
  }
}

void tags_at_end(Page& page, const EndCloseup& end) {
  const Solved& now = page.bench.now();
  const solve::Sleeve& sleeve = *sleeve_at(now.results, page.bench.place());
  const auto rows = rows_at(now.results, page.bench.place(), solve::RowKind::staple);
  if (rows.empty() || rows.front()->run.points() < 2) return;
  const layout::Run& run = rows.front()->run;
  const Area& seen = end.sleeve;
  // Clear of the spacing arrow, and of the figure that may stand at its inner side.
  constexpr float kBeside = 24;
  const float left = end.is_bottom ? end.lying.x(run.station_um(1)) + kBeside : seen.left + 16;
  const float right =
      end.is_bottom ? seen.right - 16 : end.lying.x(run.station_um(run.points() - 2)) - kBeside;
  float upper = seen.top + 10;
  float lower = seen.bottom - 10;
  for (const solve::Row* row : rows) {
    const float y = end.lying.y(to_um(row->guide.from.x) - sleeve.left_um);
    if (y < seen.mid_y()) upper = std::max(upper, y + 14);
    if (y >= seen.mid_y()) lower = std::min(lower, y - 14);
  }
  TagRooms rooms;
  rooms.part.lying = end.lying;
  rooms.part.window = seen;
  rooms.part.sleeve_left_um = sleeve.left_um;
  const float middle = (upper + lower) / 2;
  rooms.rooms = {Area{left, upper, right, middle - 2}, Area{left, middle + 2, right, lower}};
  // Where there is no room for two, the one stands alone.
  if (middle - upper < tag_height() + 14) rooms.rooms = {Area{left, upper, right, lower}, Area{}};
  rooms.until = right;
  place_tags(page, rooms);
}

void tags_on_panel(Page& page, const LyingPart& part, const Area& sheet) {
  TagRooms rooms;
  rooms.part = part;
  rooms.part.window = sheet;
  constexpr float kFromEdge = 60;
  const float left = sheet.mid_x() + 70;
  const float right = sheet.right - kFromEdge;
  rooms.rooms = {Area{left, sheet.top + kFromEdge, right, sheet.mid_y() - 20},
                 Area{left, sheet.mid_y() + 20, right, sheet.bottom - kFromEdge}};
  rooms.until = right;
  place_tags(page, rooms);
}

}  // namespace pouncemark::web
