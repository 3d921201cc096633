#pragma once

#include <array>
#include <string>
#include <vector>

#include "engine/job/job.h"
#include "engine/plan/card_cells.h"
#include "engine/solve/results.h"

namespace pouncemark::plan {

/// What lies right of the needle while rows of one sort are sewn, at its widest.
struct ArmLine {
  std::string what;   ///< "section 1", "side rows"
  std::string order;  ///< "9 sleeves from the left"
  std::string at;     ///< the row where it is widest
  std::string side;
  std::string how;  ///< "fits flat", "rolled 75 across", "does not fit", "arm not measured"
  bool does_not_fit = false;
};

/// A line of dials to write down, one for each kind of row.
struct DialLine {
  std::string kind;    ///< "side rows"
  std::string stitch;  ///< asked for: "5.5", of several "5.5 to 6"
};

/// How the machine is set up, for the whole job.
struct MachineCard {
  std::string name;  ///< empty: not entered
  std::string job_name;
  std::array<CardCell, 9> cells;
  std::string band;  ///< the one thing to keep to
  std::vector<std::string> lines;
  std::vector<DialLine> dials;
  std::vector<ArmLine> arm;           ///< worst first: what does not fit, then the widest
  std::vector<std::string> findings;  ///< "STOP ...", "WARN ..." of the job as a whole
};

/// The card of a job that sews at least one row.
MachineCard machine_card(const job::Job& job, const solve::Results& results);

}  // namespace pouncemark::plan
