#pragma once

#include <string>

#include "engine/drawing/drawing.h"
#include "engine/plan/seam_card.h"
#include "engine/sheets/list_strips.h"

/// Inside of the seam cards: how one is drawn. Only sheets' own files include this.
namespace pouncemark::sheets {

/// How high what is printed of a card is.
inline constexpr Um kCardHighUm = 190'000;

/// Where a card is drawn: places are counted from its upper left corner, to the right and downward.
struct CardRoom {
  drawing::Spot corner;
  Um wide_um = 0;

  drawing::Spot at(Um right, Um down) const { return {corner.x + right, corner.y - down}; }
  drawing::Box box(Um left, Um top, Um right, Um bottom) const {
    return {at(left, bottom), at(right, top)};
  }
};

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

/// The row as it lies: edges, staples, stitches, start, stop, which way it is sewn.
void add_row_picture(const plan::CardRow& row, bool has_staples, const CardRoom& room,
                     drawing::Drawing* picture);

/// One whole card.
void add_seam_card(const plan::SeamCard& card, const std::string& checksum, const CardRoom& room,
                   drawing::Drawing* picture);

}  // namespace pouncemark::sheets
