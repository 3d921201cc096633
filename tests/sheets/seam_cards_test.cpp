#include "engine/sheets/seam_cards.h"

#include "engine/sheets/wrapped_words.h"
#include "engine/solve/solve.h"
#include "tests/drawing/picture_reading.h"
#include "tests/sheets/card_reading.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::sheets;
using tests::all_of;

namespace {

using Pictures = std::vector<drawing::Drawing>;

Pictures pages_of(const job::Job& job, int piece, const char* paper) {
  const solve::Results results = solve::solve(job);
  const CardSet cards =
      seam_cards(job, results, piece, *card_cut(*read_paper(paper)), "7aa71e8e320a");
  Pictures pages;
  for (std::int64_t i = 0; i < cards.pages(); ++i) pages.push_back(cards.page(i));
  return pages;
}

/// A job whose names are as long as anyone could make them.
job::Job long_named() {
  job::Job job = tests::section_job({110, 110, 110}, 18);
  job.name = std::string(200, 'W');
  job.sections[0].code = std::string(60, 'M');
  for (const material::Field field :
       {material::Field::needle_system, material::Field::thread_label}) {
    job.materials.values[field] = {0, std::string(80, 'W'), material::Standing::typed, {}};
  }
  job::Trial trial;
  trial.of_all_rows = trial.is_chosen = true;
  trial.stitch_um = job.sections[0].side_rows.stitch.stitch_um;
  trial.signed_by = std::string(120, 'W');
  job.trials.push_back(trial);
  return job;
}

}  // namespace

TEST_CASE("a paper lies the way round that holds more cards") {
  struct Case {
    const char* paper;
    int across;
    int down;
    bool is_on_its_side;
  };
  const std::vector<Case> cases = {{"A4", 2, 1, true},       {"Letter", 2, 1, true},
                                   {"A3", 2, 2, false},      {"Tabloid", 2, 2, false},
                                   {"148x210", 1, 1, false}, {"140x210", 1, 1, false},
                                   {"210x140", 1, 1, true},  {"900x1200", 8, 4, true}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.paper);
    const Paper paper = *read_paper(one.paper);
    const Result<CardCut> cut = card_cut(paper);
    REQUIRE(cut.is_ok());
    CHECK(std::max(cut->across, cut->down) == std::max(one.across, one.down));
    CHECK(cut->cards_a_page() == one.across * one.down);
    CHECK((cut->page.width_um != paper.width_um) == one.is_on_its_side);
    ++ran;
  }
  CHECK(ran == 8);
}

TEST_CASE("paper smaller than a card holds none") {
  CHECK(card_cut(*read_paper("139.9x210")).problem().code == ProblemCode::paper_too_small);
  CHECK(card_cut(*read_paper("140x209.9")).problem().code == ProblemCode::paper_too_small);
  CHECK(card_cut(*read_paper("140x209.9")).problem().needed == "at least 140x210");
}

TEST_CASE("each stitch row has its card, in the order it is sewn") {
  const Pictures section = pages_of(tests::demo_job("marsh-lights"), 0, "A4");
  CHECK(section.size() == 13);
  CHECK(tests::says(section[0], "1-01 left"));
  CHECK(tests::says(section[0], "1-01 right"));
  CHECK(tests::says(section[12], "1-07 over 1-08"));
  CHECK(tests::says(section[12], "1-08 over 1-09"));
  const Pictures panel = pages_of(tests::demo_job("marsh-lights"), 1, "A4");
  CHECK(panel.size() == 2);
  CHECK(tests::says(panel[1], "P1 bottom"));
  CHECK_FALSE(tests::says(panel[1], "P1 top"));
  CHECK(pages_of(tests::demo_job("marsh-lights"), 0, "A3").size() == 7);
}

TEST_CASE("no ink and no word stands in the outer 10, whatever the names and the paper") {
  std::int64_t looked_at = 0;
  for (const char* paper : {"A4", "Letter", "A3", "140x210"}) {
    CAPTURE(paper);
    const CardCut cut = *card_cut(*read_paper(paper));
    for (const job::Job& job : {tests::demo_job("marsh-lights"), long_named()}) {
      for (int piece = 0; piece < static_cast<int>(solve::solve(job).pieces.size()); ++piece) {
        for (const drawing::Drawing& page : pages_of(job, piece, paper)) {
          for (const drawing::Text& text : all_of<drawing::Text>(page)) {
            CAPTURE(text.words);
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
  }
  CHECK(looked_at > 5'000);
}

TEST_CASE("figures are 13.5 high and no word is under 3.8") {
  int figures = 0;
  for (const job::Job& job : {tests::demo_job("marsh-lights"), long_named()}) {
    for (const char* paper : {"A4", "140x210"}) {
      for (const drawing::Drawing& page : pages_of(job, 0, paper)) {
        for (const drawing::Text& text : all_of<drawing::Text>(page)) {
          CHECK(text.size_um >= 3'800);
          if (text.size_um == 13'500) ++figures;
        }
      }
    }
  }
  CHECK(figures == 2 * 6 * (26 + 8));
}

TEST_CASE("no two runs of words on a card lie over one another") {
  int pairs = 0;
  for (const job::Job& job : {tests::demo_job("harbour-ledger"), long_named()}) {
    for (const char* paper : {"A4", "140x210"}) {
      const Pictures pages = pages_of(job, 0, paper);
      const auto words = all_of<drawing::Text>(pages.back());
      CHECK(tests::words_that_meet(words) == std::vector<std::string>{});
      pairs += static_cast<int>(words.size() * (words.size() - 1) / 2);
    }
  }
  CHECK(pairs > 1'000);
}

TEST_CASE("findings that find no room are counted, and none is dropped unsaid") {
  job::Job job = tests::demo_job("harbour-ledger");
  job.needle_size = 400;
  const solve::Results results = solve::solve(job);
  const Pictures pages = pages_of(job, 1, "140x210");
  bool is_counted = false;
  for (const drawing::Drawing& page : pages) {
    is_counted = is_counted || tests::says(page, "to know at this row");
  }
  CHECK(is_counted);
}

TEST_CASE("an approved trial seam stands signed on the card, an open one has a line to sign") {
  job::Job job = tests::section_job({110}, 0);
  CHECK(tests::says(pages_of(job, 0, "A4")[0], "H3 trial seam approved: name, date"));
  job::Trial trial;
  trial.of_all_rows = trial.is_chosen = true;
  trial.signed_by = "A. Sewer, 12 Nov";
  job.trials.push_back(trial);
  CHECK(tests::says(pages_of(job, 0, "A4")[0], "H3 trial seam approved: A. Sewer, 12 Nov"));
}
