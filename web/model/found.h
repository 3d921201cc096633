#pragma once

#include <cstddef>
#include <vector>

#include "engine/solve/results.h"
#include "web/model/place.h"
#include "web/model/solved.h"

namespace pouncemark::web {

/// A place on the bench, and of a section the lap that is looked at there: the index of the sleeve
/// at its left, -1 for none.
struct Spotted {
  Place place;
  int lap = -1;
};

/// What the last action changed, as far as findings stand nearer to it or farther away: a piece,
/// one of its sleeves (-1: all), its lap rows or its side rows.
struct LastChange {
  int piece = -1;
  int sleeve = -1;
  bool in_laps = false;
  bool in_sides = false;
};

/// What changed on the piece on the bench since `before`; where that is nullptr, or where nothing
/// did, what lies on the bench.
LastChange last_change(const Solved& now, const Solved* before, Place place);

/// Indices into now.results.findings, nearest to the change first: the same row, the same sleeve,
/// the same piece, the rest; stops before warns before notes within each.
std::vector<std::size_t> nearest_first(const Solved& now, const LastChange& change);

/// The finding is about this sleeve of its piece, or about a lap it has a part in.
bool is_about_sleeve(const solve::Results& results, const solve::Finding& finding, int sleeve);

/// The finding is about this lap of its piece, given by the index of the sleeve at its left, or
/// about a row that is seen where that lap is.
bool is_about_lap(const solve::Results& results, const solve::Finding& finding, int lap);

/// Where a finding is to be seen: where one stands already if it is about that, else the first it
/// is about. Nothing to go to where it concerns no piece: piece -1.
Spotted place_of(const solve::Results& results, const solve::Finding& finding, Spotted from);

/// The lap that is shown of a section until one is chosen: the first with a finding the others have
/// not, the first over a missing sleeve, else the middle one; -1 where there is no lap.
int first_lap(const solve::Results& results, int piece);

/// The lap whose middle is nearest to a distance from the section's left edge; -1 where there is no
/// lap.
int lap_nearest(const solve::Piece& piece, Um across);

}  // namespace pouncemark::web
