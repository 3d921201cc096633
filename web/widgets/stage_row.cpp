#include "web/widgets/stage_row.h"

#include "web/widgets/button.h"

namespace pouncemark::web {
namespace {

constexpr std::array<const char*, kStages> kVerbs = {"Measure", "Make",  "Sew",  "Curve",
                                                     "Buy",     "Print", "Hang", "Record"};
constexpr std::array<const char*, kStages> kIds = {"measure", "make",  "sew",  "curve",
                                                   "buy",     "print", "hang", "record"};
constexpr float kThreadY = 15;

struct Row {
  float left = 0;
  float pitch = 0;
  float height = 0;
  Area keys;  ///< the button of the list of keys
};

Row row_of(float width) {
  const bool has_name = width >= 1200 && text_size() != TextSize::large;
  Row row;
  row.left = has_name ? 268 : kPageEdge;
  row.height = stage_row_height();
  row.keys = area_at(width - button_height() - 12, (row.height - button_height()) / 2,
                     button_height(), button_height());
  row.pitch = (row.keys.left - row.left - 12) / kStages;
  return row;
}

void needle(const Brush& brush, float x) {
  brush.line({x - 31, kThreadY}, {x + 4, kThreadY}, kThread, 4.5f);
  const float nx = x;
  const std::array<Spot, 6> body = {Spot{nx, kThreadY},          Spot{nx + 8, kThreadY - 3.6f},
                                    Spot{nx + 30, kThreadY - 3}, Spot{nx + 66, kThreadY},
                                    Spot{nx + 30, kThreadY + 3}, Spot{nx + 8, kThreadY + 3.6f}};
  brush.shape(body, kEngraving);
  brush.line({nx + 6, kThreadY}, {nx + 14, kThreadY}, kSteel, 1.8f);
}

void sewn(const Brush& brush, float x, float pitch) {
  brush.line({x + 5, kThreadY}, {x + pitch - 5, kThreadY}, kThread, 4.5f);
}

void hanging_card(const Brush& brush, const Area& card) {
  brush.fill(card, kPaper, 3);
  brush.frame(card, kInk, 2, 3);
}

/// The program's and the job's name; true when pressed.
bool names(const Brush& brush, Hand& hand, const Row& row, const std::string& job_name) {
  const Area area = {kPageEdge - 8, 6, row.left - 24, row.height - 4};
  const Touch touch = hand.touch("start", area, "Pouncemark, to the start page");
  const float width = brush.words({kPageEdge, 33}, "Pouncemark", {Role::figure, true, kInk});
  if (touch.over) brush.line({kPageEdge, 37}, {kPageEdge + width, 37}, kInk, 1.5f);
  brush.start_window({0, 0, row.left - 16, row.height});
  brush.words({kPageEdge, 58}, job_name, {Role::text, false, kInk});
  brush.end_window();
  focus_ring(brush, hand, area, touch.focused);
  return touch.clicked;
}

}  // namespace

const char* stage_verb(Stage stage) { return kVerbs[static_cast<std::size_t>(stage)]; }

std::string stage_id(Stage stage) {
  return std::string("stage.") + kIds[static_cast<std::size_t>(stage)];
}

float stage_row_height() { return text_size() == TextSize::large ? 84 : 72; }

StagePress stage_row(const Brush& brush, Hand& hand, float width, const StageRowLook& look) {
  const Row row = row_of(width);
  StagePress pressed;
  brush.fill({0, 0, width, row.height}, kFold);
  if (row.left > 200) pressed.is_start = names(brush, hand, row, look.job_name);
  for (int i = 0; i < kStages; ++i) {
    const auto stage = static_cast<Stage>(i);
    const std::string& state = look.states[static_cast<std::size_t>(i)];
    const float x = row.left + static_cast<float>(i) * row.pitch;
    const bool is_open = stage == look.open;
    const Area cell = {x + 3, 24, x + row.pitch - 11, row.height + (is_open ? 14.0f : 0.0f)};
    if (is_open) hanging_card(brush, cell);
    const Touch touch =
        hand.touch(stage_id(stage), cell, std::string(stage_verb(stage)) + ", " + state);
    if (is_open) hand.is(stage_id(stage), PlaceState::current);
    if (touch.clicked) pressed.stage = stage;
    if (is_open)
      needle(brush, x + 36);
    else if (state == "done")
      sewn(brush, x, row.pitch);
    brush.disc({x, kThreadY}, 3.6f, kInk);
    if (i == kStages - 1) brush.disc({x + row.pitch, kThreadY}, 3.6f, kInk);
    const float base = 27 + brush.rise(Role::verb) / 0.72f;
    brush.words({x + 13, base}, stage_verb(stage), {Role::verb, is_open, kInk});
    brush.words({x + 13, row.height - 6}, state, {Role::second_line, false, kInk});
    if (touch.over && !is_open) {
      const float wide = brush.width_of(stage_verb(stage), Role::verb, false);
      brush.line({x + 13, base + 4}, {x + 13 + wide, base + 4}, kInk, 1.5f);
    }
    focus_ring(brush, hand, cell, touch.focused);
  }
  pressed.is_keys = button(brush, hand, "keys.open", row.keys, "?",
                           {ButtonKind::plain, false, Role::text, "keys and text size"});
  return pressed;
}

}  // namespace pouncemark::web
