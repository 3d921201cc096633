#include "engine/writers/utf8.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark::writers;

TEST_CASE("names in any script come through sign by sign") {
  CHECK(printable_signs("\u0141\u00F3d\u017A") == U"\u0141\u00F3d\u017A");
  CHECK(printable_signs("\u65E5\u672C") == U"\u65E5\u672C");
  CHECK(printable_signs("\U0001F9F5") == U"\U0001F9F5");
  CHECK(printable_signs("").empty());
}

TEST_CASE("control signs, direction signs and joiners never reach paper") {
  CHECK(printable_signs(std::string("a\x00\x1B\x7F\n\tb", 7)) == U"ab");
  CHECK(printable_signs("a\u0085\u009Fb") == U"ab");
  CHECK(printable_signs("a\u00AD\u200B\u200D\u202E\u2066\uFE0F\uFEFFb") == U"ab");
  CHECK(printable_signs("a b\u00A0c") == U"a b\u00A0c");
}

TEST_CASE("each byte that begins no sign becomes one mark of the loss, and the rest is kept") {
  struct Case {
    const char* bytes;
    const char32_t* signs;
  };
  const Case cases[] = {
      {"a\x80z", U"a\uFFFDz"},        // A byte that only continues.
      {"a\xC3", U"a\uFFFD"},          // Cut off.
      {"\xC0\xAF", U"\uFFFD\uFFFD"},  // Longer than needed.
      {"\xE0\x80\xAF", U"\uFFFD\uFFFD\uFFFD"},
      {"\xED\xA0\x80", U"\uFFFD\uFFFD\uFFFD"},            // Half a pair.
      {"\xF4\x90\x80\x80", U"\uFFFD\uFFFD\uFFFD\uFFFD"},  // Above the last sign.
      {"\xFF!", U"\uFFFD!"},
      {"\xE2\x82!", U"\uFFFD\uFFFD!"},
  };
  int looked_at = 0;
  for (const Case& one : cases) {
    CHECK(printable_signs(one.bytes) == one.signs);
    ++looked_at;
  }
  CHECK(looked_at == 8);
}

TEST_CASE("signs become UTF-8 again, and what is no sign does not") {
  std::string out;
  for (const char32_t sign : {U'A', U'\u00D7', U'\u2192', U'\U0001F9F5'}) append_utf8(out, sign);
  CHECK(out == "A\u00D7\u2192\U0001F9F5");
  out.clear();
  append_utf8(out, static_cast<char32_t>(0xD800));
  append_utf8(out, static_cast<char32_t>(0x110000));
  CHECK(out == "\uFFFD\uFFFD");
}

TEST_CASE("signs above U+FFFF become a pair in UTF-16") {
  std::string out;
  append_utf16_hex(out, U'A');
  append_utf16_hex(out, U'\U0001F9F5');
  // source: ISO/IEC 10646, UTF-16: U+1F9F5 is D83E DDF5.
  CHECK(out == "0041D83EDDF5");
}
