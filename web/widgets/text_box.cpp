#include "web/widgets/text_box.h"

#include <algorithm>
#include <cstring>
#include <utility>

#include <imgui.h>
#include <imgui_internal.h>

#include "web/widgets/button.h"

namespace pouncemark::web {
namespace {

/// What was written in this frame while no box had the keys.
std::string written_now() {
  std::string words;
  for (const ImWchar sign : ImGui::GetIO().InputQueueCharacters) {
    // A space has opened the box and is not meant for it.
    if (sign > ' ' && sign < 0x80) words += static_cast<char>(sign);
  }
  return words;
}

/// What was typed before the box had the keys, this frame's `written` with it, takes the place of
/// the marked text. The frame in which a box takes the keys drops what was written in it.
void put_typed_in(OpenBox& open, const std::string& written) {
  if (!ImGui::IsItemActive() || ImGui::IsItemActivated()) open.typed += written;
  if (!ImGui::IsItemActive()) return;
  for (const char sign : open.typed) {
    ImGui::GetIO().AddInputCharacter(static_cast<unsigned char>(sign));
  }
  open.typed.clear();
}

/// The typing itself, inside our own frame. True when the text was finished with Enter.
bool type_in(const Brush& brush, OpenBox& open, const Area& area, Role role) {
  const float ratio = brush.ratio();
  ImFont* face = face_for(role, role == Role::box_figure, open.text.data());
  ImGui::PushFont(face);
  const float height = ImGui::GetFontSize();
  ImGui::PushStyleVar(ImGuiStyleVar_FramePadding,
                      ImVec2(8 * ratio, std::max(0.0f, (area.height() * ratio - height) / 2)));
  ImGui::PushStyleVar(ImGuiStyleVar_FrameBorderSize, 0.0f);
  ImGui::PushStyleColor(ImGuiCol_FrameBg, 0);
  ImGui::PushStyleColor(ImGuiCol_Text, kPen);
  ImGui::PushStyleColor(ImGuiCol_TextSelectedBg, kFold);
  ImGui::PushStyleColor(ImGuiCol_NavHighlight, 0);
  ImGui::SetCursorScreenPos({area.left * ratio, area.top * ratio});
  ImGui::SetNextItemWidth(area.width() * ratio);
  if (open.is_fresh) ImGui::SetKeyboardFocusHere();
  const std::string written = written_now();
  const bool entered =
      ImGui::InputText("##text", open.text.data(), open.text.size(),
                       ImGuiInputTextFlags_EnterReturnsTrue | ImGuiInputTextFlags_AutoSelectAll);
  put_typed_in(open, written);
  ImGui::PopStyleColor(4);
  ImGui::PopStyleVar(2);
  ImGui::PopFont();
  return entered;
}

TextEvent open_text_box(const Brush& brush, Hand& hand, OpenBox& open, const Area& area,
                        const TextLook& look) {
  TextEvent event;
  event.is_open = true;
  hand.set_typing(true);
  open.area = area;
  brush.fill(area, kPaper, kCorner);
  brush.frame(area, open.sentence.empty() ? kPen : kStop, 3, kCorner);
  const bool was_fresh = open.is_fresh;
  const bool entered = type_in(brush, open, area, look.role);
  open.is_fresh = false;
  if (hand.escape()) {
    hand.keys_are_taken();
    close_box(open);
    event.is_open = false;
    return event;
  }
  if (ImGui::IsItemEdited()) {
    open.sentence.clear();
    use_signs(open.text.data());
  }
  const bool pressed_elsewhere =
      ImGui::IsMouseClicked(ImGuiMouseButton_Left) && !area.holds(hand.at()) && !was_fresh;
  const bool by_keys =
      entered || hand.asked(KeyAct::next_thing) || hand.asked(KeyAct::thing_before);
  if (by_keys || pressed_elsewhere) event.finished = open.text.data();
  // Refused, it takes the keys again.
  if (by_keys) open.is_fresh = true;
  event.step = event.finished ? 0 : hand.step();
  return event;
}

}  // namespace

void open_box(OpenBox& open, std::string_view id, std::string_view text) {
  // The text belongs to the box while it is open: opened again, it takes the new one.
  if (open.id == id) ImGui::ClearActiveID();
  open.id = std::string(id);
  open.sentence.clear();
  open.is_fresh = true;
  open.typed.clear();
  open.text.fill('\0');
  std::memcpy(open.text.data(), text.data(), std::min(text.size(), open.text.size() - 1));
}

void close_box(OpenBox& open) {
  open.id.clear();
  open.sentence.clear();
  open.is_fresh = false;
}

void refuse_text(OpenBox& open, Hand& hand, std::string sentence) {
  if (open.is_fresh) hand.keys_are_taken();
  use_signs(sentence);
  open.sentence = std::move(sentence);
}

TextEvent text_box(const Brush& brush, Hand& hand, OpenBox& open, std::string_view id,
                   const Area& area, const TextLook& look) {
  const std::string& words = look.aloud.empty() ? look.shown : look.aloud;
  const Touch touch = hand.touch(id, area, look.name + " " + words);
  if (open.id == id) return open_text_box(brush, hand, open, area, look);
  const bool strong = look.is_changed || touch.over;
  brush.fill(area, kPaper, kCorner);
  brush.frame(area, strong ? kPen : kSoft, strong ? 3.0f : 1.5f, kCorner);
  const Ink ink{look.role, look.role == Role::box_figure, look.is_changed ? kPen : look.colour};
  if (look.side == Side::middle) {
    brush.centred(area, look.shown, ink);
  } else {
    brush.words({area.left + 10, area.mid_y() + brush.rise(look.role) / 2}, look.shown, ink);
  }
  focus_ring(brush, hand, area, touch.focused);
  TextEvent event;
  if (touch.clicked) {
    open_box(open, id, look.text);
    return event;
  }
  if (!touch.focused || !open.id.empty()) return event;
  hand.stands_on(hand.has_focus_ring() ? kOnFigure : kOnPressed);
  if (hand.asked(KeyAct::write)) {
    open_box(open, id, look.text);
    open.typed = written_now();
    return event;
  }
  event.step = hand.step();
  return event;
}

void refused_sentence(const Brush& brush, Hand& hand, const OpenBox& open, float right_edge) {
  if (open.id.empty() || open.sentence.empty()) return;
  hand.note("box.refused", open.area, open.sentence);
  const float width = 320;
  const auto lines = broken(brush, open.sentence, width, Role::text, false);
  const float pitch = brush.pitch(Role::text);
  const float height = pitch * static_cast<float>(lines.size()) + 20;
  const float left = std::min(open.area.left, right_edge - width - 24);
  const Area slip = area_at(left, open.area.bottom + 8, width + 24, height);
  brush.fill({slip.left + 3, slip.top + 3, slip.right + 3, slip.bottom + 3}, kFold);
  brush.fill(slip, kPaper);
  brush.fill({slip.left, slip.top, slip.left + 4, slip.bottom}, kStop);
  brush.paragraph({slip.left + 14, slip.top + 10 + brush.rise(Role::text) + 3}, open.sentence,
                  width, {Role::text, false, kInk});
}

}  // namespace pouncemark::web
