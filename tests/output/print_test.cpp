#include "engine/batch/built_in_faces.h"
#include "engine/output/print_run.h"
#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "tests/support/pdf_pages.h"

#include <doctest/doctest.h>

#include <set>
#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::output;
using pouncemark::batch::built_in_faces;
using pouncemark::tests::demo_job;
using pouncemark::tests::pages_in;
using enum pouncemark::ProblemCode;

namespace {

Result<std::vector<NamedBytes>> printed(const job::Job& job, const PrintOptions& options) {
  return output::print(job, solve::solve(job), options, built_in_faces());
}

PrintOptions order(Guide guide, const char* paper) {
  PrintOptions options;
  options.guide = guide;
  options.paper = paper;
  return options;
}

}  // namespace

TEST_CASE("the small job is one file a piece and page 0 by itself, named so that each is found") {
  const auto guides = printed(demo_job("marsh-lights"), order(Guide::full_face, "A4"));
  CHECK(guides->size() == 2);
  CHECK((*guides)[0].name == "marsh-lights_section-1_full-face_A4_front.pdf");
  CHECK((*guides)[1].name == "marsh-lights_panel-1_full-face_A4_front.pdf");
  CHECK(pages_in((*guides)[0].bytes) == 24);
  // source: 4 across and 6 along, of which 2 x 4 in the middle hold nothing.
  CHECK(pages_in((*guides)[1].bytes) == 16);
  const auto page_0 = printed(demo_job("marsh-lights"), order(Guide::test_page, "A4"));
  CHECK(page_0->size() == 1);
  CHECK((*page_0)[0].name == "marsh-lights_test-page_A4.pdf");
  CHECK(pages_in((*page_0)[0].bytes) == 1);
}

TEST_CASE("the same order gives the same bytes, another job or paper others") {
  const job::Job job = demo_job("marsh-lights");
  const auto one = printed(job, order(Guide::full_face, "A3"));
  const auto again = printed(job, order(Guide::full_face, "A3"));
  CHECK((*one)[0].bytes == (*again)[0].bytes);
  CHECK((*one)[1].bytes == (*again)[1].bytes);
  job::Job other = job;
  other.sections[0].lap_um += 1;
  CHECK((*printed(other, order(Guide::full_face, "A3")))[1].bytes != (*one)[1].bytes);
  CHECK((*printed(job, order(Guide::full_face, "Tabloid")))[0].bytes != (*one)[0].bytes);
}

TEST_CASE("one piece can be printed by itself, and is the same as in the whole order") {
  const job::Job job = demo_job("marsh-lights");
  PrintOptions options = order(Guide::full_face, "A4");
  const auto all = printed(job, options);
  options.piece = 1;
  const auto one = printed(job, options);
  CHECK(one->size() == 1);
  CHECK((*one)[0].bytes == (*all)[1].bytes);
}

TEST_CASE("every file of a job has a name of its own, whatever its pieces are called") {
  job::Job job = tests::section_job({110}, 0);
  job.sections[0].length_um = 200'000;
  for (const char* code : {"a", "A", "\u0141", "\u00d3", "1-", "P1"}) {
    job.sections.push_back(job.sections[0]);
    job.sections.back().code = code;
  }
  job.panels.push_back(tests::panel_job(150, 200, "left").panels[0]);
  job.panels[0].code = "1";
  const auto files = printed(job, order(Guide::full_face, "A4"));
  CHECK(files->size() == 8);
  std::set<std::string> names;
  for (const NamedBytes& file : *files) names.insert(file.name);
  CHECK(names.size() == files->size());
}

TEST_CASE("an order that cannot be printed is refused for its own reason") {
  const job::Job job = demo_job("marsh-lights");
  CHECK(printed(job, order(Guide::full_face, "A5")).problem().code == paper_unknown);
  CHECK(printed(job, order(Guide::full_face, "90x130")).problem().code == paper_too_small);
  PrintOptions options = order(Guide::full_face, "A4");
  options.bar_along_um = 196'000;
  CHECK(printed(job, options).is_ok());
  options.bar_along_um = 195'999;
  CHECK(printed(job, options).problem().code == paper_bars_out);
}

TEST_CASE("a guide of more than 2,000 pages or a million points is refused before it is drawn") {
  job::Job job = tests::panel_job(100'000, 100'000, "left");
  const auto pages = printed(job, order(Guide::full_face, "A4"));
  CHECK(pages.problem().code == paper_too_many_pages);
  CHECK(pages.problem().where == "panel 1");
  job::Job dense = tests::section_job(std::vector<Um>(4, 110), 0);
  dense.sections[0].side_rows.staple.spacing_um = 10;
  const auto points = printed(dense, order(Guide::full_face, "A3"));
  CHECK(points.problem().code == row_too_many_points);
}

