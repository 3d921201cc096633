#include "web/model/printing.h"

#include "tests/support/on_paper.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using tests::on_paper;
using web::bar_is_refused;
using web::bar_words;
using web::PaperChoice;

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
