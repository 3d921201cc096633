#pragma once

#include "web/model/view.h"
#include "web/panels/page.h"

namespace pouncemark::web {

/// A part of a piece as it lies on the screen: only what is inside the window is drawn.
struct LyingPart {
  Lying lying;
  Area window;
  Um sleeve_left_um = 0;  ///< added to places measured from a sleeve's own left edge
};

/// A sheet with its cloth: sheet, woven cloth, outline. `across_from`..`across_to` are from the
/// piece's left edge.
struct SheetLook {
  Um across_from = 0;
  Um across_to = 0;
  Um length_um = 0;
  Um cloth_in_um = 12'000;
  float weave_px = 7;
  float edge_px = 2.5f;
};
void draw_sheet(Page& page, const LyingPart& part, const SheetLook& look);

/// Cloth alone, woven.
void draw_cloth(Page& page, const LyingPart& part, const Area& area, float weave_px);

/// One row with its marks: stitches at their true length, staples with their true crown, guide
/// points. `is_small` draws ticks for staples, as on a whole piece.
struct RowLook {
  bool is_small = false;
  float line_px = 3.2f;
  Colour colour = kThread;
};
void draw_row(Page& page, const LyingPart& part, const solve::Row& row, const RowLook& look);

}  // namespace pouncemark::web
