#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/job/job.h"
#include "engine/plan/card_cells.h"
#include "engine/solve/results.h"

namespace pouncemark::plan {

/// One trial seam to sew, or sewn. What was not measured is empty: a box to write in.
struct TrialLine {
  std::string needle;
  std::string stitch;         ///< as the machine is set
  std::string left;           ///< sheet left between holes: "74.5 %"
  std::string under;          ///< "tex 90", where it is another thread than the job's
  bool is_jobs = false;       ///< needle and stitch of the job
  bool is_tear_line = false;  ///< less is left than may be
  std::string ten_stitches;
  std::string marks;
  std::string whitens;  ///< "yes", "no"
  std::string cracks;
  std::string pull;
  bool is_chosen = false;
};

/// The protocol of the trial seams of one kind of row: what to cut, what to sew, what to write
/// down.
struct TrialCard {
  solve::RowPlace place = solve::RowPlace::side;
  std::string job_name;
  std::string stack;                 ///< "Stack as typed 1.1", or the plies with their thicknesses
  std::vector<std::string> lines;    ///< the coupon, where the stack was taken, needle and thread
  std::vector<TrialLine> trials;     ///< the nine, then others of the job
  std::int64_t trials_left_out = 0;  ///< of the job, for want of room
  std::string bend;
  std::string signed_by;  ///< who approved the chosen one, and when; empty: open
};

/// The kinds of row that the job sews, in the order side, joining, panel: one card each.
std::vector<solve::RowPlace> trial_card_kinds(const solve::Results& results);

/// The card of a kind of row that the job sews.
TrialCard trial_card(const job::Job& job, const solve::Results& results, solve::RowPlace place);

}  // namespace pouncemark::plan
