#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "web/model/entry.h"
#include "web/widgets/brush.h"
#include "web/widgets/hand.h"

namespace pouncemark::web {

/// The one box that may be open: its text as typed, and the sentence when it was refused. Kept by
/// the page, so that nothing typed is lost.
struct OpenBox {
  std::string id;
  std::array<char, 64> text{};
  std::string sentence;
  Area area;              ///< where it stood, for the sentence
  bool is_fresh = false;  ///< opened in this frame: takes the keys and marks all of its text
  /// Typed on the figure before the box had the keys: stands instead of the marked text.
  std::string typed;
};

/// A figure in a box.
struct BoxLook {
  std::string figure;  ///< as it is shown
  std::string name;    ///< what it measures, aloud: "length"
  Um um = 0;           ///< the same exactly, for typing and for the arrow keys
  Limits limits;
  bool is_changed = false;  ///< in the hand or just changed: pen colour
  Colour colour = kInk;
};

/// A box on the bench: press it and type, or type at once where it has the focus; Enter keeps, Esc
/// puts back, the arrow keys step by 1 (with Shift by 10). Gives the new figure when one was kept.
/// The wheel does nothing.
std::optional<Um> length_box(const Brush& brush, Hand& hand, OpenBox& open, std::string_view id,
                             const Area& area, const BoxLook& look);

/// Draws the sentence of a refused text beside its box, over everything else.
void refused_sentence(const Brush& brush, const OpenBox& open, float right_edge);

}  // namespace pouncemark::web