TEST_CASE("a tick list is one file a piece, and no print check is applied to its figures") {
  const job::Job job = demo_job("marsh-lights");
  PrintOptions options = order(Guide::tick_list, "A4");
  const auto lists = printed(job, options);
  CHECK(lists->size() == 2);
  CHECK((*lists)[0].name == "marsh-lights_section-1_tick-list_A4_front.pdf");
  CHECK((*lists)[1].name == "marsh-lights_panel-1_tick-list_A4_front.pdf");
  options.bar_across_um = 179'300;
  options.bar_along_um = 199'200;
  CHECK((*printed(job, options))[0].bytes == (*lists)[0].bytes);
  options.bar_along_um = 195'999;
  CHECK(printed(job, options).problem().code == paper_bars_out);
  options = order(Guide::tick_list, "Letter");
  options.piece = 1;
  CHECK(printed(job, options)->size() == 1);
  CHECK((*printed(job, options))[0].bytes != (*lists)[1].bytes);
  CHECK(printed(job, order(Guide::tick_list, "90x130")).problem().code == paper_too_small);
}

TEST_CASE("a tick list of too many points or pages is refused") {
  job::Job dense = tests::section_job(std::vector<Um>(4, 110), 0);
  dense.sections[0].side_rows.staple.spacing_um = 10;
  CHECK(printed(dense, order(Guide::tick_list, "A3")).problem().code == row_too_many_points);
  dense.sections[0].count = 1;
  CHECK(printed(dense, order(Guide::tick_list, "A3")).is_ok());
  const auto pages = printed(dense, order(Guide::tick_list, "100x140"));
  CHECK(pages.problem().code == paper_too_many_pages);
  CHECK(pages.problem().where == "section 1");
}

TEST_CASE("the pages a tick list takes are told without drawing it") {
  const job::Job job = demo_job("harbour-ledger");
  const solve::Results results = solve::solve(job);
  int pieces = 0;
  for (const char* paper : {"A4", "Letter", "100x140"}) {
    const auto lists = printed(job, order(Guide::tick_list, paper));
    for (std::size_t i = 0; i < results.pieces.size(); ++i) {
      CHECK(*tick_list_pages(job, results, static_cast<int>(i), paper) ==
            pages_in((*lists)[i].bytes));
      ++pieces;
    }
  }
  CHECK(pieces == 33);
  CHECK(tick_list_pages(job, results, 0, "B4").problem().code == paper_unknown);
}

TEST_CASE("seam cards are one file a piece that has a row, and any bar prints the same ones") {
  const job::Job job = demo_job("marsh-lights");
  PrintOptions options = order(Guide::seam_card, "A4");
  const auto cards = printed(job, options);
  CHECK(cards->size() == 2);
  CHECK((*cards)[0].name == "marsh-lights_section-1_seam-cards_A4.pdf");
  CHECK((*cards)[1].name == "marsh-lights_panel-1_seam-cards_A4.pdf");
  // source: 18 side rows and 8 joining rows, 3 rows; two to an A4.
  CHECK(pages_in((*cards)[0].bytes) == 13);
  CHECK(pages_in((*cards)[1].bytes) == 2);
  options.bar_along_um = 100'000;
  CHECK((*printed(job, options))[0].bytes == (*cards)[0].bytes);
  CHECK(printed(job, order(Guide::seam_card, "139x210")).problem().code == paper_too_small);
  CHECK(printed(job, order(Guide::seam_card, "140x210")).is_ok());
  job::Job bare = tests::panel_job(690, 1420, "left");
  bare.panels[0].rows_on = std::vector<std::string>{};
  CHECK(printed(bare, order(Guide::seam_card, "A4"))->empty());
}

TEST_CASE("trial card and machine card are one file each for the whole job, whatever the bars") {
  struct Case {
    Guide guide;
    const char* paper;
    const char* name;
    std::int64_t pages;
  };
  // source: side, joining and panel rows are three cards; an A3 on its side holds two.
  const std::vector<Case> cases = {
      {Guide::trial_card, "A4", "marsh-lights_trial-card_A4.pdf", 3},
      {Guide::trial_card, "A3", "marsh-lights_trial-card_A3.pdf", 2},
      {Guide::trial_card, "Letter", "marsh-lights_trial-card_Letter.pdf", 3},
      {Guide::machine_card, "A4", "marsh-lights_machine-card_A4.pdf", 1},
      {Guide::machine_card, "Tabloid", "marsh-lights_machine-card_Tabloid.pdf", 1}};
  const job::Job job = demo_job("marsh-lights");
  const solve::Results results = solve::solve(job);
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.name);
    PrintOptions options = order(one.guide, one.paper);
    const auto cards = printed(job, options);
    REQUIRE(cards->size() == 1);
    CHECK((*cards)[0].name == one.name);
    CHECK(pages_in((*cards)[0].bytes) == one.pages);
    CHECK(card_pages(results, one.guide, -1, one.paper)->pages == one.pages);
    options.bar_along_um = 100'000;
    options.piece = 1;
    CHECK((*printed(job, options))[0].bytes == (*cards)[0].bytes);
    ++ran;
  }
  CHECK(ran == 5);
  job::Job bare = tests::panel_job(690, 1420, "left");
  bare.panels[0].rows_on = std::vector<std::string>{};
  for (const Guide guide : {Guide::trial_card, Guide::machine_card}) {
    CHECK(printed(job, order(guide, "209x297")).problem().code == paper_too_small);
    CHECK(printed(job, order(guide, "210x279")).is_ok());
    CHECK(printed(bare, order(guide, "A4"))->empty());
  }
  CHECK(card_pages(results, Guide::trial_card, -1, "B4").problem().code == paper_unknown);
  CHECK(card_pages(results, Guide::machine_card, -1, "148x210").problem().code == paper_too_small);
}

