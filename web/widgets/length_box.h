#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "web/model/entry.h"
#include "web/widgets/text_box.h"

namespace pouncemark::web {

/// A figure in a box.
struct BoxLook {
  std::string figure;  ///< as it is shown
  std::string name;    ///< what it measures, aloud: "length"
  Um um = 0;           ///< the same exactly, for typing and for the arrow keys
  Limits limits;
  bool is_changed = false;  ///< in the hand or just changed: pen colour
  Colour colour = kInk;
};

/// A box on the bench: press it and type, Enter keeps, Esc puts back, the arrow keys step by 1
/// (with Shift by 10). Gives the new figure when one was kept. The wheel does nothing.
std::optional<Um> length_box(const Brush& brush, Hand& hand, OpenBox& open, std::string_view id,
                             const Area& area, const BoxLook& look);

}  // namespace pouncemark::web
