#include "engine/sheets/list_flow.h"

#include "engine/drawing/shapes.h"

#include "tests/drawing/picture_reading.h"
#include "tests/support/random.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::sheets;

namespace {

Strip strip_of(Um high) {
  Strip strip;
  strip.high_um = high;
  return strip;
}

/// Entries 10 high that say their index.
Block block_of(std::int64_t entries, int columns, bool stays_whole = false) {
  Block block;
  block.head.push_back(strip_of(20'000));
  block.again = strip_of(5'000);
  block.entries = entries;
  block.columns = columns;
  block.entry_wide_um = 40'000;
  block.entry_high_um = 10'000;
  block.entry = [](std::int64_t index) {
    drawing::Drawing picture;
    drawing::Text text;
    text.words = std::to_string(index);
    picture.items.emplace_back(text);
    return picture;
  };
  block.tail.push_back(strip_of(10'000));
  block.stays_whole = stays_whole;
  return block;
}

/// A stretch in short: page, column, first entry, entries, and h, a, t for head, again, tail.
std::string said(const Placed& placed) {
  return std::to_string(placed.page) + "." + std::to_string(placed.column) + ": " +
         std::to_string(placed.first) + " " + std::to_string(placed.entries) + " " +
         (placed.has_head ? "h" : "") + (placed.is_continued ? "a" : "") +
         (placed.has_tail ? "t" : "");
}

std::vector<std::string> said(const std::vector<Block>& blocks, const FlowRoom& room) {
  std::vector<std::string> all;
  for (const Placed& placed : flowed(blocks, room)) all.push_back(said(placed));
  return all;
}

Um height_of(const Block& block, const Placed& placed) {
  Um high = placed.levels * block.entry_high_um;
  if (placed.has_head) high += block.head[0].high_um;
  if (placed.is_continued) high += block.again.high_um;
  if (placed.has_tail) high += block.tail[0].high_um;
  return high;
}

}  // namespace

TEST_CASE("blocks follow one another down the columns, page after page") {
  struct Case {
    const char* name;
    std::vector<Block> blocks;
    std::vector<std::string> said;
  };
  // Two columns, 100 high; head and tail take 30.
  const FlowRoom room{2, 100'000, 5'000};
  const Case table[] = {
      {"one that fits", {block_of(7, 1)}, {"0.0: 0 7 ht"}},
      {"one entry too many: the tail keeps one", {block_of(8, 1)}, {"0.0: 0 7 h", "0.1: 7 1 at"}},
      {"two side by side", {block_of(14, 2)}, {"0.0: 0 14 ht"}},
      {"an odd one has a longer first column", {block_of(13, 2)}, {"0.0: 0 13 ht"}},
      {"no entry at all", {block_of(0, 1)}, {"0.0: 0 0 ht"}},
      {"the second goes on where the first ends",
       {block_of(1, 1), block_of(2, 1)},
       {"0.0: 0 1 ht", "0.0: 0 2 ht"}},
      {"three levels are the least that stay behind",
       {block_of(1, 1), block_of(9, 1)},
       {"0.0: 0 1 ht", "0.0: 0 3 h", "0.1: 3 6 at"}},
      {"with room for two it goes to the next column",
       {block_of(2, 1), block_of(9, 1)},
       {"0.0: 0 2 ht", "0.1: 0 8 h", "1.0: 8 1 at"}},
      {"one that stays whole goes to the next column",
       {block_of(1, 1), block_of(7, 1, true)},
       {"0.0: 0 1 ht", "0.1: 0 7 ht"}},
      {"one that is too long to stay whole begins at once",
       {block_of(1, 1), block_of(8, 1, true)},
       {"0.0: 0 1 ht", "0.0: 0 3 h", "0.1: 3 5 at"}},
      {"a long one takes columns and pages",
       {block_of(40, 2)},
       {"0.0: 0 16 h", "0.1: 16 18 a", "1.0: 34 6 at"}}};
  int count = 0;
  for (const Case& one : table) {
    CAPTURE(std::string(one.name));
    CHECK(said(one.blocks, room) == one.said);
    ++count;
  }
  CHECK(count == 11);
}

TEST_CASE("whatever the blocks, each entry is laid once, in its order, and nothing overflows") {
  tests::Dice dice(20'261'126);
  INFO(dice.words());
  int laid = 0;
  for (int times = 0; times < 400; ++times) {
    std::vector<Block> blocks;
    const std::int64_t count = dice.between(1, 6);
    for (std::int64_t i = 0; i < count; ++i) {
      const std::int64_t entries = dice.between(0, 60);
      const std::int64_t columns = dice.between(1, 3);
      blocks.push_back(block_of(entries, static_cast<int>(columns), dice.once_in(2)));
    }
    const Um high = dice.between(40'000, 200'000);
    const std::int64_t columns = dice.between(1, 3);
    const FlowRoom room{static_cast<int>(columns), high, 5'000};
    std::vector<std::int64_t> next(blocks.size(), 0);
    std::vector<int> heads(blocks.size(), 0);
    std::vector<int> tails(blocks.size(), 0);
    bool holds = true;
    for (const Placed& placed : flowed(blocks, room)) {
      holds = holds && placed.first == next[placed.block];
      next[placed.block] += placed.entries;
      heads[placed.block] += placed.has_head ? 1 : 0;
      tails[placed.block] += placed.has_tail ? 1 : 0;
      holds = holds && placed.from_top_um + height_of(blocks[placed.block], placed) <= high;
      holds = holds && placed.entries <= placed.levels * blocks[placed.block].columns;
    }
    for (std::size_t i = 0; i < blocks.size(); ++i) {
      holds = holds && next[i] == blocks[i].entries && heads[i] == 1 && tails[i] == 1;
    }
    if (holds) ++laid;
  }
  CHECK(laid == 400);
}

TEST_CASE("entries are counted down the first column, then down the next") {
  const Block block = block_of(5, 2);
  const std::vector<Placed> placed = flowed({block}, {1, 100'000, 0});
  drawing::Drawing picture;
  add_placed(block, placed[0], {1'000, 90'000}, &picture);
  const auto texts = tests::all_of<drawing::Text>(picture);
  const drawing::Spot spots[] = {
      {1'000, 60'000}, {1'000, 50'000}, {1'000, 40'000}, {41'000, 60'000}, {41'000, 50'000}};
  CHECK(texts.size() == 5);
  for (std::size_t i = 0; i < texts.size(); ++i) {
    CHECK(texts[i].words == std::to_string(i));
    CHECK(texts[i].at == spots[i]);
  }
}

TEST_CASE("a picture drawn again elsewhere is the same picture") {
  drawing::Drawing picture;
  drawing::add_line(picture, {0, 0}, {1'000, 2'000}, {100, {}, 0});
  drawing::add_dot(picture, {500, 500}, 300);
  picture.items.emplace_back(drawing::ClipStart{{{0, 0}, {10, 10}}});
  picture.items.emplace_back(drawing::ClipEnd{});
  drawing::Drawing moved;
  add_moved(picture, {7'000, -3'000}, &moved);
  CHECK(moved.items.size() == 4);
  const auto stroke = tests::all_of<drawing::Stroke>(moved)[0];
  CHECK(stroke.steps[1].to == drawing::Spot{8'000, -1'000});
  const drawing::Box dot = tests::reach_of(tests::all_of<drawing::Fill>(moved)[0].steps);
  CHECK(dot.low == drawing::Spot{7'200, -2'800});
  CHECK(tests::all_of<drawing::ClipStart>(moved)[0].box.high == drawing::Spot{7'010, -2'990});
  drawing::Drawing back;
  add_moved(moved, {-7'000, 3'000}, &back);
  CHECK(tests::all_of<drawing::Stroke>(back)[0].steps[1].to == drawing::Spot{1'000, 2'000});
}
