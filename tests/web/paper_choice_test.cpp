#include "web/model/paper_choice.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "engine/base/problem.h"

using namespace pouncemark;
using web::PaperChoice;
using web::PaperSide;

TEST_CASE("every paper with a name brings its own bars for page 0") {
  struct Case {
    const char* name;
    Um wide;
    Um length;
    Um across;
    Um along;
  };
  // source: ISO 216 and ANSI Y14.1 sizes; bars 180 and 200 on A4 and Letter, 200 both ways on
  // larger.
  const std::vector<Case> cases = {{"A4", 210'000, 297'000, 180'000, 200'000},
                                   {"Letter", 215'900, 279'400, 180'000, 200'000},
                                   {"A3", 297'000, 420'000, 200'000, 200'000},
                                   {"Tabloid", 279'400, 431'800, 200'000, 200'000}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.name);
    PaperChoice choice;
    web::take_named_paper(choice, one.name);
    CHECK(choice.paper.width_um == one.wide);
    CHECK(choice.paper.length_um == one.length);
    CHECK(web::print_check_of(choice).nominal.across_um == one.across);
    CHECK(web::print_check_of(choice).nominal.along_um == one.along);
    CHECK(web::paper_words(choice.paper) == one.name);
    ++ran;
  }
  CHECK(ran == 4);
}

TEST_CASE("the page begins with A4, and a name it does not know changes nothing") {
  PaperChoice choice;
  CHECK(choice.paper.name == "A4");
  CHECK(web::take_named_paper(choice, "A4") == "Paper: A4");
  CHECK(web::take_named_paper(choice, "A5").empty());
  CHECK(choice.paper.name == "A4");
}

TEST_CASE("another paper forgets the typed bars and says so") {
  PaperChoice choice;
  CHECK(web::take_named_paper(choice, "A3") ==
        "Paper: A3. Print page 0 on it and measure both bars");
  choice.measured = {199'200, 200'000};
  CHECK(web::take_named_paper(choice, "Letter") ==
        "Paper: Letter. Prove the printer again: the bars typed for A3 are forgotten");
  CHECK(choice.measured.across_um == 0);
  CHECK(choice.measured.along_um == 0);
}

TEST_CASE("the same size keeps the typed bars") {
  PaperChoice choice;
  choice.measured = {179'300, 200'000};
  CHECK(web::take_another_size(choice) == "Paper: 210 × 297");
  CHECK(choice.is_another_size);
  CHECK(choice.paper.name == "210x297");
  CHECK(choice.measured.across_um == 179'300);
}

TEST_CASE("a size of its own comes back when it is turned to again") {
  PaperChoice choice;
  web::take_another_size(choice);
  web::take_paper(choice, *web::with_side(choice.paper, PaperSide::wide, 600'000));
  web::take_paper(choice, *web::with_side(choice.paper, PaperSide::long_way, 900'000));
  CHECK(choice.paper.name == "600x900");
  web::take_named_paper(choice, "A4");
  CHECK_FALSE(choice.is_another_size);
  web::take_another_size(choice);
  CHECK(choice.paper.name == "600x900");
  CHECK(web::paper_words(choice.paper) == "600 × 900");
}

TEST_CASE("a side that no guide can be carried on is refused in the engine's words") {
  struct Case {
    PaperSide side;
    Um um;
    const char* sentence;  ///< empty: taken
  };
  const std::vector<Case> cases = {
      {PaperSide::wide, 100'000, ""},
      {PaperSide::wide, 99'999,
       "This paper cannot carry the guide; found 99.999x297; needed at least 100x140; take larger "
       "paper."},
      {PaperSide::long_way, 140'000, ""},
      {PaperSide::long_way, 139'999,
       "This paper cannot carry the guide; found 210x139.999; needed at least 100x140; take larger "
       "paper."},
      {PaperSide::long_way, 5'000'000, ""},
      {PaperSide::long_way, 5'000'001,
       "This is no paper we know; found \"210x5000.001\"; say A4, A3, Letter, Tabloid or a size "
       "like 900x1200."}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.um);
    const auto paper = web::with_side(PaperChoice{}.paper, one.side, one.um);
    CHECK((paper ? "" : problem_sentence(paper.problem())) == one.sentence);
    if (paper) CHECK(web::side_of(*paper, one.side) == one.um);
    ++ran;
  }
  CHECK(ran == 6);
}

TEST_CASE("a side of a sheet is typed as the trade says it, inches without doubt") {
  struct Case {
    const char* text;
    Um um;  ///< 0: refused
  };
  // source: an inch is 25.4 exactly.
  const std::vector<Case> cases = {
      {"900", 900'000},      {"60cm", 600'000},    {"1.2 m", 1'200'000},   {"23.4in", 594'360},
      {" 8,5 in ", 215'900}, {"8 1/2in", 215'900}, {"23.4 inch", 594'360}, {"-8in", 0},
      {"23.4inn", 0},        {"sixty", 0}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.text);
    const auto read = web::read_side(one.text);
    CHECK((read ? *read : 0) == one.um);
    ++ran;
  }
  CHECK(ran == 10);
}

TEST_CASE("sheets are counted in the words of their paper") {
  PaperChoice choice;
  CHECK(web::sheets_of(1, choice.paper) == "sheet of A4");
  web::take_named_paper(choice, "Letter");
  CHECK(web::sheets_of(24, choice.paper) == "sheets of Letter");
  CHECK(web::sheets_of(2, *web::with_side(choice.paper, PaperSide::long_way, 594'360)) ==
        "sheets of 215.9 × 594.4");
}
