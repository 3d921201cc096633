#include "web/model/guides.h"

#include "engine/batch/built_in_faces.h"
#include "engine/output/print_order.h"
#include "engine/output/print_run.h"
#include "tests/support/jobs.h"
#include "tests/support/on_paper.h"
#include "tests/support/pdf_pages.h"
#include "tests/support/sum_reading.h"
#include "web/model/page_map.h"

#include <doctest/doctest.h>

#include <cstdint>
#include <string>
#include <vector>

using namespace pouncemark;
using tests::on_paper;
using tests::pages_in;
using web::GuideKind;
using web::GuideLine;
using web::GuideTicks;
using web::PaperChoice;

namespace {

/// The files of an order as the worker prints them.
std::vector<output::NamedBytes> printed(const web::Solved& solved, const std::string& order) {
  output::PrintRun run(solved.job, solved.results, batch::built_in_faces());
  const auto orders = output::read_print_order(order);
  REQUIRE(orders.has_value());
  for (const output::PrintOptions& one : *orders) REQUIRE(run.add(one).is_ok());
  while (run.step()) {
  }
  return run.take_files();
}

const GuideLine& line_called(const std::vector<GuideLine>& lines, const std::string& key) {
  for (const GuideLine& line : lines) {
    if (line.key == key) return line;
  }
  FAIL("no guide is called " << key);
  return lines.front();
}

}  // namespace

TEST_CASE("the sheets of the small job follow the paper") {
  struct Case {
    const char* paper;
    std::int64_t section;
    std::int64_t panel;
  };
  // source: section 696 x 1400, panel 690 x 1420; each way ceil((piece - 10) / (paper - 30)), A4
  // 4 x 6, Letter 4 x 6, A3 3 x 4, Tabloid 3 x 4; 600 x 900 lets pages share more: still 2 x 2. Of
  // the panel those in the middle are left out: 2 x 4 and 1 x 2.
  const std::vector<Case> cases = {{"A4", 24, 16},      {"Letter", 24, 16}, {"A3", 12, 10},
                                   {"Tabloid", 12, 10}, {"600x900", 4, 4},  {"900x1500", 1, 1}};
  const web::Solved solved = web::solved(tests::demo_job("marsh-lights"));
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.paper);
    const auto lines = web::guide_lines(solved, on_paper(one.paper));
    CHECK(lines.size() == 11);
    CHECK(line_called(lines, "full_face.1").sheets == one.section);
    CHECK(line_called(lines, "full_face.P1").sheets == one.panel);
    ++ran;
  }
  CHECK(ran == 6);
}

TEST_CASE("what is counted is what is printed, on any paper and printer") {
  const web::Solved solved = web::solved(tests::demo_job("marsh-lights"));
  int files = 0;
  int refused = 0;
  for (const char* paper : {"A4", "Letter", "600x900", "100x140"}) {
    for (const Um along : {Um{0}, Um{99}}) {
      PaperChoice choice = on_paper(paper);
      const sheets::Bars nominal = web::print_check_of(choice).nominal;
      choice.measured = {0, nominal.along_um * along / 100};
      const auto lines = web::guide_lines(solved, choice);
      for (const GuideLine& line : lines) {
        CAPTURE(line.key);
        if (line.sheets == 0) {
          CHECK(web::counted_as(line.kind) == GuideKind::seam_card);
          CHECK(std::string(paper) == "100x140");
          ++refused;
          continue;
        }
        const auto made = printed(solved, web::order_words({line}, choice));
        REQUIRE(made.size() == 1);
        CHECK(pages_in(made[0].bytes) == line.sheets);
        ++files;
      }
    }
  }
  CHECK(files == 4 * 2 * 5 + 3 * 2 * 6);
  CHECK(refused == 2 * 6);
}

