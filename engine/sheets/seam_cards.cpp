#include "engine/sheets/seam_cards.h"

#include <utility>

#include "engine/base/insist.h"
#include "engine/sheets/card_parts.h"

namespace pouncemark::sheets {

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
  return page_of_cards(cut_, cards(), index,
                       [this](std::int64_t card, const CardRoom& room, drawing::Drawing* picture) {
                         add_seam_card(plan::seam_card(job_, results_, sewing_,
                                                       rows_[static_cast<std::size_t>(card)]),
                                       checksum_, room, picture);
                       });
}

}  // namespace pouncemark::sheets
