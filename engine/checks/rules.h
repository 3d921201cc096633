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

/// Caution 6, warn: two stitch rows that share no hole and come `apart_um` near where they cross,
/// nearer than `clear_um`. Exactly at the limit passes.
std::optional<Finding> rows_cross(Um apart_um, Um clear_um);

/// Warn: of a row made to stop `stop_um` from the hinge side less is left than one gap. A whole gap
/// passes.
std::optional<Finding> rows_stop_soon(Um stop_um, Um run_um, Um spacing_um);

/// Warn: a stop beyond the row, which ends `ends_um` from the hinge side as it is.
Finding rows_stop_beyond(Um stop_um, Um ends_um);

/// Note: the last gap of an exact row, filled with one more point, is shorter than asked.
std::optional<Finding> short_last_gap(Um last_gap_um, Um asked_um);

/// Caution 59, warn, in its forms: a number that has no sleeve or piece between two that do; a code
/// that names two things; a bay that holds a code no piece has; a piece that hangs in two bays.
Finding code_missing(const std::string& code, const std::string& before, const std::string& after);
Finding codes_missing(std::int64_t count, const std::string& first, const std::string& last);
Finding code_used_twice(const std::string& code, const std::string& one, const std::string& other);
Finding code_unknown(const std::string& code, const std::string& bay);
Finding code_hung_twice(const std::string& code, const std::string& bay, const std::string& other);

/// When the staples beside a row come out, as far as that row is concerned.
enum class StapleState { out_already, comes_out_as_the_foot_comes, there };

/// What the foot needs, and whether the figures were measured or assumed.
struct FootNeed {
  Um half_foot_um = 0;
  Um tolerance_um = 0;
  bool assumed = true;
};

/// What decides whether a crown lying across a row is struck: the staple's wire, the needle's blade
/// (size in hundredths of a millimetre) and the stitch.
struct StrikeNeed {
  Um wire_um = 0;
  int needle_size = 0;
  Um stitch_um = 1;
};

/// Caution 11: a staple row `apart_um` from a row being sewn and nearer than half a foot and its
/// tolerance: a stop where the staples are there, a note with a count box where they come out as
/// the foot comes, nothing where they are out. `said` is false when the job does not say when they
/// come out. Exactly at the limit passes. The sum also says how often a crown lying across the row
/// is struck: (wire + blade) / stitch.
std::optional<Finding> staple_under_foot(Um apart_um, const FootNeed& foot,
                                         const StrikeNeed& strike, StapleState state, bool said);

/// Caution 16, note: every staple makes two holes that stay.
Finding staple_holes(std::int64_t staples);

/// Caution 62, note: always, on every plan.
Finding always_said();

/// Stop: a row that cannot be laid, in the words of its problem.
Finding row_not_laid(const Problem& problem);

/// Note: an edge too short for a row of its own.
Finding edge_passed_over();

/// The sentence of caution 62, also printed on every page and card.
std::string_view caution_line();

}  // namespace pouncemark::checks
