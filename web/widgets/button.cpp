#include "web/widgets/button.h"

#include <string>

namespace pouncemark::web {

namespace {

bool& for_fingers() {
  static bool is = false;
  return is;
}

float by_hand(float large, float finger, float mouse) {
  return text_size() == TextSize::large ? large : is_for_fingers() ? finger : mouse;
}

}  // namespace

bool is_for_fingers() { return for_fingers(); }

void set_for_fingers(bool is) { for_fingers() = is; }

float button_height() { return by_hand(52, 48, 38); }

float box_height() { return by_hand(54, 48, 44); }

float button_width(const Brush& brush, std::string_view words, bool bold) {
  return brush.width_of(words, Role::text, bold) + 32;
}

void focus_ring(const Brush& /*brush*/, Hand& hand, const Area& area, bool focused) {
  if (focused) hand.set_ring(area);
}

void draw_focus_ring(const Brush& brush, const Hand& hand) {
  const Area* area = hand.ring_area();
  if (area != nullptr) brush.frame(area->inset(-3.5f), kInk, 3, kCorner + 2);
}

bool button(const Brush& brush, Hand& hand, std::string_view id, const Area& area,
            std::string_view words, const ButtonLook& look) {
  const std::string_view aloud = look.aloud.empty() ? words : look.aloud;
  Touch touch;
  if (look.is_idle)
    hand.note(id, area, aloud);
  else
    touch = hand.touch(id, area, aloud);
  if (look.kind == ButtonKind::chosen) hand.is(id, PlaceState::chosen);
  Ink ink{look.role, look.kind != ButtonKind::plain, kInk};
  if (look.kind == ButtonKind::main) {
    brush.fill(area, look.is_idle ? kPale : touch.held ? kPen : touch.over ? kSoft : kInk, kCorner);
    ink.colour = kWhite;
  } else {
    brush.fill(area, touch.over ? kMat : kPaper, kCorner);
    const bool strong = look.kind == ButtonKind::chosen || touch.held;
    brush.frame(area, strong ? kInk : look.is_idle ? kPale : kSoft, strong ? 3.0f : 1.5f, kCorner);
    if (look.is_idle) ink.colour = kPale;
  }
  brush.centred(area, words, ink);
  focus_ring(brush, hand, area, touch.focused);
  return touch.clicked;
}

}  // namespace pouncemark::web
