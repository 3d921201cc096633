#include "web/widgets/hand.h"

#include "web/widgets/bench_key.h"

#include <algorithm>
#include <cstddef>
#include <utility>

#include <imgui.h>

namespace pouncemark::web {

void Hand::read_keys(KeyPlaces places) {
  const ImGuiIO& io = ImGui::GetIO();
  key_places_ = is_typing_ ? kInBox : places == kOnBench ? focus_place_ : places;
  focus_place_ = kElsewhere;
  asked_.clear();
  for (const KeyRow& row : key_table()) {
    if ((row.places & key_places_) == 0) continue;
    int which = 0;
    for (const KeyCombo& combo : combos_of(row)) {
      ++which;
      const bool is_pressed = ImGui::IsKeyPressed(bench_key(combo.number), row.repeats) &&
                              asks_for({combo.number, io.KeyCtrl, io.KeyShift}, combo);
      if (is_pressed) asked_.push_back(Asked{row.act, which});
    }
  }
}

int Hand::which(KeyAct act) const {
  for (const Asked& one : asked_) {
    if (one.act == act) return one.which;
  }
  return 0;
}

int Hand::step() const {
  const int by = (asked(KeyAct::more) ? 1 : 0) - (asked(KeyAct::less) ? 1 : 0);
  return shift_ ? by * 10 : by;
}

int Hand::arrow_right() const {
  const int which = this->which(KeyAct::pull);
  return which == 0 || which % 4 > 1 ? 0 : which % 4 == 0 ? -1 : 1;
}

int Hand::arrow_up() const {
  const int which = this->which(KeyAct::pull);
  return which == 0 || which % 4 < 2 ? 0 : which % 4 == 2 ? 1 : -1;
}

int Hand::lines_on(const Area& area, float line_height) {
  if (!is_over(area) || wheel_.y == 0) return 0;
  wheel_rest_ -= wheel_.y;
  const auto lines = static_cast<int>(wheel_rest_ / line_height);
  wheel_rest_ -= static_cast<float>(lines) * line_height;
  return lines;
}

void Hand::focus_by_keys(std::string_view id) {
  focus(id);
  ring_ = true;
}

void Hand::begin_frame(float ratio, KeyPlaces places) {
  const ImGuiIO& io = ImGui::GetIO();
  at_ = {io.MousePos.x / ratio, io.MousePos.y / ratio};
  down_ = ImGui::IsMouseDown(ImGuiMouseButton_Left);
  pressed_ = ImGui::IsMouseClicked(ImGuiMouseButton_Left);
  let_go_ = ImGui::IsMouseReleased(ImGuiMouseButton_Left);
  shift_ = io.KeyShift;
  // A scale comes as the wheel with Ctrl, in a frame of its own.
  constexpr float kStepPx = 100;
  const bool is_scale = io.KeyCtrl && io.MouseWheel != 0;
  pinch_ = is_scale ? io.MouseWheel : 0;
  wheel_ = is_scale ? Spot{} : Spot{io.MouseWheelH * kStepPx, io.MouseWheel * kStepPx};
  is_finger_ = io.MouseSource == ImGuiMouseSource_TouchScreen;
  ctrl_ = io.KeyCtrl && !is_scale;
  is_typing_ = is_typing_next_;
  is_typing_next_ = false;
  read_keys(places);
  if (pressed_) ring_ = false;
  has_ring_ = false;
  places_.clear();
  over_something_ = false;
  group_ = 0;
  goes_left_to_right_.assign(1, false);
}

void Hand::start_group(bool left_to_right) {
  ++group_;
  goes_left_to_right_.push_back(left_to_right);
}

void Hand::end_frame() {
  if (let_go_ || !down_) held_.clear();
  const auto& sorted = goes_left_to_right_;
  std::stable_sort(places_.begin(), places_.end(),
                   [&sorted](const NotedPlace& a, const NotedPlace& b) {
                     if (a.group != b.group) return a.group < b.group;
                     return sorted[static_cast<std::size_t>(a.group)] && a.area.left < b.area.left;
                   });
  const int by = (asked(KeyAct::next_thing) ? 1 : 0) - (asked(KeyAct::thing_before) ? 1 : 0);
  if (by != 0) walk(by);
}

void Hand::walk(int by) {
  std::vector<const NotedPlace*> stops;
  std::ptrdiff_t at = -1;
  for (const NotedPlace& place : places_) {
    if (!place.can_be_pressed) continue;
    if (place.id == focus_) at = static_cast<std::ptrdiff_t>(stops.size());
    stops.push_back(&place);
  }
  if (stops.empty()) return;
  const auto count = static_cast<std::ptrdiff_t>(stops.size());
  const std::ptrdiff_t next = at < 0 ? (by > 0 ? 0 : count - 1) : (at + by + count) % count;
  focus_by_keys(stops[static_cast<std::size_t>(next)]->id);
}

void Hand::is(std::string_view id, PlaceState state) {
  if (!places_.empty() && places_.back().id == id) places_.back().state = state;
}

bool Hand::is_covered(const Area& area) const {
  return covered_ || cover_.holds({area.mid_x(), area.mid_y()});
}

void Hand::note(std::string_view id, const Area& area, std::string_view words) {
  if (is_covered(area)) return;
  NotedPlace place;
  place.id = std::string(id);
  place.area = area;
  place.words = std::string(words);
  place.group = group_;
  places_.push_back(std::move(place));
}

Touch Hand::touched(std::string_view id, bool over) {
  Touch touch;
  touch.over = over && (held_.empty() || held_ == id);
  over_something_ = over_something_ || touch.over;
  if (pressed_ && touch.over && held_.empty()) {
    held_ = std::string(id);
    focus_ = held_;
    touch.taken = true;
  }
  touch.focused = focus_ == id;
  if (touch.focused) {
    has_ring_ = true;
    ring_area_ = places_.back().area;
  }
  touch.held = held_ == id && (down_ || let_go_);
  touch.clicked = (held_ == id && let_go_ && touch.over) || (touch.focused && asked(KeyAct::press));
  return touch;
}

Touch Hand::touch(std::string_view id, const Area& area, std::string_view words) {
  if (is_covered(area)) return {};
  note(id, area, words);
  places_.back().can_be_pressed = true;
  const Touch touch = touched(id, area.holds(at_) && !cover_.holds(at_));
  if (touch.over) ImGui::SetMouseCursor(ImGuiMouseCursor_Hand);
  return touch;
}

Touch Hand::hold(const NotedPlace& thing, bool is_nearest, bool by_tab) {
  if (is_covered(thing.area)) return {};
  places_.push_back(thing);
  places_.back().group = group_;
  places_.back().can_be_pressed = by_tab;
  return touched(thing.id, is_nearest && !over_something_ && !cover_.holds(at_));
}

}  // namespace pouncemark::web
