#include "engine/writers/deflate.h"

#include "tests/support/claims.h"
#include "tests/writers/pdf_reading.h"

#include <doctest/doctest.h>

#include <cstdint>
#include <string>

using pouncemark::tests::ClaimsCounted;
using pouncemark::tests::inflated;
using pouncemark::writers::deflated;

namespace {

// Bytes without pattern, so that packing them makes them no shorter.
std::string rough_bytes(int count) {
  std::string out;
  std::uint32_t state = 1;
  for (int i = 0; i < count; ++i) {
    state = state * 1664525U + 1013904223U;
    out.push_back(static_cast<char>(state >> 24));
  }
  return out;
}

}  // namespace

TEST_CASE("what is packed unpacks to the same bytes at every level and length") {
  int looked_at = 0;
  for (const int level : {0, 1, 6, 9}) {
    for (const int count : {0, 1, 16384, 100000}) {
      const std::string bytes = rough_bytes(count);
      CHECK(inflated(deflated(bytes, level)) == bytes);
      ++looked_at;
    }
  }
  CHECK(looked_at == 16);
}

TEST_CASE("a page of like marks packs to less than a tenth") {
  const std::string page = [] {
    std::string out;
    for (int i = 0; i < 1000; ++i) out += "12.5 20 m\n14.5 20 l\nS\n";
    return out;
  }();
  CHECK(deflated(page, 6).size() * 10 < page.size());
  CHECK(deflated(page, 6) == deflated(page, 6));
}

TEST_CASE("a level that does not exist is our own mistake") {
  const ClaimsCounted claims;
  CHECK(inflated(deflated("abc", 10)) == "abc");
  CHECK(claims.broken() == 1);
}
