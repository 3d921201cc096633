#include "engine/sheets/drilling_strips.h"

#include "engine/solve/solve.h"
#include "tests/drawing/picture_reading.h"
#include "tests/sheets/card_reading.h"
#include "tests/support/fixed_bay.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::sheets;
using tests::all_of;

namespace {

/// Every straight edge of the small job's panel, or of one of another size.
plan::DrillingStrips strips_of(job::Job job, int gaps) {
  solve::Results results = solve::solve(job);
  solve::BayResult& bay = results.bays.back();
  const solve::Piece& piece = results.pieces[static_cast<std::size_t>(bay.piece)];
  for (const char* edge : {"hinge", "top", "bottom", "fly"}) {
    bay.fixings.push_back(tests::fixings_along(piece, tests::edge_called(piece, edge), gaps,
                                               bay.fixings.empty() ? gaps / 2 : -1));
  }
  return plan::drilling_strips(job, results);
}

DrillingStrips sheets_of(plan::DrillingStrips strips, const char* paper_words, const Bars& bars) {
  const Paper paper = *read_paper(paper_words);
  return {std::move(strips), "Marsh Lights", paper, *print_check(paper, bars), "7aa71e8e320a"};
}

/// How many closed paths of curves with this pen lie whole on the pages: tight holes and slots.
int holes_on(const DrillingStrips& sheets) {
  int holes = 0;
  for (std::int64_t i = 0; i < sheets.pages(); ++i) {
    for (const auto& stroke : all_of<drawing::Stroke>(sheets.page(i))) {
      holes += stroke.pen.width_um == 300 && stroke.steps.size() > 4 ? 1 : 0;
    }
  }
  return holes;
}

}  // namespace

TEST_CASE("strips are cut into lengths at the same distances whatever the printer does") {
  const auto strips = strips_of(tests::demo_job("marsh-lights"), 4);
  for (const Bars& bars : {Bars{}, Bars{179'300, 200'400}}) {
    const DrillingStrips sheets = sheets_of(strips, "A4", bars);
    // source: A4 sees 269, less 10 shared is a pitch of 259: of 1420 six lengths, of 690 three;
    // strips are 47.3 wide, so three lie side by side.
    CHECK(sheets.pages() == (6 + 3 + 3 + 6) / 3);
    CHECK(tests::says(sheets.page(0), "259 from"));
    CHECK(tests::says(sheets.page(1), "1036 from"));
    CHECK(tests::says(sheets.page(1), "of 6"));
  }
}

TEST_CASE("every hole stands on a length, those of a shared end on both") {
  const auto strips = strips_of(tests::demo_job("marsh-lights"), 4);
  CHECK(holes_on(sheets_of(strips, "A4", {})) >= 4 * 5);
  CHECK(holes_on(sheets_of(strips, "900x1500", {})) == 4 * 5);
}

TEST_CASE("what is asked for stands on a strip") {
  const DrillingStrips sheets = sheets_of(strips_of(tests::demo_job("marsh-lights"), 4), "A4", {});
  int found = 0;
  for (const char* words :
       {"FRONT", "TOP", "BOTTOM", "hinge side", "bay B2", "panel P1", "slot 8", "next lies over",
        "160", "across", "200", "along", "1 of 6", "sheet's edge", "Measure both bars"}) {
    CAPTURE(words);
    CHECK(tests::says(sheets.page(0), words));
    ++found;
  }
  CHECK(found == 15);
  CHECK(tests::says(sheets.page(0), "30"));
  CHECK(tests::says(sheets.page(0), "370"));
  bool has_tight = false;
  for (std::int64_t i = 0; i < 2; ++i) {
    has_tight = has_tight || tests::says(sheets.page(i), "TIGHT 5");
  }
  CHECK(has_tight);
  CHECK(tests::says(sheets.page(0), "Bay B1: no fixings."));
}

TEST_CASE("a strip too wide for the paper is told of, the others are printed") {
  auto strips = strips_of(tests::demo_job("marsh-lights"), 4);
  strips.strips[1].deepest_um = 150'000;
  const DrillingStrips sheets = sheets_of(strips, "A4", {});
  CHECK(tests::says(sheets.page(0), "Bay B2, top: too far in from its edge for this paper."));
  CHECK(sheets.pages() == (6 + 3 + 6) / 3);
  strips.strips.clear();
  CHECK(sheets_of(strips, "A4", {}).pages() == 0);
}

TEST_CASE("words on drilling strips stay on the paper, none under 3.8, and none meet") {
  std::int64_t looked_at = 0;
  job::Job long_named = tests::demo_job("marsh-lights");
  long_named.bays.back().code = std::string(60, 'W');
  for (const char* paper_words : {"A4", "A3", "Letter", "Tabloid", "100x140", "900x1200"}) {
    CAPTURE(paper_words);
    CardCut cut;
    cut.page = *read_paper(paper_words);
    for (const job::Job& job : {tests::demo_job("marsh-lights"), long_named}) {
      for (const int gaps : {2, 5, 40}) {
        const DrillingStrips sheets = sheets_of(strips_of(job, gaps), paper_words, {});
        for (std::int64_t i = 0; i < sheets.pages(); ++i) {
          const drawing::Drawing page = sheets.page(i);
          const auto words = all_of<drawing::Text>(page);
          CHECK(tests::words_that_meet(words) == std::vector<std::string>{});
          for (const drawing::Text& text : words) {
            CAPTURE(text.words);
            CHECK(text.size_um >= 3'800);
            if (text.quarter_turns < 2) CHECK(tests::within(tests::reach_of(text), cut));
            ++looked_at;
          }
        }
      }
    }
  }
  CHECK(looked_at > 3'000);
}
