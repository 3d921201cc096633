#include "engine/sheets/seam_cards.h"

#include <algorithm>
#include <utility>

#include "engine/base/insist.h"
#include "engine/drawing/shapes.h"
#include "engine/sheets/card_parts.h"

namespace pouncemark::sheets {
namespace {

using drawing::Spot;

constexpr Um kLeastWideUm = 120'000;
constexpr Um kMostWideUm = 136'000;
/// Between what is printed of two cards; the cut runs in its middle.
constexpr Um kGapUm = 14'000;

int that_fit(Um room_um, Um least_um) {
  return static_cast<int>(
      std::max<Um>(0, (room_um - 2 * kBorderUm + kGapUm) / (least_um + kGapUm)));
}

CardCut cut_of(const Paper& page) {
  CardCut cut{page, that_fit(page.width_um, kLeastWideUm), that_fit(page.length_um, kCardHighUm),
              0};
  if (cut.across > 0) {
    const Um room = page.width_um - 2 * kBorderUm - (cut.across - 1) * kGapUm;
    cut.card_wide_um = std::min(kMostWideUm, room / cut.across);
  }
  return cut;
}

void add_cut_line(Spot from, Spot to, drawing::Drawing* picture) {
  drawing::add_line(*picture, from, to, {250, {3'000, 2'000}, 0});
}

void add_cut_lines(const CardCut& cut, drawing::Drawing* picture) {
  const Um right = cut.page.width_um - kBorderUm;
  const Um top = cut.page.length_um - kBorderUm;
  for (int i = 1; i < cut.across; ++i) {
    const Um x = kBorderUm + i * (cut.card_wide_um + kGapUm) - kGapUm / 2;
    add_cut_line({x, kBorderUm}, {x, top}, picture);
  }
  for (int i = 1; i < cut.down; ++i) {
    const Um y = top - i * (kCardHighUm + kGapUm) + kGapUm / 2;
    add_cut_line({kBorderUm, y}, {right, y}, picture);
  }
}

}  // namespace

Result<CardCut> card_cut(const Paper& paper) {
  Paper turned = paper;
  std::swap(turned.width_um, turned.length_um);
  const CardCut upright = cut_of(paper);
  const CardCut on_its_side = cut_of(turned);
  const CardCut& best = on_its_side.cards_a_page() > upright.cards_a_page() ? on_its_side : upright;
  if (best.cards_a_page() > 0) return best;
  return Problem{ProblemCode::paper_too_small, {}, paper.name, "at least 140x210"};
}

SeamCards::SeamCards(const job::Job& job, const solve::Results& results, int piece,
                     const CardCut& cut, std::string checksum)
    : job_(job),
      results_(results),
      sewing_(solve::sewing_of(job, results)),
      cut_(cut),
      checksum_(std::move(checksum)),
      rows_(plan::seam_card_rows(results, results.pieces[static_cast<std::size_t>(piece)])) {}

std::int64_t SeamCards::pages() const { return divide_up(cards(), cut_.cards_a_page()); }

drawing::Drawing SeamCards::page(std::int64_t index) const {
  INSIST(index >= 0 && index < pages());
  drawing::Drawing picture;
  add_cut_lines(cut_, &picture);
  const std::int64_t first = index * cut_.cards_a_page();
  const std::int64_t last = std::min(first + cut_.cards_a_page(), cards());
  for (std::int64_t i = first; i < last; ++i) {
    const std::int64_t across = (i - first) % cut_.across;
    const std::int64_t down = (i - first) / cut_.across;
    const Spot corner{kBorderUm + across * (cut_.card_wide_um + kGapUm),
                      cut_.page.length_um - kBorderUm - down * (kCardHighUm + kGapUm)};
    const plan::SeamCard card =
        plan::seam_card(job_, results_, sewing_, rows_[static_cast<std::size_t>(i)]);
    add_seam_card(card, checksum_, {corner, cut_.card_wide_um}, &picture);
  }
  return picture;
}

}  // namespace pouncemark::sheets
