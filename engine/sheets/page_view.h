#pragma once

#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/drawing/taken_room.h"
#include "engine/sheets/full_face.h"

/// Inside of the full-face guide: one page seen through its window. Only sheets' own files include
/// this.
namespace pouncemark::sheets {

/// Points of a row on one page: indices [first, last]; nothing when last < first.
struct PointRange {
  std::int64_t first = 0;
  std::int64_t last = -1;
};

/// The page's window on the piece and the way from one to the other.
struct PageView {
  const GuideSet& set;
  const PageWindow& page;

  const solve::Piece& piece() const;
  /// The section as it was entered; nullptr for a panel.
  const job::Section* section() const;
  /// The page so many columns to the right and rows up is printed; false beyond the grid.
  bool is_printed(std::int64_t columns, std::int64_t rows) const;
  /// Rows of this piece.
  std::vector<const solve::Row*> rows() const;

  Um left() const { return page.left_um; }
  Um right() const { return page.left_um + set.cut.across.window_um; }
  Um low() const { return page.low_um; }
  Um high() const { return page.low_um + set.cut.along.window_um; }

  /// True when the place lies in the window, its edges counted.
  bool sees(solve::PlaceUm place) const;
  /// Piece micrometres to paper micrometres.
  drawing::Spot on_paper(Um x, Um y) const;
  drawing::Spot on_paper(Vec2 mm) const { return on_paper(to_um(mm.x), to_um(mm.y)); }
  /// The window on the paper.
  drawing::Box window() const;
  /// A box of the piece on the paper.
  drawing::Box on_paper(const drawing::Box& box) const {
    return {on_paper(box.low.x, box.low.y), on_paper(box.high.x, box.high.y)};
  }
  /// The points of a row that lie in the window.
  PointRange points_seen(const solve::Row& row) const;
};

/// True when the row runs straight along the piece (or straight across it).
bool runs_along(const solve::Row& row);
bool runs_across(const solve::Row& row);

/// Where a sleeve that is not two leaves is bent, across the section: the folded edge, or the line
/// where the flange begins.
Um make_line_um(const job::Section& section, const solve::Sleeve& sleeve);

/// Where it is drawn: a fold as a second line close inside the folded edge.
Um drawn_make_line_um(const job::Section& section, const solve::Sleeve& sleeve);

/// Edges of the piece; rows and points.
void add_piece_edges(const PageView& view, drawing::Drawing* picture);
void add_rows(const PageView& view, drawing::Drawing* picture);

/// The distance of every point from the datum end of its edge, beside it.
void add_figures(const PageView& view, drawing::Drawing* picture);

/// Which row is which and what it holds, HINGE SIDE and FLY SIDE, where no other words lie and
/// nothing of `furniture` (the title with its bars and map).
void add_row_words(const PageView& view, const drawing::TakenRoom& furniture,
                   drawing::Drawing* picture);

/// Tape lines with their distance from the datum, shared strips, registration marks.
void add_page_frame(const PageView& view, drawing::Drawing* picture);

/// Where the page's lower left corner lies, measured from the datum, where nothing else lies.
void add_datum(const PageView& view, drawing::Drawing* picture);

/// Title, page map, check bars, FRONT, TOP and the caution, where there is room for them.
void add_page_title(const PageView& view, drawing::Drawing* picture);

}  // namespace pouncemark::sheets
