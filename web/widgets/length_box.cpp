#include "web/widgets/length_box.h"

#include <algorithm>
#include <cstring>

#include <imgui.h>
#include <imgui_internal.h>

#include "engine/base/number_text.h"
#include "web/widgets/button.h"

namespace pouncemark::web {
namespace {

constexpr Um kStep = 1000;

void put_text_in(OpenBox& open, std::string_view text) {
  open.text.fill('\0');
  std::memcpy(open.text.data(), text.data(), std::min(text.size(), open.text.size() - 1));
}

void open_box(OpenBox& open, std::string_view id, Um um) {
  open.id = std::string(id);
  open.sentence.clear();
  open.is_fresh = true;
  open.typed.clear();
  put_text_in(open, exact_mm_text(um));
}

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

/// What Enter, or pressing somewhere else, does: keeps a good figure, else says why not.
std::optional<Um> keep(OpenBox& open, const BoxLook& look) {
  Entry entry = read_entry(open.text.data(), look.limits);
  if (!entry.um) {
    open.sentence = std::move(entry.sentence);
    return std::nullopt;
  }
  open.id.clear();
  open.sentence.clear();
  return *entry.um == look.um ? std::nullopt : entry.um;
}

/// The typing itself, inside our own frame. True when the text was finished with Enter.
bool type_in(const Brush& brush, OpenBox& open, const Area& area) {
  const float ratio = brush.ratio();
  ImFont* face = face_for(Role::box_figure, true, open.text.data());
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
      ImGui::InputText("##length", open.text.data(), open.text.size(),
                       ImGuiInputTextFlags_EnterReturnsTrue | ImGuiInputTextFlags_AutoSelectAll);
  put_typed_in(open, written);
  ImGui::PopStyleColor(4);
  ImGui::PopStyleVar(2);
  ImGui::PopFont();
  return entered;
}

std::optional<Um> open_length_box(const Brush& brush, Hand& hand, OpenBox& open, const Area& area,
                                  const BoxLook& look) {
  hand.set_typing(true);
  open.area = area;
  brush.fill(area, kPaper, kCorner);
  brush.frame(area, open.sentence.empty() ? kPen : kStop, 3, kCorner);
  const bool was_fresh = open.is_fresh;
  const bool entered = type_in(brush, open, area);
  open.is_fresh = false;
  if (hand.escape()) {
    hand.keys_are_taken();
    open.id.clear();
    open.sentence.clear();
    return std::nullopt;
  }
  if (ImGui::IsItemEdited()) open.sentence.clear();
  if (entered || hand.asked(KeyAct::next_thing) || hand.asked(KeyAct::thing_before)) {
    const std::optional<Um> kept = keep(open, look);
    if (!open.id.empty()) {
      open.is_fresh = true;
      hand.keys_are_taken();
    }
    return kept;
  }
  const int by = hand.step();
  if (by != 0) {
    const Entry entry = read_entry(open.text.data(), look.limits);
    if (!entry.um) return std::nullopt;
    const Um um = stepped(*entry.um, by * kStep, look.limits);
    // The text belongs to the box while it is open: closed and opened again, it takes the new one.
    ImGui::ClearActiveID();
    open_box(open, std::string(open.id), um);
    return um == look.um ? std::nullopt : std::optional<Um>(um);
  }
  const bool pressed_elsewhere =
      ImGui::IsMouseClicked(ImGuiMouseButton_Left) && !area.holds(hand.at()) && !was_fresh;
  return pressed_elsewhere ? keep(open, look) : std::nullopt;
}

}  // namespace

std::optional<Um> length_box(const Brush& brush, Hand& hand, OpenBox& open, std::string_view id,
                             const Area& area, const BoxLook& look) {
  const Touch touch = hand.touch(id, area, look.name + " " + look.figure);
  if (open.id == id) return open_length_box(brush, hand, open, area, look);
  const bool strong = look.is_changed || touch.over;
  brush.fill(area, kPaper, kCorner);
  brush.frame(area, strong ? kPen : kSoft, strong ? 3.0f : 1.5f, kCorner);
  brush.centred(area, look.figure, {Role::box_figure, true, look.is_changed ? kPen : look.colour});
  focus_ring(brush, hand, area, touch.focused);
  if (touch.clicked) {
    open_box(open, id, look.um);
    return std::nullopt;
  }
  if (!touch.focused || !open.id.empty()) return std::nullopt;
  hand.stands_on(hand.has_focus_ring() ? kOnFigure : kOnPressed);
  if (hand.asked(KeyAct::write)) {
    open_box(open, id, look.um);
    open.typed = written_now();
    return std::nullopt;
  }
  if (hand.step() == 0) return std::nullopt;
  const Um um = stepped(look.um, hand.step() * kStep, look.limits);
  return um == look.um ? std::nullopt : std::optional<Um>(um);
}

void refused_sentence(const Brush& brush, const OpenBox& open, float right_edge) {
  if (open.id.empty() || open.sentence.empty()) return;
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