TEST_CASE("seam cards and the pages they take are counted without drawing them") {
  const job::Job job = demo_job("harbour-ledger");
  const solve::Results results = solve::solve(job);
  std::int64_t cards = 0;
  for (const char* paper : {"A4", "Tabloid", "148x210"}) {
    const auto files = printed(job, order(Guide::seam_card, paper));
    for (std::size_t i = 0; i < results.pieces.size(); ++i) {
      const auto pages = card_pages(results, Guide::seam_card, static_cast<int>(i), paper);
      CHECK(pages->pages == pages_in((*files)[i].bytes));
      cards += pages->cards;
    }
  }
  const solve::Totals& totals = results.totals;
  CHECK(cards == 3 * (totals.side_rows + totals.lap_rows + totals.panel_rows));
  CHECK(card_pages(results, Guide::seam_card, 0, "B4").problem().code == paper_unknown);
  CHECK(card_pages(results, Guide::seam_card, 0, "100x140").problem().code == paper_too_small);
}

TEST_CASE("the sheets a full-face guide takes are told without drawing it, on any printer") {
  const job::Job job = demo_job("harbour-ledger");
  const solve::Results results = solve::solve(job);
  int pieces = 0;
  for (const sheets::Bars& bars : {sheets::Bars{}, sheets::Bars{179'300, 203'000}}) {
    PrintOptions options = order(Guide::full_face, "A4");
    options.bar_across_um = bars.across_um;
    options.bar_along_um = bars.along_um;
    const sheets::Paper paper = *sheets::read_paper("A4");
    const auto files = printed(job, options);
    for (std::size_t i = 0; i < results.pieces.size(); ++i) {
      const FullFacePages pages = full_face_grid(job, results, static_cast<int>(i), paper,
                                                 *sheets::print_check(paper, bars), 2'000);
      CHECK(pages.sheets() == pages_in((*files)[i].bytes));
      CHECK(pages.sheets() == pages.all() - pages.out());
      ++pieces;
    }
  }
  CHECK(pieces == 22);
}

TEST_CASE("the sum of a guide's sheets is the sheets: a grid less what is left out") {
  const job::Job job = demo_job("marsh-lights");
  const solve::Results results = solve::solve(job);
  const sheets::Paper paper = *sheets::read_paper("A4");
  const auto pages = full_face_grid(job, results, 1, "A4");
  const solve::Sum sum = full_face_sum(*pages, paper, results.pieces[1]);
  CHECK(sum.figure == "16");
  // source: by hand, 690 and 1420 on sheets that show 190 x 277 and go on 180 x 267.
  CHECK(sum.numbers == std::vector<std::string>{"690 − 190 = 2 × 180 + 140, so 3 more across",
                                                "1420 − 277 = 4 × 267 + 75, so 5 more along",
                                                "(1 + 3) × (1 + 5) − 8 = 16"});
  CHECK(full_face_sum(*full_face_grid(job, results, 0, "800x1500"), *sheets::read_paper("800x1500"),
                      results.pieces[0])
            .numbers.back() == "1 × 1 = 1");
}

TEST_CASE("a run prints a page at a time and gives each file as soon as it is whole") {
  const job::Job job = demo_job("marsh-lights");
  const solve::Results results = solve::solve(job);
  PrintRun run(job, results, built_in_faces());
  CHECK(*run.add(order(Guide::test_page, "A4")) == 1);
  PrintOptions panel = order(Guide::full_face, "A4");
  panel.piece = 1;
  CHECK(*run.add(panel) == 1);
  CHECK(run.add(order(Guide::full_face, "A5")).problem().code == paper_unknown);
  CHECK(run.pages() == 17);
  CHECK(run.printed() == 0);
  CHECK(run.step());
  CHECK(run.take_files().size() == 1);
  CHECK(run.take_files().empty());
  std::int64_t steps = 1;
  while (run.step()) ++steps;
  CHECK(steps == 17);
  CHECK(run.printed() == 17);
  const auto files = run.take_files();
  CHECK(files.size() == 1);
  CHECK(files[0].bytes == (*printed(job, panel))[0].bytes);
}

TEST_CASE("the pages a guide takes are told without drawing it") {
  const solve::Results results = solve::solve(demo_job("marsh-lights"));
  CHECK(*full_face_pages(results.pieces[0], "A4") == 24);
  CHECK(*full_face_pages(results.pieces[1], "A4") == 24);
  CHECK(*full_face_pages(results.pieces[0], "800x1500") == 1);
  CHECK(full_face_pages(results.pieces[0], "B4").problem().code == paper_unknown);
}
