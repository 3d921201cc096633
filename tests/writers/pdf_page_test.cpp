#include "engine/writers/pdf_page.h"

#include "engine/drawing/shapes.h"
#include "tests/support/claims.h"
#include "tests/writers/pdf_reading.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark::drawing;
using namespace pouncemark::writers;
using pouncemark::batch::built_in_faces;
using pouncemark::tests::ClaimsCounted;
using pouncemark::tests::count_of;
using pouncemark::tests::with_words;

namespace {

std::string orders(const Drawing& picture) {
  PdfObjects objects([](std::string_view) {});
  PdfFonts fonts(built_in_faces(), objects);
  PdfPage page(fonts);
  page.draw(picture);
  return page.content();
}

Drawing words_turned(int quarter_turns, Align align) {
  Text text;
  text.at = {100000, 50000};
  text.size_um = 10000;
  text.quarter_turns = quarter_turns;
  text.align = align;
  text.words = "M";  // 9 mm wide at this size.
  Drawing picture;
  add_text(picture, text);
  return picture;
}

}  // namespace

TEST_CASE("a line is its pen, its two places and a stroke") {
  Drawing picture;
  add_line(picture, {10000, 20500}, {-1, 0}, Pen{250, {}, 0});
  CHECK(orders(picture) == "0.25 w\n[]0 d\n0 G\n10 20.5 m\n-0.001 0 l\nS\n");
}

TEST_CASE("a pen is named again only where it changes") {
  Drawing picture;
  add_line(picture, {0, 0}, {1000, 0}, Pen{250, {3000, 1500}, 0});
  add_line(picture, {0, 0}, {2000, 0}, Pen{250, {3000, 1500}, 0});
  add_line(picture, {0, 0}, {3000, 0}, Pen{250, {3000, 1500}, 400});
  CHECK(orders(picture) ==
        "0.25 w\n[3 1.5]0 d\n0 G\n0 0 m\n1 0 l\nS\n0 0 m\n2 0 l\nS\n0.4 G\n0 0 m\n3 0 l\nS\n");
}

TEST_CASE("a filled shape is closed curve by curve in its own grey") {
  Drawing picture;
  add_fill(picture, 700,
           {{Step::move, {0, 0}, {}, {}},
            {Step::curve, {3000, 0}, {1000, 2000}, {2000, 2000}},
            {Step::close, {0, 0}, {}, {}}});
  CHECK(orders(picture) == "0.7 g\n0 0 m\n1 2 2 2 3 0 c\nh\nf\n");
}

TEST_CASE("after a clip ends everything remembered is said again") {
  Drawing picture;
  const Pen pen{250, {}, 0};
  add_line(picture, {0, 0}, {1000, 0}, pen);
  picture.items.emplace_back(ClipStart{{{5000, 6000}, {15000, 8000}}});
  add_line(picture, {0, 0}, {2000, 0}, pen);
  picture.items.emplace_back(ClipEnd{});
  add_line(picture, {0, 0}, {3000, 0}, pen);
  CHECK(orders(picture) ==
        "0.25 w\n[]0 d\n0 G\n0 0 m\n1 0 l\nS\nq\n5 6 10 2 re W n\n0 0 m\n2 0 l\nS\nQ\n"
        "0.25 w\n[]0 d\n0 G\n0 0 m\n3 0 l\nS\n");
}

TEST_CASE("words start, end or stand in the middle at their place, whichever way they are turned") {
  struct Case {
    int turns;
    Align align;
    const char* order;
  };
  const Case cases[] = {
      {0, Align::left, "\n100 50 Td\n"},
      {0, Align::centre, "\n95.5 50 Td\n"},
      {0, Align::right, "\n91 50 Td\n"},
      {1, Align::left, "\n0 1 -1 0 100 50 Tm\n"},
      {1, Align::right, "\n0 1 -1 0 100 41 Tm\n"},
      {2, Align::right, "\n-1 0 0 -1 109 50 Tm\n"},
      {3, Align::centre, "\n0 -1 1 0 100 54.5 Tm\n"},
      {-1, Align::centre, "\n0 -1 1 0 100 54.5 Tm\n"},
      {4, Align::right, "\n91 50 Td\n"},
  };
  int looked_at = 0;
  for (const Case& one : cases) {
    CHECK(count_of(orders(words_turned(one.turns, one.align)), one.order) == 1);
    ++looked_at;
  }
  CHECK(looked_at == 9);
}

TEST_CASE("grey and size are named again where they change, and only there") {
  Drawing picture;
  for (const int grey : {0, 0, 1000}) {
    for (const std::int64_t size : {3500, 3500, 7000}) {
      Text text;
      text.size_um = size;
      text.grey_permille = grey;
      text.words = "a";
      add_text(picture, text);
    }
  }
  CHECK(count_of(orders(picture), "/F1 3.5 Tf\n") == 3);
  CHECK(count_of(orders(picture), "/F1 7 Tf\n") == 3);
  CHECK(count_of(orders(picture), "0 g\n") == 1);
  CHECK(count_of(orders(picture), "1 g\n") == 1);
}

TEST_CASE("words of control signs only draw nothing") {
  CHECK(orders(with_words("\x01\x02")).empty());
  CHECK(orders(with_words("a")) == "0 g\nBT\n/F1 3.5 Tf\n20 30 Td\n<0001>Tj\nET\n");
}

TEST_CASE("an empty path draws nothing, one that does not begin with a move is our own mistake") {
  const ClaimsCounted claims;
  Drawing picture;
  add_stroke(picture, Pen{}, {});
  add_fill(picture, 0, {});
  CHECK(orders(picture).empty());
  CHECK(claims.broken() == 0);
  add_stroke(picture, Pen{}, {{Step::line, {0, 0}, {}, {}}});
  orders(picture);
  CHECK(claims.broken() == 1);
}

TEST_CASE("a pen without width, or dashes without length, are our own mistake") {
  const ClaimsCounted claims;
  Drawing picture;
  add_line(picture, {0, 0}, {1, 1}, Pen{0, {}, 0});
  orders(picture);
  CHECK(claims.broken() == 1);
  Drawing dashed;
  add_line(dashed, {0, 0}, {1, 1}, Pen{250, {0, 0}, 0});
  orders(dashed);
  CHECK(claims.broken() == 2);
}

TEST_CASE("a clip left open, or ended without a start, is our own mistake and still balances") {
  const ClaimsCounted claims;
  Drawing open;
  open.items.emplace_back(ClipStart{{{0, 0}, {1000, 1000}}});
  CHECK(orders(open) == "q\n0 0 1 1 re W n\nQ\n");
  CHECK(claims.broken() == 1);
  Drawing ended;
  ended.items.emplace_back(ClipEnd{});
  CHECK(orders(ended).empty());
  CHECK(claims.broken() == 2);
}

TEST_CASE("a place more than ten kilometres off is refused") {
  const ClaimsCounted claims;
  Drawing picture;
  add_line(picture, {0, 0}, {10'000'000'001, 0}, Pen{});
  orders(picture);
  CHECK(claims.broken() == 1);
}
