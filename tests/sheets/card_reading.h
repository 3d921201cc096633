#pragma once

#include <string>
#include <vector>

#include "engine/sheets/card_cut.h"
#include "engine/sheets/wrapped_words.h"
#include "tests/drawing/picture_reading.h"

/// Looks at a drawn card: how far its words and ink reach, and which words meet.
namespace pouncemark::tests {

/// Within what a printer reaches.
inline bool within(const drawing::Box& box, const sheets::CardCut& cut) {
  return box.low.x >= sheets::kBorderUm && box.low.y >= sheets::kBorderUm &&
         box.high.x <= cut.page.width_um - sheets::kBorderUm &&
         box.high.y <= cut.page.length_um - sheets::kBorderUm;
}

/// The room a run of words takes at most; it may read upwards.
inline drawing::Box reach_of(const drawing::Text& text) {
  const Um wide = sheets::words_width_um(text.words, text.size_um);
  const Um left = text.align == drawing::Align::left     ? 0
                  : text.align == drawing::Align::centre ? -wide / 2
                                                         : -wide;
  const Um under = text.size_um / 4;
  const Um over = text.size_um * 3 / 4;
  if (text.quarter_turns == 1) {
    return {{text.at.x - over, text.at.y + left}, {text.at.x + under, text.at.y + left + wide}};
  }
  return {{text.at.x + left, text.at.y - under}, {text.at.x + left + wide, text.at.y + over}};
}

/// Ink of lines and areas, half a pen beyond every line.
inline std::vector<drawing::Box> ink_on(const drawing::Drawing& page) {
  std::vector<drawing::Box> ink;
  for (const drawing::Fill& fill : all_of<drawing::Fill>(page)) {
    ink.push_back(tests::reach_of(fill.steps));
  }
  for (const drawing::Stroke& stroke : all_of<drawing::Stroke>(page)) {
    drawing::Box box = tests::reach_of(stroke.steps);
    const bool is_level = box.low.y == box.high.y;
    const bool is_upright = box.low.x == box.high.x;
    const Um half = stroke.pen.width_um / 2;
    // Lines have no caps: a straight one reaches no farther than its ends.
    if (!is_level) box = {{box.low.x - half, box.low.y}, {box.high.x + half, box.high.y}};
    if (!is_upright) box = {{box.low.x, box.low.y - half}, {box.high.x, box.high.y + half}};
    ink.push_back(box);
  }
  return ink;
}

/// Pairs of words that lie over one another.
inline std::vector<std::string> words_that_meet(const std::vector<drawing::Text>& words) {
  std::vector<std::string> met;
  for (std::size_t i = 0; i < words.size(); ++i) {
    for (std::size_t j = i + 1; j < words.size(); ++j) {
      const drawing::Box a = reach_of(words[i]);
      const drawing::Box b = reach_of(words[j]);
      // Descenders may stand beside the heads of the line below.
      const bool apart = a.high.x <= b.low.x || b.high.x <= a.low.x ||
                         a.high.y <= b.low.y + 1'200 || b.high.y <= a.low.y + 1'200;
      if (!apart) met.push_back(words[i].words + " / " + words[j].words);
    }
  }
  return met;
}

}  // namespace pouncemark::tests
