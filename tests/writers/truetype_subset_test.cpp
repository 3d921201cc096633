#include "engine/writers/truetype_subset.h"

#include "engine/batch/built_in_faces.h"
#include "tests/support/claims.h"
#include "tests/writers/tiny_face.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

using namespace pouncemark::writers;
using pouncemark::batch::built_in_faces;
using pouncemark::tests::big_endian;
using pouncemark::tests::ClaimsCounted;
using pouncemark::tests::tiny_face;

namespace {

struct Part {
  std::uint16_t glyph = 0;
  std::string placing;  // Everything of the part but its glyph number.
};

std::vector<Part> parts_of(std::string_view outline) {
  std::vector<Part> parts;
  const FontBytes bytes(outline);
  if (outline.empty() || bytes.i16(0) >= 0) return parts;
  unsigned flags = 0x20;
  for (std::size_t at = 10; (flags & 0x20U) != 0;) {
    flags = bytes.u16(at);
    std::size_t length = (flags & 1U) != 0 ? 8 : 6;
    if ((flags & 0x08U) != 0) length += 2;
    if ((flags & 0x40U) != 0) length += 4;
    if ((flags & 0x80U) != 0) length += 8;
    parts.push_back({bytes.u16(at + 2), std::string(outline.substr(at + 4, length - 4))});
    at += length;
  }
  return parts;
}

// The outline without the noughts that fill it up.
std::string bare(std::string_view outline) {
  std::string out(outline);
  while (!out.empty() && out.back() == '\0') out.pop_back();
  return out;
}

// Whether two glyphs draw the same, part by part, down to the outlines. Counts those it compared.
bool draw_alike(const TrueTypeFace& a, std::uint16_t glyph_a, const TrueTypeFace& b,
                std::uint16_t glyph_b, int& compared) {
  if (a.advance(glyph_a) != b.advance(glyph_b)) return false;
  if (a.left_bearing(glyph_a) != b.left_bearing(glyph_b)) return false;
  const std::vector<Part> parts_a = parts_of(a.outline(glyph_a));
  const std::vector<Part> parts_b = parts_of(b.outline(glyph_b));
  if (parts_a.size() != parts_b.size()) return false;
  if (parts_a.empty()) {
    ++compared;
    return bare(a.outline(glyph_a)) == bare(b.outline(glyph_b));
  }
  for (std::size_t i = 0; i < parts_a.size(); ++i) {
    if (parts_a[i].placing != parts_b[i].placing) return false;
    if (!draw_alike(a, parts_a[i].glyph, b, parts_b[i].glyph, compared)) return false;
  }
  return true;
}

std::uint32_t sum_of(const std::string& file) {
  std::uint32_t sum = 0;
  for (std::size_t at = 0; at + 4 <= file.size(); at += 4) sum += FontBytes(file).u32(at);
  return sum;
}

}  // namespace

TEST_CASE("a letter made of parts keeps every part") {
  const TrueTypeFace face(built_in_faces().wide);
  const std::u32string signs = U"\u014C\u017A\u1FC6";
  std::vector<std::uint16_t> glyphs{0};
  for (const char32_t sign : signs) glyphs.push_back(face.glyph_of(sign));
  const std::string file = subset(face, glyphs);
  const TrueTypeFace small(file);
  int compared = 0;
  for (std::uint16_t i = 1; i < glyphs.size(); ++i) {
    CHECK(!parts_of(small.outline(i)).empty());
    CHECK(draw_alike(face, glyphs[i], small, i, compared));
  }
  CHECK(compared >= 6);
  CHECK(small.glyph_count() > 4);
  CHECK(small.glyph_count() < 16);
}

TEST_CASE("every sign of every cut face survives, the empty box first") {
  int compared = 0;
  for (const std::string_view bytes :
       {built_in_faces().main_regular, built_in_faces().main_bold, built_in_faces().wide}) {
    const TrueTypeFace face(bytes);
    std::vector<std::uint16_t> glyphs{0};
    for (char32_t sign = 0x20; sign < 0x10000; ++sign) {
      if (face.glyph_of(sign) != 0) glyphs.push_back(face.glyph_of(sign));
    }
    const std::string file = subset(face, glyphs);
    const TrueTypeFace small(file);
    int wrong = 0;
    for (std::size_t i = 0; i < glyphs.size(); ++i) {
      const auto number = static_cast<std::uint16_t>(i);
      if (!draw_alike(face, glyphs[i], small, number, compared)) ++wrong;
    }
    CHECK(wrong == 0);
  }
  CHECK(compared > 2700);
}

TEST_CASE("parts of every kind are renumbered and told that they have no instructions") {
  // Six parts, of glyph 1 and 2 in turn: words, bytes, one, two and four scales, bytes. The flag
  // 0x100 says that instructions follow, 0x20 that another part does.
  std::string composite = big_endian({0xFFFF, 0, 0, 0, 0});
  composite += big_endian({0x121, 1, 7, 8});
  composite += big_endian({0x120, 2, 9});
  composite += big_endian({0x128, 1, 9, 0x4000});
  composite += big_endian({0x160, 2, 9, 0x4000, 0x4000});
  composite += big_endian({0x1A1, 1, 7, 8, 0x4000, 0, 0, 0x4000});
  composite += big_endian({0x100, 2, 9});
  const std::string simple = big_endian({1, 0, 0, 0, 0});
  const std::string file =
      tiny_face({"", simple + "ab", simple + "cd", composite}, big_endian({0, 0}));
  const std::string small_file = subset(TrueTypeFace(file), {0, 3});
  const TrueTypeFace small(small_file);
  CHECK(small.glyph_count() == 4);
  const std::vector<Part> parts = parts_of(small.outline(1));
  REQUIRE(parts.size() == 6);
  for (std::size_t i = 0; i < parts.size(); ++i) CHECK(parts[i].glyph == 2 + i % 2);
  CHECK(FontBytes(small.outline(1)).u16(10) == 0x21);
  CHECK(small.outline(2).substr(0, 12) == simple + "ab");
  CHECK(small.outline(3).substr(0, 12) == simple + "cd");
}

TEST_CASE("a glyph asked for twice has two numbers, so that two signs can share it") {
  const TrueTypeFace face(built_in_faces().main_regular);
  const std::uint16_t a = face.glyph_of(U'A');
  const std::string file = subset(face, {0, a, a});
  const TrueTypeFace small(file);
  CHECK(small.glyph_count() == 3);
  CHECK(small.outline(1) == small.outline(2));
  CHECK(!small.outline(1).empty());
}

TEST_CASE("the checksum of the whole file is the one the standard asks for") {
  const TrueTypeFace face(built_in_faces().main_bold);
  const std::string file = subset(face, {0, face.glyph_of(U'H'), face.glyph_of(U'0')});
  // source: ISO/IEC 14496-22, table head, checkSumAdjustment.
  CHECK(sum_of(file) == 0xB1B0AFBAU);
  CHECK(file.size() < 2000);
}

TEST_CASE("a list that does not begin with the empty box is our own mistake") {
  const TrueTypeFace face(built_in_faces().main_bold);
  const ClaimsCounted claims;
  subset(face, {face.glyph_of(U'H')});
  CHECK(claims.broken() == 1);
}
