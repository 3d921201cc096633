#include "engine/writers/pdf_numbers.h"

#include "tests/support/claims.h"

#include <doctest/doctest.h>

#include <cstddef>
#include <cstdint>
#include <random>
#include <string>

using namespace pouncemark::writers;
using pouncemark::tests::ClaimsCounted;

namespace {

std::string mm(std::int64_t um) {
  std::string out;
  append_mm(out, um);
  return out;
}

std::string points(std::int64_t um) {
  std::string out;
  append_points(out, um);
  return out;
}

std::string scale(std::int64_t nominal, std::int64_t measured) {
  std::string out;
  append_scale(out, nominal, measured);
  return out;
}

// Micrometres read from millimetres in plain figures; -1 for anything that is not such a number.
std::int64_t um_of(const std::string& text) {
  const bool is_negative = !text.empty() && text.front() == '-';
  std::int64_t um = 0;
  int decimals = -1;
  for (std::size_t i = is_negative ? 1 : 0; i < text.size(); ++i) {
    if (text[i] == '.' && decimals < 0) {
      decimals = 0;
    } else if (text[i] >= '0' && text[i] <= '9') {
      um = um * 10 + (text[i] - '0');
      if (decimals >= 0) ++decimals;
    } else {
      return -1;
    }
  }
  for (int i = decimals < 0 ? 0 : decimals; i < 3; ++i) um *= 10;
  return is_negative ? -um : um;
}

}  // namespace

TEST_CASE("millimetres are written exactly, without needless noughts") {
  struct Case {
    std::int64_t um;
    const char* text;
  };
  const Case cases[] = {{0, "0"},
                        {1, "0.001"},
                        {-1, "-0.001"},
                        {10, "0.01"},
                        {999, "0.999"},
                        {1000, "1"},
                        {12500, "12.5"},
                        {-12500, "-12.5"},
                        {100000, "100"},
                        {297000, "297"},
                        {46553, "46.553"},
                        {4294967295, "4294967.295"},
                        {4294967296, "4294967.296"},
                        {10'000'000'000, "10000000"},
                        {-10'000'000'000, "-10000000"}};
  int looked_at = 0;
  for (const Case& one : cases) {
    CHECK(mm(one.um) == one.text);
    ++looked_at;
  }
  CHECK(looked_at == 15);
}

TEST_CASE("what stands ten kilometres away is written, one micrometre more is refused") {
  const ClaimsCounted claims;
  CHECK(mm(kFurthestUm) == "10000000");
  CHECK(claims.broken() == 0);
  CHECK(mm(kFurthestUm + 1) == "10000000");
  CHECK(claims.broken() == 1);
  CHECK(mm(-kFurthestUm - 1) == "-10000000");
  CHECK(claims.broken() == 2);
}

TEST_CASE("a hundred thousand lengths read back to the micrometre") {
  constexpr unsigned kSeed = 20240611;
  INFO("seed " << kSeed);
  std::mt19937 chance(kSeed);
  int wrong = 0;
  int looked_at = 0;
  for (int i = 0; i < 100000; ++i) {
    const std::int64_t high = chance() % 65536U;
    const std::int64_t low = chance();
    const std::int64_t um = (high * 4294967296 + low) % (2 * kFurthestUm + 1) - kFurthestUm;
    if (um_of(mm(um)) != um) ++wrong;
    ++looked_at;
  }
  CHECK(wrong == 0);
  CHECK(looked_at == 100000);
}

TEST_CASE("never an exponent, and never minus nought") {
  std::string out;
  append_decimal(out, -0, 9);
  append_decimal(out, 1, 9);
  CHECK(out == "00.000000001");
  out.clear();
  append_decimal(out, INT64_MIN, 0);
  CHECK(out == "-9223372036854775808");
}

TEST_CASE("paper comes out in points to four decimals") {
  // source: ISO 216 (A4 210 x 297, A1 594 x 841), ISO 32000-1 8.3.2.3 (1/72 in), 1 in = 25.4 mm:
  // 210 / 25.4 * 72 = 595.27559..., 297 -> 841.88976..., 8.5 x 11 in -> 612 x 792.
  CHECK(points(210000) == "595.2756");
  CHECK(points(297000) == "841.8898");
  CHECK(points(841000) == "2383.937");
  CHECK(points(215900) == "612");
  CHECK(points(279400) == "792");
  CHECK(points(-210000) == "-595.2756");
}

TEST_CASE("the page's matrix has nine decimals and carries the correction") {
  // source: 72 / 25.4 = 2.8346456692..., times 200 / 199.2 = 1.00401606..., times 200 / 200.6.
  CHECK(scale(1, 1) == "2.834645669");
  CHECK(scale(200000, 200000) == "2.834645669");
  CHECK(scale(200000, 199200) == "2.846029788");
  CHECK(scale(200000, 200600) == "2.826167168");
  CHECK(scale(10'000'000, 10'000'000) == "2.834645669");
}

TEST_CASE("a check bar of no length is our own mistake") {
  const ClaimsCounted claims;
  scale(200000, 0);
  scale(0, 200000);
  scale(10'000'001, 200000);
  CHECK(claims.broken() == 3);
}

TEST_CASE("halves are rounded away from nought, both ways alike") {
  CHECK(divided(7, 2) == 4);
  CHECK(divided(-7, 2) == -4);
  CHECK(divided(4, 3) == 1);
  CHECK(divided(-5, 3) == -2);
  CHECK(divided(6, 1) == 6);
  CHECK(divided(INT64_MAX, 2) == 4611686018427387904);
}

TEST_CASE("sixteen bits become four figures") {
  std::string out;
  append_hex4(out, 0x0);
  append_hex4(out, 0xA1F);
  append_hex4(out, 0xFFFF);
  CHECK(out == "00000A1FFFFF");
}
