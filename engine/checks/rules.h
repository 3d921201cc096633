#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "engine/base/problem.h"
#include "engine/checks/finding.h"
#include "engine/geometry/units.h"

/// The rules themselves, each in a file of its own named after it. A rule says nothing about
/// places: the caller knows where the row is and fills in `place` and `piece`. Numbers of cautions
/// refer to the list printed in DEVELOPERS.md.
namespace pouncemark::checks {

/// Caution 1, stop: a row asked for on a fly side.
Finding fly_side_row();

/// Caution 5, warn: a stitch row `from_edge_um` from an edge of sheet that is nearer than `blades`
/// needle blades (`needle_size` in hundredths of a millimetre). Exactly at the limit passes.
std::optional<Finding> edge_distance(Um from_edge_um, int needle_size, int blades);

/// Caution 5b, warn: two stitch rows `apart_um` apart and nearer than `blades` needle blades.
std::optional<Finding> rows_apart(Um apart_um, int needle_size, int blades);

/// When the staples beside a row come out, as far as that row is concerned.
enum class StapleState { out_already, comes_out_as_the_foot_comes, there };

/// What the foot needs, and whether the figures were measured or assumed.
struct FootNeed {
  Um half_foot_um = 0;
  Um tolerance_um = 0;
  bool assumed = true;
};

/// Caution 11: a staple row `apart_um` from a row being sewn and nearer than half a foot and its
/// tolerance: a stop where the staples are there, a note with a count box where they come out as
/// the foot comes, nothing where they are out. `said` is false when the job does not say when they
/// come out. Exactly at the limit passes.
std::optional<Finding> staple_under_foot(Um apart_um, const FootNeed& foot, StapleState state,
                                         bool said);

/// Caution 16, note: every staple makes two holes that stay.
Finding staple_holes(std::int64_t staples);

/// Caution 62, note: always, on every plan.
Finding always_said();

/// Stop: a row that cannot be laid, in the words of its problem.
Finding row_not_laid(const Problem& problem);

/// The sentence of caution 62, also printed on every page and card.
std::string_view caution_line();

}  // namespace pouncemark::checks
