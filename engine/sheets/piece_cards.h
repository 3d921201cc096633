#pragma once

#include <string>

#include "engine/plan/panel_card.h"
#include "engine/sheets/card_cut.h"

/// Cards of panels and of bays, two to an A4. Nothing on them is true to size.
namespace pouncemark::sheets {

/// The card of one panel twice: as it lies front up, and face down. None for a section. Job and
/// results outlive it.
CardSet panel_cards(const job::Job& job, const solve::Results& results, int piece,
                    const CardCut& cut, const std::string& checksum);

/// A card for each bay, in the job's order. Job and results outlive it.
CardSet hanging_cards(const job::Job& job, const solve::Results& results, const CardCut& cut,
                      const std::string& checksum);

}  // namespace pouncemark::sheets
