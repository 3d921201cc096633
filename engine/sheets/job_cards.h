#pragma once

#include <cstdint>
#include <string>

#include "engine/plan/machine_card.h"
#include "engine/plan/trial_card.h"
#include "engine/sheets/card_cut.h"

/// Cards of the whole job, each a page of A4. Nothing on them is true to size.
namespace pouncemark::sheets {

/// One whole trial card: protocol, table of trials, room for the coupon. `number` of `count`.
void add_trial_card(const plan::TrialCard& card, std::int64_t number, std::int64_t count,
                    const std::string& checksum, const CardRoom& room, drawing::Drawing* picture);

/// One whole machine card.
void add_machine_card(const plan::MachineCard& card, const std::string& checksum,
                      const CardRoom& room, drawing::Drawing* picture);

/// The trial cards of a job, one for each kind of row, and its machine card; none where it sews no
/// row. Job and results outlive them.
CardSet trial_cards(const job::Job& job, const solve::Results& results, const CardCut& cut,
                    const std::string& checksum);
CardSet machine_cards(const job::Job& job, const solve::Results& results, const CardCut& cut,
                      const std::string& checksum);

}  // namespace pouncemark::sheets
