#pragma once

#include <vector>

#include "engine/geometry/units.h"
#include "engine/piece/outline.h"

namespace pouncemark::piece {

/// The outline that lies `in_um[i]` inside edge `i` of the piece, anticlockwise, corners sharp:
/// what is cut so far in from its edges. An edge that its neighbours' lines meet before has no part
/// in it; where one edge runs into the next and their distances differ, a short line joins the two.
/// A negative distance lies outside. Empty where the lines leave nothing between them. A neck that
/// the lines close up is kept.
std::vector<Segment> inset(const Outline& outline, const std::vector<Um>& in_um);

}  // namespace pouncemark::piece
