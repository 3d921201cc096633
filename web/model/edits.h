#pragma once

#include <string>

#include "engine/geometry/units.h"
#include "engine/job/job.h"
#include "engine/solve/results.h"
#include "web/model/place.h"

namespace pouncemark::web {

/// What a box on the bench holds. Each is one figure of the job as the user entered it.
enum class Measure {
  length,
  width,
  lap,
  in_from_edge,         ///< of the staple row; on a panel of every row
  stitch_in_from_edge,  ///< of the stitch row
  spacing,
  stitch,
  kept_clear_bottom,
  kept_clear_top,
  fold_radius,          ///< inside radius of the fold; of the section
  flange,               ///< of a round sleeve; of the section
  corner_clear,         ///< how far a panel's row stops short of another
  stitch_clear_bottom,  ///< of the stitch rows, where it is not that of the staple rows
  stitch_clear_top,
  lap_kept_clear_bottom,  ///< of the joining rows; their staples go along while they are alike
  lap_kept_clear_top,
  lap_spacing,  ///< of the staples in the laps
};

/// The figure as the job has it, micrometres; 0 where the place has no such measure.
Um measured(const job::Job& job, const solve::Results& results, Place place, Measure measure);

/// The job with that figure changed. On one sleeve of several only that sleeve changes, save for
/// the length and the lap, which belong to the section. Kept clear ends that are equal stay equal;
/// on a section of one sleeve the stitch rows go along when all four ends are equal.
job::Job with_measure(const job::Job& job, const solve::Results& results, Place place,
                      Measure measure, Um um);

/// The staple rows of the place spaced evenly or exactly.
job::Job with_rule(const job::Job& job, const solve::Results& results, Place place,
                   job::SpacingRule rule);
job::SpacingRule rule_at(const job::Job& job, const solve::Results& results, Place place);

/// The stitch rows are kept clear by other figures than the staple rows, and have ends of their
/// own.
bool stitch_ends_differ(const job::Job& job, const solve::Results& results, Place place);

/// The same for the staple rows in the laps of the section.
job::Job with_lap_rule(const job::Job& job, const solve::Results& results, Place place,
                       job::SpacingRule rule);
job::SpacingRule lap_rule_at(const job::Job& job, const solve::Results& results, Place place);

/// Both ends of the staple rows are kept clear by the same figure, and move as one.
bool ends_move_together(const job::Job& job, const solve::Results& results, Place place);

/// The stitch rows move with the ends of the staple rows.
bool stitch_rows_go_along(const job::Job& job, const solve::Results& results, Place place);

/// What the kept-clear ends of one sleeve differ by is given to all the sleeves of its section.
job::Job with_ends_of_all(const job::Job& job, const solve::Results& results, Place place);

/// The sleeve's own kept-clear ends differ from those of its section.
bool ends_differ_from_section(const job::Job& job, const solve::Results& results, Place place);

/// The action in words, for the bar and for undo: "Kept both ends of 1-01 clear by 25, was 18".
std::string action_words(const job::Job& job, const solve::Results& results, Place place,
                         Measure measure, Um was, Um is);

/// The name of what lies on the bench: "sleeve 1-01", "section 2", "panel P1".
std::string name_of(const solve::Results& results, Place place);

}  // namespace pouncemark::web