TEST_CASE("page 0 is ticked until the printer is proved, full-face guides where they are few") {
  const web::Solved small = web::solved(tests::demo_job("marsh-lights"));
  PaperChoice choice;
  auto lines = web::guide_lines(small, choice);
  GuideTicks ticks;
  CHECK(web::ticked_sheets(lines, ticks) == 1 + 24 + 16);
  CHECK(web::ticked_left_out(lines, ticks) == 8);
  choice.measured = {180'000, 200'000};
  lines = web::guide_lines(small, choice);
  CHECK(web::ticked_sheets(lines, ticks) == 24 + 16);
  web::tick(ticks, line_called(lines, "full_face.P1"), false);
  web::tick(ticks, line_called(lines, "test_page"), true);
  CHECK(web::ticked_sheets(lines, ticks) == 1 + 24);
  CHECK(web::ticked_left_out(lines, ticks) == 0);
  web::tick(ticks, line_called(lines, "full_face.P1"), true);
  CHECK(web::ticked_sheets(lines, ticks) == 1 + 24 + 16);
  const web::Solved large = web::solved(tests::demo_job("harbour-ledger"));
  CHECK(web::ticked_sheets(web::guide_lines(large, PaperChoice{}), GuideTicks{}) == 1);
}

TEST_CASE("the sums of the sheets are true, kind by kind and guide by guide") {
  int sums = 0;
  for (const char* name : {"marsh-lights", "harbour-ledger"}) {
    const web::Solved solved = web::solved(tests::demo_job(name));
    const PaperChoice choice;
    const auto lines = web::guide_lines(solved, choice);
    GuideTicks ticks;
    for (const GuideLine& line : lines) web::tick(ticks, line, true);
    std::vector<solve::Sum> all = {web::sheets_sum(lines, ticks)};
    for (const GuideKind kind :
         {GuideKind::full_face, GuideKind::tick_list, GuideKind::seam_card}) {
      all.push_back(web::sheets_sum(lines, ticks, kind));
    }
    for (const GuideLine& line : lines) all.push_back(web::guide_sum(solved, choice, line));
    for (const solve::Sum& sum : all) {
      for (const std::string& words : sum.numbers) CHECK(tests::fault_in_line(words) == "");
      CHECK(tests::last_number(sum.numbers.back()) == tests::last_number(sum.figure));
      ++sums;
    }
  }
  CHECK(sums == 4 + 11 + 4 + 42);
  const web::Solved small = web::solved(tests::demo_job("marsh-lights"));
  const auto lines = web::guide_lines(small, PaperChoice{});
  CHECK(web::sheets_sum(lines, {}, GuideKind::full_face).numbers ==
        std::vector<std::string>{"16 + 24 = 40"});
  CHECK(web::sheets_sum(lines, {}).numbers == std::vector<std::string>{"1 + 40 + 0 + 0 = 41"});
}

TEST_CASE("a line of the list says what is left out, and how many rows share a list") {
  const web::Solved small = web::solved(tests::demo_job("marsh-lights"));
  const auto lines = web::guide_lines(small, PaperChoice{});
  CHECK(line_called(lines, "full_face.P1").title == "Full-face, panel P1");
  CHECK(line_called(lines, "full_face.P1").under == "FRONT, 24 less 8 left out");
  CHECK(line_called(lines, "full_face.1").under == "FRONT, 696 × 1400");
  CHECK(line_called(lines, "seam_card.1").title == "Seam cards, section 1");
  CHECK(line_called(lines, "seam_card.1").under == "26 cards on 13 sheets");
  CHECK(line_called(lines, "seam_card.1").sheets == 13);
  CHECK(line_called(lines, "seam_card.P1").under == "3 cards on 2 sheets");
  CHECK(line_called(lines, "panel_card.P1").title == "Panel card, panel P1");
  CHECK(line_called(lines, "panel_card.P1").sheets == 1);
  CHECK(line_called(lines, "trial_card").under == "3 kinds of row to try");
  CHECK(line_called(lines, "trial_card").sheets == 3);
  CHECK(line_called(lines, "machine_card").sheets == 1);
  CHECK(line_called(lines, "hanging_card").under == "2 cards on 1 sheet");
  GuideTicks ticks;
  for (const GuideLine& line : lines) web::tick(ticks, line, true);
  CHECK(web::ticked_sheets(lines, ticks, GuideKind::seam_card) == 13 + 2 + 1 + 3 + 1 + 1);
  // Nine sleeves have two side rows each, with eight laps between; all are alike.
  CHECK(line_called(lines, "tick_list.1").under == "26 rows share 1 list");
}

