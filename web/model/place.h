#pragma once

#include <vector>

#include "engine/job/job.h"
#include "engine/solve/results.h"

/// Floor 12, model: the open job and everything the bench knows about it. Knows no screen, no
/// browser and no drawing; every figure comes from solve().
namespace pouncemark::web {

/// What lies on the bench: a piece, and one of its sleeves or (-1) the whole of it.
struct Place {
  int piece = 0;
  int sleeve = -1;
  bool operator==(const Place&) const = default;
};

/// A section of one sleeve is shown as that sleeve; other sections and panels as a whole.
Place first_look(const solve::Results& results, int piece);

/// The same place where it still exists, else the nearest that does; {0, -1} in an empty job.
Place held_within(const solve::Results& results, Place place);

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
