#pragma once

#include <cstdint>
#include <optional>

#include "engine/frame/bending.h"
#include "engine/solve/sums.h"
#include "web/model/solved.h"

namespace pouncemark::web {

/// What it takes to bend the piece of a bay to its curve: a steady push in the middle, its ends
/// free to slide.
struct BayPush {
  frame::MiddlePush push;
  std::int64_t shown_mn = 0;  ///< the small-bend formula's where it holds, else the exact one
  std::int64_t people = 0;
};

/// Nothing for a flat bay, one of stations or one without a piece, and where the stiffness of the
/// sheet is not known.
std::optional<BayPush> bay_push(const Solved& now, int bay);

/// How push and people were worked out; only where bay_push gives one.
solve::Sum push_sum(const Solved& now, int bay);
solve::Sum people_sum(const Solved& now, int bay);

}  // namespace pouncemark::web
