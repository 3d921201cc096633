#pragma once

#include "web/model/view.h"
#include "web/panels/page.h"

namespace pouncemark::web {

/// The whole sleeve as it lies, in true proportion, with BOTTOM, FRONT and TOP written on it.
struct WholeStrip {
  Lying lying;
  Area sheet;
};
WholeStrip strip_in(const Page& page, const Area& area);
void draw_strip(Page& page, const WholeStrip& strip);

/// The end of the strip, to be pulled: the sleeve's length.
void strip_grip(Page& page, const WholeStrip& strip);

/// The frame on the strip around the end that stands below as a close-up.
Area end_frame(const WholeStrip& strip, Um from, Um to);
/// The lighter ground that opens from the frame to the close-up.
void draw_mat(Page& page, const Area& frame, const Area& mat, bool is_bottom);

/// The words BOTTOM, FRONT (or the FACE DOWN banner) and TOP on a lying piece.
void lying_words(Page& page, const Area& sheet, float inset);

}  // namespace pouncemark::web
