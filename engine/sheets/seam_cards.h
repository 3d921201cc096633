#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/job/job.h"
#include "engine/sheets/card_cut.h"
#include "engine/solve/results.h"
#include "engine/solve/sewing.h"

namespace pouncemark::sheets {

/// The seam cards of one piece, one for each stitch row in the order of the results. Nothing on
/// them is true to size, so no correction is applied. Job and results outlive them.
class SeamCards {
 public:
  SeamCards(const job::Job& job, const solve::Results& results, int piece, const CardCut& cut,
            std::string checksum);

  std::int64_t cards() const { return static_cast<std::int64_t>(rows_.size()); }
  /// 0 where the piece has no stitch row.
  std::int64_t pages() const;

  /// Page `index`, 0 <= index < pages(). Micrometres of the paper from its lower left corner.
  drawing::Drawing page(std::int64_t index) const;

 private:
  const job::Job& job_;
  const solve::Results& results_;
  solve::Sewing sewing_;
  CardCut cut_;
  std::string checksum_;
  std::vector<int> rows_;
};

}  // namespace pouncemark::sheets
