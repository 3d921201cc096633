#pragma once

#include "web/panels/sew_parts.h"

/// Inside of the cross-section of the stage Sew.
namespace pouncemark::web {

/// Where everything of the cross-section stands. All at one scale: `px` CSS pixels a millimetre.
struct Section {
  Area mat;
  Area bands;  ///< the plies
  Area names;  ///< column at their right
  int times = 20;
  float px = 0;
  float thread = 0;
  float blade = 0;
  float stitch = 0;
  float needle_x = 0;  ///< middle of the hole the needle stands in
  float arrows = 0;    ///< top of the measures below
  bool has_holes = false;
};

inline float of_um(const Section& at, Um um) { return static_cast<float>(from_um(um)) * at.px; }

inline float sew_box_width() { return text_size() == TextSize::large ? 108.0f : 88.0f; }
/// Height of the measures below the stack: the stitch in its box, and what is left of the sheet.
inline float sew_measures_height() { return box_height() + 34; }

/// The four boxes on their arrows, the names of the plies, and what is left of the sheet.
void sew_measures(Page& page, const Section& at);

}  // namespace pouncemark::web
