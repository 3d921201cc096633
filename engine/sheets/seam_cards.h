#pragma once

#include <string>

#include "engine/job/job.h"
#include "engine/sheets/card_cut.h"
#include "engine/solve/results.h"

namespace pouncemark::sheets {

/// The seam cards of one piece, one for each stitch row in the order of the results; none where it
/// has no stitch row. Nothing on them is true to size, so no correction is applied. Job and results
/// outlive them.
CardSet seam_cards(const job::Job& job, const solve::Results& results, int piece,
                   const CardCut& cut, const std::string& checksum);

}  // namespace pouncemark::sheets
