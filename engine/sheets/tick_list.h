#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/job/job.h"
#include "engine/sheets/list_flow.h"
#include "engine/sheets/paper.h"
#include "engine/solve/results.h"

namespace pouncemark::sheets {

/// What the tick list of one piece is made from.
struct TickListSet {
  const job::Job& job;
  const solve::Results& results;
  int piece = 0;  ///< index into Results::pieces
  Paper paper;
  std::string checksum;  ///< first 12 hex digits over the job as saved
};

/// How many pages the tick list of a piece takes, at least 1; nothing is drawn to know it.
std::int64_t tick_list_pages(const job::Job& job, const solve::Results& results, int piece,
                             const Paper& paper);

/// The tick list of one piece, for tape and pen: the lines of its rows, one list of distances from
/// the datum for every different run of guide points, the sum check under each, the ends of its
/// stitch rows. Figures to half a millimetre; nothing on it is true to size, so no correction is
/// applied. The set's job and results outlive the list.
class TickList {
 public:
  explicit TickList(const TickListSet& set);

  /// How many pages it takes, at least 1.
  std::int64_t pages() const { return pages_; }

  /// Page `index`, 0 <= index < pages(). Micrometres of the paper from its lower left corner.
  drawing::Drawing page(std::int64_t index) const;

 private:
  TickListSet set_;
  std::vector<Block> blocks_;
  std::vector<Placed> placed_;
  std::int64_t pages_ = 1;
};

}  // namespace pouncemark::sheets
