#pragma once

#include <string>
#include <vector>

#include "engine/job/job.h"
#include "engine/solve/results.h"

/// Inside of solve's sums: what was asked of a row that is laid. Only the sums include this.
namespace pouncemark::solve {

/// What the job asked of one laid row, in its own words.
struct RowAsked {
  Um length_um = 0;       ///< of the line the row runs on, from its datum end
  Um clear_start_um = 0;  ///< kept clear, or to the corner: may be below 0
  Um clear_end_um = 0;
  Um spacing_um = 0;  ///< as entered
  Um crown_um = 0;    ///< to be added to a clear gap; 0: centre to centre
  bool crown_is_assumed = false;
  job::LeftOver left_over = job::LeftOver::end;
  Um ten_stitches_um = 0;  ///< of the trial seam that measured the stitch; 0: none did
  Um set_um = 0;           ///< the stitch that the machine was set to

  /// First point to last, where nothing is left over.
  Um usable_um() const { return length_um - clear_start_um - clear_end_um; }
  /// The spacing asked for, centre to centre.
  Um centres_um() const { return spacing_um + crown_um; }
  bool rests_on_assumed() const { return crown_um > 0 && crown_is_assumed; }
};
RowAsked asked_of(const job::Job& job, const Results& results, const Row& row);

/// The length the row has, worked out: "2300 − 22 − 22 = 2256", an arc's radius before it. Of a row
/// that was made to stop: "302.5 − 18 = 284.5".
std::vector<std::string> usable_lines(const Results& results, const Row& row,
                                      const RowAsked& asked);

/// Where the row is made to stop, on its own line: nothing where that is just as far as along its
/// edge; needs a row that was.
std::vector<std::string> stop_lines(const Results& results, const Row& row, const RowAsked& asked);

/// The gaps of the row, worked out: "2256 = 41 × 55 + 1, so 42 gaps", with the crown before it.
std::vector<std::string> gap_lines(const Row& row, const RowAsked& asked);

/// The rule of its spacing, in words.
std::string spacing_rule(const Row& row, const RowAsked& asked);

/// "60 + 12 assumed = 72": a clear gap as centre to centre.
std::string crown_line(const RowAsked& asked);

/// "the trial seam: 58 ÷ 10 = 5.8, set at 6": a stitch as the trial seam measured it.
std::string trial_line(const RowAsked& asked);

/// Where the figures of a row come from.
std::string row_source(const Row& row, const RowAsked& asked);

}  // namespace pouncemark::solve
