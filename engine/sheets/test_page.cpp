#include "engine/sheets/test_page.h"

#include <utility>

#include "engine/base/number_text.h"
#include "engine/checks/rules.h"
#include "engine/drawing/symbols.h"

namespace pouncemark::sheets {
namespace {

using drawing::Spot;

constexpr Um kBarThick = 6'000;

void put(drawing::Drawing* picture, Spot at, Um size, drawing::Weight weight, std::string words) {
  drawing::Text text;
  text.at = at;
  text.size_um = size;
  text.weight = weight;
  text.words = std::move(words);
  drawing::add_text(*picture, std::move(text));
}

/// What the rule may say of a bar, and what it means.
void add_table(drawing::Drawing* picture, Spot at, const char* way, Um bar) {
  put(picture, at, 4'500, drawing::Weight::bold, std::string("If the bar ") + way + " measures");
  Um y = at.y - 7'000;
  const auto line = [&](const std::string& reads, const std::string& means) {
    put(picture, {at.x, y}, 4'000, drawing::Weight::bold, reads);
    put(picture, {at.x + 32'000, y}, 4'000, drawing::Weight::regular, means);
    y -= 6'000;
  };
  line(mm_text(bar, 1), "true: print the guides");
  line(mm_text(bar * 996 / 1000, 1), "0.4 % short: type it, guides are enlarged");
  line(mm_text(bar * 1004 / 1000, 1), "0.4 % long: type it, guides are reduced");
  line("under " + mm_text(bar * 98 / 100, 1), "refused: was the page fitted? Print at 100 %");
  line("over " + mm_text(bar * 102 / 100, 1), "refused: print at 100 %");
}

}  // namespace

drawing::Drawing test_page(const Paper& paper, const std::string& job_name,
                           const std::string& checksum) {
  drawing::Drawing picture;
  const Bars bars = bars_of(paper);
  const Spot low{kBorderUm, kBorderUm};
  const Um top = paper.length_um - kBorderUm;
  drawing::add_solid_bar(
      picture, {{low.x, top - kBarThick}, bars.across_um, drawing::Lie::across, kBarThick});
  drawing::add_solid_bar(picture,
                         {{low.x, low.y + 20'000}, bars.along_um, drawing::Lie::along, kBarThick});
  const Um x = low.x + 22'000;
  put(&picture, {x, top - 18'000}, 6'000, drawing::Weight::bold,
      exact_mm_text(bars.across_um) + " across");
  put(&picture, {x, top - 40'000}, 16'000, drawing::Weight::bold, "Page 0");
  put(&picture, {x, top - 50'000}, 6'000, drawing::Weight::regular, "the test page, " + paper.name);
  put(&picture, {x, top - 62'000}, 5'000, drawing::Weight::bold, job_name);
  put(&picture, {x, top - 69'000}, 4'000, drawing::Weight::regular,
      "file " + checksum.substr(0, 4) + " " + checksum.substr(4, 4) + " " + checksum.substr(8, 4));
  const char* steps[] = {"1  Print this page at 100 %, actual size. Not fit, not shrink.",
                         "2  Lay a steel rule on each bar, outer end to outer end.",
                         "3  Type both figures before printing any guide.",
                         "4  Tape guides to the figure on each tape line, not page to page."};
  Um y = top - 84'000;
  for (const char* step : steps) {
    put(&picture, {x, y}, 4'500, drawing::Weight::regular, step);
    y -= 8'000;
  }
  add_table(&picture, {x, y - 6'000}, "across", bars.across_um);
  add_table(&picture, {x, y - 52'000}, "along", bars.along_um);
  put(&picture, {x, low.y + 22'000}, 6'000, drawing::Weight::bold,
      exact_mm_text(bars.along_um) + " along");
  put(&picture, {low.x, low.y + 10'000}, 4'000, drawing::Weight::regular,
      std::string(checks::caution_line()) + " Not a structural or fire calculation.");
  put(&picture, {low.x, low.y + 3'500}, 4'000, drawing::Weight::regular,
      "Every guide is printed on the same printer and paper as this page.");
  return picture;
}

}  // namespace pouncemark::sheets
