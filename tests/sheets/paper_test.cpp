#include "engine/sheets/paper.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using namespace pouncemark::sheets;
using enum pouncemark::ProblemCode;

TEST_CASE("paper is known by its name or read by its size in millimetres") {
  struct Known {
    const char* words;
    Um width_um;
    Um length_um;
  };
  // source: ISO 216; ANSI Y14.1 in inches of 25.4.
  const Known table[] = {{"A4", 210'000, 297'000},           {"A3", 297'000, 420'000},
                         {"Letter", 215'900, 279'400},       {"Tabloid", 279'400, 431'800},
                         {"900x1200", 900'000, 1'200'000},   {"100x140", 100'000, 140'000},
                         {"5000x5000", 5'000'000, 5'000'000}};
  int count = 0;
  for (const Known& known : table) {
    CAPTURE(std::string(known.words));
    const Result<Paper> paper = read_paper(known.words);
    CHECK(paper.is_ok());
    if (!paper) continue;
    CHECK((paper->width_um == known.width_um && paper->length_um == known.length_um));
    CHECK(paper->name == known.words);
    ++count;
  }
  CHECK(count == 7);
}

TEST_CASE("paper that is not known or cannot carry a guide is refused") {
  struct Bad {
    const char* words;
    ProblemCode code;
  };
  const Bad table[] = {
      {"", paper_unknown},           {"a4", paper_unknown},         {"A5", paper_unknown},
      {"A4 ", paper_unknown},        {"900", paper_unknown},        {"900x", paper_unknown},
      {"x900", paper_unknown},       {"900x1200x3", paper_unknown}, {"900mmx1200mm", paper_unknown},
      {"5001x900", paper_unknown},   {"900x5001", paper_unknown},   {"1e300x900", paper_unknown},
      {"99x200", paper_too_small},   {"200x139", paper_too_small},  {"0x0", paper_too_small},
      {"-900x1200", paper_too_small}};
  int count = 0;
  for (const Bad& bad : table) {
    CAPTURE(std::string(bad.words));
    const Result<Paper> paper = read_paper(bad.words);
    CHECK((!paper && paper.problem().code == bad.code));
    ++count;
  }
  CHECK(count == 16);
}

TEST_CASE("page 0 has the longest bars its paper can carry, 200 at most") {
  struct Carried {
    const char* words;
    Um across_um;
    Um along_um;
  };
  const Carried table[] = {{"A4", 180'000, 200'000},       {"Letter", 180'000, 200'000},
                           {"A3", 200'000, 200'000},       {"Tabloid", 200'000, 200'000},
                           {"900x1200", 200'000, 200'000}, {"100x140", 80'000, 80'000},
                           {"219x250", 180'000, 200'000},  {"220x249", 200'000, 180'000}};
  int count = 0;
  for (const Carried& carried : table) {
    CAPTURE(std::string(carried.words));
    const Bars bars = bars_of(*read_paper(carried.words));
    CHECK((bars.across_um == carried.across_um && bars.along_um == carried.along_um));
    ++count;
  }
  CHECK(count == 8);
}

TEST_CASE("a bar of 200 that measures 196.0 or 204.0 passes, 195.9 or 204.1 is refused") {
  const Paper paper = *read_paper("A3");
  for (const Um bar : {Um{196'000}, Um{200'000}, Um{204'000}}) {
    CHECK(print_check(paper, {200'000, bar}).is_ok());
    CHECK(print_check(paper, {bar, 200'000}).is_ok());
  }
  for (const Um bar : {Um{195'900}, Um{195'999}, Um{204'001}, Um{204'100}, Um{194'000}, Um{1}}) {
    CHECK(print_check(paper, {200'000, bar}).problem().code == paper_bars_out);
    CHECK(print_check(paper, {bar, 200'000}).problem().code == paper_bars_out);
  }
}

TEST_CASE("the refusal names the bar, what it measured and what it may measure") {
  const Problem problem = print_check(*read_paper("A4"), {180'000, 194'000}).problem();
  CHECK(problem.where == "the bar along");
  CHECK(problem.found == "194 of 200");
  CHECK(problem.needed == "196 to 204");
  CHECK(print_check(*read_paper("A4"), {176'399, 200'000}).problem().needed == "176.4 to 183.6");
  CHECK(print_check(*read_paper("A4"), {176'400, 200'000}).is_ok());
  CHECK(print_check(*read_paper("A4"), {183'600, 200'000}).is_ok());
  CHECK(!print_check(*read_paper("A4"), {183'601, 200'000}).is_ok());
}

TEST_CASE("a bar that was not measured counts as true, each way by itself") {
  const auto check = print_check(*read_paper("A4"), {0, 199'200});
  CHECK(check->measured.across_um == 180'000);
  CHECK(check->measured.along_um == 199'200);
  CHECK(check->nominal.along_um == 200'000);
}
