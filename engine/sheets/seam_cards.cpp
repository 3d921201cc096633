#include "engine/sheets/seam_cards.h"

#include "engine/sheets/card_parts.h"

namespace pouncemark::sheets {

CardSet seam_cards(const job::Job& job, const solve::Results& results, int piece,
                   const CardCut& cut, const std::string& checksum) {
  const std::vector<int> rows =
      plan::seam_card_rows(results, results.pieces[static_cast<std::size_t>(piece)]);
  const auto draw = [&job, &results, rows, checksum, sewing = solve::sewing_of(job, results)](
                        std::int64_t card, const CardRoom& room, drawing::Drawing* picture) {
    add_seam_card(plan::seam_card(job, results, sewing, rows[static_cast<std::size_t>(card)]),
                  checksum, room, picture);
  };
  return {cut, static_cast<std::int64_t>(rows.size()), draw};
}

}  // namespace pouncemark::sheets
