#pragma once

#include <cstdint>
#include <functional>

#include "engine/base/result.h"
#include "engine/drawing/drawing.h"
#include "engine/sheets/paper.h"

namespace pouncemark::sheets {

/// Where a card is drawn: places are counted from its upper left corner, to the right and downward.
struct CardRoom {
  drawing::Spot corner;
  Um wide_um = 0;
  Um high_um = 0;

  drawing::Spot at(Um right, Um down) const { return {corner.x + right, corner.y - down}; }
  drawing::Box box(Um left, Um top, Um right, Um bottom) const {
    return {at(left, bottom), at(right, top)};
  }
};

/// What is printed of a card of one kind, and the least paper that holds one.
struct CardSize {
  Um least_wide_um = 0;
  Um most_wide_um = 0;
  Um least_high_um = 0;
  Um most_high_um = 0;
  const char* least_paper = "";
};

/// A seam card is half an A4, a trial card or a machine card a whole one; all go on Letter too.
inline constexpr CardSize kSeamCard{120'000, 136'000, 190'000, 190'000, "at least 140x210"};
inline constexpr CardSize kPageCard{190'000, 196'000, 259'000, 277'000, "at least 210x279"};

/// How cards lie on a paper: whichever way round it holds more of them. Cut along the dashed lines
/// two seam cards of an A4 are A5.
struct CardCut {
  Paper page;  ///< the paper, lying on its side where `width_um` is the longer
  int across = 1;
  int down = 1;
  Um card_wide_um = 0;  ///< of what is printed of one card
  Um card_high_um = 0;

  std::int64_t cards_a_page() const { return std::int64_t{across} * down; }
};

/// Problem: paper_too_small where it holds no card.
Result<CardCut> card_cut(const Paper& paper, const CardSize& size = kSeamCard);

/// So many cards of one size, each drawn by its number.
struct CardSet {
  CardCut cut;
  std::int64_t cards = 0;
  std::function<void(std::int64_t, const CardRoom&, drawing::Drawing*)> draw;

  /// 0 where there is no card.
  std::int64_t pages() const { return divide_up(cards, cut.cards_a_page()); }

  /// Page `index`, 0 <= index < pages(). Micrometres of the paper from its lower left corner.
  drawing::Drawing page(std::int64_t index) const;
};

}  // namespace pouncemark::sheets
