#include "engine/sheets/card_cut.h"

#include <algorithm>
#include <utility>

#include "engine/base/insist.h"
#include "engine/drawing/shapes.h"

namespace pouncemark::sheets {
namespace {

using drawing::Spot;

/// Between what is printed of two cards; the cut runs in its middle.
constexpr Um kGapUm = 14'000;

int that_fit(Um room_um, Um least_um) {
  return static_cast<int>(
      std::max<Um>(0, (room_um - 2 * kBorderUm + kGapUm) / (least_um + kGapUm)));
}

/// What one of so many gets of a side of the paper, no more than `most_um`.
Um part_of(Um side_um, int count, Um most_um) {
  if (count == 0) return 0;
  return std::min(most_um, (side_um - 2 * kBorderUm - (count - 1) * kGapUm) / count);
}

CardCut cut_of(const Paper& page, const CardSize& size) {
  CardCut cut;
  cut.page = page;
  cut.across = that_fit(page.width_um, size.least_wide_um);
  cut.down = that_fit(page.length_um, size.least_high_um);
  cut.card_wide_um = part_of(page.width_um, cut.across, size.most_wide_um);
  cut.card_high_um = part_of(page.length_um, cut.down, size.most_high_um);
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
    const Um y = top - i * (cut.card_high_um + kGapUm) + kGapUm / 2;
    add_cut_line({kBorderUm, y}, {right, y}, picture);
  }
}

}  // namespace

Result<CardCut> card_cut(const Paper& paper, const CardSize& size) {
  Paper turned = paper;
  std::swap(turned.width_um, turned.length_um);
  const CardCut upright = cut_of(paper, size);
  const CardCut on_its_side = cut_of(turned, size);
  const CardCut& best = on_its_side.cards_a_page() > upright.cards_a_page() ? on_its_side : upright;
  if (best.cards_a_page() > 0) return best;
  return Problem{ProblemCode::paper_too_small, {}, paper.name, size.least_paper};
}

drawing::Drawing CardSet::page(std::int64_t index) const {
  INSIST(index >= 0 && index < pages());
  drawing::Drawing picture;
  add_cut_lines(cut, &picture);
  const std::int64_t first = index * cut.cards_a_page();
  const std::int64_t last = std::min(first + cut.cards_a_page(), cards);
  for (std::int64_t i = first; i < last; ++i) {
    const std::int64_t across = (i - first) % cut.across;
    const std::int64_t down = (i - first) / cut.across;
    const Spot corner{kBorderUm + across * (cut.card_wide_um + kGapUm),
                      cut.page.length_um - kBorderUm - down * (cut.card_high_um + kGapUm)};
    draw(i, {corner, cut.card_wide_um, cut.card_high_um}, &picture);
  }
  return picture;
}

}  // namespace pouncemark::sheets
