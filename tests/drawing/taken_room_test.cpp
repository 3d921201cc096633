#include "engine/drawing/taken_room.h"

#include <doctest/doctest.h>

#include <utility>

#include "engine/drawing/shapes.h"

using namespace pouncemark::drawing;

namespace {

Text words_at(Spot at, Align align, int quarter_turns) {
  Text text;
  text.at = at;
  text.size_um = 10'000;
  text.align = align;
  text.quarter_turns = quarter_turns;
  text.words = "12345";
  return text;
}

}  // namespace

TEST_CASE("a run of words takes a box from its base line, turned and aligned like the words") {
  struct Case {
    Align align;
    int quarter_turns;
    Box box;
  };
  const Case table[] = {
      {Align::left, 0, {{0, -2'500}, {32'000, 8'000}}},
      {Align::centre, 0, {{-16'000, -2'500}, {16'000, 8'000}}},
      {Align::right, 0, {{-32'000, -2'500}, {0, 8'000}}},
      {Align::left, 1, {{-8'000, 0}, {2'500, 32'000}}},
      {Align::left, 2, {{-32'000, -8'000}, {0, 2'500}}},
      {Align::left, 3, {{-2'500, -32'000}, {8'000, 0}}},
  };
  int count = 0;
  for (const Case& one : table) {
    CAPTURE(one.quarter_turns);
    const Box box = box_of(words_at({0, 0}, one.align, one.quarter_turns));
    CHECK((box.low == one.box.low && box.high == one.box.high));
    ++count;
  }
  CHECK(count == 6);
}

TEST_CASE("a sign of two bytes is one sign wide") {
  Text plain = words_at({0, 0}, Align::left, 0);
  Text accented = plain;
  plain.words = "Lodz";
  accented.words = "Łódź";
  CHECK(box_of(plain).high == box_of(accented).high);
}

TEST_CASE("where words lie nothing else has room, and beside them it has") {
  Drawing picture;
  add_text(picture, words_at({0, 0}, Align::left, 0));
  TakenRoom taken;
  taken.take(picture);
  CHECK(!taken.is_free({{30'000, 0}, {40'000, 5'000}}));
  CHECK(!taken.is_free_of_words({{32'000, 0}, {40'000, 5'000}}));
  CHECK(taken.is_free({{32'001, 0}, {40'000, 5'000}}));
}

TEST_CASE("an outline takes its edges and leaves its inside free; a filled area takes its inside") {
  Drawing outline;
  add_rectangle(outline, {{0, 0}, {100'000, 100'000}}, Pen{});
  TakenRoom edges;
  edges.take(outline);
  CHECK(edges.is_free({{10'000, 10'000}, {90'000, 90'000}}));
  CHECK(!edges.is_free({{10'000, 10'000}, {100'000, 90'000}}));
  Drawing solid;
  add_solid(solid, {{0, 0}, {100'000, 100'000}});
  TakenRoom area;
  area.take(solid);
  CHECK(!area.is_free({{10'000, 10'000}, {90'000, 90'000}}));
  CHECK(area.is_free_of_words({{10'000, 10'000}, {90'000, 90'000}}));
}

TEST_CASE("only the items asked for are taken in") {
  Drawing picture;
  add_solid(picture, {{0, 0}, {10, 10}});
  add_solid(picture, {{100, 0}, {110, 10}});
  TakenRoom second;
  second.take(picture, 1, 2);
  CHECK(second.is_free({{0, 0}, {50, 10}}));
  CHECK(!second.is_free({{105, 5}, {120, 20}}));
}
