#pragma once

#include <cstdint>

#include "engine/drawing/drawing.h"
#include "engine/plan/drilling_strip.h"
#include "engine/sheets/page_cut.h"

/// Inside of the drilling strips. Only sheets' own files include this.
namespace pouncemark::sheets {

/// How wide a strip is: its holes, and beside them its figures.
Um strip_width(const plan::DrillingStrip& strip);

/// One length of a strip where it lies on its page, begun at `corner`, its lower left corner.
struct StripLength {
  const plan::DrillingStrip& strip;
  const Cut& cut;
  std::int64_t number = 0;  ///< from 0
  drawing::Spot corner;
};
void add_strip_length(const StripLength& length, drawing::Drawing* picture);

}  // namespace pouncemark::sheets
