#include "engine/writers/pdf.h"

#include "engine/drawing/symbols.h"
#include "tests/support/claims.h"
#include "tests/writers/pdf_reading.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark::drawing;
using namespace pouncemark::writers;
using pouncemark::batch::built_in_faces;
using pouncemark::tests::ClaimsCounted;
using pouncemark::tests::count_of;
using pouncemark::tests::PdfRead;
using pouncemark::tests::plain_options;
using pouncemark::tests::with_words;
using pouncemark::tests::written;

namespace {

Drawing some_marks() {
  Drawing picture = with_words("Marsh Lights \u2192 \u1FC6 \u65E5");
  add_check_bar(picture, {{15000, 12000}, 180000, Lie::across, 4000});
  add_guide_point(picture, {100000, 100000}, {1, 2});
  return picture;
}

}  // namespace

TEST_CASE("an A4 page says its size in points, twice") {
  const PdfRead read(written({some_marks()}));
  const std::string page = read.object(read.pages().at(0));
  // source: ISO 216 210 x 297 mm, ISO 32000-1 8.3.2.3 user space 1/72 in.
  CHECK(page.find("/MediaBox[0 0 595.2756 841.8898]/TrimBox[0 0 595.2756 841.8898]") !=
        std::string::npos);
}

TEST_CASE("the correction is one matrix at the head of every page, each way by itself") {
  PdfOptions options = plain_options();
  // source: 72 / 25.4 x 200 / 199.2 = 2.846029788..., x 180 / 180.54 = 2.826167167...
  CHECK(PdfRead(written({{}}, options)).content(0) == "2.834645669 0 0 2.834645669 0 0 cm\n");
  options.correction = {200000, 199200, 180000, 180540};
  const PdfRead read(written({{}, {}}, options));
  CHECK(read.content(0) == "2.846029788 0 0 2.826167168 0 0 cm\n");
  CHECK(read.content(1) == read.content(0));
}

TEST_CASE("a correction leaves every drawn figure as it was") {
  PdfOptions options = plain_options();
  const std::string plain = PdfRead(written({some_marks()}, options)).content(0);
  options.correction = {180000, 179300, 200000, 200100};
  const std::string corrected = PdfRead(written({some_marks()}, options)).content(0);
  CHECK(plain.substr(plain.find('\n')) == corrected.substr(corrected.find('\n')));
  CHECK(plain != corrected);
}

TEST_CASE("same calls, same bytes; another job, other bytes") {
  PdfOptions options = plain_options();
  const std::string once = written({some_marks(), some_marks()}, options);
  CHECK(once == written({some_marks(), some_marks()}, options));
  options.id_hex = "ff112233445566778899aabbccddeeff";
  CHECK(once != written({some_marks(), some_marks()}, options));
}

TEST_CASE("the file names the job's sum twice and no date and no maker") {
  const std::string bytes = written({some_marks()});
  CHECK(count_of(bytes,
                 "/ID[<00112233445566778899aabbccddeeff><00112233445566778899aabbccddeeff>]") == 1);
  CHECK(count_of(bytes, "Date") == 0);
  CHECK(count_of(bytes, "Producer") == 0);
  CHECK(count_of(bytes, "Creator") == 0);
}

TEST_CASE("the reader is asked for true size, own paper and one side") {
  const std::string catalogue = PdfRead(written({{}})).object(1);
  CHECK(catalogue.find("/PrintScaling/None") != std::string::npos);
  CHECK(catalogue.find("/PickTrayByPDFSize true") != std::string::npos);
  CHECK(catalogue.find("/Duplex/Simplex") != std::string::npos);
  CHECK(catalogue.find("/DisplayDocTitle true") != std::string::npos);
}

TEST_CASE("every object is where the table says, every stream as long as it says") {
  const PdfRead read(written({some_marks(), {}, some_marks()}));
  CHECK(read.pages().size() == 3);
  int streams = 0;
  for (int number = 1; number <= read.count(); ++number) {
    CHECK(!read.object(number).empty());
    if (read.object(number).find("/Length ") == std::string::npos) continue;
    CHECK(!read.stream(number).empty());
    ++streams;
  }
  CHECK(streams == 3 + 2 + 1);  // Three pages, a face and its sign map, the description.
}

TEST_CASE("title and subject stand in the file in any script, and cannot break out of it") {
  PdfOptions options = plain_options();
  options.title = "\u0141\u00F3d\u017A <&> )\x07";
  options.subject = "";
  const PdfRead read(written({{}}, options));
  CHECK(read.object(3) == "3 0 obj\n<</Title<FEFF014100F30064017A0020003C0026003E00200029>>>");
  CHECK(count_of(read.stream(4), ">\u0141\u00F3d\u017A &lt;&amp;&gt; )<") == 1);
  CHECK(count_of(read.stream(4), "dc:description") == 0);
}

TEST_CASE("a name of ten thousand bytes is no trouble") {
  PdfOptions options = plain_options();
  options.title = std::string(10000, 'x');
  const PdfRead read(written({with_words(options.title)}, options));
  CHECK(count_of(read.object(3), "0078") == 10000);
  CHECK(count_of(read.content(0), "0001") == 10000);
}

TEST_CASE("signs that no face has are counted, each time they are drawn") {
  PdfWriter writer([](std::string_view) {}, built_in_faces(), plain_options());
  CHECK(writer.missing_signs().empty());
  writer.add_page(with_words("\u65E5\u672C\u65E5 \u1FC6"), 210000, 297000);
  writer.add_page(with_words("\u65E5"), 210000, 297000);
  CHECK(writer.missing_signs() == std::map<char32_t, int>{{U'\u65E5', 3}, {U'\u672C', 1}});
}

TEST_CASE("a page is handed on before the next is begun") {
  std::size_t handed_on = 0;
  PdfWriter writer([&handed_on](std::string_view piece) { handed_on += piece.size(); },
                   built_in_faces(), plain_options());
  std::size_t before = handed_on;
  int grew = 0;
  for (int page = 0; page < 3; ++page) {
    writer.add_page(some_marks(), 210000, 297000);
    if (handed_on > before + 300) ++grew;
    before = handed_on;
  }
  CHECK(grew == 3);
}

TEST_CASE("a page of five metres is written, a longer one is our own mistake") {
  PdfWriter writer([](std::string_view) {}, built_in_faces(), plain_options());
  const ClaimsCounted claims;
  writer.add_page({}, 900000, 5'080'000);
  CHECK(claims.broken() == 0);
  writer.add_page({}, 900000, 5'080'001);
  writer.add_page({}, 5'080'001, 900000);
  writer.add_page({}, 0, 297000);
  writer.add_page({}, 210000, 0);
  CHECK(claims.broken() == 4);
}

TEST_CASE("a file without a page, without a sum, or finished twice is our own mistake") {
  const ClaimsCounted claims;
  PdfOptions options = plain_options();
  options.id_hex = "00112233445566778899aabbccddeef>";
  PdfWriter writer([](std::string_view) {}, built_in_faces(), options);
  CHECK(claims.broken() == 1);
  writer.finish();
  CHECK(claims.broken() == 2);
  writer.finish();
  CHECK(claims.broken() == 3);
}
