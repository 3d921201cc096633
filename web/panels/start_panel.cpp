#include <algorithm>
#include <array>

#include "web/host/host.h"
#include "web/panels/keys_panel.h"
#include "web/panels/page.h"
#include "web/panels/start_pictures.h"
#include "web/widgets/slip.h"
#include "web/widgets/steel_rule.h"

namespace pouncemark::web {
namespace {

constexpr const char* kMarshLights = "demo-jobs/marsh-lights.json";

struct Door {
  std::string_view id;
  const char* title;
  const char* words;
  const char* button;
};
constexpr std::array<Door, 3> kDoors = {
    Door{"door.small_job", "Try the small job",
         "Marsh Lights: nine sleeves and one panel, ready to change, print and prove.",
         "Open Marsh Lights"},
    Door{"door.sleeve", "Start with a sleeve",
         "One sleeve is already drawn. Four measures to begin with.", "Start the sleeve"},
    Door{"door.open", "Open a job",
         "A job file kept on this computer, or one that was sent to you.", "Choose a file"}};

void go_through(Page& page, std::size_t door) {
  page.later([&bench = page.bench, &state = page.state, door] {
    if (door == 2) return host::choose_file();
    bool opened = true;
    if (door == 1)
      bench.start_with_sleeve();
    else
      opened = bench.open("Marsh Lights", host::page_file(kMarshLights));
    if (!opened) return;
    use_signs(bench.now().job.name);
    state.is_on_start = false;
    state.stage = Stage::make;
  });
}

void hook(const Brush& brush, float x, float from, float eye) {
  brush.disc({x, eye}, 9, kBench);
  brush.ring({x, eye}, 9, kSoft, 1.5f);
  brush.fill({x - 8, from - 1, x + 8, from + 6}, kEngraving);
  brush.line({x - 4, from + 4}, {x - 4, eye + 1}, kEngraving, 3.5f);
  std::array<Spot, 7> bend;
  constexpr std::array<Spot, 7> kHalfRing = {Spot{-1, 0}, Spot{-0.87f, 0.5f}, Spot{-0.5f, 0.87f},
                                             Spot{0, 1},  Spot{0.5f, 0.87f},  Spot{0.87f, 0.5f},
                                             Spot{1, 0}};
  for (std::size_t i = 0; i < bend.size(); ++i) {
    bend[i] = {x + 1 + kHalfRing[i].x * 5, eye + 1 + kHalfRing[i].y * 5};
  }
  brush.outline(bend, kEngraving, 3.5f, false);
}

/// A card with its upper corners cut, hanging from the rule by a hook.
void door_card(const Brush& brush, const Area& card, float rule_bottom) {
  constexpr float kCut = 26;
  const auto outline_of = [&](float by) {
    return std::array<Spot, 6>{
        Spot{card.left + by, card.top + kCut + by},  Spot{card.left + kCut + by, card.top + by},
        Spot{card.right - kCut + by, card.top + by}, Spot{card.right + by, card.top + kCut + by},
        Spot{card.right + by, card.bottom + by},     Spot{card.left + by, card.bottom + by}};
  };
  brush.shape(outline_of(4), kFold);
  brush.shape(outline_of(0), kPaper);
  hook(brush, card.mid_x(), rule_bottom, card.top + 20);
}

void door(Page& page, std::size_t index, const Area& card, float rule_bottom) {
  const Brush& brush = page.brush;
  const Door& door = kDoors[index];
  const bool large = text_size() == TextSize::large;
  door_card(brush, card, rule_bottom);
  const float left = card.left + 28;
  const float right = card.right - 28;
  brush.words({left, card.top + 78}, door.title, {Role::box_figure, true, kInk});
  const float button_height_here = large ? 56.0f : 50.0f;
  const Area press = {left, card.bottom - 28 - button_height_here, right, card.bottom - 28};
  const auto lines = broken(brush, door.words, right - left, Role::text, false);
  const float pitch = brush.pitch(Role::text);
  const auto count = static_cast<float>(std::max<std::size_t>(lines.size(), 2));
  const float words_top = std::min(press.top - 14 - pitch * count, card.top + 268);
  door_picture(page, index, {left, card.top + 106, right, words_top - 16});
  brush.paragraph({left, words_top + brush.rise(Role::text) + 4}, door.words, right - left, {});
  if (button(brush, page.hand, door.id, press, door.button, {ButtonKind::main})) {
    go_through(page, index);
  }
}

void name_and_rule(Page& page, float left, float right, float rule_top) {
  const Brush& brush = page.brush;
  const float base = rule_top - 78;
  const float width = brush.words({left, base}, "Pouncemark", {Role::title, true, kInk});
  for (float x = left + 3; x < left + width + 6; x += 6.05f) brush.disc({x, base + 16}, 1.6f, kInk);
  brush.words({left, base + 50},
              "From tape measure to true guides, seam cards and record, for cloth in clear sheet.",
              {Role::text, false, kInk});
  const float side = button_height();
  if (button(brush, page.hand, "keys.open", area_at(right - side, base - 20, side, side), "?",
             {ButtonKind::plain, false, Role::text, "keys and text size"})) {
    page.later([&state = page.state] { state.shows_keys = true; });
  }
  text_switch(page, right - side - 16, base - 20);
  RuleLook look;
  look.px_per_mm = 0.8;
  look.figure_every = 200;
  look.tick_every = 10;
  steel_rule(brush, {left, rule_top, right, rule_top + 30}, look);
}

}  // namespace

void start_panel(Page& page) {
  const Layout& layout = page.layout;
  const float width = std::min(layout.width - 2 * kPageEdge, 1320.0f);
  const float margin = layout.width > 1260 ? std::min(83.0f, (layout.width - 1100) / 2) : kPageEdge;
  const float usable = std::min(width, layout.width - 2 * margin);
  const float left = (layout.width - usable) / 2;
  const float right = left + usable;
  const float spare = std::max(0.0f, layout.height - 768) / 2;
  const float rule_top = 156 + spare * 0.6f;
  name_and_rule(page, left, right, rule_top);
  const float gap = layout.width > 1200 ? 33.0f : 18.0f;
  const float card_width = (usable - 2 * gap) / 3;
  const float bottom = std::min(layout.height - 96, rule_top + 556);
  for (std::size_t i = 0; i < kDoors.size(); ++i) {
    const float x = left + static_cast<float>(i) * (card_width + gap);
    door(page, i, {x, rule_top + 56, x + card_width, bottom - 24}, rule_top + 30);
  }
  const Brush& brush = page.brush;
  const float base = bottom + 24;
  const std::string promise =
      "Your job is a file on this computer. Nothing is sent anywhere, and it works without a "
      "network.";
  const bool fits = brush.width_of(promise, Role::verb, true) < usable;
  brush.words({left, base}, promise, {fits ? Role::verb : Role::second_line, true, kInk});
  brush.words({left, base + 30}, "Figures guide; the trial seam and the dry run decide.", {});
  page.hand.note("start.promise", {left, base - 20, right, base + 4}, promise);
}

}  // namespace pouncemark::web
