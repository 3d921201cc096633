#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/base/result.h"
#include "engine/drawing/drawing.h"
#include "engine/job/job.h"
#include "engine/sheets/paper.h"
#include "engine/solve/results.h"
#include "engine/solve/sewing.h"

namespace pouncemark::sheets {

/// How seam cards lie on a paper: whichever way round it holds more of them. Cut along the dashed
/// lines two of an A4 are A5.
struct CardCut {
  Paper page;  ///< the paper, lying on its side where `width_um` is the longer
  int across = 1;
  int down = 1;
  Um card_wide_um = 0;  ///< of what is printed of one card

  std::int64_t cards_a_page() const { return std::int64_t{across} * down; }
};

/// Problem: paper_too_small under 140 x 210, which holds no card.
Result<CardCut> card_cut(const Paper& paper);

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
