#pragma once

#include "web/panels/page.h"

namespace pouncemark::web {

/// The list of keys on a page of paper over everything, with the switch of the text size.
void keys_panel(Page& page);

/// The switch Small, Normal, Large with its right edge at `right`; gives its left edge.
float text_switch(Page& page, float right, float top);

/// Takes a text size and has the browser keep it.
void take_text_size(float ratio, TextSize size);
/// The size after the one that is set; after the largest the smallest.
TextSize next_text_size();
/// The size the browser has kept, else normal.
TextSize kept_text_size();

}  // namespace pouncemark::web
