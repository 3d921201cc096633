#pragma once

#include <string>
#include <vector>

/// Floor 0, base: what every other floor speaks with. Knows no geometry, no job, no screen, no
/// file.
namespace pouncemark {

/// Stable codes by floor: 100 entry and numbers, 200 geometry, 300 piece, 400 layout, 500 opening a
/// job, 600 paper, 700 the batch program. A code keeps its number for ever.
enum class ProblemCode : int {
  length_unreadable = 101,
  length_negative = 102,
  length_too_large = 103,
  length_too_fine = 104,
  length_two_readings = 105,

  outline_too_few_edges = 201,
  outline_not_closed = 202,
  outline_edge_too_short = 203,
  outline_arc_too_deep = 204,
  outline_runs_clockwise = 205,
  outline_crosses_itself = 206,

  lap_wider_than_sleeve = 301,
  panel_without_hinge_side = 302,
  panel_without_fly_side = 303,

  row_too_short = 401,
  row_bad_spacing = 402,
  row_too_many_points = 403,
  row_on_fly_side = 404,
  row_off_the_piece = 405,
  row_off_the_flange = 406,
  row_through_the_tube = 407,
  row_stops_too_soon = 408,

  job_unreadable = 501,
  job_not_ours = 502,
  job_damaged = 503,
  job_out_of_range = 504,
  job_too_new = 505,

  paper_unknown = 601,
  paper_too_small = 602,
  paper_bars_out = 603,
  paper_unprintable_signs = 604,
  paper_too_many_pages = 605,

  words_wrong = 701,
  file_not_read = 702,
  file_not_written = 703,
};

/// Something about the user's data (or words) that cannot be done.
/// `where` names the place in the user's own terms ("sections[2].widths_mm[0], line 12", "1-05
/// left"). `found` and `needed` are ready to print, with units; either may be empty.
struct Problem {
  ProblemCode code{};
  std::string where;
  std::string found;
  std::string needed;
};

/// One clear sentence: what, where, found, needed, what to do. Ends with a full stop.
std::string problem_sentence(const Problem& problem);

}  // namespace pouncemark
