#include "engine/sheets/job_cards.h"

#include <utility>

#include "engine/base/insist.h"

namespace pouncemark::sheets {

TrialCards::TrialCards(const job::Job& job, const solve::Results& results, const CardCut& cut,
                       std::string checksum)
    : cut_(cut), checksum_(std::move(checksum)) {
  for (const solve::RowPlace place : plan::trial_card_kinds(results)) {
    cards_.push_back(plan::trial_card(job, results, place));
  }
}

std::int64_t TrialCards::pages() const {
  return divide_up(static_cast<std::int64_t>(cards_.size()), cut_.cards_a_page());
}

drawing::Drawing TrialCards::page(std::int64_t index) const {
  INSIST(index >= 0 && index < pages());
  const auto count = static_cast<std::int64_t>(cards_.size());
  return page_of_cards(cut_, count, index,
                       [&](std::int64_t card, const CardRoom& room, drawing::Drawing* picture) {
                         add_trial_card(cards_[static_cast<std::size_t>(card)], card + 1, count,
                                        checksum_, room, picture);
                       });
}

drawing::Drawing machine_card_page(const plan::MachineCard& card, const CardCut& cut,
                                   const std::string& checksum) {
  return page_of_cards(cut, 1, 0,
                       [&](std::int64_t, const CardRoom& room, drawing::Drawing* picture) {
                         add_machine_card(card, checksum, room, picture);
                       });
}

}  // namespace pouncemark::sheets
