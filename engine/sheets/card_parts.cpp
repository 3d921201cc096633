#include "engine/sheets/card_parts.h"

#include <algorithm>
#include <array>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/drawing/shapes.h"
#include "engine/sheets/wrapped_words.h"

namespace pouncemark::sheets {
namespace {

using drawing::Align;
using drawing::Drawing;
using drawing::Weight;

constexpr Um kCellsTopUm = 60'200;
constexpr Um kBandTopUm = kCellsTopUm + 3 * kCardCellHighUm + 2'200;
constexpr Um kLinesTopUm = kBandTopUm + kCardBandHighUm + 6'200;
constexpr Um kLinePitchUm = 5'800;
constexpr Um kTightPitchUm = 4'900;
constexpr Um kTightHigherUm = 800;     ///< the first line begins nearer to the band
constexpr std::size_t kEasyLines = 5;  ///< at the wider pitch
constexpr std::size_t kMostLines = 6;
constexpr Um kBoxesTopUm = 166'600;
constexpr Um kBoxFootUm = kBoxesTopUm + 10'000;
constexpr Um kSignBaseUm = 183'200;
constexpr Um kCautionBaseUm = 188'800;

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
constexpr std::array kSettings = {Setting{kCardLabelUm, false}, Setting{kCardLabelUm, true},
                                  Setting{4'100, true}};

/// The lines of a card, and how they are set.
struct Lines {
  Setting setting;
  Um wide_um = 0;
  std::vector<Line> lines{};

  /// Words that a tenth smaller take a line less are set so: no figure stands alone on a line.
  void wrap(const std::string& words, Weight weight) {
    const Um smaller = std::max(kCardLeastUm, setting.size_um * 9 / 10);
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
    add_fitted(room.at(0, base), line.words, {lines.setting.size_um, kCardLeastUm, line.weight},
               room.wide_um, picture);
    base += pitch;
  }
}

/// A box to write in under its label, with what is already known in it.
Um add_box(const std::string& label, const std::string& words, Um left, Um wide_um,
           const CardRoom& room, Drawing* picture) {
  add_labelled_box(label, words, room.box(left, kBoxesTopUm, left + wide_um, kBoxFootUm),
                   room.wide_um - left, picture);
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
  add_file_mark(checksum, kBoxFootUm, room, picture);
  const std::string approved = "H3 trial seam approved: ";
  if (card.signed_by.empty()) {
    add_sign_line(approved + "name, date", 0, room.wide_um, kSignBaseUm, room, picture);
  } else {
    add_fitted(room.at(0, kSignBaseUm), approved + card.signed_by,
               {kCardSmallUm, kCardLeastUm, Weight::bold}, room.wide_um, picture);
  }
  add_caution(kCautionBaseUm, room, picture);
}

}  // namespace

void add_seam_card(const plan::SeamCard& card, const std::string& checksum, const CardRoom& room,
                   Drawing* picture) {
  add_head(
      {"SEAM CARD   " + card.heading, card.code, card.job_name + ", " + card.piece, "FRONT UP"},
      room, picture);
  add_row_picture(card.row, card.staples > 0, room, picture);
  add_cells(card.cells, 2, kCellsTopUm, room, picture);
  add_band(card.band, kBandTopUm, room, picture);
  add_lines(card, room, picture);
  add_boxes(card, room, picture);
  add_foot(card, checksum, room, picture);
}

}  // namespace pouncemark::sheets
