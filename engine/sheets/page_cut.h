#pragma once

#include "engine/sheets/paper.h"

namespace pouncemark::sheets {

/// One way of a piece cut into pages: page i shows the piece from i * pitch to i * pitch + window.
/// The pitch never changes with the printer's correction, so the distances from the datum do not
/// either; the overlap takes the correction up.
struct Cut {
  Um pitch_um = 0;
  Um overlap_um = 0;  ///< what two pages share on the uncorrected sheet
  Um window_um = 0;   ///< true millimetres of the piece seen on one page
  Um border_um = 0;   ///< the border before the sheet is enlarged, so that it stays 10 on paper
  std::int64_t pages = 0;
};

/// What two pages share on paper with this much printable room: 10, and on large paper enough that
/// 1 is left when the printer is 2 % short.
Um overlap_of(Um room_um);

/// The cut of a run of `length_um`: n = 1 if it fits one window, else 1 + ceil((L - window)/pitch).
Cut cut_one_way(Um length_um, Um paper_um, Um nominal_um, Um measured_um);

/// Both ways. Page 1 is bottom left, numbered along each row, then upward.
struct PageCut {
  Cut across;
  Cut along;
  std::int64_t pages() const { return across.pages * along.pages; }
};

/// A window of the piece on the paper: piece micrometres from `left, low`.
struct PageWindow {
  std::int64_t number = 0;  ///< from 1
  std::int64_t column = 0;
  std::int64_t row = 0;
  Um left_um = 0;
  Um low_um = 0;
};

PageCut cut_pages(Um width_um, Um length_um, const Paper& paper, const PrintCheck& check);
PageWindow window_of(const PageCut& cut, std::int64_t page);

}  // namespace pouncemark::sheets
