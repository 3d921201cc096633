#include "engine/sheets/job_cards.h"

namespace pouncemark::sheets {

CardSet trial_cards(const job::Job& job, const solve::Results& results, const CardCut& cut,
                    const std::string& checksum) {
  const std::vector<solve::RowPlace> kinds = plan::trial_card_kinds(results);
  const auto count = static_cast<std::int64_t>(kinds.size());
  const auto draw = [&job, &results, kinds, count, checksum](
                        std::int64_t card, const CardRoom& room, drawing::Drawing* picture) {
    add_trial_card(plan::trial_card(job, results, kinds[static_cast<std::size_t>(card)]), card + 1,
                   count, checksum, room, picture);
  };
  return {cut, count, draw};
}

CardSet machine_cards(const job::Job& job, const solve::Results& results, const CardCut& cut,
                      const std::string& checksum) {
  const auto draw = [&job, &results, checksum](std::int64_t, const CardRoom& room,
                                               drawing::Drawing* picture) {
    add_machine_card(plan::machine_card(job, results), checksum, room, picture);
  };
  return {cut, plan::trial_card_kinds(results).empty() ? 0 : 1, draw};
}

}  // namespace pouncemark::sheets
