#pragma once

#include <string>

#include "web/model/edits.h"
#include "web/model/solved.h"
#include "web/model/view.h"

namespace pouncemark::web {

/// The one way on the screen a thing can be pulled.
enum class PullAxis { level, upright };

/// A thing that stands for one figure of the job, taken hold of and pulled along its axis.
struct Pull {
  Place place;
  Measure measure = Measure::length;
  PullAxis axis = PullAxis::level;
  int sign = 1;  ///< +1: the figure grows towards the right, or downwards; -1 the other way
  double px_per_mm = 1;
  Um start_um = 0;     ///< the figure when it was taken hold of
  float start_at = 0;  ///< where the pointer was then, along the axis

  /// The figure the hand asks for with the pointer at `at`: whole steps, or as it was typed while
  /// the pointer has not moved.
  Um asked(float at, Um step) const;
};

/// What an arrow key moves by: 1, with Shift 10, with Ctrl 0.1.
Um key_step(bool shift, bool ctrl);

/// The figure a thing comes to rest at, and why it went no further; no reason: it is as asked.
struct Resisted {
  Um um = 0;
  std::string reason;
};

/// How far a figure can follow the hand to `asked`, from where it stands in `start`: what the job
/// file refuses and rows that could not be laid are not to be had, and the figure stops at the last
/// tenth before them. A row in from a sleeve's edge stops at its middle. Works on the piece alone.
/// Never called while drawing.
Resisted held_back(const Solved& start, Place place, Measure measure, Um asked);

/// Why no row can be pulled out of a fly side, in the words of the check that stops it.
std::string fly_side_refusal();

}  // namespace pouncemark::web
