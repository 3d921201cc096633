#pragma once

#include "engine/base/result.h"
#include "engine/geometry/units.h"

/// Floor 4, layout: rows and guide points, where they go and why. Knows pieces, not jobs or pages.
namespace pouncemark::layout {

/// The most points one row may have; more is a slip of the keyboard, not a row.
inline constexpr std::int64_t kMostPointsInRow = 200'000;

/// A solved row along its guide line: a rule from which the i-th place is computed when asked for.
/// Stations are whole micrometres from the datum end of the edge, rounded once.
struct Run {
  Um start_um = 0;        ///< station of the first point
  Um length_um = 0;       ///< first point to last point
  std::int64_t gaps = 0;  ///< number of gaps; points() is one more
  Um step_um = 0;         ///< exact rule: every gap but perhaps the last is this; 0: even gaps
  Um left_over_um = 0;    ///< exact rule: what the asked spacing does not fill
  Um left_before_um = 0;  ///< the part of it before the first point, where it is split
  bool is_empty = true;   ///< no point at all (margins meet)

  /// Number of points, both ends counted.
  std::int64_t points() const { return is_empty ? 0 : gaps + 1; }
  /// Station of point `index`, 0 <= index < points().
  Um station_um(std::int64_t index) const;
  /// The even gap rounded to whole micrometres; the exact step; 0 where there is no gap.
  Um spacing_um() const;
  /// The gap before the last point: on an exact row with one more point it is shorter than the
  /// rest.
  Um last_gap_um() const { return gaps == 0 ? 0 : station_um(gaps) - station_um(gaps - 1); }
  /// The part of the left-over after the last point; 0 where one more point fills it.
  Um left_after_um() const {
    return length_um == gaps * step_um ? left_over_um - left_before_um : 0;
  }
  Um first_um() const { return start_um; }
  Um last_um() const { return start_um + length_um; }
};

/// What is asked of a row.
struct RunRule {
  Um edge_length_um = 0;
  Um kept_clear_start_um = 0;
  Um kept_clear_end_um = 0;
  Um spacing_um = 0;  ///< centre to centre, already
  bool exact = false;
  enum class LeftOver { end, split, extra_point } left_over = LeftOver::end;
};

/// Even: the fewest equal gaps none of which is wider than asked; the ends stand exactly on the
/// kept clear lines. Exact: as many gaps of the asked spacing as fit, the left-over placed as told.
/// Kept clear ends that meet exactly give one point; that overlap give none (row_too_short).
/// Problems: row_too_short, row_bad_spacing, row_too_many_points.
Result<Run> solve_run(const RunRule& rule);

}  // namespace pouncemark::layout
