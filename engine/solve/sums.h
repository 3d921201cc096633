#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/job/job.h"
#include "engine/solve/results.h"

namespace pouncemark::solve {

/// How one figure of the results was worked out, to be shown when it is asked for. A line of
/// `numbers` with "=" in it is true as it stands: its left side, worked out, is its right side as
/// far as that is written ("2256 = 41 × 55 + 1, so 42 gaps"). A number that no one entered is
/// followed by the word "assumed". Lengths are millimetres and carry no comma; counts, and
/// millimetres added up over many rows, carry one from 1,000.
struct Sum {
  std::string figure;                ///< as the screen shows it: "54.63", "2,150", "±4.6"
  std::string rule;                  ///< the rule in words
  std::vector<std::string> numbers;  ///< the numbers put in; the last line ends in the figure
  std::string source;                ///< where rule and numbers come from
  bool rests_on_assumed = false;     ///< a number in it was entered by no one
};

// One row. Each needs a row with at least one point.

/// Its points (staples, guide points) or stitch holes, its own and those it shares.
Sum points_sum(const job::Job& job, const Results& results, const Row& row);
/// From point to point: the even gap, the asked one, the stitch. Needs two points.
Sum spacing_sum(const job::Job& job, const Results& results, const Row& row);
/// From crown to crown of a staple row whose spacing was asked for as a clear gap.
Sum clear_gap_sum(const job::Job& job, const Results& results, const Row& row);
/// What an exact row's spacing does not fill.
Sum left_over_sum(const job::Job& job, const Results& results, const Row& row);
/// The last gap of an exact row that was given one more point.
Sum last_gap_sum(const job::Job& job, const Results& results, const Row& row);
/// From the datum end of the row's edge to its first and to its last point.
Sum first_sum(const job::Job& job, const Results& results, const Row& row);
Sum last_sum(const job::Job& job, const Results& results, const Row& row);

/// The stack of a stitch row at its thickest place: as typed, or the plies added up there. Where it
/// is not known the figure is "not known" and the numbers say what must be entered.
Sum stack_sum(const job::Job& job, const Results& results, const Row& row);

/// The spacing of this row was asked for as a clear gap.
bool is_clear_gap(const job::Job& job, const Row& row);
/// From crown to crown where it was: the spacing less the crown.
Um clear_gap_um(const job::Job& job, const Row& row);

// Rows of one kind together, a hole that two rows have in common counted once.

using Rows = std::span<const Row* const>;

/// Staple points, guide points or stitch holes of the rows; needs one row.
Sum points_together_sum(const job::Job& job, const Results& results, Rows rows);
/// Two legs to a staple.
Sum staple_holes_sum(Rows staple_rows);
/// Metres of sewing, first hole to last.
Sum sewing_sum(Rows stitch_rows);

// One piece, by its index. Sections only, but for blank and fold those of two sleeves and more as
// well as of one.

/// Sleeves that are there.
Sum sleeves_sum(const job::Job& job, const Results& results, int piece);
Sum width_sum(const job::Job& job, const Results& results, int piece);
/// To the middle of lap `lap`, and to the right edge of sleeve `sleeve`, from the left edge.
Sum row_middle_sum(const job::Job& job, const Results& results, int piece, int lap);
Sum running_total_sum(const job::Job& job, const Results& results, int piece, int sleeve);
/// How far the width could end up out: likely, and at worst.
Sum likely_sum(const job::Job& job, const Results& results, int piece);
Sum worst_sum(const job::Job& job, const Results& results, int piece);
/// Laps between the sleeves that are there.
Sum laps_sum(const Results& results, int piece);
/// Stitch rows laid on the long edges and in the laps.
Sum side_rows_sum(const Results& results, int piece);
Sum joining_rows_sum(const Results& results, int piece);
/// The sheet a sleeve is cut from, "240.5 × 1800", and where it is bent. A blank of two leaves is
/// not bent and has no fold.
Sum blank_sum(const job::Job& job, const Results& results, int piece, int sleeve);
Sum fold_sum(const job::Job& job, const Results& results, int piece, int sleeve);

// The whole job, piece by piece.

enum class Total {
  side_staples,
  lap_staples,
  staples,  ///< side and lap
  side_rows,
  lap_rows,
  panel_rows,
  panel_points,
  stitch_holes,
  sewing,  ///< metres
};
Sum total_sum(const Results& results, Total total);

}  // namespace pouncemark::solve
