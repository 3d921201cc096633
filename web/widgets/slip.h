#pragma once

#include <string>
#include <vector>

#include "web/widgets/brush.h"
#include "web/widgets/hand.h"

namespace pouncemark::web {

/// How a figure was worked out: in words, in numbers, and where they come from. A number followed
/// by the word "assumed" is shown as such.
struct SlipSum {
  std::string rule;
  std::vector<std::string> numbers;
  std::string source;
};

/// One ruled line of a slip.
struct SlipLine {
  std::string id;  ///< "slip.points"
  std::string label;
  std::string figure;
  std::string unit;
  std::string before;  ///< empty: unchanged
  SlipSum sum;
};

struct SlipLook {
  std::string title;
  std::string under_title;
  bool is_moving = false;  ///< dashes mean still moving
  std::string open_sum;    ///< id of the line whose sum is open
  float line_height = 36;
};

/// Height the slip takes with these lines at this width.
float slip_height(const Brush& brush, float width, const std::vector<SlipLine>& lines,
                  const SlipLook& look);

/// A sum as it opens below its figure: a thick bar at the left, then rule, numbers and source.
float sum_height(const Brush& brush, const SlipSum& sum, float width);
void draw_sum(const Brush& brush, const SlipSum& sum, Spot upper_left, float width);

/// The line, and a sum, as one run of words for the text mirror.
std::string spoken(const SlipLine& line);
std::string spoken(const SlipSum& sum);

/// A slip of paper with results, nothing to edit: label left, figure right, before → after where it
/// changed. Gives the id of the line that was pressed, or empty.
std::string slip(const Brush& brush, Hand& hand, Area area, const std::vector<SlipLine>& lines,
                 const SlipLook& look);

/// A plain slip of paper with its hard edge.
void slip_paper(const Brush& brush, const Area& area);

}  // namespace pouncemark::web
