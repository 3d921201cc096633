#include "engine/base/insist.h"

#include "tests/support/claims.h"

#include <doctest/doctest.h>

#include <string>

using pouncemark::InsistHandler;
using pouncemark::set_insist_handler;
using pouncemark::tests::ClaimsCounted;

TEST_CASE("a claim that holds is passed over, one that does not is reported once") {
  const ClaimsCounted claims;
  INSIST(1 + 1 == 2);
  CHECK(claims.broken() == 0);
  INSIST(1 + 1 == 3);
  CHECK(claims.broken() == 1);
}

TEST_CASE("a claim is looked at once, so that one with an effect has it once") {
  const ClaimsCounted claims;
  int looks = 0;
  INSIST(++looks == 1);
  CHECK(looks == 1);
  CHECK(claims.broken() == 0);
}

namespace {

std::string& reported() {
  static std::string words;
  return words;
}

void note(const char* claim, const char* file, int line) {
  reported() = std::string(claim) + " | " + file + " | " + (line > 0 ? "line" : "no line");
}

}  // namespace

TEST_CASE("a broken claim is reported in its own words, with a file named from the root") {
  const InsistHandler before = set_insist_handler(note);
  INSIST(2 < 1);
  set_insist_handler(before);
  CHECK(reported() == "2 < 1 | tests/base/insist_test.cpp | line");
}
