#pragma once

#include <map>
#include <string>
#include <vector>

#include "engine/sheets/list_flow.h"
#include "engine/sheets/row_groups.h"

/// Inside of the tick list: what stands on it, from top to bottom. Only sheets' own files include
/// this.
namespace pouncemark::sheets {

/// The piece a tick list is of, and how wide and high a column of its pages is.
struct TickSource {
  const solve::Results& results;
  int piece_index = 0;
  Um wide_um = 0;
  Um high_um = 0;

  const solve::Piece& piece() const {
    return results.pieces[static_cast<std::size_t>(piece_index)];
  }
};

/// The number of the list that serves a row, by its code.
using ListNumbers = std::map<std::string, int>;

/// Where the lines of the rows lie: of a section from its left edge, of a panel in from the edge;
/// and how far side rows stand in from their own sleeve's edge.
std::vector<Block> row_table_blocks(const TickSource& source, const ListNumbers& lists);

/// One list of figures: which rows it serves, where from, every distance with a box to tick, and
/// the sum check.
std::vector<Block> figure_blocks(const TickSource& source, const Rows& group, const Rows& all,
                                 int number);

/// All of it: open stops, where the tape's zero goes, row tables, lists, stitch rows.
std::vector<Block> tick_blocks(const TickSource& source);

}  // namespace pouncemark::sheets
