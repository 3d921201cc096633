#include "web/widgets/hand.h"

#include <algorithm>
#include <cstddef>

#include <imgui.h>

namespace pouncemark::web {

void Hand::begin_frame(float ratio) {
  const ImGuiIO& io = ImGui::GetIO();
  at_ = {io.MousePos.x / ratio, io.MousePos.y / ratio};
  down_ = ImGui::IsMouseDown(ImGuiMouseButton_Left);
  pressed_ = ImGui::IsMouseClicked(ImGuiMouseButton_Left);
  let_go_ = ImGui::IsMouseReleased(ImGuiMouseButton_Left);
  shift_ = io.KeyShift;
  ctrl_ = io.KeyCtrl;
  is_typing_ = is_typing_next_;
  is_typing_next_ = false;
  enter_ = !is_typing_ && (ImGui::IsKeyPressed(ImGuiKey_Enter, false) ||
                           ImGui::IsKeyPressed(ImGuiKey_KeypadEnter, false) ||
                           ImGui::IsKeyPressed(ImGuiKey_Space, false));
  escape_ = ImGui::IsKeyPressed(ImGuiKey_Escape, false);
  arrow_ = (ImGui::IsKeyPressed(ImGuiKey_UpArrow) ? 1 : 0) -
           (ImGui::IsKeyPressed(ImGuiKey_DownArrow) ? 1 : 0);
  arrow_right_ = (ImGui::IsKeyPressed(ImGuiKey_RightArrow) ? 1 : 0) -
                 (ImGui::IsKeyPressed(ImGuiKey_LeftArrow) ? 1 : 0);
  tab_ = ImGui::IsKeyPressed(ImGuiKey_Tab, false) ? (shift_ ? -1 : 1) : 0;
  turn_ = !is_typing_ && !ctrl_ && ImGui::IsKeyPressed(ImGuiKey_F, false);
  sum_ = !is_typing_ && !ctrl_ && ImGui::IsKeyPressed(ImGuiKey_S, false);
  digit_ = 0;
  for (int digit = 1; digit <= 9; ++digit) {
    const auto key = static_cast<ImGuiKey>(ImGuiKey_0 + digit);
    if (!is_typing_ && !ctrl_ && ImGui::IsKeyPressed(key, false)) digit_ = digit;
  }
  if (pressed_) ring_ = false;
  if (tab_ != 0) ring_ = true;
  order_.clear();
  places_.clear();
  over_something_ = false;
}

void Hand::end_frame() {
  if (let_go_ || !down_) held_.clear();
  if (tab_ == 0 || order_.empty()) return;
  const auto found = std::find(order_.begin(), order_.end(), focus_);
  const auto count = static_cast<std::ptrdiff_t>(order_.size());
  std::ptrdiff_t next = tab_ > 0 ? 0 : count - 1;
  if (found != order_.end()) next = (found - order_.begin() + tab_ + count) % count;
  focus_ = order_[static_cast<std::size_t>(next)];
}

bool Hand::is_covered(const Area& area) const {
  return covered_ || cover_.holds({area.mid_x(), area.mid_y()});
}

void Hand::note(std::string_view id, const Area& area, std::string_view words) {
  if (is_covered(area)) return;
  places_.push_back(NotedPlace{std::string(id), area, std::string(words), false});
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
  touch.held = held_ == id && (down_ || let_go_);
  touch.clicked = (held_ == id && let_go_ && touch.over) || (touch.focused && enter_);
  return touch;
}

Touch Hand::touch(std::string_view id, const Area& area, std::string_view words) {
  if (is_covered(area)) return {};
  note(id, area, words);
  places_.back().can_be_pressed = true;
  order_.emplace_back(id);
  const Touch touch = touched(id, area.holds(at_) && !cover_.holds(at_));
  if (touch.over) ImGui::SetMouseCursor(ImGuiMouseCursor_Hand);
  return touch;
}

Touch Hand::hold(const NotedPlace& thing, bool is_nearest, bool by_tab) {
  if (is_covered(thing.area)) return {};
  places_.push_back(thing);
  places_.back().can_be_pressed = by_tab;
  if (by_tab) order_.push_back(thing.id);
  return touched(thing.id, is_nearest && !over_something_ && !cover_.holds(at_));
}

}  // namespace pouncemark::web
