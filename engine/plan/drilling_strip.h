#pragma once

#include <string>
#include <vector>

#include "engine/job/job.h"
#include "engine/solve/results.h"

namespace pouncemark::plan {

/// A direction on a strip, length 1: `along` from its datum end on, `in` away from the edge.
struct StripWay {
  double along = 1;
  double in = 0;
};

/// One hole to drill.
struct StripHole {
  Um at_um = 0;  ///< along the edge, from the datum end
  Um in_um = 0;  ///< from the edge
  bool is_tight = false;
  Um slot_um = 0;   ///< whole length of the slot; no longer than the screw is wide: a round hole
  StripWay way;     ///< of the slot, away from the tight fixing
  Um screw_um = 0;  ///< on the hanging day, from the slot's middle along `way`
};

/// The holes along one edge of what hangs in a bay, FRONT up, to be drilled through paper that lies
/// along that edge.
struct DrillingStrip {
  std::string bay;            ///< "B6"
  std::string piece;          ///< "P3"
  std::string edge;           ///< "hinge side"
  std::string from;           ///< the end that distances are counted from: "BOTTOM", "HINGE SIDE"
  std::string to;             ///< the other: "TOP", "FLY SIDE"
  Um length_um = 0;           ///< of the edge
  Um screw_um = 0;            ///< the screw's diameter
  Um deepest_um = 0;          ///< how far in from the edge a hole reaches
  bool edge_is_left = false;  ///< of the strip, held so that it begins below
  int top_turns = 0;          ///< quarter turns anticlockwise from up the strip to the piece's top
  std::vector<StripHole> holes;
};

/// The strips of a job, and in a sentence each what has none and why.
struct DrillingStrips {
  std::vector<DrillingStrip> strips;
  std::vector<std::string> notes;
  std::string today;  ///< where the screws stand on the hanging day
};
DrillingStrips drilling_strips(const job::Job& job, const solve::Results& results);

}  // namespace pouncemark::plan
