#pragma once

#include <cstdint>
#include <vector>

#include "engine/drawing/drawing.h"

/// Plain shapes appended to a picture: lines, boxes, circles, arcs, arrows, hatching. All lengths
/// are micrometres and every place that is drawn is a whole micrometre. Curves need only square
/// roots, so they come out the same on every computer.
namespace pouncemark::drawing {

/// A unit direction.
struct Way {
  double x = 1.0;
  double y = 0.0;
};

/// The unit direction of a vector of any length. INSIST: not zero.
Way way_of(Spot vector);

/// The place `along` micrometres further in the direction `way` and `across` to its left. The step
/// is rounded, not the sum, so equal steps either side of `at` are exactly symmetrical.
Spot stepped(Spot at, Way way, double along, double across);

/// One arc about `centre`, from the ray through `from` to the ray through `to`. Equal ends: the
/// full circle.
struct Arc {
  Spot from;
  Spot to;
  Spot centre;
  bool is_anticlockwise = true;
};

/// Appends the arc as curves of at most 22.5 degrees, beginning where the path stands; `from`
/// itself is not appended. Error of one curve at 5 m radius: 0.0004 mm, and 0.001 mm by rounding.
/// INSIST: `from` and `to` differ from the centre.
void append_arc(std::vector<PathStep>& steps, const Arc& arc);

/// A full circle of four curves, closed; error 0.027 % of the radius. INSIST: radius > 0.
std::vector<PathStep> circle_steps(Spot centre, std::int64_t radius_um);

/// The four edges of a box, closed.
std::vector<PathStep> box_steps(const Box& box);

/// One stroke, fill or run of text, appended as it is.
void add_stroke(Drawing& drawing, const Pen& pen, std::vector<PathStep> steps);
void add_fill(Drawing& drawing, int grey_permille, std::vector<PathStep> steps);
void add_text(Drawing& drawing, Text text);

/// A straight line.
void add_line(Drawing& drawing, Spot from, Spot to, const Pen& pen);

/// The outline of a box; the pen runs centred on its edges.
void add_rectangle(Drawing& drawing, const Box& box, const Pen& pen);

/// A filled box, exactly as large as `box`. `grey_permille` 0 is black, 1000 white.
void add_solid(Drawing& drawing, const Box& box, int grey_permille = 0);

/// The outline of a circle; the pen runs centred on the radius.
void add_circle(Drawing& drawing, Spot centre, std::int64_t radius_um, const Pen& pen);

/// A filled black circle.
void add_dot(Drawing& drawing, Spot centre, std::int64_t radius_um);

/// An upright cross; each arm is `reach_um` long from the centre.
void add_cross(Drawing& drawing, Spot centre, std::int64_t reach_um, const Pen& pen);

/// A line with a filled head whose point lies exactly on `tip`. The head is seven pens long and
/// five wide, at least 2 mm by 1.4 mm, and never longer than the arrow. INSIST: the ends differ.
void add_arrow(Drawing& drawing, Spot from, Spot tip, const Pen& pen);

/// Lines rising at 45 degrees, cut off exactly at the box, `apart_um` from one another measured
/// across the sheet, the first through the box's lower left corner. INSIST: apart > 0.
void add_hatching(Drawing& drawing, const Box& box, std::int64_t apart_um, const Pen& pen);

}  // namespace pouncemark::drawing
