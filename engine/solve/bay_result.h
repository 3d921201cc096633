#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/geometry/segment.h"
#include "engine/geometry/units.h"
#include "engine/layout/run.h"
#include "engine/material/fields.h"

namespace pouncemark::solve {

/// A steady push in the middle that brings sheet to the curve of a bay, its ends free to slide;
/// thousandths of a newton.
struct MiddlePush {
  std::int64_t small_mn = 0;  ///< by the small-bend formula
  std::int64_t exact_mn = 0;  ///< by large bending
};

/// The sheets of one kind in the pack that is bent.
struct BayPly {
  material::Item item = material::Item::leaf;  ///< leaf, backing or facing
  std::string words;                           ///< "leaves", "backing", "facing"
  int count = 1;                               ///< how many of them lie on one another
  Um thickness_um = 0;                         ///< of each
  MiddlePush push;                             ///< of all of them by themselves, slipping
};

/// What it takes to bend what hangs in a bay. Cloth is limp and counts for nothing.
struct BayForce {
  std::vector<BayPly> plies;     ///< from the back to the front
  Um chord_um = 0;               ///< by stations: from the first to the last
  Um rise_um = 0;                ///< by stations: from there to the crest, at right angles
  MiddlePush slipping;           ///< each sheet bends by itself
  MiddlePush locked;             ///< bent as one, the sheets lying straight on one another
  bool is_beyond_small = false;  ///< the rise is over a twentieth of the chord
  std::int64_t shown_mn = 0;     ///< slipping: the exact push beyond small bending, else the small
  std::int64_t other_mn = 0;     ///< slipping: the other of the two
  std::int64_t people = 0;       ///< for the push shown
  std::int64_t people_other = 0;
  int rank = 0;  ///< among the bays of the job that have a force, the hardest 1
};

/// One fixing of a row.
struct BayFixing {
  Um station_um = 0;  ///< from the datum end of its edge
  Um x_um = 0;        ///< on the flat piece, as its rows are
  Um y_um = 0;
  bool is_tight = false;  ///< a round hole; its slot is 0
  Um from_tight_um = 0;   ///< straight, on the flat piece
  Um move_um = 0;         ///< sheet against timber, one way, for the warmth expected
  Um damp_um = 0;         ///< timber across its grain, one way; 0 along it
  Um slot_um = 0;
  Um slot_shown_um = 0;   ///< up to the next half millimetre
  Um screw_today_um = 0;  ///< from the slot's middle, away from the tight fixing where positive
};

/// A row of fixings along an edge.
struct BayFixings {
  int entry = 0;         ///< index into job::Bay::fixings
  std::string edge;      ///< "hinge side", "top", "left"
  int outline_edge = 0;  ///< index into the edges of the piece's outline
  Segment guide;         ///< walked from the datum end of the edge, millimetres of the piece
  layout::Run run;
  int tight = -1;      ///< index into `fixings`; -1: it stands in row `tight_row`
  int tight_row = -1;  ///< index into BayResult::fixings; -1: no fixing of the bay is tight
  std::vector<BayFixing> fixings;
};

/// What one part of the work weighs.
struct BayWeight {
  material::Item item = material::Item::leaf;
  std::string words;          ///< "backing", "cloth"
  std::int64_t area_mm2 = 0;  ///< of all of it, whole
  Um thickness_um = 0;        ///< of sheet; of a textile 0
  std::int64_t mass_mg = 0;
  bool is_known = true;  ///< false: nobody entered what a square metre of it weighs
};

/// What the work weighs and what hangs on what. Thousandths of a newton.
struct BayLoads {
  std::vector<BayWeight> parts;
  bool is_whole = true;  ///< false: something that is there has no known weight and is left out
  std::int64_t mass_mg = 0;
  std::int64_t weight_mn = 0;
  std::int64_t sewn_mg = 0;  ///< without a facing, which no stitch holds
  std::int64_t sewn_mn = 0;
  int row = -1;  ///< index into Results::rows: the stitch row it hangs by; -1: none across its top
  std::int64_t stitches = 0;
  std::int64_t per_stitch_mn = 0;    ///< an equal share
  std::int64_t corner_mn = 0;        ///< of each, lifted by a corner on 4 stitches
  std::int64_t corner_least_mn = 0;  ///< on 5
  std::int64_t corner_most_mn = 0;   ///< on 3
  int fixing_row = -1;  ///< index into BayResult::fixings: those along the top; -1: none
  std::vector<std::int64_t> fixings_mn;  ///< on each of them in its order, as a stiff batten
};

/// What follows of one bay. Where three stations or more were measured in their order, the curve is
/// theirs; else that of chord and rise. Creep and what follows from it is said of cloth sewn along
/// one long edge, whatever hangs in the bay.
struct BayResult {
  std::string code;
  int piece = -1;  ///< index into Results::pieces of what hangs there; -1: nothing that is known

  bool is_by_stations = false;
  Um radius_um = 0;                ///< where it is least; 0: flat
  int tightest_station = 0;        ///< by stations: which of them, from 1; 0: flat
  std::int64_t radius_out_by = 0;  ///< by stations: thousandths of a percent, either way
  std::int64_t turn_mdeg = 0;      ///< thousandths of a degree; below 0: against its face
  Um along_um = 0;                 ///< along the curve
  Um extra_um = 0;                 ///< along the curve less the straight distance

  Um creep_um = 0;  ///< at the fly side, either way
  bool moves_out = false;
  Um slip_most_um = 0;        ///< anywhere on the way from the hinge side: of an S more
  std::int64_t ease = 0;      ///< what cloth held point by point gives, thousandths of a percent
  std::optional<Um> stop_um;  ///< from the hinge side: where top and bottom rows stop, not after
  Um bulge_um = 0;            ///< stands up were the piece sewn all round; 0 where cloth moves in

  Um limit_um = 0;  ///< of the piece: how tight its stiffest ply may stay bent; 0: no piece
  material::Item limit_of = material::Item::leaf;  ///< the ply that sets the limit
  std::int64_t spare = 0;  ///< radius over limit less 1, thousandths of a percent; 0 where flat
  Um room_um = 0;          ///< of the piece: along the curve less its width; below 0: too wide

  std::optional<BayForce> force;  ///< nothing: flat, no piece, or stiffness not known
  std::vector<BayFixings> fixings;
  std::optional<BayLoads> loads;  ///< nothing without a piece

  bool is_flat() const { return radius_um == 0; }
};

}  // namespace pouncemark::solve
