#pragma once

#include <array>
#include <string>
#include <vector>

#include "engine/job/job.h"
#include "engine/plan/card_cells.h"
#include "engine/solve/results.h"

namespace pouncemark::plan {

/// Everything the people on the tower need for one bay, for one page. Lengths to half a millimetre,
/// but creep to a hundredth.
struct HangingCard {
  std::string job_name;
  std::string heading;  ///< "bay 6 of 10, holds panel P3"
  std::string code;
  std::array<CardCell, 8> cells;
  std::string band;                ///< the one thing to keep to
  std::vector<std::string> steps;  ///< the order of fixing
  std::vector<std::string> lines;  ///< slots and loads
  std::vector<std::string> findings;
  std::string planned;  ///< "planned for 20 °C"
  std::string today;    ///< what was entered of the hanging day; empty: to write in
};

/// The card of a bay, by its index in Results::bays.
HangingCard hanging_card(const job::Job& job, const solve::Results& results, int bay);

}  // namespace pouncemark::plan
