#pragma once

#include <string_view>

#include "web/widgets/brush.h"
#include "web/widgets/hand.h"

namespace pouncemark::web {

/// Main: solid ink, one in a place. Plain: outlined. Chosen: a switch that is on, 3 px ink and
/// bold.
enum class ButtonKind { main, plain, chosen };

struct ButtonLook {
  ButtonKind kind = ButtonKind::plain;
  bool is_idle = false;  ///< nothing to do with it now; cannot be pressed
  Role role = Role::text;
  std::string_view aloud{};  ///< what a reader says, where the words alone would not be enough
};

/// A button; true when it was pressed.
bool button(const Brush& brush, Hand& hand, std::string_view id, const Area& area,
            std::string_view words, const ButtonLook& look = {});

/// Width a button wants for its words.
float button_width(const Brush& brush, std::string_view words, bool bold = true);

/// Whether targets are large enough for fingers in gloves: on a tablet, and once a finger has
/// pressed.
bool is_for_fingers();
void set_for_fingers(bool is);

/// Height of a button at the text size that is set: 38, for fingers 48, with large text 52.
float button_height();

/// Height of a box with a figure in it.
float box_height();

/// Says where the ring goes round a thing that has the focus, where that is not its own area.
void focus_ring(const Brush& brush, Hand& hand, const Area& area, bool focused);

/// The ring itself, over everything, once a frame.
void draw_focus_ring(const Brush& brush, const Hand& hand);

}  // namespace pouncemark::web
