#pragma once

#include <cstdint>

#include "engine/geometry/units.h"

/// Takeoff: what a job uses up. Knows rows by their figures, not the job file, no page, no screen.
namespace pouncemark::takeoff {

/// What each of the two threads of one row takes: its run, the stack once for each stitch, tails.
struct ThreadOfRow {
  Um run_um = 0;          ///< first hole to last
  std::int64_t gaps = 0;  ///< stitches
  Um stack_um = 0;        ///< what every stitch goes down and comes up through
  Um tails_um = 0;        ///< of both ends together

  Um each_um() const { return run_um + gaps * stack_um + tails_um; }
  bool operator==(const ThreadOfRow&) const = default;
};

/// The thread of a row `length_um` long of `gaps` stitches through `stack_um`. A row of one hole
/// takes its tails.
constexpr ThreadOfRow thread_of_row(Um length_um, std::int64_t gaps, Um stack_um, Um tails_um) {
  return {length_um, gaps, stack_um, tails_um};
}

}  // namespace pouncemark::takeoff
