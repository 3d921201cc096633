#include "engine/writers/pdf_fonts.h"

#include "tests/writers/pdf_reading.h"

#include <doctest/doctest.h>

#include <cstdlib>
#include <string>

using namespace pouncemark::writers;
using pouncemark::drawing::Weight;
using pouncemark::tests::between;
using pouncemark::tests::count_of;
using pouncemark::tests::inflated;
using pouncemark::tests::PdfRead;
using pouncemark::tests::with_words;
using pouncemark::tests::written;

namespace {

// The first page's only face, read back.
struct FaceRead {
  std::string font;
  std::string inner;
  std::string description;
  std::string file;
  std::string sign_map;
};

FaceRead only_face(const PdfRead& read) {
  const std::string fonts = between(read.object(read.pages().at(0)), "/Font<<", ">>");
  REQUIRE(count_of(fonts, " 0 R") == 1);
  const int font = std::atoi(fonts.c_str() + fonts.find(' '));
  FaceRead face;
  face.font = read.object(font);
  const int inner = std::atoi(between(face.font, "/DescendantFonts[", " ").c_str());
  face.inner = read.object(inner);
  const int description = read.target(inner, "/FontDescriptor");
  face.description = read.object(description);
  face.file = inflated(read.stream(read.target(description, "/FontFile2")));
  face.sign_map = inflated(read.stream(read.target(font, "/ToUnicode")));
  return face;
}

}  // namespace

TEST_CASE("a face is carried with the signs used, in order of first use, and their widths") {
  const FaceRead face = only_face(PdfRead(written({with_words("M1M")})));
  CHECK(between(face.font, "/BaseFont/", "/") == "PMARKA+B612-Regular");
  // source: B612 Regular 1.008: empty box 1000, M 1800, 1 1300 of 2000 units.
  CHECK(face.inner.find("/W[0[") != std::string::npos);
  CHECK(between(face.inner, "/W[0[", "]]").find(" 900 650") != std::string::npos);
  CHECK(count_of(face.sign_map, "><") == 3);
  CHECK(face.sign_map.find("2 beginbfchar\n<0001><004D>\n<0002><0031>\n") != std::string::npos);
  CHECK(face.description.find("/CapHeight 760/") != std::string::npos);
}

TEST_CASE("the carried face is the subset, exactly as long as it says") {
  const std::string bytes = written({with_words("M1M")});
  const PdfRead read(bytes);
  const FaceRead face = only_face(read);
  CHECK(TrueTypeFace(face.file).glyph_count() == 3);
  CHECK(between(bytes, "/Length1 ", "/") == std::to_string(face.file.size()));
}

TEST_CASE("a sign no face has is a box that cannot be searched for, and its neighbours can") {
  const PdfRead read(written({with_words("A\u65E5B")}));
  CHECK(read.content(0).find("<000100000002>Tj") != std::string::npos);
  const FaceRead face = only_face(read);
  CHECK(face.sign_map.find("<0001><0041>\n<0002><0042>\n") != std::string::npos);
  CHECK(face.sign_map.find("<0000><65E5>") == std::string::npos);
  CHECK(count_of(face.sign_map, "beginbfchar") == 1);
}

TEST_CASE("a sign map has at most a hundred pairs in a block") {
  std::string words;
  for (char16_t sign = 0x0391; sign < 0x0391 + 17; ++sign) {
    words.push_back(static_cast<char>(0xC0 | sign >> 6));
    words.push_back(static_cast<char>(0x80 | (sign & 0x3F)));
  }
  for (char sign = '!'; sign <= '~'; ++sign) words.push_back(sign);
  const FaceRead face = only_face(PdfRead(written({with_words(words)})));
  // source: Adobe technical note 5014, at most 100 entries between begin and end.
  CHECK(face.sign_map.find("100 beginbfchar\n") != std::string::npos);
  CHECK(face.sign_map.find("11 beginbfchar\n") != std::string::npos);
}

TEST_CASE("only the faces that were used are in the file") {
  CHECK(count_of(written({with_words("plain")}), "/FontFile2 ") == 1);
  CHECK(count_of(written({with_words("plain"), with_words("bold", Weight::bold)}), "/FontFile2 ") ==
        2);
  CHECK(count_of(written({{}}), "/FontFile2 ") == 0);
  CHECK(count_of(written({{}}), "/Font") == 0);
}
