#include <algorithm>
#include <array>

#include "engine/base/number_text.h"
#include "web/host/host.h"
#include "web/model/printing.h"
#include "web/model/words.h"
#include "web/panels/page.h"
#include "web/widgets/slip.h"
#include "web/widgets/steel_rule.h"
#include "web/widgets/tag.h"

namespace pouncemark::web {
namespace {

void print_now(Bench& bench, PageState& state, PrintWish wish) {
  wish.bar_across_um = state.bar_across_um;
  wish.bar_along_um = state.bar_along_um;
  const PrintFaces faces = {
      host::page_file("faces/main-regular.ttf"), host::page_file("faces/main-bold.ttf"),
      host::page_file("faces/wide-regular.ttf"), host::page_file("faces/wide-bold.ttf")};
  const Printed made = printed(bench.now(), wish, faces);
  state.print_sentence = made.sentence;
  for (const PrintedFile& file : made.files) {
    host::save_file(file.name, "application/pdf", file.bytes);
    bench.say("Made " + file.name + ", in your downloads. Print it at 100 %, never fit to page");
  }
}

/// Page 0 as it lies under a steel rule, drawn small.
float page_zero(Page& page, float x, float y, float room) {
  const Brush& brush = page.brush;
  const float k = std::clamp(room / 297, 0.5f, 0.9f);
  const Area sheet = area_at(x, y, 210 * k, 297 * k);
  slip_paper(brush, sheet);
  brush.fill(area_at(x + 15 * k, y + 16, 180 * k, 9), kInk);
  brush.fill(area_at(x + 15 * k, y + 70 * k, 9, 200 * k), kInk);
  const float left = x + 15 * k + 20;
  const float pitch = brush.pitch(Role::text);
  const float base = y + 49 + pitch * 1.5f;
  brush.words({left, base}, "Page 0", {Role::text, true, kInk});
  brush.words({left, base + pitch}, "180 across", {});
  brush.words({left, base + 2 * pitch}, "200 along", {});
  RuleLook look;
  look.px_per_mm = static_cast<double>(k);
  look.figure_every = 100;
  look.tick_every = 10;
  steel_rule(brush, area_at(x + 15 * k, y + 25, 250 * k / 0.9f, 24), look);
  return sheet.bottom;
}

struct Bar {
  std::string_view id;
  const char* words;
  Um nominal;
  Um PageState::*measured;
};

float bar_box(Page& page, const Bar& bar, float x, float y) {
  const Brush& brush = page.brush;
  PageState& state = page.state;
  const Um um = state.*bar.measured;
  const float height = box_height();
  BoxLook look;
  look.um = um == 0 ? bar.nominal : um;
  look.figure = um == 0 ? "?" : mm_text(um, 1);
  look.name = std::string("bar ") + bar.words + ", measured";
  look.limits = {1000, kMostLengthUm};
  look.is_changed = um != 0 && um != bar.nominal;
  const float base = y + height / 2 + brush.rise(Role::text) / 2;
  brush.words({x, base}, bar.words, {});
  const float label = std::max(62.0f, brush.width_of("across", Role::text, false) + 12);
  const Area box = area_at(x + label, y, text_size() == TextSize::large ? 124.0f : 104.0f, height);
  const bool was_open = state.open_box.id == bar.id;
  auto kept = length_box(brush, page.hand, state.open_box, bar.id, box, look);
  // Enter on the figure as it stands says that the bar is true.
  if (!kept && was_open && state.open_box.id.empty() && !page.hand.escape()) kept = look.um;
  const std::string words = bar_words(bar.nominal, um);
  const bool off = um != 0 && words != "true";
  brush.words({box.right + 12, base}, words, {Role::text, off, off ? kWarn : kInk});
  if (kept) {
    page.later([&state, &bench = page.bench, bar, is = *kept] {
      state.*bar.measured = is;
      bench.say("Typed " + exact_mm_text(is) + " for the bar " + bar.words);
    });
  }
  return y + height + 8;
}

void prove_the_printer(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  brush.words({area.left, area.top + 26}, "Prove the printer", {Role::figure, true, kInk});
  const float below =
      button_height() + 6 + 2 * box_height() + 46 + tag_height() + 3.5f * brush.pitch(Role::text);
  float y = page_zero(page, area.left, area.top + 44, area.height() - 44 - below) + 16;
  const std::string words = "Print page 0, the test page";
  const Area press = area_at(area.left, y, std::min(area.width(), button_width(brush, words) + 8),
                             button_height() + 6);
  if (button(brush, page.hand, "print.test_page", press, words, {ButtonKind::main})) {
    page.later([&bench = page.bench, &state = page.state] { print_now(bench, state, {}); });
  }
  y = press.bottom + 14;
  y = bar_box(page, {"box.bar_across", "across", kBarAcrossUm, &PageState::bar_across_um},
              area.left, y);
  y = bar_box(page, {"box.bar_along", "along", kBarAlongUm, &PageState::bar_along_um}, area.left,
              y);
  const PageState& state = page.state;
  const bool refused =
      (state.bar_across_um != 0 && bar_is_refused(kBarAcrossUm, state.bar_across_um)) ||
      (state.bar_along_um != 0 && bar_is_refused(kBarAlongUm, state.bar_along_um));
  if (printer_is_proved(state.bar_across_um, state.bar_along_um)) return;
  tag(brush, {area.left, y + 6}, TagKind::stop);
  brush.paragraph({area.left, y + 6 + tag_height() + brush.pitch(Role::text)},
                  refused ? "Was fit to page on? Print page 0 again, at 100 %."
                          : "Measure both bars with a steel rule before using any guide.",
                  area.width(), {});
}

struct GuideRow {
  std::string id;
  std::string title;
  std::string under;
  std::string press;
  std::string short_press;
  PrintWish wish;
};

GuideRow guide_row(const Page& page, std::size_t index) {
  const Solved& now = page.bench.now();
  const solve::Piece& piece = now.results.pieces[index];
  const bool panel = piece.kind == solve::PieceKind::panel;
  const std::string name = (panel ? "panel " : "section ") + piece.code;
  const std::int64_t pages = index < now.a4_pages.size() ? now.a4_pages[index] : 0;
  GuideRow row;
  row.id = index == 0 ? "print.full_face" : "print.full_face." + piece.code;
  row.title = with_capital(name);
  row.under = short_mm_text(piece.width_um, 1) + " " + kTimes + " " +
              short_mm_text(piece.length_um, 1) + ", FRONT";
  row.short_press = "Print " + counted(pages, "page", "pages");
  row.press = "Print the full-face guide of " + name + ": " + counted(pages, "page", "pages");
  row.wish.piece = static_cast<int>(index);
  row.wish.guide = GuideKind::full_face;
  return row;
}

float guide_line(Page& page, const GuideRow& row, const Area& area) {
  const Brush& brush = page.brush;
  const float text = brush.pitch(Role::text);
  brush.words({area.left + 16, area.top + 10 + text * 0.75f}, row.title, {Role::text, true, kInk});
  brush.words({area.left + 16, area.top + 12 + text * 1.75f}, row.under, {});
  const float named = std::max(brush.width_of(row.under, Role::text, false),
                               brush.width_of(row.title, Role::text, true));
  const bool fits = button_width(brush, row.press) + named + 64 < area.width();
  const std::string& words = fits ? row.press : row.short_press;
  const float width = button_width(brush, words);
  const Area press =
      area_at(area.right - 16 - width, area.mid_y() - button_height() / 2, width, button_height());
  if (button(brush, page.hand, row.id, press, words, {ButtonKind::plain})) {
    page.later([&bench = page.bench, &state = page.state, wish = row.wish] {
      print_now(bench, state, wish);
    });
  }
  return area.bottom;
}

/// The buttons that step through a long list of guides; gives the base line under them.
float list_steps(Page& page, const Area& area, std::size_t shown, std::size_t count) {
  PageState& state = page.state;
  const std::size_t first = state.first_guide;
  const std::string words = std::to_string(first + 1) + " to " + std::to_string(first + shown) +
                            " of " + std::to_string(count);
  const float height = button_height();
  const float wide = button_width(page.brush, "Further", false);
  const Area back = area_at(area.left, area.top, wide, height);
  const Area on = area_at(back.right + 8, area.top, wide, height);
  const bool is_first = first == 0;
  const bool is_last = first + shown >= count;
  if (button(page.brush, page.hand, "guides.back", back, "Back", {ButtonKind::plain, is_first})) {
    page.later([&state, shown] { state.first_guide -= std::min(shown, state.first_guide); });
  }
  if (button(page.brush, page.hand, "guides.further", on, "Further",
             {ButtonKind::plain, is_last})) {
    page.later([&state, shown] { state.first_guide += shown; });
  }
  page.brush.words({on.right + 14, on.mid_y() + page.brush.rise(Role::text) / 2}, words, {});
  return area.top + height;
}

void choose_the_guides(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  const std::size_t count = page.bench.now().results.pieces.size();
  brush.words({area.left, area.top + 26}, "Choose the guides", {Role::figure, true, kInk});
  const float high = brush.pitch(Role::text) * 2 + 22;
  const float top = area.top + 44;
  const float room = area.bottom - top - button_height() - 24;
  const auto fit = static_cast<std::size_t>(std::max(1.0f, room / high));
  const std::size_t first = std::min(page.state.first_guide, count == 0 ? 0 : count - 1);
  const std::size_t shown = std::min(count - first, fit);
  slip_paper(brush, {area.left, top, area.right, top + high * static_cast<float>(shown)});
  float y = top;
  for (std::size_t i = 0; i < shown; ++i) {
    if (i > 0) brush.line({area.left + 16, y}, {area.right - 16, y}, kPale, 1);
    y = guide_line(page, guide_row(page, first + i), {area.left, y, area.right, y + high});
  }
  if (count > fit) y = list_steps(page, {area.left, y + 16, area.right, area.bottom}, shown, count);
  if (page.state.print_sentence.empty()) return;
  tag(brush, {area.left, y + 14}, TagKind::stop);
  brush.paragraph({area.left, y + 14 + tag_height() + brush.pitch(Role::text)},
                  page.state.print_sentence, area.width(), {});
}

void paper_column(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  const Solved& now = page.bench.now();
  brush.words({area.left, area.top + 26}, "Paper", {Role::figure, true, kInk});
  std::int64_t pages = 1;
  for (const std::int64_t one : now.a4_pages) pages += one;
  const float base = area.top + 44 + brush.rise(Role::great_count);
  const float wide =
      brush.words({area.left, base}, count_text(pages), {Role::great_count, true, kInk});
  brush.words({area.left + wide + 14, base}, "sheets of A4", {Role::verb, false, kInk});
  float y = base + 20;
  const auto line = [&](const std::string& label, const std::string& under, std::int64_t count) {
    brush.line({area.left, y}, {area.right, y}, kPale, 1);
    const float at = y + brush.rise(Role::figure) + 11;
    brush.words({area.left, at}, label, {Role::text, true, kInk});
    brush.words({area.right, at + 2}, count_text(count), {Role::figure, true, kInk, Side::right});
    y = at + 14;
    if (under.empty()) return;
    y = brush.paragraph({area.left, at + brush.pitch(Role::text)}, under, area.width(), {}) -
        brush.pitch(Role::text) + 14;
  };
  line("test page", "", 1);
  line("full-face", "every page of every piece", pages - 1);
  brush.line({area.left, y}, {area.right, y}, kPale, 1);
  y += brush.pitch(Role::text) + 10;
  brush.words({area.left, y}, "At 100 %, never fit to page.", {Role::text, true, kInk});
  y = brush.paragraph({area.left, y + brush.pitch(Role::text)},
                      "Each guide is a PDF that lands in your downloads.", area.width(), {});
  brush.paragraph({area.left, y + 8}, "Figures guide; the trial seam and the dry run decide.",
                  area.width(), {Role::text, false, kSoft});
}

}  // namespace

void print_panel(Page& page) {
  const Layout& layout = page.layout;
  const float top = stage_row_height() + 14;
  const float bottom = layout.bar.top - 8;
  const float left = kPageEdge;
  const float right = layout.width - kPageEdge;
  const float usable = right - left - 64;
  const float first = std::clamp(usable * 0.26f, 288.0f, 380.0f);
  const float third = std::clamp(usable * 0.24f, 200.0f, 340.0f);
  prove_the_printer(page, {left, top, left + first, bottom});
  choose_the_guides(page, {left + first + 32, top, right - third - 32, bottom});
  paper_column(page, {right - third, top, right, bottom});
}

}  // namespace pouncemark::web
