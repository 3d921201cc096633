#include <algorithm>
#include <array>

#include "engine/base/number_text.h"
#include "web/panels/print_acts.h"
#include "web/panels/print_parts.h"
#include "web/widgets/slip.h"
#include "web/widgets/steel_rule.h"
#include "web/widgets/tag.h"

namespace pouncemark::web {
namespace {

float in_mm(Um um) { return static_cast<float>(um) / 1000; }

/// The words of page 0, on the sheet where they have room there, else beside it.
struct PageZeroWords {
  std::array<std::string, 3> lines;
  float width = 0;
};

PageZeroWords page_zero_words(const Brush& brush, const sheets::Bars& bars) {
  PageZeroWords words;
  words.lines = {"Page 0", exact_mm_text(bars.across_um) + " across",
                 exact_mm_text(bars.along_um) + " along"};
  for (const std::string& line : words.lines) {
    words.width = std::max(words.width, brush.width_of(line, Role::text, true));
  }
  return words;
}

/// From this scale on a rule with figures has room on the drawn sheet, between the two bars.
constexpr float kRuleScale = 0.5f;
constexpr float kRuleHeight = 24;

void bars_under_the_rule(const Brush& brush, const Area& sheet, const sheets::Bars& bars, float k,
                         float right) {
  const float border = in_mm(sheets::kBorderUm) * k;
  const float thick = std::max(3.0f, 9 * std::min(k, 1.0f));
  const Area across =
      area_at(sheet.left + border, sheet.top + border, in_mm(bars.across_um) * k, thick);
  const float foot = sheet.bottom - border - 20 * k;
  brush.fill(across, kInk);
  brush.fill({across.left, foot - in_mm(bars.along_um) * k, across.left + thick, foot}, kInk);
  if (k < kRuleScale) return;
  RuleLook look;
  look.px_per_mm = static_cast<double>(k);
  look.figure_every = 100;
  look.tick_every = 10;
  const float wide = std::min(across.width() + 70 * k, right - across.left);
  steel_rule(brush, area_at(across.left, across.bottom, wide, kRuleHeight), look);
}

/// Page 0 as it lies under a steel rule, drawn small in its true shape; gives the lower edge.
float page_zero(Page& page, const Area& room) {
  const Brush& brush = page.brush;
  const sheets::Paper& paper = page.state.paper.paper;
  const sheets::Bars bars = sheets::bars_of(paper);
  const PageZeroWords words = page_zero_words(brush, bars);
  const float pitch = brush.pitch(Role::text);
  if (room.height() < 3 * pitch) return room.top;
  const float k = std::min({0.9f, room.height() / in_mm(paper.length_um),
                            (room.width() - words.width - 14) / in_mm(paper.width_um)});
  const Area sheet =
      area_at(room.left, room.top, in_mm(paper.width_um) * k, in_mm(paper.length_um) * k);
  slip_paper(brush, sheet);
  bars_under_the_rule(brush, sheet, bars, k, room.right);
  const bool has_rule = k >= kRuleScale;
  float x = sheet.left + in_mm(sheets::kBorderUm) * k + 26;
  float base = sheet.top + pitch * 1.2f + (has_rule ? kRuleHeight + 20 * k : 10 * k + 8);
  if (x + words.width > sheet.right - 6 || base + 2 * pitch > sheet.bottom - 4) {
    x = sheet.right + 14;
    if (!has_rule) base = sheet.top + pitch * 0.75f;
  }
  page.hand.note("page_zero", sheet,
                 words.lines[0] + ", " + words.lines[1] + ", " + words.lines[2] + ", on " +
                     paper_words(paper));
  bool strong = true;
  for (const std::string& line : words.lines) {
    brush.words({x, base}, line, {Role::text, strong, kInk});
    base += pitch;
    strong = false;
  }
  return std::max(sheet.bottom, base - pitch * 0.75f);
}

struct Bar {
  std::string_view id;
  const char* words;
  Um sheets::Bars::*way;
};
constexpr std::array<Bar, 2> kBars = {Bar{"box.bar_across", "across", &sheets::Bars::across_um},
                                      Bar{"box.bar_along", "along", &sheets::Bars::along_um}};

void keep_bar(Page& page, const Bar& bar, Um um) {
  page.later([&state = page.state, &bench = page.bench, bar, um] {
    state.paper.measured.*bar.way = um;
    state.printing.sentence.clear();
    bench.say("Typed " + exact_mm_text(um) + " for the bar " + bar.words + " on " +
              paper_words(state.paper.paper));
  });
}

float bar_box(Page& page, const Bar& bar, float x, float y) {
  const Brush& brush = page.brush;
  PageState& state = page.state;
  const auto [nominals, measured] = print_check_of(state.paper);
  const Um nominal = nominals.*bar.way;
  const Um um = measured.*bar.way;
  const float height = box_height();
  BoxLook look;
  look.um = um == 0 ? nominal : um;
  look.figure = um == 0 ? "?" : mm_text(um, 1);
  look.name = std::string("bar ") + bar.words + ", measured";
  look.limits = {kLeastLengthUm, kMostLengthUm};
  look.is_changed = um != 0 && um != nominal;
  const float base = y + height / 2 + brush.rise(Role::text) / 2;
  brush.words({x, base}, bar.words, {});
  const float label = std::max(62.0f, brush.width_of("across", Role::text, false) + 12);
  const Area box = area_at(x + label, y, text_size() == TextSize::large ? 124.0f : 104.0f, height);
  const bool was_open = state.open_box.id == bar.id;
  auto kept = length_box(brush, page.hand, state.open_box, bar.id, box, look);
  // Enter on the figure as it stands says that the bar is true; leaving the box says nothing.
  const bool entered = page.hand.asked(KeyAct::keep);
  if (!kept && was_open && state.open_box.id.empty() && entered) kept = look.um;
  const std::string words = bar_words(nominal, um);
  const bool off = um != 0 && words != "true";
  brush.words({box.right + 12, base}, words, {Role::text, off, off ? kWarn : kInk});
  page.hand.note(std::string("said.") + bar.words, {box.right + 12, y, box.right + 120, y + height},
                 words);
  if (kept) keep_bar(page, bar, *kept);
  return y + height + 8;
}

constexpr const char* kRefused = "Was fit to page on? Print page 0 again, at 100 %.";
constexpr const char* kUnproved = "Measure both bars with a steel rule before using any guide.";

/// The longest of what may stand under the bars.
constexpr const char* kLongest =
    "Your printer is short 0.4 %: 10.0 on a row of 2400. Guides are corrected by as much; use them "
    "from this printer and paper only.";

/// Height of the tag and its sentence; room is kept for them whether they stand or not.
float stop_height(const Brush& brush, float width) {
  const auto lines = broken(brush, kLongest, width, Role::text, false).size();
  return 6 + tag_height() + brush.pitch(Role::text) * (static_cast<float>(lines) + 0.4f);
}

}  // namespace

void prove_the_printer(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  const float press_height = button_height() + 6;
  column_heading(page, area, "Prove the printer", "Prove the printer");
  const float below =
      14 + press_height + 14 + 2 * (box_height() + 8) + stop_height(brush, area.width());
  const Area room = {area.left, area.top + 44, area.right, area.bottom - below};
  float y = page_zero(page, room) + 14;
  const bool again = printer_is_proved(page.state.paper);
  const std::string words = again ? "Print page 0 again" : "Print page 0, the test page";
  const Area press =
      area_at(area.left, y, std::min(area.width(), button_width(brush, words) + 8), press_height);
  if (button(brush, page.hand, "print.test_page", press, words,
             {again ? ButtonKind::plain : ButtonKind::main})) {
    page.later([&bench = page.bench, &state = page.state] {
      print_guides(bench, state, {state.printing.figures.lines.front()}, host::Then::save);
    });
  }
  y = press.bottom + 14;
  for (const Bar& bar : kBars) y = bar_box(page, bar, area.left, y);
  const bool is_proved = printer_is_proved(page.state.paper);
  const std::string sentence = is_proved ? bar_caution(page.state.paper)
                               : printer_is_refused(page.state.paper) ? kRefused
                                                                      : kUnproved;
  if (sentence.empty()) return;
  tag(brush, {area.left, y + 6}, is_proved ? TagKind::warn : TagKind::stop);
  brush.paragraph({area.left, y + 6 + tag_height() + brush.pitch(Role::text)}, sentence,
                  area.width(), {});
  page.hand.note("printer", {area.left, y + 6, area.right, area.bottom}, sentence);
}

}  // namespace pouncemark::web
