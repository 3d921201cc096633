#pragma once

#include "web/model/view.h"
#include "web/panels/page.h"

namespace pouncemark::web {

/// One sleeve as it lies, places measured from its own left edge; only what is inside the window is
/// drawn.
struct LyingSleeve {
  const job::Section& section;
  const solve::Sleeve& sleeve;
  Lying lying;
  Area window;
  bool is_small = false;  ///< as on a whole piece
};

/// What the make of a sleeve shows of itself: the folded edge as a rounded double line, the line
/// where the flange of a round one ends. Nothing on two leaves. `with_words` names them.
void draw_make(Page& page, const LyingSleeve& drawn, bool with_words);

/// Where the line stands that a folded or round sleeve shows on a close-up, and which way on the
/// screen its figure grows (1 downwards, -1 upwards).
struct MakeLine {
  float y = 0;
  float inward = 1;
};
MakeLine make_line(const job::Section& section, const solve::Sleeve& sleeve, const Lying& lying);

/// A folded edge at height `y` from `left` to `right`: the sheet turns round on itself, so that a
/// second line runs beside it on the sleeve's side (`inward` 1 downwards, -1 upwards).
void fold_line(const Brush& brush, float left, float right, float y, float inward, float apart);

/// The side rows a sleeve lies by on the screen.
struct SewnEdges {
  bool up = false;
  bool down = false;
};
SewnEdges sewn_edges(const solve::Sleeve& sleeve, bool face_down);

/// The joining rows that are also the side seams of the sleeve on the bench; none where its side
/// seams are its own.
std::vector<const solve::Row*> shared_rows(const Solved& now, Place place);

}  // namespace pouncemark::web