TEST_CASE("the map has every page of the grid once, numbered, over the whole piece") {
  const web::Solved small = web::solved(tests::demo_job("marsh-lights"));
  const PaperChoice choice;
  const auto lines = web::guide_lines(small, choice);
  const web::PageMap map = web::page_map(small, choice, line_called(lines, "full_face.P1"));
  CHECK(map.pages.size() == 24);
  CHECK(map.width_um == 690'000);
  std::int64_t area = 0;
  std::int64_t printed = 0;
  std::int64_t last = 0;
  for (const web::MapPage& page : map.pages) {
    area += (page.right - page.left) * (page.high - page.low);
    if (page.printed_as == 0) continue;
    CHECK(page.printed_as == last + 1);
    last = page.printed_as;
    ++printed;
  }
  CHECK(area == Um{690'000} * 1'420'000);
  CHECK(printed == 16);
  CHECK(map.pages[5].printed_as == 0);
  CHECK(map.pages[7].printed_as == 6);
  CHECK(web::page_at(map, 689'000, 1'419'000)->number == 24);
  CHECK(web::page_at(map, 0, 0)->number == 1);
  CHECK(web::page_at(map, 690'000, 0) == nullptr);
  CHECK(web::page_map(small, choice, line_called(lines, "tick_list.1")).pages.empty());
}

TEST_CASE("pages step on and back within the file") {
  CHECK(web::stepped_page(3, 1, 16) == 4);
  CHECK(web::stepped_page(16, 1, 16) == 16);
  CHECK(web::stepped_page(1, -1, 16) == 1);
  CHECK(web::stepped_page(1, 1, 0) == 1);
}

TEST_CASE("a piece with nothing to sew has no seam cards to choose, and bars refuse none") {
  job::Job bare = tests::panel_job(690, 1420, "left");
  bare.panels[0].rows_on = std::vector<std::string>{};
  CHECK(web::guide_lines(web::solved(bare), PaperChoice{}).size() == 4);
  PaperChoice refused;
  refused.measured = {100'000, 100'000};
  const web::Solved small = web::solved(tests::demo_job("marsh-lights"));
  const GuideLine line = line_called(web::guide_lines(small, refused), "seam_card.1");
  CHECK(line.sheets == 13);
  CHECK(pages_in(printed(small, web::order_words({line}, refused))[0].bytes) == 13);
}

TEST_CASE("an order goes over in words and comes back, and other words are none") {
  PaperChoice choice = on_paper("600x900");
  choice.measured = {199'000, 201'000};
  const web::Solved small = web::solved(tests::demo_job("marsh-lights"));
  const auto orders =
      output::read_print_order(web::order_words(web::guide_lines(small, choice), choice));
  REQUIRE(orders->size() == 11);
  CHECK((*orders)[0].guide == output::Guide::test_page);
  CHECK((*orders)[0].bar_across_um == 0);
  CHECK((*orders)[4].guide == output::Guide::full_face);
  CHECK((*orders)[4].piece == 1);
  CHECK((*orders)[4].paper == "600x900");
  CHECK((*orders)[4].bar_along_um == 201'000);
  int refused = 0;
  for (const char* words : {"99 A4 0 0 0\n", "x A4 0 0 0\n", "1 A4 0 0\n", "1 A4 0 0 0 \n", "1"}) {
    if (!output::read_print_order(words).has_value()) ++refused;
  }
  CHECK(refused == 5);
}
