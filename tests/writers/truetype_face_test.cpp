#include "engine/writers/truetype_face.h"

#include "engine/batch/built_in_faces.h"
#include "tests/support/claims.h"
#include "tests/writers/tiny_face.h"

#include <doctest/doctest.h>

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

using namespace pouncemark::writers;
using pouncemark::batch::built_in_faces;
using pouncemark::tests::big_endian;
using pouncemark::tests::ClaimsCounted;
using pouncemark::tests::tiny_face;

namespace {

// U+1F9F5 to U+1F9F6 are glyphs 1 and 2.
std::string groups() {
  return big_endian({0, 1, 3, 10, 0, 12, 12, 0, 0, 28, 0, 0, 0, 1, 1, 0xF9F5, 1, 0xF9F6, 0, 1});
}

}  // namespace

TEST_CASE("the cut faces know the signs they were chosen for") {
  const TrueTypeFace main(built_in_faces().main_regular);
  const TrueTypeFace wide(built_in_faces().wide);
  int looked_at = 0;
  for (const char32_t sign :
       std::u32string(U"AZaz09 .,\u2192\u00D7\u00F7\u00B1\u2265\u2212\u2713\u221A\u03C0\u00E9")) {
    CHECK(main.glyph_of(sign) != 0);
    CHECK(wide.glyph_of(sign) != 0);
    ++looked_at;
  }
  CHECK(looked_at == 19);
}

TEST_CASE("Greek and Polish are in the wide face only, and Japanese in neither") {
  const TrueTypeFace main(built_in_faces().main_regular);
  const TrueTypeFace wide(built_in_faces().wide);
  int looked_at = 0;
  for (const char32_t sign : std::u32string(U"\u03A9\u1F08\u0141")) {
    CHECK(main.glyph_of(sign) == 0);
    CHECK(wide.glyph_of(sign) != 0);
    ++looked_at;
  }
  CHECK(looked_at == 3);
  CHECK(wide.glyph_of(U'\u65E5') == 0);
  CHECK(wide.glyph_of(U'\U00010041') == 0);  // Its last sixteen bits are those of A.
}

TEST_CASE("all ten figures are equally wide, so that columns stand") {
  int looked_at = 0;
  for (const std::string_view bytes :
       {built_in_faces().main_regular, built_in_faces().main_bold, built_in_faces().wide}) {
    const TrueTypeFace face(bytes);
    for (char32_t figure = U'0'; figure <= U'9'; ++figure) {
      CHECK(face.advance(face.glyph_of(figure)) == face.advance(face.glyph_of(U'0')));
      ++looked_at;
    }
  }
  CHECK(looked_at == 30);
}

TEST_CASE("a face's own figures are read rightly") {
  const TrueTypeFace main(built_in_faces().main_regular);
  // source: B612 Regular 1.008: 2000 units to the em, H 1520 high, M 1800 wide.
  CHECK(main.units_per_em() == 2000);
  CHECK(main.top_of(U'H') == 1520);
  CHECK(main.advance(main.glyph_of(U'M')) == 1800);
  CHECK(main.name() == "B612-Regular");
  CHECK(main.outline(main.glyph_of(U' ')).empty());
  CHECK(main.outline(main.glyph_count()).empty());
}

TEST_CASE("a table of signs beyond U+FFFF is read, and its neighbours are not") {
  const std::string file = tiny_face({"", "ab", "cd"}, groups());
  const TrueTypeFace face(file);
  CHECK(face.glyph_of(U'\U0001F9F4') == 0);
  CHECK(face.glyph_of(U'\U0001F9F5') == 1);
  CHECK(face.glyph_of(U'\U0001F9F6') == 2);
  CHECK(face.glyph_of(U'\U0001F9F7') == 0);
}

TEST_CASE("glyphs behind the last stated width are as wide as it, with bearings of their own") {
  const std::string file = tiny_face({"", "ab", "cd"}, groups());
  const TrueTypeFace face(file);
  CHECK(face.advance(1) == 20);
  CHECK(face.advance(2) == 20);
  CHECK(face.left_bearing(1) == 2);
  CHECK(face.left_bearing(2) == 3);
  CHECK(face.outline(1) == "ab");
  CHECK(face.outline(2) == "cd");
}

TEST_CASE("a face cut short anywhere is our own mistake, and nothing is read beyond its end") {
  const std::string whole = tiny_face({"", "ab", "cd"}, groups());
  int refused = 0;
  for (std::size_t length = 0; length < whole.size(); ++length) {
    const std::string cut = whole.substr(0, length);
    const ClaimsCounted claims;
    const TrueTypeFace face(cut);
    CHECK(face.glyph_of(U'\U0001F9F6') <= 2);
    CHECK(face.advance(2) <= 20);
    CHECK(face.outline(2).size() <= 2);
    if (claims.broken() > 0) ++refused;
  }
  CHECK(refused == static_cast<int>(whole.size()));
}
