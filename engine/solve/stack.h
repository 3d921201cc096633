#pragma once

#include <string>
#include <vector>

#include "engine/job/job.h"
#include "engine/material/fields.h"
#include "engine/solve/results.h"

namespace pouncemark::solve {

/// One ply under the needle.
struct Ply {
  std::string name;  ///< "front leaf", "cloth", "hem", "film on the backing"
  material::Item item = material::Item::leaf;
  Um thickness_um = 0;
  Um pressed_um = 0;        ///< under the foot; the same where it does not give or none measured it
  bool gives = false;       ///< cloth and interlining give under the foot; sheet does not
  bool is_assumed = false;  ///< its thickness or its place was entered by no one
  bool is_left_on = false;  ///< film that ought to come off
  bool operator==(const Ply&) const = default;
};

/// A piece of the row over which the plies stay the same.
struct StackStep {
  Um from_um = 0;  ///< stations of the row, from the datum end of its edge
  Um to_um = 0;
  Um thickness_um = 0;         ///< the most that the blade meets here, half a blade to either side
  Um pressed_um = 0;           ///< the same under the foot
  Um left_um = 0;              ///< close at the left of the row's line, walked from the datum end
  Um right_um = 0;             ///< close at its right
  bool along_an_edge = false;  ///< the row runs just along the edge of a ply: left and right differ
  std::vector<Ply> plies;      ///< where it is thickest here, front to back; none where typed
};

/// The stack along one stitch row, from its first hole to its last.
struct Stack {
  bool is_typed = true;
  bool is_known = true;  ///< false: `missing` says what must be entered; there is no step
  std::string missing;   ///< "the thickness of the cloth in the sleeves"
  std::vector<std::string> assumed_places;  ///< "cloth 12 assumed in from the long edges"
  std::vector<StackStep> steps;             ///< one where typed; none of a row without a hole
  int thickest = 0;                         ///< indices into `steps`, the first of equals
  int thinnest = 0;
  Um rise_um = 0;     ///< the highest step up that the foot climbs from the datum end on; 0: none
  Um rise_at_um = 0;  ///< its station
  Um fall_um = 0;     ///< the highest step down, which is climbed where the row is sewn back
  Um fall_at_um = 0;
  bool runs_along_an_edge = false;  ///< somewhere

  Um thickest_um() const { return steps.empty() ? 0 : at(thickest).thickness_um; }
  Um thinnest_um() const { return steps.empty() ? 0 : at(thinnest).thickness_um; }
  const StackStep& at(int step) const { return steps[static_cast<std::size_t>(step)]; }
};

/// The stack of a stitch row as the job wants it: as typed, or from the plies. `row` is a row of
/// `results`.
Stack stack_of(const job::Job& job, const Results& results, const Row& row);

/// The stack from the plies, whether or not the job has it typed: to lay both side by side.
Stack stack_from_plies(const job::Job& job, const Results& results, const Row& row);

}  // namespace pouncemark::solve
