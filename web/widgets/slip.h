#pragma once

#include <string>
#include <vector>

#include "web/widgets/brush.h"
#include "web/widgets/hand.h"

namespace pouncemark::web {

/// One ruled line of a slip.
struct SlipLine {
  std::string id;  ///< "slip.points"
  std::string label;
  std::string figure;
  std::string unit;
  std::string before;  ///< empty: unchanged
  std::vector<std::string> sum;
};

struct SlipLook {
  std::string title;
  std::string under_title;
  bool is_moving = false;  ///< dashes mean still moving
  std::string open_sum;    ///< id of the line whose sum is open
  float line_height = 36;
};

/// Height the slip takes with these lines.
float slip_height(const Brush& brush, const std::vector<SlipLine>& lines, const SlipLook& look);

/// A slip of paper with results, nothing to edit: label left, figure right, before → after where it
/// changed. Gives the id of the line that was pressed, or empty.
std::string slip(const Brush& brush, Hand& hand, Area area, const std::vector<SlipLine>& lines,
                 const SlipLook& look);

/// A plain slip of paper with its hard edge.
void slip_paper(const Brush& brush, const Area& area);

}  // namespace pouncemark::web
