#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "web/model/keys.h"
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

/// What a reader says of a thing beside its name: a switch that is on, or the one of its row that
/// is open.
enum class PlaceState { plain, chosen, current };

/// A thing with a name and where it stands, for the text mirror and for tests.
struct NotedPlace {
  std::string id;
  Area area;
  std::string words;  ///< what it is called aloud; empty: as it is
  bool can_be_pressed = false;
  PlaceState state = PlaceState::plain;
  int group = 0;  ///< groups are walked one after another
};

/// Pointer and keys for our own widgets: which thing is under the pointer, which is held, which has
/// the focus. Ids are stable words ("door.sleeve"). Things are asked in drawing order.
class Hand {
 public:
  /// Reads pointer and keys; `ratio` turns device pixels into CSS pixels, `places` says where the
  /// bench stands: kOnBench where nothing lies over it.
  void begin_frame(float ratio, KeyPlaces places);
  /// Moves the focus as Tab asked, and forgets what is no longer there.
  void end_frame();

  Touch touch(std::string_view id, const Area& area, std::string_view words = {});
  /// A thing to be pulled: the same, but what was asked before it comes first, and `is_nearest`
  /// says whether it is the one that the pointer takes. Tab stops at it where `by_tab`.
  Touch hold(const NotedPlace& thing, bool is_nearest, bool by_tab);
  /// Notes a place without making it a thing to press (a figure on a slip).
  void note(std::string_view id, const Area& area, std::string_view words = {});

  /// The keys of this frame are answered: nobody else acts on them.
  void keys_are_taken() { asked_.clear(); }

  /// Tab walks what is drawn from now on after all that came before; from left to right where
  /// `left_to_right`, else as it is drawn.
  void start_group(bool left_to_right);
  /// What a reader says of the thing just touched under `id`.
  void is(std::string_view id, PlaceState state);

  /// While set, nothing can be touched: a slip that must be answered lies over it.
  void set_covered(bool covered) { covered_ = covered; }
  /// While set, what stands under this part of the screen cannot be touched: a slip lies over it.
  /// An empty area uncovers.
  void set_cover(const Area& cover) { cover_ = cover; }

  Spot at() const { return at_; }
  /// The pointer stands in an area that nothing lies over.
  bool is_over(const Area& area) const {
    return !covered_ && area.holds(at_) && !cover_.holds(at_);
  }
  bool pressed() const { return pressed_; }
  bool is_finger() const { return is_finger_; }
  /// What the wheel or two fingers moved by in this frame, CSS pixels: the thing goes with it.
  Spot wheel() const { return wheel_; }
  /// What two fingers, or the wheel with Ctrl, scale by: the natural logarithm.
  float pinch() const { return pinch_; }
  /// The whole lines to go on in a list under the pointer; negative: back.
  int lines_on(const Area& area, float line_height);
  bool is_down() const { return down_; }
  bool let_go() const { return let_go_; }
  bool shift() const { return shift_; }
  bool ctrl() const { return ctrl_; }
  /// The table's act was asked for in this frame, by a key that works where the bench stands.
  bool asked(KeyAct act) const { return which(act) != 0; }
  /// Which of the row's keys asked for it, counted from 1; 0 when none did.
  int which(KeyAct act) const;
  /// Where the keys of this frame were pressed.
  KeyPlaces places_of_keys() const { return key_places_; }
  /// What has the focus and shows it is one of these (kOnFigure, kOnCloseup, kOnLine): the keys of
  /// the next frame are looked up there.
  void stands_on(KeyPlaces place) { focus_place_ = place; }

  bool escape() const { return asked(KeyAct::put_back); }
  bool sum_key() const { return asked(KeyAct::sum); }
  /// +1 or +10 where more was asked for, −1 or −10 where less was; else 0.
  int step() const;
  int arrow_right() const;  ///< +1 where what is held by its grip is to go right, −1 left, else 0
  int arrow_up() const;     ///< +1 up, −1 down, else 0
  bool is_typing() const { return is_typing_; }
  void set_typing(bool typing) { is_typing_next_ = typing; }

  void focus(std::string_view id) { focus_ = std::string(id); }
  /// The same by keys: the ring shows where it is.
  void focus_by_keys(std::string_view id);
  const std::string& focused() const { return focus_; }
  bool has_focus_ring() const { return ring_; }
  /// Where the ring goes, drawn once over everything; by itself round the thing's own area.
  void set_ring(const Area& area) { ring_area_ = area; }
  /// The area the ring goes round; nullptr when nothing has it in this frame.
  const Area* ring_area() const { return ring_ && has_ring_ ? &ring_area_ : nullptr; }

  const std::vector<NotedPlace>& places() const { return places_; }

 private:
  bool is_covered(const Area& area) const;
  Touch touched(std::string_view id, bool over);
  void read_keys(KeyPlaces places);
  void walk(int by);

  Spot at_;
  Spot wheel_;
  float wheel_rest_ = 0;  ///< turned, but not yet by a whole line
  float pinch_ = 0;
  bool is_finger_ = false;
  bool down_ = false;
  bool pressed_ = false;
  bool let_go_ = false;
  bool shift_ = false;
  bool ctrl_ = false;
  struct Asked {
    KeyAct act;
    int which;
  };
  std::vector<Asked> asked_;
  KeyPlaces key_places_ = kOnStart;
  KeyPlaces focus_place_ = kElsewhere;
  bool is_typing_ = false;
  bool is_typing_next_ = false;
  bool covered_ = false;
  Area cover_;
  bool over_something_ = false;
  bool ring_ = false;
  bool has_ring_ = false;  ///< what has the focus stands somewhere in this frame
  Area ring_area_;
  std::string held_;
  std::string focus_;
  int group_ = 0;
  std::vector<bool> goes_left_to_right_;  ///< by group
  std::vector<NotedPlace> places_;
};

}  // namespace pouncemark::web
