#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/geometry/units.h"

namespace pouncemark::sheets {

/// A strip of a list: words and marks with their origin at the strip's lower left corner.
struct Strip {
  Um high_um = 0;
  drawing::Drawing picture;
};

/// Something that follows from top to bottom on the pages of a list: a head, entries of one height,
/// a tail. Entries are drawn when asked for, so that a long row costs nothing until it is printed.
struct Block {
  std::vector<Strip> head;  ///< stays with the first entries
  Strip again;              ///< stands over what is continued in the next column
  std::int64_t entries = 0;
  int columns = 1;  ///< entries side by side, counted down the first, then down the next
  Um entry_wide_um = 0;
  Um entry_high_um = 0;
  std::function<drawing::Drawing(std::int64_t)> entry;  ///< origin at the entry's lower left
  std::vector<Strip> tail;                              ///< stays with the last entries
  bool stays_whole = false;  ///< goes to the next column rather than be parted, if it fits there
};

/// Where the blocks go: columns of a page, all of one size.
struct FlowRoom {
  int columns = 1;
  Um column_high_um = 0;
  Um gap_um = 0;  ///< between two blocks
};

/// A stretch of one block in one column.
struct Placed {
  std::size_t block = 0;
  std::int64_t page = 0;
  int column = 0;
  Um from_top_um = 0;
  bool has_head = false;
  bool is_continued = false;  ///< `again` stands over it
  bool has_tail = false;
  std::int64_t first = 0;    ///< first entry
  std::int64_t entries = 0;  ///< how many
  std::int64_t levels = 0;   ///< how many stand under one another
};

/// Blocks from top to bottom, column by column, page by page, none left out. A head is not parted
/// from its first entry nor a tail from the last where a column can hold both.
std::vector<Placed> flowed(const std::vector<Block>& blocks, const FlowRoom& room);

/// Draws a stretch with its upper left corner at `corner`.
void add_placed(const Block& block, const Placed& placed, drawing::Spot corner,
                drawing::Drawing* picture);

/// A picture drawn again elsewhere.
void add_moved(const drawing::Drawing& from, drawing::Spot by, drawing::Drawing* picture);

}  // namespace pouncemark::sheets
