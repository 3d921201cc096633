#pragma once

#include "web/model/view.h"
#include "web/panels/page.h"

namespace pouncemark::web {

inline constexpr float kRuleGap = 8;      ///< from the sleeve's edge to its steel rule
inline constexpr float kRuleHeight = 34;  ///< of the steel rule

/// One end of a sleeve, opened out of its frame at a readable size.
struct EndCloseup {
  bool is_bottom = true;
  Lying lying;
  Area mat;     ///< the lighter ground
  Area sleeve;  ///< the part of the sleeve that is seen
  float gutter = 0;
  bool is_at_end = true;  ///< shows its end, so that what is measured from there can be
};

/// Where both ends stand between `top` and `bottom`, with the scale that lets ends and first
/// spacing be seen.
struct EndPair {
  EndCloseup bottom_end;
  EndCloseup top_end;
  double px_per_mm = 1;
};
EndPair end_pair(const Page& page, const Area& area);

/// The sleeve on the bench has side rows of its own; where it has none its ends have nothing to
/// move.
bool has_own_rows(const Page& page);

/// Draws one end with its arrows, boxes, rule and rule stop.
void draw_end(Page& page, const EndCloseup& end);

}  // namespace pouncemark::web
