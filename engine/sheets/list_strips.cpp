#include "engine/sheets/list_strips.h"

#include <iterator>
#include <utility>

#include "engine/drawing/shapes.h"
#include "engine/sheets/wrapped_words.h"

namespace pouncemark::sheets {
namespace {

constexpr Um kBoxPenUm = 300;

/// The base line stands this much of the pitch over the foot of its strip.
Um base_of(const WordStyle& style) { return style.pitch_um / 4; }

}  // namespace

void add_words(drawing::Spot at, const WordStyle& style, drawing::Align align, std::string words,
               drawing::Drawing* picture) {
  drawing::Text text;
  text.at = at;
  text.size_um = style.size_um;
  text.weight = style.weight;
  text.align = align;
  text.words = std::move(words);
  drawing::add_text(*picture, std::move(text));
}

void add_tick_box(drawing::Spot low, drawing::Drawing* picture) {
  drawing::add_rectangle(*picture, {low, {low.x + kTickBoxUm, low.y + kTickBoxUm}},
                         {kBoxPenUm, {}, 0});
}

std::vector<Strip> word_strips(std::string_view words, const WordStyle& style, Um wide_um) {
  std::vector<Strip> strips;
  for (std::string& line : wrapped(words, style.size_um, wide_um)) {
    Strip strip;
    strip.high_um = style.pitch_um;
    add_words({0, base_of(style)}, style, drawing::Align::left, std::move(line), &strip.picture);
    strips.push_back(std::move(strip));
  }
  return strips;
}

void append(std::vector<Strip> more, std::vector<Strip>* strips) {
  strips->insert(strips->end(), std::make_move_iterator(more.begin()),
                 std::make_move_iterator(more.end()));
}

Strip empty_strip(Um high_um) {
  Strip strip;
  strip.high_um = high_um;
  return strip;
}

Block text_block(std::string_view title, std::vector<Strip> lines, Um wide_um) {
  Block block;
  block.head = word_strips(title, kTitleWords, wide_um);
  block.entries = static_cast<std::int64_t>(lines.size());
  block.entry_wide_um = wide_um;
  block.entry_high_um = kListTextPitchUm;
  block.entry = [lines = std::move(lines)](std::int64_t index) {
    return lines[static_cast<std::size_t>(index)].picture;
  };
  return block;
}

}  // namespace pouncemark::sheets
