#include "web/model/printing.h"

#include "engine/batch/built_in_faces.h"
#include "tests/support/jobs.h"
#include "tests/support/pdf_pages.h"

#include <doctest/doctest.h>

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

using namespace pouncemark;
using tests::pages_in;
using web::bar_is_refused;
using web::bar_words;
using web::GuideKind;
using web::PaperChoice;

namespace {

PaperChoice on_paper(const std::string& name) {
  PaperChoice choice;
  choice.paper = *sheets::read_paper(name);
  return choice;
}

web::Printed printed(const PaperChoice& choice, web::PrintWish wish) {
  const writers::Faces faces = batch::built_in_faces();
  return web::printed(web::solved(tests::demo_job("marsh-lights")), choice, wish,
                      {std::string(faces.main_regular), std::string(faces.main_bold),
                       std::string(faces.wide_regular), std::string(faces.wide_bold)});
}

}  // namespace

TEST_CASE("a bar says by how much the printer is short or long, to a tenth of a percent") {
  struct Case {
    Um nominal;
    Um measured;
    const char* words;
  };
  // source: (180 - 179.3) / 180 = 0.389 %, (200 - 199.2) / 200 = 0.4 %, 194 of 200 is 3 % short.
  const std::vector<Case> cases = {
      {180'000, 179'300, "short 0.4 %"},  {200'000, 199'200, "short 0.4 %"},
      {200'000, 200'600, "long 0.3 %"},   {200'000, 200'000, "true"},
      {200'000, 0, "not measured"},       {200'000, 196'000, "short 2.0 %"},
      {200'000, 195'999, "over 2 % out"}, {200'000, 194'000, "over 2 % out"}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.measured);
    CHECK(bar_words(one.nominal, one.measured) == one.words);
    ++ran;
  }
  CHECK(ran == 8);
}

TEST_CASE("196.0 and 204.0 of 200 pass, anything farther out is refused") {
  CHECK_FALSE(bar_is_refused(200'000, 196'000));
  CHECK_FALSE(bar_is_refused(200'000, 204'000));
  CHECK(bar_is_refused(200'000, 195'999));
  CHECK(bar_is_refused(200'000, 204'001));
}

