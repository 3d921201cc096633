#include "engine/writers/pdf_objects.h"

#include "tests/support/claims.h"
#include "tests/writers/pdf_reading.h"

#include <doctest/doctest.h>

#include <string>
#include <string_view>

using namespace pouncemark::writers;
using pouncemark::tests::ClaimsCounted;
using pouncemark::tests::PdfRead;

namespace {

// Three objects written in another order than they were numbered.
std::string three_objects() {
  std::string file;
  PdfObjects objects([&file](std::string_view piece) { file += piece; });
  objects.begin();
  const int first = objects.reserve();
  const int second = objects.reserve();
  const int third = objects.reserve();
  objects.write(third, "<</Third true>>");
  objects.write_stream(first, "/First true", "0123456789");
  objects.write(second, "[" + reference(first) + "]");
  objects.end("/Root 3 0 R");
  return file;
}

}  // namespace

TEST_CASE("the table of places leads to every object, in whatever order they were written") {
  const PdfRead read(three_objects());
  CHECK(read.count() == 3);
  CHECK(read.object(1) == "1 0 obj\n<</First true/Length 10>>\nstream\n0123456789\nendstream");
  CHECK(read.object(2) == "2 0 obj\n[1 0 R]");
  CHECK(read.object(3) == "3 0 obj\n<</Third true>>");
}

TEST_CASE("a stream is exactly as long as it says") {
  const PdfRead read(three_objects());
  CHECK(read.stream(1) == "0123456789");
  CHECK(read.stream(2).empty());
}

TEST_CASE("every line of the table is twenty bytes") {
  const std::string file = three_objects();
  // source: ISO 32000-1 7.5.4.
  const std::size_t start = file.find("0000000000 65535 f \n");
  REQUIRE(start != std::string::npos);
  CHECK(file.substr(start + 4 * 20, 8) == "trailer\n");
  CHECK(file.substr(start + 20 + 10, 10) == " 00000 n \n");
}

TEST_CASE("the file ends as a reader looks for it from behind") {
  const std::string file = three_objects();
  CHECK(file.substr(0, 9) == "%PDF-1.7\n");
  CHECK(file.substr(file.size() - 6) == "%%EOF\n");
  CHECK(file.find("trailer\n<</Size 4/Root 3 0 R>>\nstartxref\n") != std::string::npos);
}

TEST_CASE("an object numbered but never written, or written twice, is our own mistake") {
  std::string file;
  PdfObjects objects([&file](std::string_view piece) { file += piece; });
  objects.begin();
  const int only = objects.reserve();
  const ClaimsCounted claims;
  objects.end("");
  CHECK(claims.broken() == 1);
  objects.write(only, "null");
  CHECK(claims.broken() == 1);
  objects.write(only, "null");
  CHECK(claims.broken() == 2);
  objects.write(7, "null");
  CHECK(claims.broken() == 3);
}

TEST_CASE("a title of any signs becomes a text string, and nothing in it can end the string") {
  CHECK(text_string("A") == "<FEFF0041>");
  CHECK(text_string("\u0141)\\>\n") == "<FEFF01410029005C003E>");
  CHECK(text_string("") == "<FEFF>");
}
