#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "engine/job/job.h"
#include "engine/material/hole_stress.h"
#include "engine/material/thread_numbers.h"
#include "engine/solve/results.h"
#include "engine/solve/sums.h"

namespace pouncemark::solve {

/// What can be said of needle, thread and stitch before the next stitch. Fits: a signed trial seam
/// of these settings did not mar the sheet. Try: nothing speaks against a trial seam. Don't: the
/// thread fills the eye, the holes make a tear line, or the chosen trial seam marred the sheet.
enum class Verdict : std::uint8_t { fits, try_it, do_not };
const char* verdict_word(Verdict verdict);

/// The needle and its thread in the sheet of one stitch row. Thousandths are of what is named.
struct RowSewing {
  Um stitch_um = 0;
  Um blade_um = 0;
  Um thread_um = 0;                      ///< across, at the thread's own packing
  std::int64_t eye_permille = 0;         ///< thread by blade, at a packing of 0.60
  std::int64_t sheet_left_permille = 0;  ///< between holes
  material::NeedleGuess guess;
  Verdict verdict = Verdict::try_it;
  std::string why;                              ///< of the verdict, a few words
  std::optional<material::RowStress> stress;    ///< nothing where the holes nearly meet
  std::optional<std::int64_t> shear_out_mn;     ///< thousandths of N a stitch, of one sheet
  std::optional<std::int64_t> seam_mn_each_mm;  ///< thousandths of N for each mm of row
};
RowSewing row_sewing_of(const job::Job& job, const Results& results, const Row& row);

/// Across the thread, and how much of the blade it fills.
Sum thread_across_sum(const job::Job& job);
Sum eye_sum(const job::Job& job);
/// The needles to try.
Sum needle_guess_sum(const job::Job& job);
/// Sheet left between holes.
Sum sheet_left_sum(const job::Job& job, const Row& row);
/// The greatest stress at a hole by that in the sheet: pulled across the row, and along it. Needs
/// the row's stress to be known.
Sum stress_sum(const job::Job& job, const Row& row, bool across);
/// N that shear one stitch out to the edge of one sheet; needs its shear strength to be known.
Sum shear_out_sum(const job::Job& job, const Results& results, const Row& row);
/// N that each millimetre of row holds; needs the thread's strength to be known.
Sum seam_strength_sum(const job::Job& job, const Row& row);

}  // namespace pouncemark::solve
