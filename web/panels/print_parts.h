#pragma once

#include "web/panels/page.h"

namespace pouncemark::web {

/// The row of buttons the paper is chosen with, and the boxes of a size of its own; gives the lower
/// edge.
float paper_row(Page& page, const Area& area);

/// Page 0 drawn small, the button that prints it, and the boxes for what its bars measured.
void prove_the_printer(Page& page, const Area& area);

/// The guides of every piece with their counts of sheets, each with a box to tick.
void choose_the_guides(Page& page, const Area& area);

/// The pages of the guide that is looked at, over its piece.
void pages_map(Page& page, const Area& area);

/// How many sheets are ticked, and the button that prints them; while printing how far it is.
void sheets_column(Page& page, const Area& area);

/// The file itself in the browser's own viewer, what it is called and its checksum.
void file_view(Page& page, const Area& area);

/// A heading over a column, in the longest words that have room; gives where the column goes on.
float column_heading(Page& page, const Area& area, const std::string& words,
                     const std::string& in_short);

}  // namespace pouncemark::web
