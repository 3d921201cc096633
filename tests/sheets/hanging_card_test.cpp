#include "engine/sheets/piece_cards.h"
#include "engine/solve/solve.h"
#include "tests/drawing/picture_reading.h"
#include "tests/sheets/card_reading.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::sheets;
using tests::all_of;

namespace {

std::vector<drawing::Drawing> pages_of(const job::Job& job, const char* paper) {
  const solve::Results results = solve::solve(job);
  const CardSet cards = hanging_cards(job, results, *card_cut(*read_paper(paper)), "7aa71e8e320a");
  std::vector<drawing::Drawing> pages;
  for (std::int64_t i = 0; i < cards.pages(); ++i) pages.push_back(cards.page(i));
  return pages;
}

job::Job long_named() {
  job::Job job = tests::demo_job("marsh-lights");
  job.name = std::string(200, 'W');
  for (job::Bay& bay : job.bays) {
    bay.code += std::string(60, 'W');
    bay.chord_um = 99'000'000;
    bay.rise_um = 98'000'000;
    bay.stations_um = {{0, 0}, {10'000, 5'000}};
    bay.taped_along_um = 1'000;
  }
  job.materials.values[material::Field::hanging_today] = {
      -39'900, {}, material::Standing::typed, {}};
  return job;
}

}  // namespace

TEST_CASE("each bay has its hanging card, two to an A4") {
  CHECK(pages_of(tests::demo_job("harbour-ledger"), "A4").size() == 6);
  CHECK(pages_of(tests::section_job({110}, 0), "A4").empty());
  const auto pages = pages_of(tests::demo_job("marsh-lights"), "A4");
  REQUIRE(pages.size() == 1);
  int found = 0;
  for (const char* words :
       {"HANGING CARD", "NEVER LIFT BY ONE CORNER", "1  The tight hole", "4  Top and bottom last",
        "today, °C; planned for 20 °C", "H8 hung", "Figures guide",
        "Not a structural or fire calculation", "file 7aa7 1e8e 320a"}) {
    CAPTURE(words);
    CHECK(tests::says(pages[0], words));
    ++found;
  }
  CHECK(found == 9);
}

TEST_CASE("what hanging cards have to say stays within, no word under 3.8, and none meet") {
  std::int64_t looked_at = 0;
  for (const char* paper : {"A4", "Letter", "A3", "140x210"}) {
    const CardCut cut = *card_cut(*read_paper(paper));
    for (const job::Job& job :
         {tests::demo_job("marsh-lights"), tests::demo_job("harbour-ledger"), long_named()}) {
      for (const drawing::Drawing& page : pages_of(job, paper)) {
        const auto words = all_of<drawing::Text>(page);
        CHECK(tests::words_that_meet(words) == std::vector<std::string>{});
        for (const drawing::Text& text : words) {
          CAPTURE(text.words);
          CHECK(text.size_um >= 3'800);
          CHECK(tests::within(tests::reach_of(text), cut));
          ++looked_at;
        }
        for (const drawing::Box& ink : tests::ink_on(page)) {
          CHECK(tests::within(ink, cut));
          ++looked_at;
        }
      }
    }
  }
  CHECK(looked_at > 3'000);
}
