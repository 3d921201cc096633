#pragma once

#include <vector>

#include "engine/job/job.h"
#include "engine/solve/results.h"

/// Floor 12, model: the open job and everything the bench knows about it. Knows no screen, no
/// browser and no drawing; every figure comes from solve().
namespace pouncemark::web {

/// What lies on the bench: a piece, and one of its sleeves or (-1) the whole of it. `sleeve` counts
/// the sleeves that are there; what the job calls a sleeve by is number_at.
struct Place {
  int piece = 0;
  int sleeve = -1;
  bool operator==(const Place&) const = default;
};

/// All pieces side by side, where there is more than one.
inline constexpr Place kWholeHanging{-1, -1};
bool is_whole_hanging(Place place);

/// A section of one sleeve is shown as that sleeve; other sections and panels as a whole.
Place first_look(const solve::Results& results, int piece);

/// The same place where it still exists, else the nearest that does; {0, -1} in an empty job.
Place held_within(const solve::Results& results, Place place);

/// The same place after the job was changed: the piece of the same code, else the one that has its
/// place now; the same sleeve while it is there, else its right neighbour, else the last one.
Place followed(const solve::Results& was, const solve::Results& now, Place place);

/// The number, less 1, of the sleeve on the bench, as the functions of the job take it: a sleeve
/// that is missing keeps its number and has no place. -1 on the whole of a piece.
int number_at(const solve::Results& results, Place place);

/// The sleeve on the bench; nullptr on the whole of a piece.
const solve::Sleeve* sleeve_at(const solve::Results& results, Place place);

/// The place is the same thing in both, so that their figures are before and after of one another.
bool is_same_thing(const solve::Results& was, const solve::Results& now, Place place);

/// Every place to step through: each piece whole, then each of its sleeves.
std::vector<Place> all_places(const solve::Results& results);

/// The section on the bench; nullptr for a panel or an empty job.
const job::Section* section_at(const job::Job& job, const solve::Results& results, Place place);

/// The panel on the bench; nullptr for a section or an empty job.
const job::Panel* panel_at(const job::Job& job, const solve::Results& results, Place place);

/// The rows of one kind that lie on the place; of a sleeve its own side rows only.
std::vector<const solve::Row*> rows_at(const solve::Results& results, Place place,
                                       solve::RowKind kind);

}  // namespace pouncemark::web
