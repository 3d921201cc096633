#pragma once

#include "web/widgets/brush.h"

namespace pouncemark::web {

/// A steel rule along a piece: `from_mm` stands at the area's left edge.
struct RuleLook {
  double from_mm = 0;
  double px_per_mm = 1;
  int figure_every = 50;  ///< millimetres between figures
  int tick_every = 5;
};

void steel_rule(const Brush& brush, const Area& area, const RuleLook& look);

/// The block under the rule that the hand takes hold of; `point` is on the rule's lower edge.
void rule_stop(const Brush& brush, Spot point);

/// Where the block stands, for taking hold of it.
Area rule_stop_area(Spot point);

}  // namespace pouncemark::web
