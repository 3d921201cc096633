#include <array>

#include "engine/base/number_text.h"
#include "web/panels/print_acts.h"
#include "web/panels/print_parts.h"
#include "web/widgets/slip.h"

namespace pouncemark::web {
namespace {

struct ViewAct {
  const char* id;
  const char* words;
  ButtonKind kind;
  void (*act)(PageState& state);
};
constexpr std::array kActs = {
    ViewAct{"view.close", "Close", ButtonKind::plain, close_view},
    ViewAct{"view.print", "Print", ButtonKind::plain, [](PageState&) { host::print_shown(); }},
    ViewAct{"view.save", "Save this file", ButtonKind::main,
            [](PageState&) { host::save_printed(); }}};

/// The buttons at the right; gives their left edge.
float view_buttons(Page& page, const Area& area) {
  float x = area.right;
  for (const ViewAct& one : kActs) {
    const float wide = button_width(page.brush, one.words);
    const Area press = area_at(x - wide, area.top, wide, button_height());
    if (button(page.brush, page.hand, one.id, press, one.words, {one.kind})) {
      page.later([&state = page.state, act = one.act] { act(state); });
    }
    x = press.left - 8;
  }
  return x;
}

}  // namespace

void file_view(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  const PrintStage& stage = page.state.printing;
  if (stage.made.empty()) return;
  const host::PrintedFile& file = stage.made.front();
  const float limit = view_buttons(page, area) - 12;
  const float pitch = brush.pitch(Role::text);
  const std::string sum =
      "SHA-256 " + file.sha256.substr(0, 12) + ", " + count_text(file.bytes) + " bytes";
  const bool is_beside = brush.width_of(sum, Role::text, false) <= limit - area.left;
  float y = area.top + pitch * 0.75f;
  if (!is_beside) y += button_height() + 4;
  const float right = is_beside ? limit : area.right;
  brush.start_window({area.left, y - pitch, right, y + 2 * pitch});
  brush.words({area.left, y}, file.name, {Role::text, true, kInk});
  brush.words({area.left, y + pitch}, sum, {});
  brush.end_window();
  page.hand.note("view.name", {area.left, y - pitch, right, y}, file.name);
  page.hand.note("view.sum", {area.left, y, right, y + pitch}, sum);
  const Area room = {area.left, y + pitch + 12, area.right, area.bottom};
  slip_paper(brush, room);
  page.hand.note("view", room, "the file itself, as it will be saved");
  const float ratio = brush.ratio();
  host::show_printed(room.left * ratio, room.top * ratio, room.right * ratio, room.bottom * ratio,
                     static_cast<int>(stage.view_page));
  if (page.hand.escape()) page.later([&state = page.state] { close_view(state); });
}

}  // namespace pouncemark::web
