#include "web/model/entry.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using web::read_entry;

namespace {
constexpr web::Limits kAny{0, 100'000'000};
}

TEST_CASE("a box takes millimetres, centimetres, metres and inches, and a comma for a point") {
  CHECK(read_entry("5 cm", kAny).um == 50'000);
  CHECK(read_entry("2.4m", kAny).um == 2'400'000);
  CHECK(read_entry("5,5", kAny).um == 5'500);
  // source: 1 inch = 25.4 mm exactly, so a quarter is 6.35.
  CHECK(read_entry("1/4in", kAny).um == 6'350);
}

TEST_CASE("a refused text is kept as it was typed, with a sentence that begins with a capital") {
  const web::Entry entry = read_entry("5 x", kAny);
  CHECK_FALSE(entry.um.has_value());
  CHECK(entry.text == "5 x");
  REQUIRE_FALSE(entry.sentence.empty());
  CHECK(entry.sentence.front() == 'T');
  CHECK(entry.sentence.back() == '.');
}

TEST_CASE("a figure outside its limits is refused with the figure that would do") {
  CHECK(read_entry("9", {10'000, 20'000}).sentence == "9 is too little: give 10 or more.");
  CHECK(read_entry("10", {10'000, 20'000}).um == 10'000);
  CHECK(read_entry("21", {10'000, 20'000}).sentence == "21 is too much: give 20 or less.");
  CHECK(read_entry("20", {10'000, 20'000}).um == 20'000);
}

TEST_CASE("the arrow keys stop at the limits") {
  CHECK(web::stepped(18'000, 1'000, {0, 20'000}) == 19'000);
  CHECK(web::stepped(18'000, 10'000, {0, 20'000}) == 20'000);
  CHECK(web::stepped(500, -1'000, {0, 20'000}) == 0);
}
