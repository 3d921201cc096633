#include "engine/sheets/page_cut.h"

#include <algorithm>

#include "engine/base/insist.h"

namespace pouncemark::sheets {

Um overlap_of(Um room_um) {
  const Um needed = divide_up(room_um * 2 / 100 + 1'000, 1'000) * 1'000;
  return std::max(kOverlapUm, needed);
}

Cut cut_one_way(Um length_um, Um paper_um, Um nominal_um, Um measured_um) {
  INSIST(nominal_um > 0 && measured_um > 0);
  const Um room = paper_um - 2 * kBorderUm;
  Cut cut;
  cut.overlap_um = overlap_of(room);
  cut.pitch_um = room - cut.overlap_um;
  cut.window_um = room * measured_um / nominal_um;
  cut.border_um = divide_round(kBorderUm * measured_um, nominal_um);
  cut.pages =
      length_um <= cut.window_um ? 1 : 1 + divide_up(length_um - cut.window_um, cut.pitch_um);
  return cut;
}

PageCut cut_pages(Um width_um, Um length_um, const Paper& paper, const PrintCheck& check) {
  return {cut_one_way(width_um, paper.width_um, check.nominal.across_um, check.measured.across_um),
          cut_one_way(length_um, paper.length_um, check.nominal.along_um, check.measured.along_um)};
}

PageWindow window_of(const PageCut& cut, std::int64_t page) {
  INSIST(page >= 0 && page < cut.pages());
  PageWindow window;
  window.number = page + 1;
  window.column = page % cut.across.pages;
  window.row = page / cut.across.pages;
  window.left_um = window.column * cut.across.pitch_um;
  window.low_um = window.row * cut.along.pitch_um;
  return window;
}

}  // namespace pouncemark::sheets
