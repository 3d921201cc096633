#pragma once

#include <string>
#include <vector>

#include "engine/solve/results.h"

namespace pouncemark::sheets {

using Rows = std::vector<const solve::Row*>;

/// Rows of one piece in the order of the results: those of guide points (staples, panel points), or
/// those of stitches.
Rows guide_point_rows(const solve::Results& results, const solve::Piece& piece);
Rows stitch_rows(const solve::Results& results, const solve::Piece& piece);

/// Where the distances of a row are measured from, to follow "measured": "from BOTTOM", "from the
/// hinge side, along the row".
std::string datum_words(const solve::Piece& piece, const solve::Row& row);

/// Rows gathered by what their figures are: one run, one datum, one kind; in the order of their
/// first rows. No group is empty.
std::vector<Rows> groups_of_equal_rows(const solve::Piece& piece, const Rows& rows);

/// The codes of `some` of the rows `all`, both in one order. Side rows, and lap rows, that follow
/// one another without a gap are named by their first and last: "1-01 left to 1-04 right, 1-06
/// left".
std::string row_names(const Rows& some, const Rows& all);

}  // namespace pouncemark::sheets
