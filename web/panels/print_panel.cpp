#include <algorithm>
#include <array>
#include <utility>

#include "engine/base/number_text.h"
#include "web/host/host.h"
#include "web/panels/print_parts.h"

namespace pouncemark::web {
namespace {

/// One ruled line of the count: what, how many sheets, and a word about it.
struct CountLine {
  const char* label;
  const char* under;
  std::int64_t count;
};

float count_line(const Brush& brush, const Area& area, float y, const CountLine& line) {
  brush.line({area.left, y}, {area.right, y}, kPale, 1);
  const float at = y + brush.rise(Role::figure) + 11;
  brush.words({area.left, at}, line.label, {Role::text, true, kInk});
  brush.words({area.right, at + 2}, count_text(line.count),
              {Role::figure, true, kInk, Side::right});
  if (line.under[0] == '\0') return at + 14;
  const float pitch = brush.pitch(Role::text);
  return brush.paragraph({area.left, at + pitch}, line.under, area.width(), {}) - pitch + 14;
}

/// The great count of sheets; gives where the lines under it begin.
float great_count(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  const std::int64_t count = all_sheets(page.state.counted.sheets);
  const std::string figure = count_text(count);
  const std::string of = sheets_of(count, page.state.paper.paper);
  float base = area.top + 44 + brush.rise(Role::great_count);
  const float wide = brush.words({area.left, base}, figure, {Role::great_count, true, kInk});
  page.hand.note("sheets", {area.left, area.top + 40, area.right, base}, figure + " " + of);
  const float x = area.left + wide + 14;
  if (x + brush.width_of(of, Role::verb, false) <= area.right) {
    brush.words({x, base}, of, {Role::verb, false, kInk});
    return base + 20;
  }
  const float pitch = brush.pitch(Role::verb);
  base = brush.paragraph({area.left, base + pitch}, of, area.width(), {Role::verb, false, kInk});
  return base - pitch + 14;
}

void sheets_column(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  const SheetCounts& sheets = page.state.counted.sheets;
  brush.words({area.left, area.top + 26}, "In all", {Role::figure, true, kInk});
  float y = great_count(page, area);
  y = count_line(brush, area, y, {"test page", "", 1});
  y = count_line(brush, area, y,
                 {"full-face", "every page of every piece", together(sheets.full_face)});
  y = count_line(brush, area, y, {"tick lists", "one for each piece", together(sheets.tick_list)});
  brush.line({area.left, y}, {area.right, y}, kPale, 1);
  y += brush.pitch(Role::text) + 10;
  const std::array<std::pair<const char*, Ink>, 3> sentences = {
      {{"At 100 %, never fit to page.", {Role::text, true, kInk}},
       {"Each guide is a PDF that lands in your downloads.", {}},
       {"Figures guide; the trial seam and the dry run decide.", {Role::text, false, kSoft}}}};
  for (const auto& [words, ink] : sentences) {
    const auto lines = broken(brush, words, area.width(), ink.role, ink.bold).size();
    if (y + static_cast<float>(lines - 1) * brush.pitch(ink.role) > area.bottom) break;
    y = brush.paragraph({area.left, y}, words, area.width(), ink) + 4;
  }
}

}  // namespace

void print_now(Bench& bench, PageState& state, const PrintWish& wish) {
  const PrintFaces faces = {
      host::page_file("faces/main-regular.ttf"), host::page_file("faces/main-bold.ttf"),
      host::page_file("faces/wide-regular.ttf"), host::page_file("faces/wide-bold.ttf")};
  const Printed made = printed(bench.now(), state.paper, wish, faces);
  state.print_sentence = made.sentence;
  for (const PrintedFile& file : made.files) {
    host::save_file(file.name, "application/pdf", file.bytes);
    bench.say("Made " + file.name + ", in your downloads. Print it at 100 %, never fit to page");
  }
}

void print_panel(Page& page) {
  const Layout& layout = page.layout;
  const bool large = text_size() == TextSize::large;
  const float bottom = layout.bar.top - 8;
  const float left = kPageEdge;
  const float right = layout.width - kPageEdge;
  const float top = paper_row(page, {left, stage_row_height() + 20, right, bottom}) + 14;
  const float usable = right - left - 64;
  const float first = large ? std::clamp(usable * 0.28f, 340.0f, 440.0f)
                            : std::clamp(usable * 0.26f, 288.0f, 380.0f);
  const float third = std::clamp(usable * 0.24f, large ? 244.0f : 200.0f, 340.0f);
  prove_the_printer(page, {left, top, left + first, bottom});
  choose_the_guides(page, {left + first + 32, top, right - third - 32, bottom});
  sheets_column(page, {right - third, top, right, bottom});
}

}  // namespace pouncemark::web
