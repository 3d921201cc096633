#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/job/fixing_row.h"
#include "web/model/making.h"
#include "web/model/solved.h"

/// Rows of fixings of a bay as they are typed on the stage Curve, each change one action. `row`
/// counts the rows of the bay from 0.
namespace pouncemark::web {

/// One fixing of the list.
struct FixingLine {
  std::string at;     ///< from the datum end of its edge
  std::string move;   ///< "2.2 with warmth, 0.4 with damp"
  std::string slot;   ///< "11.5", "round, tight"
  std::string today;  ///< where to set the screw in its slot
};

/// One row of them, as typed and as it comes out.
struct FixingsView {
  std::vector<std::string> rows;   ///< "Hinge side, 9"
  int chosen = -1;                 ///< -1: there is none
  std::vector<std::string> edges;  ///< what its edge can be, as in the job file
  std::string edge;
  std::string in_from_edge;
  std::string clear_first;
  std::string clear_last;
  std::string spacing;
  job::Tight tight = job::Tight::middle;
  bool is_across_grain = false;
  std::vector<FixingLine> lines;
  std::string said;  ///< how many, how far apart, or why there is none
};
FixingsView fixings_view(const Solved& now, int bay, int row);

enum class FixingBox { in_from_edge, clear_first, clear_last, spacing };

/// "hinge side".
std::string edge_said(std::string_view edge);

/// One more row, along the first edge that has none: 10 in, 30 clear at both ends, 300 apart.
Made with_fixing_row(const Solved& now, int bay);
Made without_fixing_row(const job::Job& job, int bay, int row);
Made with_fixing_typed(const job::Job& job, int bay, int row, FixingBox box,
                       std::string_view typed);
Made with_fixing_edge(const job::Job& job, int bay, int row, const std::string& edge);
Made with_tight(const job::Job& job, int bay, int row, job::Tight tight);
Made with_timber(const job::Job& job, int bay, int row, bool is_across_grain);

}  // namespace pouncemark::web
