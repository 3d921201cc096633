#include <algorithm>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/base/number_text.h"
#include "engine/checks/rules.h"
#include "engine/drawing/symbols.h"
#include "engine/drawing/taken_room.h"
#include "engine/sheets/free_room.h"
#include "engine/sheets/marks.h"
#include "engine/sheets/page_view.h"

namespace pouncemark::sheets {
namespace {

using drawing::Box;
using drawing::Spot;

constexpr Um kTitleLong = 155'000;
constexpr Um kLeastColumn = 38'000;
constexpr Um kBarAcross = 100'000;
constexpr Um kBarAlong = 160'000;
constexpr Um kLeastBar = 20'000;
constexpr Um kTitleHigh = 42'000;
constexpr Um kBarThick = 3'000;
/// Lines of the title never come closer, however little room a small sheet leaves.
constexpr Um kLeastPitch = 2'500;

/// A corner of the paper and which way words read from it: 0 to the right, 1 upwards.
struct Stand {
  Spot corner;
  int quarter_turns = 0;

  Spot at(Um along, Um up) const {
    return quarter_turns == 0 ? Spot{corner.x + along, corner.y + up}
                              : Spot{corner.x - up, corner.y + along};
  }
};

/// Words `along` the reading way and `up` from the corner, standing like it.
drawing::Text words_on(const Stand& stand, Um along, Um up, std::string words) {
  drawing::Text text;
  text.at = stand.at(along, up);
  text.quarter_turns = stand.quarter_turns;
  text.words = std::move(words);
  return text;
}

/// Adds words as lines none of which is longer than the caution, broken at spaces.
void add_wrapped(std::string_view words, std::vector<std::string>* lines) {
  const std::size_t most = checks::caution_line().size();
  while (words.size() > most) {
    std::size_t space = words.rfind(' ', most);
    if (space == std::string_view::npos || space == 0) space = most;
    lines->emplace_back(words.substr(0, space));
    words.remove_prefix(std::min(words.size(), space + 1));
  }
  lines->emplace_back(words);
}

/// What this paper is, line by line; an open stop of the piece stands on every page of it.
std::vector<std::string> title_lines(const PageView& view) {
  const GuideSet& set = view.set;
  const solve::Piece& piece = view.piece();
  const std::int64_t out = count_of(set.left_out);
  const std::string left_out = out == 0 ? "" : ", " + std::to_string(out) + " left out";
  std::vector<std::string> lines = {
      set.job.name + ", " + spoken_name(piece),
      "full-face guide, " + short_mm_text(piece.width_um, 1) + " × " +
          short_mm_text(piece.length_um, 1),
      "page " + std::to_string(view.page.number) + " of " + std::to_string(set.cut.pages()) +
          left_out + ", piece " + piece.code + ", " + set.paper.name,
      "file " + set.checksum.substr(0, 4) + " " + set.checksum.substr(4, 4) + " " +
          set.checksum.substr(8, 4)};
  for (const solve::Finding& finding : set.results.findings) {
    if (finding.severity != solve::Severity::stop || finding.piece != set.piece) continue;
    add_wrapped("STOP: " + finding.place, &lines);
    add_wrapped(finding.sentence.substr(0, finding.sentence.find(". ") + 1), &lines);
    break;
  }
  lines.emplace_back(checks::caution_line());
  lines.emplace_back("Not a structural or fire calculation.");
  return lines;
}

/// Words on white ground of their own, so that they can be read across rows that pass under them.
void add_on_ground(drawing::Text text, drawing::Drawing* picture) {
  drawing::add_solid(*picture, drawing::box_of(text), 1'000);
  drawing::add_text(*picture, std::move(text));
}

/// Page number large, and beside it what this paper is. `high` is the room it may take.
void add_title(const PageView& view, const Stand& stand, Um high, drawing::Drawing* picture) {
  const Um big = std::clamp<Um>(high * 5 / 4, kLeastPitch * 4, 44'000);
  const std::string number = std::to_string(view.page.number);
  const Um number_long = big * 13 / 20 * static_cast<Um>(number.size()) + 6'000;
  const std::vector<std::string> lines = title_lines(view);
  const Um pitch = std::clamp<Um>(high / static_cast<Um>(lines.size()), kLeastPitch, 6'000);
  const Um size = pitch * 10 / 14;
  drawing::Text figure = words_on(stand, 0, high / 2 - big * 7 / 20, number);
  figure.size_um = big;
  figure.weight = drawing::Weight::bold;
  drawing::add_text(*picture, std::move(figure));
  Um up = high - pitch;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    drawing::Text line = words_on(stand, number_long, up, lines[i]);
    line.size_um = i == 0 ? size * 5 / 4 : size;
    if (i == 0 || lines[i].starts_with("STOP")) line.weight = drawing::Weight::bold;
    if (stand.quarter_turns == 0) {
      add_on_ground(std::move(line), picture);
    } else {
      drawing::add_text(*picture, std::move(line));
    }
    up -= pitch;
  }
}

/// The pages of the set, this one solid, those left out struck through.
void add_page_map(const PageView& view, const Box& box, drawing::Drawing* picture) {
  const PageCut& cut = view.set.cut;
  const Um wide = box.high.x - box.low.x;
  const Um high = box.high.y - box.low.y - 5'000;
  const Um cell_w = wide / cut.across.pages;
  const Um cell_h = high / cut.along.pages;
  const Um step = std::min(cell_w, cell_h * 10 / 14);
  const Um step_up = step * 14 / 10;
  const drawing::Pen pen{kThinPenUm, {}, 0};
  const Spot low{box.low.x, box.high.y - step_up * cut.along.pages};
  for (std::int64_t row = 0; row < cut.along.pages; ++row) {
    for (std::int64_t column = 0; column < cut.across.pages; ++column) {
      const Box cell{{low.x + step * column, low.y + step_up * row},
                     {low.x + step * (column + 1), low.y + step_up * (row + 1)}};
      const bool here = row == view.page.row && column == view.page.column;
      if (here) drawing::add_solid(*picture, cell);
      drawing::add_rectangle(*picture, cell, pen);
      if (is_left_out(view.set.left_out, row * cut.across.pages + column)) {
        drawing::add_line(*picture, cell.low, cell.high, pen);
      }
    }
  }
  drawing::Text text;
  text.at = {low.x, low.y - 4'000};
  text.size_um = kLabelUm;
  text.words = "page map, front";
  drawing::add_text(*picture, std::move(text));
}

/// A check bar and its figure; none where less than two pieces would fit.
void add_bar(const Spot& low, Um length, drawing::Lie lie, drawing::Drawing* picture) {
  if (length < kLeastBar) return;
  drawing::add_check_bar(*picture, {low, length, lie, kBarThick});
  drawing::Text text;
  text.size_um = kLabelUm;
  text.weight = drawing::Weight::bold;
  text.words = exact_mm_text(length) + (lie == drawing::Lie::across ? " across" : " along");
  text.at = lie == drawing::Lie::across ? Spot{low.x, low.y + kBarThick + 1'200}
                                        : Spot{low.x + kBarThick + 3'800, low.y};
  text.quarter_turns = lie == drawing::Lie::across ? 0 : 1;
  drawing::add_text(*picture, std::move(text));
}

void add_front_and_top(const Spot& low, drawing::Drawing* picture) {
  drawing::add_word_box(*picture, {low, {low.x + 26'000, low.y + 9'000}}, "FRONT");
  drawing::add_top_arrow(*picture, {low.x + 34'000, low.y - 3'000}, 14'000, 0);
}

/// The bar across at the lowest level where no point lies; returns the level above it, on the
/// paper.
Um add_bar_across(const PageView& view, drawing::Drawing* picture) {
  const Um third = (view.high() - view.low()) / 3;
  const Stretch level =
      first_free_level(view, {view.low() + 20'000, view.low() + third}, kBarThick + 6'000);
  const Um left = view.left() + (view.right() - view.left() - kBarAcross) / 2;
  const Spot low = view.on_paper(left, level.low + 1'000);
  add_bar(low, kBarAcross, drawing::Lie::across, picture);
  return low.y + kBarThick + 7'000;
}

/// A wide room: title along the top, map and bars under it.
void fill_wide(const PageView& view, const Box& room, drawing::Drawing* picture) {
  add_title(view, {{room.low.x, room.high.y - kTitleHigh}, 0}, kTitleHigh, picture);
  const Um top = room.high.y - kTitleHigh - 8'000;
  const Um along = std::min(kBarAlong, (top - room.low.y) / 20'000 * 20'000);
  add_bar({room.low.x, top - along}, along, drawing::Lie::along, picture);
  add_page_map(view, {{room.low.x + 30'000, top - 50'000}, {room.low.x + 66'000, top}}, picture);
  add_front_and_top({room.low.x + 80'000, top - 13'000}, picture);
  add_bar({room.low.x + 30'000, top - 66'000}, kBarAcross, drawing::Lie::across, picture);
}

/// A column clear of rows: map, FRONT and TOP above, the bar along and the title reading upwards
/// below.
void fill_column(const PageView& view, const Box& room, drawing::Drawing* picture) {
  const Um wide = room.high.x - room.low.x;
  constexpr Um kMapWide = 24'000;
  const Um map_foot = room.high.y - kMapWide * 14 / 10 - 6'000;
  add_page_map(view, {{room.low.x, map_foot}, {room.low.x + kMapWide, room.high.y}}, picture);
  add_front_and_top({room.low.x, map_foot - 14'000}, picture);
  Um foot = room.low.y;
  if (wide >= kMapWide + kBarAcross + 6'000) {
    add_bar({room.low.x + kMapWide + 5'000, room.high.y - 20'000}, kBarAcross, drawing::Lie::across,
            picture);
  } else {
    foot = std::max(foot, add_bar_across(view, picture));
  }
  const Um along = std::min(kBarAlong, (map_foot - 20'000 - foot) / 20'000 * 20'000);
  add_bar({room.low.x, foot}, along, drawing::Lie::along, picture);
  const Um title_high = std::min(kTitleHigh, wide - 10'000);
  add_title(view, {{room.low.x + 10'000 + title_high, foot}, 1}, title_high, picture);
}

/// Rows stand too close for a column: words lie across the rows, at levels where no point is.
void fill_between_points(const PageView& view, drawing::Drawing* picture) {
  const Um middle = view.low() + 118'000;
  const Stretch title = free_level(view, {middle, view.high() - 20'000});
  const Um high = std::min(kTitleHigh, title.length());
  const Spot low = view.on_paper(view.left() + 14'000, title.high - high);
  add_title(view, {low, 0}, high, picture);
  const Stretch column = free_column(view);
  const Um bar_at = view.on_paper((column.low + column.high) / 2 - 4'000, 0).x;
  const bool bar_is_in_the_way = bar_at > low.x + 110'000 && bar_at < low.x + 156'000;
  const Um map_at = bar_is_in_the_way ? bar_at + 9'000 : low.x + 128'000;
  add_page_map(view, {{map_at, low.y}, {map_at + 24'000, low.y + high}}, picture);
  const Stretch above = free_level(view, {title.high + 4'000, view.high() - 18'000});
  const Stretch below = free_level(view, {middle, title.low - 4'000});
  const Stretch& front = above.length() >= below.length() ? above : below;
  add_front_and_top(view.on_paper(view.left() + 14'000, front.low + 5'000), picture);
  add_bar({bar_at, view.on_paper(0, view.low() + 60'000).y}, kBarAlong, drawing::Lie::along,
          picture);
  add_bar_across(view, picture);
}

}  // namespace

void add_page_title(const PageView& view, drawing::Drawing* picture) {
  const Box room = view.on_paper(free_room(view));
  const Um wide = room.high.x - room.low.x;
  if (wide >= kTitleLong && room.high.y - room.low.y >= 130'000) {
    fill_wide(view, room, picture);
  } else if (wide >= kLeastColumn) {
    fill_column(view, room, picture);
  } else {
    fill_between_points(view, picture);
  }
}

}  // namespace pouncemark::sheets
