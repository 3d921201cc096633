#include "engine/sheets/card_parts.h"

#include <algorithm>
#include <array>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/checks/rules.h"
#include "engine/drawing/shapes.h"
#include "engine/sheets/wrapped_words.h"

namespace pouncemark::sheets {
namespace {

using drawing::Align;
using drawing::Drawing;
using drawing::Weight;

constexpr int kWhite = 1'000;
constexpr Um kTitleHighUm = 24'800;
constexpr Um kCellsTopUm = 60'200;
constexpr Um kCellHighUm = 18'400;
constexpr Um kBandTopUm = kCellsTopUm + 3 * kCellHighUm + 2'200;
constexpr Um kBandHighUm = 11'400;
constexpr Um kLinesTopUm = kBandTopUm + kBandHighUm + 6'200;
constexpr Um kLinePitchUm = 5'800;
constexpr Um kTightPitchUm = 4'900;
constexpr Um kTightHigherUm = 800;     ///< the first line begins nearer to the band
constexpr std::size_t kEasyLines = 5;  ///< at the wider pitch
constexpr std::size_t kMostLines = 6;
constexpr Um kBoxesTopUm = 166'600;
constexpr Um kBoxFootUm = kBoxesTopUm + 10'000;
constexpr Um kSignBaseUm = 183'200;
constexpr Um kCautionBaseUm = 188'800;

constexpr Um kLabelUm = 4'600;
constexpr Um kFigureUm = 13'500;
constexpr Um kSmallUm = 4'400;
constexpr Um kLeastUm = 3'800;

const drawing::Pen kRule{400, {}, 0};

void add_title(const plan::SeamCard& card, const CardRoom& room, Drawing* picture) {
  const Um inner = room.wide_um - 8'000;
  drawing::add_solid(*picture, room.box(0, 0, room.wide_um, kTitleHighUm));
  add_fitted(room.at(4'000, 8'000), "SEAM CARD   " + card.heading,
             {5'200, kLeastUm, Weight::bold, Align::left, kWhite}, inner, picture);
  add_fitted(room.at(4'000, 21'000), card.code, {14'000, 6'000, Weight::bold, Align::left, kWhite},
             inner, picture);
  const Um front = add_fitted(room.at(room.wide_um, 31'600), "FRONT UP",
                              {6'000, 6'000, Weight::bold, Align::right, 0}, inner, picture);
  add_fitted(room.at(0, 31'600), card.job_name + ", " + card.piece, {5'200, kLeastUm},
             room.wide_um - front - 4'000, picture);
}

/// The small words of a cell: two lines, or one that takes both where it is long.
void add_beside(const plan::CardCell& cell, drawing::Spot at, Um wide, Drawing* picture) {
  std::vector<std::string> lines = {cell.over, cell.beside};
  if (cell.over.empty()) {
    lines = wrapped_at_most(2, cell.beside, kLeastUm, wide);
    if (lines.size() < 2) lines.insert(lines.begin(), 2 - lines.size(), {});
  }
  add_fitted(at, lines[1], {kSmallUm, kLeastUm}, wide, picture);
  add_fitted({at.x, at.y + 5'200}, lines[0], {kSmallUm, kLeastUm}, wide, picture);
}

void add_cell(const plan::CardCell& cell, const CardRoom& room, Um left, Um top, Um wide,
              Drawing* picture) {
  add_fitted(room.at(left, top + 4'700), cell.label, {kLabelUm, kLeastUm}, wide, picture);
  const Um base = top + kCellHighUm - 1'300;
  const Um figure = add_fitted(room.at(left, base), cell.figure,
                               {kFigureUm, kFigureUm, Weight::bold}, wide, picture);
  add_beside(cell, room.at(left + figure + 1'500, base), wide - figure - 1'500, picture);
}

void add_cells(const plan::SeamCard& card, const CardRoom& room, Drawing* picture) {
  constexpr Um kFoot = kCellsTopUm + 3 * kCellHighUm;
  const Um middle = room.wide_um / 2;
  for (std::size_t i = 0; i < card.cells.size(); ++i) {
    const bool is_right = i % 2 == 1;
    const Um top = kCellsTopUm + static_cast<Um>(i / 2) * kCellHighUm;
    const Um left = is_right ? middle + 3'000 : 0;
    if (!is_right) {
      drawing::add_line(*picture, room.at(0, top), room.at(room.wide_um, top), kRule);
    }
    add_cell(card.cells[i], room, left, top, (is_right ? room.wide_um : middle - 1'500) - left,
             picture);
  }
  drawing::add_line(*picture, room.at(0, kFoot), room.at(room.wide_um, kFoot), kRule);
  drawing::add_line(*picture, room.at(middle, kCellsTopUm), room.at(middle, kFoot), kRule);
}

void add_band(const plan::SeamCard& card, const CardRoom& room, Drawing* picture) {
  drawing::add_solid(*picture, room.box(0, kBandTopUm, room.wide_um, kBandTopUm + kBandHighUm));
  constexpr Um kLeast = 4'600;
  const Um inner = room.wide_um - 8'000;
  FitStyle style{7'000, kLeast, Weight::bold, Align::left, kWhite};
  const std::vector<std::string> lines = wrapped_at_most(2, card.band, kLeast, inner);
  if (lines.size() == 1) {
    add_fitted(room.at(4'000, kBandTopUm + 8'200), card.band, style, inner, picture);
    return;
  }
  style.size_um = kLeast;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    add_fitted(room.at(4'000, kBandTopUm + 4'800 + static_cast<Um>(i) * 5'000), lines[i], style,
               inner, picture);
  }
}

/// One line of words under the band.
struct Line {
  std::string words;
  Weight weight = Weight::regular;
};

/// How the lines under the band are set: the first way that leaves room to spare is taken.
struct Setting {
  Um size_um = 0;
  bool run_together = false;  ///< what is known of the row stands in one paragraph
};
constexpr std::array kSettings = {Setting{kLabelUm, false}, Setting{kLabelUm, true},
                                  Setting{4'100, true}};

/// The lines of a card, and how they are set.
struct Lines {
  Setting setting;
  Um wide_um = 0;
  std::vector<Line> lines{};

  /// Words that a tenth smaller take a line less are set so: no figure stands alone on a line.
  void wrap(const std::string& words, Weight weight) {
    const Um smaller = std::max(kLeastUm, setting.size_um * 9 / 10);
    std::vector<std::string> plain = wrapped(words, setting.size_um, wide_um);
    std::vector<std::string> tight = wrapped(words, smaller, wide_um);
    for (std::string& line : tight.size() < plain.size() ? tight : plain) {
      lines.push_back({std::move(line), weight});
    }
  }
};

void add_known(const plan::SeamCard& card, Lines* lines) {
  if (!card.fly_side.empty()) lines->wrap(card.fly_side, Weight::bold);
  std::string together;
  for (const std::string& words : card.lines) {
    if (!lines->setting.run_together) lines->wrap(words, Weight::regular);
    together += (together.empty() ? "" : " ") + words;
  }
  if (lines->setting.run_together) lines->wrap(together, Weight::regular);
}

/// As many findings as there is room for; those that find none are counted on the last line. What
/// there is to know goes before the last words of names that fill the card.
void add_findings(const std::vector<std::string>& findings, Lines* to) {
  std::vector<Line>& lines = to->lines;
  if (!findings.empty() && lines.size() >= kMostLines) lines.resize(kMostLines - 1);
  for (std::size_t i = 0; i < findings.size(); ++i) {
    const std::size_t before = lines.size();
    to->wrap(findings[i], Weight::bold);
    const std::size_t spare = i + 1 < findings.size() ? 1 : 0;
    if (lines.size() + spare <= kMostLines) continue;
    const auto left = static_cast<std::int64_t>(findings.size() - i);
    lines.resize(before);
    lines.push_back({"WARN " + counted(left, "more thing", "more things") +
                         " to know at this row: see the check.",
                     Weight::bold});
    return;
  }
}

Lines lines_of(const plan::SeamCard& card, Um wide_um) {
  std::vector<std::string> findings;
  for (const std::string& words : card.stops) findings.push_back("STOP " + words);
  for (const std::string& words : card.warns) findings.push_back("WARN " + words);
  Lines lines;
  for (const Setting& setting : kSettings) {
    lines = Lines{setting, wide_um};
    add_known(card, &lines);
    add_findings(findings, &lines);
    if (lines.lines.size() <= kEasyLines) break;
  }
  return lines;
}

void add_lines(const plan::SeamCard& card, const CardRoom& room, Drawing* picture) {
  const Lines lines = lines_of(card, room.wide_um);
  const bool is_tight = lines.lines.size() > kEasyLines;
  const Um pitch = is_tight ? kTightPitchUm : kLinePitchUm;
  Um base = kLinesTopUm - (is_tight ? kTightHigherUm : 0);
  for (const Line& line : lines.lines) {
    add_fitted(room.at(0, base), line.words, {lines.setting.size_um, kLeastUm, line.weight},
               room.wide_um, picture);
    base += pitch;
  }
}

/// A box to write in under its label, with what is already known in it.
Um add_box(const std::string& label, const std::string& words, Um left, Um wide_um,
           const CardRoom& room, Drawing* picture) {
  add_fitted(room.at(left, kBoxesTopUm - 2'000), label, {kSmallUm, kLeastUm}, room.wide_um - left,
             picture);
  // The pen runs centred on its line, and none of it lies outside the card.
  constexpr Um kHalfPen = 300;
  drawing::add_rectangle(*picture,
                         room.box(left + kHalfPen, kBoxesTopUm, left + wide_um, kBoxFootUm),
                         {2 * kHalfPen, {}, 0});
  add_fitted(room.at(left + 3'000, kBoxFootUm - 2'200), words, {8'000, 4'600, Weight::bold},
             wide_um - 4'000, picture);
  return left + wide_um + 4'000;
}

void add_boxes(const plan::SeamCard& card, const CardRoom& room, Drawing* picture) {
  constexpr Um kCountWide = 27'000;
  Um left = 0;
  if (card.staples > 0) {
    left = add_box("staples in", count_text(card.staples), left, kCountWide, room, picture);
    left = add_box("staples out", card.staples_stay ? "stay" : "", left, kCountWide, room, picture);
  }
  if (!card.film_stays) {
    add_box("film off, 40 strip, both faces", "", left, 14'000, room, picture);
  }
}

void add_foot(const plan::SeamCard& card, const std::string& checksum, const CardRoom& room,
              Drawing* picture) {
  const std::string file =
      "file " + checksum.substr(0, 4) + " " + checksum.substr(4, 4) + " " + checksum.substr(8, 4);
  add_fitted(room.at(room.wide_um, kBoxFootUm), file,
             {kLeastUm, kLeastUm, Weight::regular, Align::right}, 45'000, picture);
  const std::string approved = "H3 trial seam approved: ";
  if (card.signed_by.empty()) {
    const Um words = add_fitted(room.at(0, kSignBaseUm), approved + "name, date",
                                {kSmallUm, kLeastUm}, room.wide_um, picture);
    drawing::add_line(*picture, room.at(words + 2'000, kSignBaseUm + 600),
                      room.at(room.wide_um, kSignBaseUm + 600), kRule);
  } else {
    add_fitted(room.at(0, kSignBaseUm), approved + card.signed_by,
               {kSmallUm, kLeastUm, Weight::bold}, room.wide_um, picture);
  }
  add_fitted(room.at(0, kCautionBaseUm), std::string(checks::caution_line()), {kSmallUm, kLeastUm},
             room.wide_um, picture);
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

void add_seam_card(const plan::SeamCard& card, const std::string& checksum, const CardRoom& room,
                   Drawing* picture) {
  add_title(card, room, picture);
  add_row_picture(card.row, card.staples > 0, room, picture);
  add_cells(card, room, picture);
  add_band(card, room, picture);
  add_lines(card, room, picture);
  add_boxes(card, room, picture);
  add_foot(card, checksum, room, picture);
}

}  // namespace pouncemark::sheets
