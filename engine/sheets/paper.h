#pragma once

#include <string>

#include "engine/base/result.h"
#include "engine/geometry/units.h"

/// Floor 9, sheets: pages composed of drawings: the test page, full-face guides and tick lists.
/// Knows results, never a file format.
namespace pouncemark::sheets {

/// A sheet of paper, upright.
struct Paper {
  std::string name;  ///< "A4", or "900x1200"
  Um width_um = 0;
  Um length_um = 0;
};

/// What no printer reaches, on every side. Common practice; page 0 proves it.
inline constexpr Um kBorderUm = 10'000;
/// What two pages share at least, so that they can be taped.
inline constexpr Um kOverlapUm = 10'000;

/// A4 210 x 297 and A3 297 x 420 (ISO 216), Letter 8.5 x 11 in and Tabloid 11 x 17 in (ANSI Y14.1),
/// or a size in millimetres, "900x1200". Problems: paper_unknown; paper_too_small under
/// 100 x 140, which cannot carry a bar and a title; longer than 5 m is paper_unknown (a PDF page
/// ends at 5.08 m).
Result<Paper> read_paper(const std::string& words);

/// The solid bars of page 0: 180 across and 200 along on A4 and Letter, 200 both ways on larger
/// paper; on smaller paper the largest whole 20 that fits beside the words.
struct Bars {
  Um across_um = 0;
  Um along_um = 0;
};
Bars bars_of(const Paper& paper);

/// What the steel rule said of the bars of page 0, beside what they should be.
struct PrintCheck {
  Bars nominal;
  Bars measured;
};

/// Nominal bars where nothing was measured (0). Problem: paper_bars_out when a bar is more than 2 %
/// out: |measured - nominal| * 1000 > 20 * nominal.
Result<PrintCheck> print_check(const Paper& paper, const Bars& measured);

}  // namespace pouncemark::sheets
