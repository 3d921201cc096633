#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "web/widgets/brush.h"
#include "web/widgets/hand.h"

namespace pouncemark::web {

/// The one box that may be open: its text as typed, and the sentence when it was refused. Kept by
/// the page, so that nothing typed is lost.
struct OpenBox {
  std::string id;
  std::array<char, 2048> text{};
  std::string sentence;
  Area area;              ///< where it stood, for the sentence
  bool is_fresh = false;  ///< opened in this frame: takes the keys and marks all of its text
  /// Typed on the figure before the box had the keys: stands instead of the marked text.
  std::string typed;
};

/// What stands in a box that is not open.
struct TextLook {
  std::string shown;
  std::string text;         ///< what typing begins with
  std::string name;         ///< what it holds, aloud: "length"
  std::string aloud;        ///< its words aloud where those shown are shortened
  bool is_changed = false;  ///< in the hand or just changed: pen colour
  Colour colour = kInk;
  Role role = Role::box_figure;
  Side side = Side::middle;
};

/// What came of a box in this frame.
struct TextEvent {
  std::optional<std::string> finished;  ///< Enter, Tab or a press elsewhere: keep or refuse it
  int step = 0;                         ///< as Hand::step, on the box or while it is open
  bool is_open = false;
};

/// A box with words: press it and type, or type at once where it has the focus; Enter finishes, Esc
/// puts back. Any sign is taken. What is finished stays open until it is kept with close_box or
/// refused.
TextEvent text_box(const Brush& brush, Hand& hand, OpenBox& open, std::string_view id,
                   const Area& area, const TextLook& look);

/// Opens a box with a text, all of it marked.
void open_box(OpenBox& open, std::string_view id, std::string_view text);
void close_box(OpenBox& open);

/// Leaves the box open with what was typed, and the sentence beside it.
void refuse_text(OpenBox& open, Hand& hand, std::string sentence);

/// Draws the sentence of a refused text beside its box, over everything else, and says it aloud.
void refused_sentence(const Brush& brush, Hand& hand, const OpenBox& open, float right_edge);

}  // namespace pouncemark::web
