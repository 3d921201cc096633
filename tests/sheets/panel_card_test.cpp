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

/// The pages of the cards of every panel.
std::vector<drawing::Drawing> pages_of(const job::Job& job, const char* paper) {
  const solve::Results results = solve::solve(job);
  const CardCut cut = *card_cut(*read_paper(paper));
  std::vector<drawing::Drawing> pages;
  for (int i = 0; i < static_cast<int>(results.pieces.size()); ++i) {
    const CardSet cards = panel_cards(job, results, i, cut, "7aa71e8e320a");
    for (std::int64_t page = 0; page < cards.pages(); ++page) pages.push_back(cards.page(page));
  }
  return pages;
}

/// A panel of this size whose every word is as long as it can be.
job::Job long_named(Um width_mm, Um length_mm) {
  job::Job job = tests::panel_job(width_mm, length_mm, "right");
  job.name = std::string(200, 'W');
  job.panels[0].code = std::string(60, 'M');
  job.panels[0].spacing_um = job.panels[0].stitch_um = 1'000;
  job.needle_size = 400;
  job::Bay bay;
  bay.code = std::string(60, 'W');
  bay.chord_um = 99'000'000;
  bay.rise_um = 98'000'000;
  bay.face = "hollow";
  bay.holds = job.panels[0].code;
  job.bays.push_back(bay);
  return job;
}

/// A panel with a slanted fly side in two, an arched top and its hinge side below.
job::Job odd_panel() {
  job::Job job = tests::panel_job(690, 1420, "left");
  job.panels[0].outline = {{"hinge_side", {0, 0}, 0, {}},
                           {"bottom", {900'000, 0}, 0, {}},
                           {"fly_side", {900'000, 500'000}, 60'000, {}},
                           {"fly_side", {400'000, 700'000}, 0, {}},
                           {"top", {0, 500'000}, -20'000, {}}};
  return job;
}

}  // namespace

TEST_CASE("a panel has a card FRONT and one FACE DOWN, a section none") {
  const auto pages = pages_of(tests::demo_job("marsh-lights"), "A4");
  REQUIRE(pages.size() == 1);
  int found = 0;
  for (const char* words : {"FRONT", "FACE DOWN", "HINGE SIDE", "FLY SIDE - DO NOT SEW", "TOP",
                            "SPRAYED AT", "SEW NOT BEFORE", "H6 adhesive cured", "H7 dry run",
                            "in bay B2", "Figures guide", "FLY SIDE - DO NOT SEW: the right edge",
                            "FLY SIDE - DO NOT SEW: the left edge", "file 7aa7 1e8e 320a"}) {
    CAPTURE(words);
    CHECK(tests::says(pages[0], words));
    ++found;
  }
  CHECK(found == 14);
  CHECK(pages_of(tests::section_job({110}, 0), "A4").empty());
  CHECK(pages_of(tests::demo_job("harbour-ledger"), "148x210").size() == 10);
}

TEST_CASE("what cards of panels have to say stays within, no word under 3.8, and none meet") {
  std::int64_t looked_at = 0;
  for (const char* paper : {"A4", "Letter", "A3", "140x210"}) {
    const CardCut cut = *card_cut(*read_paper(paper));
    for (const job::Job& job : {tests::demo_job("marsh-lights"), long_named(690, 1420),
                                long_named(9'000, 300), long_named(60, 9'000), odd_panel()}) {
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

TEST_CASE("what finds no room on a panel card is counted") {
  const auto pages = pages_of(long_named(690, 1420), "A4");
  CHECK(tests::says(pages[0], "to know: see the check."));
  CHECK_FALSE(tests::says(pages_of(tests::demo_job("marsh-lights"), "A4")[0], "see the check."));
}

TEST_CASE("rows that find no line on a panel card are counted") {
  const auto few = pages_of(tests::demo_job("marsh-lights"), "A4");
  CHECK_FALSE(tests::says(few[0], "more rows"));
  job::Job job = tests::panel_job(690, 1420, "left");
  job.panels[0].outline = {{"hinge_side", {0, 0}, 0, {}},
                           {"bottom", {300'000, -50'000}, 0, {}},
                           {"bottom", {690'000, 0}, 0, {}},
                           {"fly_side", {690'000, 1'420'000}, 0, {}},
                           {"top", {0, 1'420'000}, 0, {}}};
  std::swap(job.panels[0].outline[0].role, job.panels[0].outline[4].role);
  CHECK(tests::says(pages_of(job, "A4")[0], "2 more rows"));
  job.panels[0].rows_on = std::vector<std::string>{};
  CHECK(tests::says(pages_of(job, "A4")[0], "No row is sewn on this panel."));
}
