#pragma once

#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/sheets/page_view.h"

namespace pouncemark::sheets {

/// A stretch along one way of the piece, micrometres.
struct Stretch {
  Um low = 0;
  Um high = 0;
  Um length() const { return high - low; }
};

/// The longest stretch of [within] that none of `taken` touches; the first of equals; of length 0
/// when all is taken.
Stretch longest_free(Stretch within, std::vector<Stretch> taken);

/// The largest upright room on the page for words: beside or above the piece where the page reaches
/// beyond it, else the widest column between rows, clear of them. Piece micrometres.
drawing::Box free_room(const PageView& view);

/// The longest stretch of [within], up the page, at which something can lie across it without
/// touching a point or a row across; rows along the piece may pass through it.
Stretch free_level(const PageView& view, Stretch within);

/// The first such stretch of at least `needed` from the bottom of [within]; it may end above it.
Stretch first_free_level(const PageView& view, Stretch within, Um needed);

/// The widest column of the page that no row and no edge of sheet passes through.
Stretch free_column(const PageView& view);

}  // namespace pouncemark::sheets
