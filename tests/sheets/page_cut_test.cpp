#include "engine/sheets/page_cut.h"

#include "tests/support/claims.h"
#include "tests/support/random.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::sheets;
using pouncemark::tests::ClaimsCounted;
using pouncemark::tests::Dice;

namespace {

PageCut cut_on(const char* words, Um width_mm, Um length_mm, const Bars& measured) {
  const Paper paper = *read_paper(words);
  return cut_pages(width_mm * 1'000, length_mm * 1'000, paper, *print_check(paper, measured));
}

/// True when every place from 0 to `length_um` is in the window of some page.
bool covers(const Cut& cut, Um length_um) {
  const Um last_ends = (cut.pages - 1) * cut.pitch_um + cut.window_um;
  return last_ends >= length_um && (cut.pages == 1 || cut.window_um >= cut.pitch_um);
}

}  // namespace

TEST_CASE("a piece takes as many pages as its paper needs with ten of border and ten shared") {
  struct Sheet {
    const char* paper;
    Um width_mm, length_mm;
    std::int64_t across, along;
  };
  // source: 1 + ceil((L - window) / pitch), worked out by hand; A1 is ISO 216.
  const Sheet table[] = {
      {"A4", 1000, 2400, 6, 9},      {"A3", 1000, 2400, 4, 7},  {"594x841", 1000, 2400, 2, 3},
      {"A4", 190, 277, 1, 1},        {"A4", 191, 278, 2, 2},    {"A4", 370, 544, 2, 2},
      {"A4", 371, 545, 3, 3},        {"A4", 696, 1400, 4, 6},   {"A4", 690, 1420, 4, 6},
      {"A4", 1160, 2380, 7, 9},      {"A4", 1986, 2380, 11, 9}, {"A4", 1180, 2390, 7, 9},
      {"Letter", 1000, 2400, 6, 10}, {"A4", 1, 1, 1, 1}};
  int count = 0;
  for (const Sheet& sheet : table) {
    CAPTURE(std::string(sheet.paper));
    CAPTURE(sheet.width_mm);
    const PageCut cut = cut_on(sheet.paper, sheet.width_mm, sheet.length_mm, {});
    CHECK(cut.across.pages == sheet.across);
    CHECK(cut.along.pages == sheet.along);
    CHECK(cut.pages() == sheet.across * sheet.along);
    ++count;
  }
  CHECK(count == 14);
}

TEST_CASE("a 2400 run on A4 is taped at these distances from the datum") {
  const PageCut cut = cut_on("A4", 1000, 2400, {});
  const Um datums_mm[] = {0, 267, 534, 801, 1068, 1335, 1602, 1869, 2136};
  int right = 0;
  for (std::int64_t row = 0; row < 9; ++row) {
    const PageWindow window = window_of(cut, row * 6);
    if (window.low_um == datums_mm[row] * 1'000 && window.row == row) ++right;
  }
  CHECK(right == 9);
}

TEST_CASE("page 1 is bottom left, pages are numbered along each row and then upward") {
  const PageCut cut = cut_on("A4", 1000, 2400, {});
  const PageWindow first = window_of(cut, 0);
  CHECK((first.number == 1 && first.left_um == 0 && first.low_um == 0));
  const PageWindow sixth = window_of(cut, 5);
  CHECK((sixth.number == 6 && sixth.column == 5 && sixth.row == 0 && sixth.left_um == 900'000));
  const PageWindow seventh = window_of(cut, 6);
  CHECK((seventh.column == 0 && seventh.row == 1 && seventh.low_um == 267'000));
  CHECK(window_of(cut, 53).number == 54);
}

TEST_CASE("the printer's correction changes the window, never the distances from the datum") {
  // source: a bar of 200 that measures 199.2 shows 277 * 0.996 = 275.892 of the piece.
  const PageCut true_cut = cut_on("A4", 1000, 2400, {});
  const PageCut cut = cut_on("A4", 1000, 2400, {0, 199'200});
  CHECK(cut.along.pitch_um == true_cut.along.pitch_um);
  CHECK(cut.along.window_um == 275'892);
  CHECK(cut.along.border_um == 9'960);
  CHECK(cut.across.window_um == true_cut.across.window_um);
  CHECK(cut.across.border_um == 10'000);
}

TEST_CASE("every place of a piece lies on a page, on home papers and any printer that passes") {
  Dice dice(20'260'201);
  INFO(dice.words());
  const std::vector<std::string> papers = {"A4", "A3", "Letter", "Tabloid", "100x140", "300x500"};
  int covered = 0;
  for (int i = 0; i < 20'000; ++i) {
    const std::int64_t which = dice.between(0, 5);
    const Paper paper = *read_paper(papers[static_cast<std::size_t>(which)]);
    const Bars bars = bars_of(paper);
    const Um across = dice.between(bars.across_um * 98 / 100, bars.across_um * 102 / 100);
    const Um along = dice.between(bars.along_um * 98 / 100, bars.along_um * 102 / 100);
    const Um wide = dice.of_any_size(1, 3'000'000);
    const Um high = dice.of_any_size(1, 6'000'000);
    const PageCut cut = cut_pages(wide, high, paper, *print_check(paper, {across, along}));
    if (covers(cut.across, wide) && covers(cut.along, high)) ++covered;
  }
  CHECK(covered == 20'000);
}

TEST_CASE("no page is printed beyond the piece") {
  Dice dice(20'260'202);
  INFO(dice.words());
  int needed = 0;
  for (int i = 0; i < 20'000; ++i) {
    const Um length = dice.of_any_size(1, 6'000'000);
    const Um measured = dice.between(196'000, 204'000);
    const Cut cut = cut_one_way(length, 297'000, 200'000, measured);
    const Um without_last = (cut.pages - 2) * cut.pitch_um + cut.window_um;
    if (cut.pages == 1 || without_last < length) ++needed;
  }
  CHECK(needed == 20'000);
}

TEST_CASE("every place of a piece lies on a page of large paper from a printer 2 % short") {
  int covered = 0;
  for (const char* words : {"594x841", "900x1200", "900x5000", "5000x5000"}) {
    CAPTURE(std::string(words));
    const PageCut cut = cut_on(words, 9'000, 9'000, {196'000, 196'000});
    CHECK(covers(cut.across, 9'000'000));
    CHECK(covers(cut.along, 9'000'000));
    ++covered;
  }
  CHECK(covered == 4);
}

TEST_CASE("a page that is not of the cut is our own mistake") {
  const PageCut cut = cut_on("A4", 100, 100, {});
  const ClaimsCounted claims;
  CHECK(window_of(cut, 0).number == 1);
  CHECK(claims.broken() == 0);
  window_of(cut, 1);
  CHECK(claims.broken() == 1);
}
