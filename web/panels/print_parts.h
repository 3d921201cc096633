#pragma once

#include "web/panels/page.h"

namespace pouncemark::web {

/// Makes the PDF, hands it over as a download and says so; else keeps the sentence why not.
void print_now(Bench& bench, PageState& state, const PrintWish& wish);

/// The row of buttons the paper is chosen with, and the boxes of a size of its own; gives the lower
/// edge.
float paper_row(Page& page, const Area& area);

/// Page 0 drawn small, the button that prints it, and the boxes for what its bars measured.
void prove_the_printer(Page& page, const Area& area);

/// The guides of every piece with their counts of sheets, each a button that prints it.
void choose_the_guides(Page& page, const Area& area);

}  // namespace pouncemark::web
