#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/base/problem.h"
#include "engine/job/job.h"
#include "engine/solve/bays.h"
#include "engine/solve/results.h"

/// Inside of solve: the rows of fixings of a bay. Only solve's own files include this.
namespace pouncemark::solve {

/// The most fixings a row may have; more is a slip of the keyboard.
inline constexpr std::int64_t kMostFixings = 1'000;

/// A row of fixings that could not be laid; without a problem the piece has no such edge.
struct UnlaidFixings {
  int entry = 0;
  std::string edge;
  std::optional<Problem> problem;
};

/// The rows of a bay, and those that could not be laid. None without a piece.
struct LaidFixings {
  std::vector<BayFixings> rows;
  std::vector<UnlaidFixings> unlaid;
};
LaidFixings lay_fixings(const job::Job& job, const job::Bay& bay, const Results& results,
                        const BayResult& result);

/// What a slot is worked out from.
struct SlotNumbers {
  material::Value screw;
  material::Value tolerance;
  material::Value sheet;  ///< growth of what grows most among the sheets held
  material::Value timber;
  material::Value warmer;
  material::Value planned;
  material::Value today;  ///< not known until the day
  material::Value across;
  material::Value damp;
};
SlotNumbers slot_numbers(const job::Job& job, const Piece& piece);

/// How far the sheet moves past the timber for a difference of temperature, at so far from the
/// tight fixing.
Um grown_um(const SlotNumbers& numbers, Um from_tight_um, std::int64_t by_mk);

}  // namespace pouncemark::solve
