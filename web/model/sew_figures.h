#pragma once

#include <string>

#include "engine/geometry/units.h"
#include "engine/solve/sums.h"
#include "web/model/solved.h"

/// Inside of the model: needle, thread and stitch of one row in figures.
namespace pouncemark::web {

struct SewFigures {
  Um blade_um = 0;
  Um thread_um = 0;  ///< across
  Um stitch_um = 0;
  std::string left_share;  ///< of the stitch, in hundredths: "77"
  std::string least_left;  ///< "65 %"
  std::string eye_share;   ///< of the blade, in hundredths: "33"
  std::string most_eye;    ///< "40 %"
  bool is_tear_line = false;
  bool is_eye_full = false;
};
/// `row` is a stitch row with a hole.
SewFigures sew_figures(const Solved& now, const solve::Row& row);
solve::Sum sheet_left_sum(const Solved& now, const solve::Row& row);
solve::Sum eye_sum(const Solved& now, const solve::Row& row);
/// How much the stress rises at the holes, pulled across the row or along it.
solve::Sum stress_sum(const solve::Row& row, int needle_size, bool across);
/// What the seam itself would hold, newtons a millimetre, estimated from its thread.
solve::Sum strength_sum(const Solved& now, const solve::Row& row);

}  // namespace pouncemark::web
