#include "engine/base/number_text.h"

#include "tests/support/claims.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using pouncemark::tests::ClaimsCounted;

TEST_CASE("a length in full has the fewest figures that say it exactly") {
  CHECK(exact_mm_text(26'000) == "26");
  CHECK(exact_mm_text(250) == "0.25");
  CHECK(exact_mm_text(46'552) == "46.552");
  CHECK(exact_mm_text(1) == "0.001");
  CHECK(exact_mm_text(0) == "0");
  CHECK(exact_mm_text(100) == "0.1");
  CHECK(exact_mm_text(1'000'000) == "1000");
  CHECK(exact_mm_text(-12'500) == "-12.5");
  CHECK(exact_mm_text(-1) == "-0.001");
}

TEST_CASE("a rounded length keeps its places, halves away from zero, never minus nothing") {
  struct Rounded {
    std::int64_t um;
    int places;
    const char* text;
  };
  const Rounded table[] = {
      {59'000, 2, "59.00"},   {46'552, 2, "46.55"},    {46'555, 2, "46.56"},  {46'554, 2, "46.55"},
      {46'552, 1, "46.6"},    {46'550, 1, "46.6"},     {46'549, 1, "46.5"},   {499, 0, "0"},
      {500, 0, "1"},          {1'499, 0, "1"},         {46'552, 3, "46.552"}, {0, 2, "0.00"},
      {-500, 0, "-1"},        {-499, 0, "0"},          {-4, 2, "0.00"},       {-5, 2, "-0.01"},
      {-46'555, 2, "-46.56"}, {999'999, 2, "1000.00"}, {5, 3, "0.005"},
  };
  int count = 0;
  for (const Rounded& line : table) {
    CAPTURE(line.um);
    CAPTURE(line.places);
    CHECK(mm_text(line.um, line.places) == line.text);
    ++count;
  }
  CHECK(count == 19);
}

TEST_CASE("a short length drops the noughts after the point, never those before it") {
  CHECK(short_mm_text(30'000, 1) == "30");
  CHECK(short_mm_text(54'600, 1) == "54.6");
  CHECK(short_mm_text(54'649, 2) == "54.65");
  CHECK(short_mm_text(54'600, 3) == "54.6");
  CHECK(short_mm_text(100'000, 0) == "100");
  CHECK(short_mm_text(-4, 2) == "0");
}

TEST_CASE("a long run is said in metres") {
  CHECK(metres_text(37'804'000, 3) == "37.804");
  CHECK(metres_text(37'804'499, 3) == "37.804");
  CHECK(metres_text(37'804'500, 3) == "37.805");
  CHECK(metres_text(629'540'000, 2) == "629.54");
  CHECK(metres_text(499'999, 0) == "0");
  CHECK(metres_text(500'000, 0) == "1");
}

TEST_CASE("a count has its commas, and one thing is not said as many") {
  CHECK(count_text(0) == "0");
  CHECK(count_text(999) == "999");
  CHECK(count_text(1'000) == "1,000");
  CHECK(count_text(2'020'332) == "2,020,332");
  CHECK(count_text(-1'234) == "-1,234");
  CHECK(count_text(-999) == "-999");
  CHECK(counted(1, "point", "points") == "1 point");
  CHECK(counted(0, "point", "points") == "0 points");
  CHECK(counted(6'916, "hole", "holes") == "6,916 holes");
}

TEST_CASE("more than three places are our own mistake") {
  const ClaimsCounted claims;
  CHECK(mm_text(1, 3) == "0.001");
  CHECK(claims.broken() == 0);
  mm_text(1, -1);
  CHECK(claims.broken() == 1);
}

TEST_CASE("a length beside another shows its difference even where one decimal would hide it") {
  CHECK(mm_text_beside(9'000, 15'000) == "9.0");
  CHECK(mm_text_beside(14'999, 15'000) == "14.999");
  CHECK(mm_text_beside(14'949, 15'000) == "14.9");
  CHECK(mm_text_beside(15'000, 15'000) == "15.0");
  CHECK(mm_text_beside(1, 0) == "0.001");
}
