#include "web/panels/closeup_frame.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "engine/base/number_text.h"
#include "web/panels/end_measures.h"

namespace pouncemark::web {
namespace {

constexpr double kKeyFactor = 1.25;
constexpr Um kKeyStep = 50'000;

Um length_of(const Page& page) { return ends_of(page.bench.now(), page.bench.place()).length; }

Um shown_in(const EndCloseup& end) {
  return to_um(static_cast<double>(end.sleeve.width()) / end.lying.px_per_mm);
}

void move_later(Page& page, const EndCloseup& end, Um by) {
  page.later([&view = page.state.closeups, is_bottom = end.is_bottom, by, length = length_of(page),
              shown = shown_in(end)] { move_closeup(view, is_bottom, by, length, shown); });
}

void scale_later(Page& page, const EndCloseup& end, double factor) {
  page.later([&view = page.state.closeups, factor, length = length_of(page),
              shown = shown_in(end)] { scale_closeups(view, factor, length, shown); });
}

void frame(Page& page, const WholeStrip& strip, const EndCloseup& end) {
  const Um from = end.lying.from_um;
  const Area shape = end_frame(strip, from, from + shown_in(end));
  page.brush.frame(shape, kInk, 2.2f, 3);
  const std::string words = std::string("close-up of the ") + (end.is_bottom ? "bottom" : "top") +
                            " end, from " + mm_text(from, 0) + " to " +
                            mm_text(from + shown_in(end), 0);
  Hand& hand = page.hand;
  // The top end of the strip is pulled itself: the frame leaves it room.
  Area area = shape;
  area.right = std::max(area.left + 34, std::min(area.right, strip.sheet.right - kReachPx - 1));
  const Touch touch = hand.touch(end.is_bottom ? "frame.bottom" : "frame.top", area, words);
  CloseupView& view = page.state.closeups;
  if (touch.focused) {
    hand.stands_on(kOnCloseup);
    if (hand.asked(KeyAct::move_on)) move_later(page, end, kKeyStep);
    if (hand.asked(KeyAct::move_back)) move_later(page, end, -kKeyStep);
  }
  if (touch.taken) {
    view.held_um = view.from_end(end.is_bottom);
    view.held_x = hand.at().x;
  }
  if (!touch.held) return;
  const Um pulled = to_um(static_cast<double>(hand.at().x - view.held_x) / strip.lying.px_per_mm);
  const Um to = view.held_um + (end.is_bottom ? pulled : -pulled);
  const Um by = to - view.from_end(end.is_bottom);
  if (by != 0) move_later(page, end, end.is_bottom ? by : -by);
}

/// The wheel over the one that was pressed last, two fingers over either: along the piece.
void move_by_hand(Page& page, const EndCloseup& end) {
  const Hand& hand = page.hand;
  CloseupView& view = page.state.closeups;
  const bool over = hand.is_over(end.mat);
  bool& pressed = end.is_bottom ? view.bottom_pressed : view.top_pressed;
  if (hand.pressed()) pressed = over;
  // What is held stays under the hand.
  const bool is_held = !page.state.pulling.id.empty();
  if (!over || is_held || !(pressed || hand.is_finger())) return;
  const float px = hand.wheel().x + (hand.is_finger() ? 0 : hand.wheel().y);
  if (px != 0) move_later(page, end, -to_um(static_cast<double>(px) / end.lying.px_per_mm));
  if (hand.pinch() != 0) scale_later(page, end, std::exp(static_cast<double>(hand.pinch())));
}

void move_by_keys(Page& page, const EndPair& ends) {
  const Hand& hand = page.hand;
  CloseupView& view = page.state.closeups;
  const EndCloseup& end = ends.bottom_end;
  if (hand.asked(KeyAct::nearer)) scale_later(page, end, kKeyFactor);
  if (hand.asked(KeyAct::further)) scale_later(page, end, 1 / kKeyFactor);
  if (hand.asked(KeyAct::to_the_ends)) page.later([&view] { view = {view.place}; });
  if (hand.asked(KeyAct::to_the_middle)) {
    const Um half = length_of(page) / 2;
    page.later([&view, bottom = half - shown_in(end), top = half - shown_in(ends.top_end)] {
      view.bottom_um = std::max<Um>(bottom, 0);
      view.top_um = std::max<Um>(top, 0);
    });
  }
}

/// Where it stands, under its rule at the inner side; with the button back where `with_button`.
void place_words(Page& page, const EndCloseup& end, bool with_button) {
  const Brush& brush = page.brush;
  const float high = button_height();
  const float top = end.mat.bottom - high - 4;
  const float sign = end.is_bottom ? -1.0f : 1.0f;
  float x = end.is_bottom ? end.mat.right - 10 : end.mat.left + 10;
  if (with_button) {
    const float wide = button_width(brush, "Both ends");
    const Area area = area_at(end.is_bottom ? x - wide : x, top, wide, high);
    if (button(brush, page.hand, "closeups.ends", area, "Both ends")) {
      page.later([&view = page.state.closeups] { view = {view.place}; });
    }
    x += sign * (wide + 12);
  }
  const Um from = end.lying.from_um;
  const std::string words = "from " + mm_text(from, 0) + " to " + mm_text(from + shown_in(end), 0);
  const float base = top + high / 2 + brush.rise(Role::text) / 2;
  const float wide = brush.words(
      {x, base}, words, {Role::text, false, kInk, end.is_bottom ? Side::right : Side::left});
  const float left = end.is_bottom ? x - wide : x;
  page.hand.note(end.is_bottom ? "closeups.bottom" : "closeups.top",
                 {left, base - 18, left + wide, base + 6}, words);
}

}  // namespace

void closeup_frames(Page& page, const WholeStrip& strip, const EndPair& ends) {
  frame(page, strip, ends.bottom_end);
  frame(page, strip, ends.top_end);
}

void closeup_moves(Page& page, const EndPair& ends) {
  move_by_hand(page, ends.bottom_end);
  move_by_hand(page, ends.top_end);
  move_by_keys(page, ends);
  const CloseupView& view = page.state.closeups;
  if (view.is_at_ends()) return;
  const bool scaled = view.scale != 1;
  const bool at_bottom = view.bottom_um != 0 || view.top_um == 0;
  if (scaled || view.bottom_um != 0) place_words(page, ends.bottom_end, at_bottom);
  if (scaled || view.top_um != 0) place_words(page, ends.top_end, !at_bottom);
}

}  // namespace pouncemark::web
