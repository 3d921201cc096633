#include "engine/sheets/card_base.h"

#include <algorithm>
#include <utility>
#include <vector>

#include "engine/base/number_text.h"
#include "engine/checks/rules.h"
#include "engine/drawing/shapes.h"
#include "engine/sheets/wrapped_words.h"

namespace pouncemark::sheets {
namespace {

using drawing::Align;
using drawing::Drawing;
using drawing::Weight;

constexpr Um kFigureUm = 13'500;

/// The small words of a cell: two lines, or one that takes both where it is long.
void add_beside(const plan::CardCell& cell, drawing::Spot at, Um wide, Drawing* picture) {
  if (wide < 2 * kCardSmallUm) return;  // A figure that long leaves none.
  std::vector<std::string> lines = {cell.over, cell.beside};
  if (cell.over.empty()) {
    lines = wrapped_at_most(2, cell.beside, kCardLeastUm, wide);
    if (lines.size() < 2) lines.insert(lines.begin(), 2 - lines.size(), {});
  }
  add_fitted(at, lines[1], {kCardSmallUm, kCardLeastUm}, wide, picture);
  add_fitted({at.x, at.y + 5'200}, lines[0], {kCardSmallUm, kCardLeastUm}, wide, picture);
}

void add_cell(const plan::CardCell& cell, const CardRoom& room, Um left, Um top, Um wide,
              Drawing* picture) {
  add_fitted(room.at(left, top + 4'700), cell.label, {kCardLabelUm, kCardLeastUm}, wide, picture);
  const Um base = top + kCardCellHighUm - 1'300;
  const Um figure = add_fitted(room.at(left, base), cell.figure,
                               {kFigureUm, kFigureUm, Weight::bold}, wide, picture);
  add_beside(cell, room.at(left + figure + 1'500, base), wide - figure - 1'500, picture);
}

}  // namespace

Um add_fitted(drawing::Spot at, const std::string& words, const FitStyle& style, Um wide_um,
              Drawing* picture) {
  if (words.empty()) return 0;
  Um size = style.size_um;
  while (size > style.least_um && words_width_um(words, size) > wide_um) size -= 100;
  drawing::Text text;
  text.at = at;
  text.size_um = size;
  text.weight = style.weight;
  text.align = style.align;
  text.grey_permille = style.grey_permille;
  text.words = words_width_um(words, size) <= wide_um
                   ? words
                   : wrapped_at_most(1, words, size, std::max<Um>(wide_um, size)).front();
  const Um taken = words_width_um(text.words, size);
  drawing::add_text(*picture, std::move(text));
  return taken;
}

void add_head(const CardHead& head, const CardRoom& room, Drawing* picture) {
  const Um inner = room.wide_um - 8'000;
  drawing::add_solid(*picture, room.box(0, 0, room.wide_um, kCardTitleHighUm));
  add_fitted(room.at(4'000, 8'000), head.kind,
             {5'200, kCardLeastUm, Weight::bold, Align::left, kCardWhite}, inner, picture);
  add_fitted(room.at(4'000, 21'000), head.code,
             {14'000, 6'000, Weight::bold, Align::left, kCardWhite}, inner, picture);
  const Um right = add_fitted(room.at(room.wide_um, 31'600), head.at_right,
                              {6'000, 6'000, Weight::bold, Align::right, 0}, inner, picture);
  add_fitted(room.at(0, 31'600), head.of, {5'200, kCardLeastUm}, room.wide_um - right - 4'000,
             picture);
}

void add_cells(std::span<const plan::CardCell> cells, int columns, Um top, const CardRoom& room,
               Drawing* picture) {
  const auto rows = static_cast<Um>(divide_up(static_cast<std::int64_t>(cells.size()), columns));
  const Um foot = top + rows * kCardCellHighUm;
  const auto edge = [&](Um column) { return room.wide_um * column / columns; };
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const Um column = static_cast<Um>(i) % columns;
    const Um down = top + static_cast<Um>(i) / columns * kCardCellHighUm;
    const Um left = edge(column) + (column > 0 ? 3'000 : 0);
    if (column == 0) {
      drawing::add_line(*picture, room.at(0, down), room.at(room.wide_um, down), kCardRule);
    }
    const Um right = column + 1 == columns ? room.wide_um : edge(column + 1) - 1'500;
    add_cell(cells[i], room, left, down, right - left, picture);
  }
  drawing::add_line(*picture, room.at(0, foot), room.at(room.wide_um, foot), kCardRule);
  for (Um column = 1; column < columns; ++column) {
    drawing::add_line(*picture, room.at(edge(column), top), room.at(edge(column), foot), kCardRule);
  }
}

void add_band(const std::string& words, Um top, const CardRoom& room, Drawing* picture) {
  drawing::add_solid(*picture, room.box(0, top, room.wide_um, top + kCardBandHighUm));
  constexpr Um kLeast = 4'600;
  const Um inner = room.wide_um - 8'000;
  FitStyle style{7'000, kLeast, Weight::bold, Align::left, kCardWhite};
  const std::vector<std::string> lines = wrapped_at_most(2, words, kLeast, inner);
  if (lines.size() == 1) {
    add_fitted(room.at(4'000, top + 8'200), words, style, inner, picture);
    return;
  }
  style.size_um = kLeast;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    add_fitted(room.at(4'000, top + 4'800 + static_cast<Um>(i) * 5'000), lines[i], style, inner,
               picture);
  }
}

void add_write_box(const drawing::Box& box, const std::string& words, Drawing* picture) {
  // The pen runs centred on its line, and none of it lies outside the box.
  constexpr Um kHalfPen = 300;
  drawing::add_rectangle(*picture, {{box.low.x + kHalfPen, box.low.y}, {box.high.x, box.high.y}},
                         {2 * kHalfPen, {}, 0});
  add_fitted({box.low.x + 3'000, box.low.y + 2'200}, words, {8'000, kCardLabelUm, Weight::bold},
             box.high.x - box.low.x - 4'000, picture);
}

void add_labelled_box(const std::string& label, const std::string& words, const drawing::Box& box,
                      Um label_wide_um, Drawing* picture) {
  add_fitted({box.low.x, box.high.y + 2'000}, label, {kCardSmallUm, kCardLeastUm}, label_wide_um,
             picture);
  add_write_box(box, words, picture);
}

void add_told(const std::vector<std::string>& told, const std::vector<std::string>& findings,
              Um base, Um foot, const CardRoom& room, Drawing* picture) {
  constexpr Um kSize = 4'200;
  constexpr Um kPitch = 4'900;
  const auto most = static_cast<std::size_t>((foot - base) / kPitch + 1);
  std::vector<std::string> lines;
  for (const std::string& words : told) {
    for (std::string& line : wrapped(words, kSize, room.wide_um)) lines.push_back(std::move(line));
  }
  if (!findings.empty() && lines.size() >= most) lines.resize(most - 1);
  const std::size_t plain = lines.size();
  for (std::size_t i = 0; i < findings.size(); ++i) {
    std::vector<std::string> more = wrapped(findings[i], kSize, room.wide_um);
    const std::size_t spare = i + 1 < findings.size() ? 1 : 0;
    if (lines.size() + more.size() + spare > most) {
      const auto left = static_cast<std::int64_t>(findings.size() - i);
      lines.push_back(
          "WARN " +
          counted(left, i == 0 ? "thing" : "more thing", i == 0 ? "things" : "more things") +
          " to know: see the check.");
      break;
    }
    for (std::string& line : more) lines.push_back(std::move(line));
  }
  for (std::size_t i = 0; i < std::min(lines.size(), most); ++i) {
    add_fitted(room.at(0, base + static_cast<Um>(i) * kPitch), lines[i],
               {kSize, kCardLeastUm, i < plain ? Weight::regular : Weight::bold}, room.wide_um,
               picture);
  }
}

void add_sign_line(const std::string& words, Um left, Um right, Um base, const CardRoom& room,
                   Drawing* picture) {
  const Um taken =
      add_fitted(room.at(left, base), words, {kCardSmallUm, kCardLeastUm}, right - left, picture);
  drawing::add_line(*picture, room.at(left + taken + 2'000, base + 600), room.at(right, base + 600),
                    kCardRule);
}

void add_file_mark(const std::string& checksum, Um base, const CardRoom& room, Drawing* picture) {
  const std::string file =
      "file " + checksum.substr(0, 4) + " " + checksum.substr(4, 4) + " " + checksum.substr(8, 4);
  add_fitted(room.at(room.wide_um, base), file,
             {kCardLeastUm, kCardLeastUm, Weight::regular, Align::right}, 45'000, picture);
}

void add_caution(Um base, const CardRoom& room, Drawing* picture) {
  add_fitted(room.at(0, base), std::string(checks::caution_line()), {kCardSmallUm, kCardLeastUm},
             room.wide_um, picture);
}

}  // namespace pouncemark::sheets
