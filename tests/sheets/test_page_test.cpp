#include "engine/sheets/test_page.h"

#include "tests/drawing/picture_reading.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::sheets;
using pouncemark::drawing::Box;
using pouncemark::tests::all_of;
using pouncemark::tests::reach_of;
using pouncemark::tests::says;

namespace {

drawing::Drawing page_0(const char* words) {
  return test_page(*read_paper(words), "Marsh Lights", "7aa71e8e320a");
}

/// The filled areas longer than 50: the bars.
std::vector<Box> bars_on(const drawing::Drawing& picture) {
  std::vector<Box> bars;
  for (const drawing::Fill& fill : all_of<drawing::Fill>(picture)) {
    const Box box = reach_of(fill.steps);
    if (box.high.x - box.low.x > 50'000 || box.high.y - box.low.y > 50'000) bars.push_back(box);
  }
  return bars;
}

}  // namespace

TEST_CASE(
    "page 0 has one bar each way, exactly as long as it says, inside what a printer reaches") {
  int papers = 0;
  for (const char* words : {"A4", "A3", "Letter", "Tabloid", "900x1200", "150x200"}) {
    CAPTURE(std::string(words));
    const Paper paper = *read_paper(words);
    const std::vector<Box> bars = bars_on(page_0(words));
    CHECK(bars.size() == 2);
    if (bars.size() != 2) continue;
    CHECK(bars[0].high.x - bars[0].low.x == bars_of(paper).across_um);
    CHECK(bars[1].high.y - bars[1].low.y == bars_of(paper).along_um);
    for (const Box& bar : bars) {
      CHECK(bar.low.x >= kBorderUm);
      CHECK(bar.low.y >= kBorderUm);
      CHECK(bar.high.x <= paper.width_um - kBorderUm);
      CHECK(bar.high.y <= paper.length_um - kBorderUm);
    }
    ++papers;
  }
  CHECK(papers == 6);
}

TEST_CASE("page 0 says its paper, its job, its checksum and to print at 100 %") {
  const drawing::Drawing picture = page_0("A4");
  CHECK(says(picture, "A4"));
  CHECK(says(picture, "Marsh Lights"));
  CHECK(says(picture, "7aa7 1e8e 320a"));
  CHECK(says(picture, "100 %"));
  CHECK(says(picture, "Figures guide; the trial seam and the dry run decide."));
}

TEST_CASE("page 0 says what each bar should measure and where it is refused") {
  const drawing::Drawing picture = page_0("A4");
  CHECK(says(picture, "180 across"));
  CHECK(says(picture, "200 along"));
  CHECK(says(picture, "under 196.0"));
  CHECK(says(picture, "over 204.0"));
  CHECK(says(picture, "under 176.4"));
  CHECK(says(picture, "199.2"));
}
