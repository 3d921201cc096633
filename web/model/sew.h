#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/geometry/units.h"
#include "engine/solve/row_sewing.h"
#include "engine/takeoff/under_arm.h"
#include "web/model/place.h"
#include "web/model/sew_edits.h"
#include "web/model/solved.h"
#include "web/model/words.h"

namespace pouncemark::web {

/// One ply of the cross-section, front to back.
struct SewPly {
  std::string name;       ///< "front leaf", or "as typed" of the one band of a typed stack
  std::string thickness;  ///< "0.25"
  Um thickness_um = 0;
  bool is_woven = false;  ///< cloth or interlining: no hole stays open in it
  bool is_assumed = false;
};

/// What stands in a box of the stage, by SewBox.
struct SewBoxText {
  std::string shown;  ///< "6.0"
  std::string was;    ///< before the last action, where it was another; else empty
};

/// The boxes of the machine, by the order of their fields: throat, under the arm, foot lift.
inline constexpr std::array<material::Field, 3> kArmFields = {material::Field::machine_throat,
                                                              material::Field::machine_under_arm,
                                                              material::Field::machine_foot_lift};

/// The work at the machine, seen from above, for the row of its kind that puts most of it right of
/// the needle.
struct SewArm {
  std::string row;  ///< "1-03+04"
  Um work_um = 0;
  Um side_um = 0;    ///< right of the needle
  Um roll_um = 0;    ///< across the roll; 0: not known
  Um throat_um = 0;  ///< 0: not entered
  takeoff::UnderArm how = takeoff::UnderArm::not_known;
  std::string away;     ///< the end that is fed away first: "TOP", "HINGE SIDE"
  std::string near;     ///< the end toward the sewer
  std::string word;     ///< "flat", "rolled", "does not fit", "not known"
  std::string because;  ///< the word's reason, or what to enter
  std::string order;    ///< of joining rows: how the sleeves are joined; else empty
  std::array<SewBoxText, kArmFields.size()> boxes;
};

/// The stage Sew for one kind of row of the place, worked out once after each change.
struct SewView {
  std::vector<SewKind> kinds;  ///< none: nothing is sewn there
  std::size_t chosen = 0;      ///< index into kinds
  bool is_from_plies = false;
  bool is_known = true;       ///< false: the plies cannot be added up, as `missing` is not known
  std::string missing;        ///< "the thickness of the cloth in the sleeves"
  std::vector<SewPly> plies;  ///< where the stack is thickest; none where something is missing
  Um stack_um = 0;
  Um blade_um = 0;
  Um thread_um = 0;        ///< across
  Um stitch_um = 0;        ///< as it is really sewn
  Um left_um = 0;          ///< of the sheet between two holes; 0 where they meet
  std::string left_share;  ///< "77 %"
  std::array<SewBoxText, 4> boxes;
  solve::Verdict verdict = solve::Verdict::try_it;
  std::string because;  ///< the verdict in a sentence
  Headline headline;
  SewArm arm;
};

/// `kind` is the id of the kind looked at; the first one where the place has none like it.
/// `before` is what stood before the last action, or nullptr.
SewView sew_view(const Solved& now, const Solved* before, Place place, std::string_view kind);

/// The row of a kind that puts most of the work right of the needle, as an index into
/// Results::rows.
int widest_row(const Solved& now, const SewKind& kind);

SewArm sew_arm(const Solved& now, const Solved* before, const SewKind& kind);

/// What follows for this kind of row and for the whole job, each with its sum.
std::vector<FollowLine> sew_lines(const Solved& now, const Solved* before, Place place,
                                  std::string_view kind);

/// Kinds of row of the whole job that no chosen and signed trial stands for yet.
int trials_open(const Solved& now);

/// A finding that is about sewing, as against one about numbers, staples or paper.
bool is_about_sewing(const solve::Finding& finding);

}  // namespace pouncemark::web
