#pragma once

#include <cstdint>
#include <vector>

#include "engine/job/job.h"
#include "engine/sheets/page_cut.h"
#include "engine/solve/results.h"

namespace pouncemark::sheets {

/// Which pages of a full-face guide are left out, because nothing crosses them; by page, in the
/// order of their numbers. Empty: none.
using LeftOut = std::vector<bool>;

/// Leaves out every page whose window, its edges counted, no row of the piece, no point and no edge
/// drawn of it crosses: outline, laps, folds and flanges. A page keeps its number whether it is
/// printed or not. Sheets, counts and the map on screen all ask here.
LeftOut left_out_pages(const job::Job& job, const solve::Results& results, int piece,
                       const PageCut& cut);

bool is_left_out(const LeftOut& left_out, std::int64_t page);
std::int64_t count_of(const LeftOut& left_out);

}  // namespace pouncemark::sheets