TEST_CASE(
    "the printer is proved once both bars of its paper were measured and neither is refused") {
  struct Case {
    const char* paper;
    Um across;
    Um along;
    bool proved;
    bool refused;
  };
  // Page 0 is 180 across on A4 and 200 across on A3: what proves one refuses the other.
  const std::vector<Case> cases = {
      {"A4", 179'300, 200'000, true, false},     {"A4", 179'300, 0, false, false},
      {"A4", 0, 200'000, false, false},          {"A4", 179'300, 190'000, false, true},
      {"A4", 170'000, 0, false, true},           {"A3", 199'300, 200'000, true, false},
      {"A3", 179'300, 200'000, false, true},     {"A4", 199'300, 200'000, false, true},
      {"600x900", 200'000, 201'000, true, false}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(ran);
    PaperChoice choice = on_paper(one.paper);
    choice.measured = {one.across, one.along};
    CHECK(web::printer_is_proved(choice) == one.proved);
    CHECK(web::printer_is_refused(choice) == one.refused);
    ++ran;
  }
  CHECK(ran == 9);
}

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
    const web::SheetCounts counts = web::sheet_counts(solved, on_paper(one.paper).paper);
    CHECK(counts.full_face == std::vector<std::int64_t>{one.section, one.panel});
    CHECK(web::together(counts.full_face) == one.section + one.panel);
    ++ran;
  }
  CHECK(ran == 6);
}

TEST_CASE("what is counted is what is printed, and page 0 comes once to the sum") {
  struct Case {
    const char* paper;
    GuideKind guide;
    std::vector<std::int64_t> web::SheetCounts::*counted;
  };
  const std::vector<Case> cases = {{"A4", GuideKind::full_face, &web::SheetCounts::full_face},
                                   {"A4", GuideKind::tick_list, &web::SheetCounts::tick_list},
                                   {"Letter", GuideKind::tick_list, &web::SheetCounts::tick_list},
                                   {"600x900", GuideKind::full_face, &web::SheetCounts::full_face},
                                   {"100x140", GuideKind::tick_list, &web::SheetCounts::tick_list}};
  const web::Solved solved = web::solved(tests::demo_job("marsh-lights"));
  int ran = 0;
  for (const Case& one : cases) {
    const web::SheetCounts counts = web::sheet_counts(solved, on_paper(one.paper).paper);
    for (int piece = 0; piece < 2; ++piece) {
      CAPTURE(one.paper);
      const web::Printed made = printed(on_paper(one.paper), {one.guide, piece});
      REQUIRE(made.files.size() == 1);
      CHECK((counts.*one.counted)[static_cast<std::size_t>(piece)] ==
            pages_in(made.files[0].bytes));
      ++ran;
    }
    CHECK(web::all_sheets(counts) ==
          1 + web::together(counts.full_face) + web::together(counts.tick_list));
  }
  CHECK(ran == 10);
}

TEST_CASE("smaller paper never takes fewer sheets for the tick lists") {
  const web::Solved solved = web::solved(tests::demo_job("harbour-ledger"));
  std::int64_t before = 0;
  int ran = 0;
  for (const char* paper : {"600x900", "A3", "A4", "100x140"}) {
    CAPTURE(paper);
    const auto counts = web::sheet_counts(solved, on_paper(paper).paper);
    CHECK(web::together(counts.tick_list) >= before);
    before = web::together(counts.tick_list);
    ++ran;
  }
  CHECK(ran == 4);
}

TEST_CASE("guides and page 0 are printed on the paper chosen and carry its name") {
  struct Case {
    const char* paper;
    web::PrintWish wish;
    const char* name;
    const char* page_box;  ///< points, 1/72 in
  };
  const std::vector<Case> cases = {
      {"A4", {}, "marsh-lights_test-page_A4.pdf", "/MediaBox[0 0 595.2756 841.8898]"},
      {"Letter", {}, "marsh-lights_test-page_Letter.pdf", "/MediaBox[0 0 612 792]"},
      {"Tabloid",
       {GuideKind::full_face, 0},
       "marsh-lights_section-1_full-face_Tabloid_front.pdf",
       "/MediaBox[0 0 792 1224]"},
      {"600x900",
       {GuideKind::full_face, 1},
       "marsh-lights_panel-1_full-face_600x900_front.pdf",
       "/MediaBox[0 0 1700.7874 2551.1811]"},
      {"Letter",
       {GuideKind::tick_list, 1},
       "marsh-lights_panel-1_tick-list_Letter_front.pdf",
       "/MediaBox[0 0 612 792]"}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.name);
    const web::Printed made = printed(on_paper(one.paper), one.wish);
    REQUIRE(made.files.size() == 1);
    CHECK(made.files[0].name == one.name);
    CHECK(made.files[0].bytes.find(one.page_box) != std::string::npos);
    ++ran;
  }
  CHECK(ran == 5);
}

TEST_CASE(
    "bars that are too far out refuse a guide with a sentence, page 0 is printed all the same") {
  PaperChoice choice = on_paper("A4");
  choice.measured = {180'000, 194'000};
  const web::Printed guide = printed(choice, {GuideKind::full_face, 0});
  CHECK(guide.files.empty());
  CHECK(guide.sentence ==
        "The bar along: the printed bar is more than 2 % out; found 194 of 200; needed 196 to 204; "
        "print page 0 at 100 %, not fitted.");
  CHECK(printed(choice, {}).files.size() == 1);
  choice.measured = {180'000, 196'000};
  CHECK(printed(choice, {GuideKind::full_face, 0}).files.size() == 1);
}

TEST_CASE("a bar more than a quarter of a per cent out is said with what it makes on a long row") {
  struct Case {
    Um across;
    Um along;
    const char* begins;
  };
  // source: 2400 × 0.8 ÷ 200 = 9.6 and 2400 × 0.451 ÷ 180 = 6.0, by hand
  const Case cases[] = {
      {180'000, 199'200, "Your printer is short 0.4 %: 9.6 on a row of 2400."},
      {180'451, 200'000, "Your printer is long 0.3 %: 6.0 on a row of 2400."},
      {179'000, 200'600, "Your printer is short 0.6 %: 13.3 on a row of 2400."},
      {180'450, 199'500, ""},
      {180'000, 200'000, ""},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(std::string(one.begins));
    PaperChoice choice = on_paper("A4");
    choice.measured = {one.across, one.along};
    const std::string words = web::bar_caution(choice);
    CHECK(words.starts_with(one.begins));
    CHECK(words.empty() == (one.begins[0] == '\0'));
    ++seen;
  }
  CHECK(seen == 5);
}
