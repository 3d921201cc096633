#include <algorithm>
#include <array>
#include <utility>

#include "engine/base/number_text.h"
#include "web/panels/print_acts.h"
#include "web/panels/print_parts.h"
#include "web/widgets/slip.h"
#include "web/widgets/tag.h"

namespace pouncemark::web {
namespace {

/// Opens the sum of a count, or closes it.
void touch_count(Page& page, const std::string& id, const Area& area, const std::string& aloud) {
  PrintStage& stage = page.state.printing;
  const Touch touch = page.hand.touch(id, area, aloud);
  focus_ring(page.brush, page.hand, area, touch.focused);
  if (!touch.clicked && !(touch.focused && page.hand.sum_key())) return;
  page.later([&stage, id] { stage.open_sum = stage.open_sum == id ? std::string() : id; });
}

/// A great figure and what it counts, on a line of their own where there is no room beside it.
float great_figure(Page& page, const Area& area, const std::string& figure, const std::string& of) {
  const Brush& brush = page.brush;
  float base = area.top + 44 + brush.rise(Role::great_count);
  const float wide = brush.words({area.left, base}, figure, {Role::great_count, true, kInk});
  const float x = area.left + wide + 14;
  if (x + brush.width_of(of, Role::verb, false) <= area.right) {
    brush.words({x, base}, of, {Role::verb, false, kInk});
    return base + 18;
  }
  const float pitch = brush.pitch(Role::verb);
  base = brush.paragraph({area.left, base + pitch}, of, area.width(), {Role::verb, false, kInk});
  return base - pitch + 14;
}

/// One ruled line of the count: what, how many sheets, and a word about it.
struct CountLine {
  const char* id;
  const char* label;
  std::string under;
  std::int64_t count;
};

float count_line(Page& page, const Area& area, float y, const CountLine& line) {
  const Brush& brush = page.brush;
  brush.line({area.left, y}, {area.right, y}, kPale, 1);
  const float at = y + brush.rise(Role::figure) + 11;
  const std::string figure = count_text(line.count);
  brush.words({area.left, at}, line.label, {Role::text, true, kInk});
  brush.words({area.right, at + 2}, figure, {Role::figure, true, kInk, Side::right});
  float foot = std::max(at + 14, y + button_height());
  if (!line.under.empty()) {
    brush.words({area.left, at + brush.pitch(Role::text)}, line.under, {});
    foot = at + brush.pitch(Role::text) + 12;
  }
  touch_count(page, line.id, {area.left, y + 1, area.right, foot - 1},
              std::string(line.label) + " " + figure + ", show the sum");
  return foot;
}

const solve::Sum* open_sum(const PrintStage& stage) {
  const PrintFigures& figures = stage.figures;
  const std::array<std::pair<const char*, const solve::Sum*>, 6> sums = {
      {{"count.all", &figures.all_sum},
       {"count.full_face", &figures.full_face_sum},
       {"count.tick_list", &figures.tick_list_sum},
       {"count.strips", &figures.strip_sum},
       {"count.cards", &figures.card_sum},
       {"count.guide", &figures.guide_sum}}};
  for (const auto& [id, sum] : sums) {
    if (stage.open_sum == id) return sum;
  }
  return nullptr;
}

/// The open sum; gives where what is under it begins.
float draw_open_sum(Page& page, const Area& area, float y) {
  const solve::Sum* sum = open_sum(page.state.printing);
  if (sum == nullptr) return y;
  const SlipSum shown = {sum->rule, sum->numbers, sum->source};
  draw_sum(page.brush, shown, {area.left, y}, area.width());
  const float foot = y + sum_height(page.brush, shown, area.width());
  page.hand.note("print.sum", {area.left, y, area.right, foot}, spoken(shown));
  return foot + 8;
}

/// How far the printing is; gives the lower edge.
void progress(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  const PrintStage& stage = page.state.printing;
  const std::string figure = count_text(stage.printed);
  const std::string of = "of " + counted(stage.pages, "sheet", "sheets");
  float y = great_figure(page, area, figure, of);
  page.hand.note("print.progress", {area.left, area.top + 40, area.right, y},
                 "sheet " + figure + " of " + count_text(stage.pages));
  const Area bar = area_at(area.left, y, area.width(), 18);
  const float part =
      stage.pages == 0 ? 0 : static_cast<float>(stage.printed) / static_cast<float>(stage.pages);
  brush.fill(bar, kPaper);
  brush.fill({bar.left, bar.top, bar.left + bar.width() * part, bar.bottom}, kPen);
  brush.frame(bar, kInk, 2);
  const Area press = area_at(area.left, bar.bottom + 16, area.width(), button_height() + 12);
  if (button(brush, page.hand, "print.stop", press, "Stop", {ButtonKind::main})) {
    page.later([&bench = page.bench, &state = page.state] { stop_print(bench, state); });
  }
}

/// Why nothing was printed, and the way to try again; gives the lower edge.
float why_not(Page& page, const Area& area, float y) {
  const Brush& brush = page.brush;
  const std::string& sentence = page.state.printing.sentence;
  if (sentence.empty()) return y;
  tag(brush, {area.left, y}, TagKind::stop);
  const float base = y + tag_height() + brush.pitch(Role::text);
  const float end = brush.paragraph({area.left, base}, sentence, area.width(), {});
  page.hand.note("print.refused", {area.left, y, area.right, end}, sentence);
  const float high = button_height();
  const float top = end - brush.pitch(Role::text) + 14;
  if (top + high > area.bottom) return end;
  const Area press = area_at(area.left, top, button_width(brush, "Try again", false), high);
  if (button(brush, page.hand, "print.again", press, "Try again")) {
    page.later([&bench = page.bench, &state = page.state] {
      print_guides(bench, state, state.printing.last, state.printing.then);
    });
  }
  return press.bottom + 12;
}

void sentences(Page& page, const Area& area, float y) {
  const Brush& brush = page.brush;
  const std::array<std::pair<const char*, Ink>, 3> all = {
      {{"At 100 %, never fit to page.", {Role::text, true, kInk}},
       {"Each guide is a PDF that lands in your downloads.", {}},
       {"Figures guide; the trial seam and the dry run decide.", {Role::text, false, kSoft}}}};
  for (const auto& [words, ink] : all) {
    const auto lines = broken(brush, words, area.width(), ink.role, ink.bold).size();
    if (y + static_cast<float>(lines - 1) * brush.pitch(ink.role) > area.bottom) return;
    y = brush.paragraph({area.left, y}, words, area.width(), ink) + 4;
  }
}

float count_lines(Page& page, const Area& area, float y) {
  const PrintStage& stage = page.state.printing;
  const PrintFigures& figures = stage.figures;
  const auto of = [&](GuideKind kind) { return ticked_sheets(figures.lines, stage.ticks, kind); };
  const std::int64_t full_face = of(GuideKind::full_face);
  std::string less;
  if (figures.left_out > 0) {
    less = count_text(full_face + figures.left_out) + " less " + count_text(figures.left_out) +
           " left out";
  }
  y = count_line(page, area, y, {"count.full_face", "full-face", less, full_face});
  y = count_line(page, area, y, {"count.tick_list", "tick lists", "", of(GuideKind::tick_list)});
  if (has_strips(figures.lines)) {
    y = count_line(page, area, y,
                   {"count.strips", "drilling strips", "", of(GuideKind::drilling_strip)});
  }
  y = count_line(page, area, y, {"count.cards", "cards", "", of(GuideKind::seam_card)});
  page.brush.line({area.left, y}, {area.right, y}, kPale, 1);
  return y + 14;
}

}  // namespace

void sheets_column(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  const PrintStage& stage = page.state.printing;
  column_heading(page, area, "In all", "In all");
  if (stage.is_printing) return progress(page, area);
  const std::string figure = count_text(stage.figures.sheets);
  const std::string of = sheets_of(stage.figures.sheets, page.state.paper.paper);
  float y = great_figure(page, area, figure, of);
  page.hand.note("sheets", {area.left, area.top + 40, area.right, y - 18}, figure + " " + of);
  y = count_lines(page, area, y);
  const Area press = area_at(area.left, y, area.width(), button_height() + 14);
  const std::string words = "Print " + counted(stage.figures.sheets, "sheet", "sheets");
  if (button(brush, page.hand, "print.go", press, words,
             {ButtonKind::main, stage.figures.sheets == 0})) {
    page.later([&bench = page.bench, &state = page.state] { print_ticked(bench, state); });
  }
  y = draw_open_sum(page, area, press.bottom + 14);
  y = why_not(page, area, y);
  sentences(page, area, y + brush.pitch(Role::text) * 0.75f);
}

}  // namespace pouncemark::web
