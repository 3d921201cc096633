#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/drawing/drawing.h"
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

/// The trial cards of a job, one for each kind of row, as its pages hold them.
class TrialCards {
 public:
  TrialCards(const job::Job& job, const solve::Results& results, const CardCut& cut,
             std::string checksum);

  /// 0 where the job sews no row.
  std::int64_t pages() const;
  drawing::Drawing page(std::int64_t index) const;

 private:
  std::vector<plan::TrialCard> cards_;
  CardCut cut_;
  std::string checksum_;
};

/// The page of a machine card.
drawing::Drawing machine_card_page(const plan::MachineCard& card, const CardCut& cut,
                                   const std::string& checksum);

}  // namespace pouncemark::sheets
