#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "web/widgets/area.h"

namespace pouncemark::web {

/// What the hand does to one thing in this frame.
struct Touch {
  bool over = false;     ///< the pointer stands on it
  bool taken = false;    ///< pressed in this frame
  bool held = false;     ///< pressed on it and not yet let go
  bool clicked = false;  ///< pressed and let go on it, or Enter or space while it has the focus
  bool focused = false;
};

/// A thing with a name and where it stands, for the text mirror and for tests.
struct NotedPlace {
  std::string id;
  Area area;
  std::string words;  ///< what it is called aloud; empty: as it is
  bool can_be_pressed = false;
};

/// Pointer and keys for our own widgets: which thing is under the pointer, which is held, which has
/// the focus. Ids are stable words ("door.sleeve"). Things are asked in drawing order.
class Hand {
 public:
  /// Reads pointer and keys; `ratio` turns device pixels into CSS pixels.
  void begin_frame(float ratio);
  /// Moves the focus as Tab asked, and forgets what is no longer there.
  void end_frame();

  Touch touch(std::string_view id, const Area& area, std::string_view words = {});
  /// A thing to be pulled: the same, but what was asked before it comes first, and `is_nearest`
  /// says whether it is the one that the pointer takes. Tab stops at it where `by_tab`.
  Touch hold(const NotedPlace& thing, bool is_nearest, bool by_tab);
  /// Notes a place without making it a thing to press (a figure on a slip).
  void note(std::string_view id, const Area& area, std::string_view words = {});

  /// While set, nothing can be touched: a slip that must be answered lies over it.
  void set_covered(bool covered) { covered_ = covered; }
  /// While set, what stands under this part of the screen cannot be touched: a slip lies over it.
  /// An empty area uncovers.
  void set_cover(const Area& cover) { cover_ = cover; }

  Spot at() const { return at_; }
  bool is_down() const { return down_; }
  bool let_go() const { return let_go_; }
  bool shift() const { return shift_; }
  bool ctrl() const { return ctrl_; }
  /// Pressed in this frame and not taken by an open box.
  bool escape() const { return escape_; }
  /// The digit from 1 to 9 pressed in this frame; 0 when none was.
  int digit() const { return digit_; }
  bool tab() const { return tab_ != 0; }
  /// F was pressed while nothing was being typed: turns the piece over.
  bool turn_key() const { return turn_; }
  /// S was pressed while nothing was being typed: shows the sum of the figure that has the focus.
  bool sum_key() const { return sum_; }
  int arrow_up() const { return arrow_; }           ///< +1 up, -1 down, 0 neither
  int arrow_right() const { return arrow_right_; }  ///< +1 right, -1 left, 0 neither
  bool is_typing() const { return is_typing_; }
  void set_typing(bool typing) { is_typing_next_ = typing; }

  void focus(std::string_view id) { focus_ = std::string(id); }
  const std::string& focused() const { return focus_; }
  bool has_focus_ring() const { return ring_; }

  const std::vector<NotedPlace>& places() const { return places_; }

 private:
  bool is_covered(const Area& area) const;
  Touch touched(std::string_view id, bool over);

  Spot at_;
  bool down_ = false;
  bool pressed_ = false;
  bool let_go_ = false;
  bool shift_ = false;
  bool ctrl_ = false;
  bool enter_ = false;
  bool escape_ = false;
  int digit_ = 0;
  int arrow_ = 0;
  int arrow_right_ = 0;
  int tab_ = 0;
  bool turn_ = false;
  bool sum_ = false;
  bool is_typing_ = false;
  bool is_typing_next_ = false;
  bool covered_ = false;
  Area cover_;
  bool over_something_ = false;
  bool ring_ = false;
  std::string held_;
  std::string focus_;
  std::vector<std::string> order_;
  std::vector<NotedPlace> places_;
};

}  // namespace pouncemark::web
