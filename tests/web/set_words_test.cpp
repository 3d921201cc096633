#include "web/widgets/set_words.h"

#include <array>

#include <doctest/doctest.h>

using namespace pouncemark::web;

namespace {

constexpr Area kWindow = {0, 0, 1000, 700};
constexpr Area kRun = {100, 100, 180, 116};

/// One run on the page, noted.
SetWords with_a_run(const Area& window = kWindow) {
  SetWords words;
  words.switch_on();
  words.begin_frame();
  words.set("running total", kRun, 16, window);
  return words;
}

struct Laid {
  const char* what;
  Area area;
  std::size_t left;
  bool is_cut;
};

}  // namespace

TEST_CASE("words are noted only once that is switched on, and anew in each frame") {
  SetWords words;
  words.set("fly side", kRun, 16, kWindow);
  CHECK(words.runs().empty());
  words.switch_on();
  words.set("fly side", kRun, 16, kWindow);
  REQUIRE(words.runs().size() == 1);
  CHECK(words.runs().front().words == "fly side");
  CHECK(words.runs().front().em_px == 16);
  words.begin_frame();
  CHECK(words.runs().empty());
}

TEST_CASE("a run that reaches out of its window is cut, one outside of it is not there") {
  CHECK_FALSE(with_a_run().runs().front().is_cut);
  CHECK_FALSE(with_a_run({100, 100, 180, 116}).runs().front().is_cut);
  CHECK(with_a_run({0, 0, 170, 700}).runs().front().is_cut);
  CHECK(with_a_run({0, 104, 1000, 700}).runs().front().is_cut);
  CHECK(with_a_run({0, 0, 90, 700}).runs().empty());
}

TEST_CASE("paper laid over a run takes it away, over a part of it cuts it, beside it leaves it") {
  const std::array<Laid, 6> cases = {{{"over all of it", {90, 90, 200, 130}, 0, false},
                                      {"just over it", {100, 100, 180, 116}, 0, false},
                                      {"over its end", {150, 90, 300, 130}, 1, true},
                                      {"over its middle", {120, 90, 130, 130}, 1, true},
                                      {"beside it", {180, 90, 300, 130}, 1, false},
                                      {"under it", {90, 116, 200, 130}, 1, false}}};
  int ran = 0;
  for (const Laid& one : cases) {
    CAPTURE(one.what);
    SetWords words = with_a_run();
    words.cover(one.area);
    REQUIRE(words.runs().size() == one.left);
    if (one.left == 1) CHECK(words.runs().front().is_cut == one.is_cut);
    ++ran;
  }
  CHECK(ran == 6);
}

TEST_CASE("a shape laid over a run counts by what it holds, whichever way its corners run") {
  const std::array<Spot, 3> over = {Spot{60, 90}, Spot{220, 90}, Spot{140, 300}};
  const std::array<Spot, 3> turned = {Spot{140, 300}, Spot{220, 90}, Spot{60, 90}};
  const std::array<Spot, 3> corner = {Spot{60, 90}, Spot{110, 90}, Spot{85, 300}};
  const std::array<Spot, 3> beside = {Spot{10, 90}, Spot{90, 90}, Spot{50, 300}};
  SetWords words = with_a_run();
  words.cover(beside);
  CHECK_FALSE(words.runs().front().is_cut);
  words.cover(corner);
  CHECK(words.runs().front().is_cut);
  words.cover(over);
  CHECK(words.runs().empty());
  SetWords again = with_a_run();
  again.cover(turned);
  CHECK(again.runs().empty());
}

TEST_CASE("a slip laid over a run, or a part of it, puts it out of sight; one beside it does not") {
  SetWords beside = with_a_run();
  beside.lay({180, 90, 300, 130});
  CHECK(beside.runs().size() == 1);
  SetWords partly = with_a_run();
  partly.lay({150, 90, 300, 130});
  CHECK(partly.runs().empty());
}

TEST_CASE("words set after the paper stand on it") {
  SetWords words = with_a_run();
  words.cover(Area{0, 0, 1000, 700});
  words.set("put back", kRun, 16, kWindow);
  REQUIRE(words.runs().size() == 1);
  CHECK(words.runs().front().words == "put back");
  CHECK_FALSE(words.runs().front().is_cut);
}
