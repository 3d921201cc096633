#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/plan/card_cells.h"
#include "engine/sheets/card_cut.h"

/// Inside of the cards: what cards of every kind are drawn with. Only sheets' own files include
/// this. Figures have an em of 13.5; no word is under 3.8, so that it is read at the bench.
namespace pouncemark::sheets {

inline constexpr Um kCardLeastUm = 3'800;  ///< no word is smaller
inline constexpr Um kCardSmallUm = 4'400;
inline constexpr Um kCardLabelUm = 4'600;
inline constexpr Um kCardTitleHighUm = 24'800;
inline constexpr Um kCardCellHighUm = 18'400;
inline constexpr Um kCardBandHighUm = 11'400;
inline constexpr int kCardWhite = 1'000;
inline const drawing::Pen kCardRule{400, {}, 0};

/// How a line of words is set where its room may be short.
struct FitStyle {
  Um size_um = 0;
  Um least_um = 0;  ///< no smaller: words that are still too long end in "…"
  drawing::Weight weight = drawing::Weight::regular;
  drawing::Align align = drawing::Align::left;
  int grey_permille = 0;
};

/// Words within `wide_um`; gives the room they take.
Um add_fitted(drawing::Spot at, const std::string& words, const FitStyle& style, Um wide_um,
              drawing::Drawing* picture);

/// The black head of a card: what kind of card, its code large, and under it what it belongs to
/// and, at the right, what is to be seen to at once.
struct CardHead {
  std::string kind;  ///< "SEAM CARD   side row 1 of 18"
  std::string code;
  std::string of;
  std::string at_right;
};
void add_head(const CardHead& head, const CardRoom& room, drawing::Drawing* picture);

/// Cells in rows of `columns` from `top` down, ruled.
void add_cells(std::span<const plan::CardCell> cells, int columns, Um top, const CardRoom& room,
               drawing::Drawing* picture);

/// White words on a black band, one line or two small ones.
void add_band(const std::string& words, Um top, const CardRoom& room, drawing::Drawing* picture);

/// A box to write in, and what is already known in it.
void add_write_box(const drawing::Box& box, const std::string& words, drawing::Drawing* picture);

/// The same under its label, which may be wider than the box.
void add_labelled_box(const std::string& label, const std::string& words, const drawing::Box& box,
                      Um label_wide_um, drawing::Drawing* picture);

/// What is to be told, line under line from `base` on down to `foot`, and bold under it the
/// findings; those that find no room are counted on the last line.
void add_told(const std::vector<std::string>& told, const std::vector<std::string>& findings,
              Um base, Um foot, const CardRoom& room, drawing::Drawing* picture);

/// Words and a line to write on, from `left` to `right`.
void add_sign_line(const std::string& words, Um left, Um right, Um base, const CardRoom& room,
                   drawing::Drawing* picture);

/// The job file's mark, up to the right edge.
void add_file_mark(const std::string& checksum, Um base, const CardRoom& room,
                   drawing::Drawing* picture);

/// The caution that stands on every page.
void add_caution(Um base, const CardRoom& room, drawing::Drawing* picture);

}  // namespace pouncemark::sheets
