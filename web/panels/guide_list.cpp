#include <algorithm>
#include <array>

#include "engine/base/number_text.h"
#include "web/model/words.h"
#include "web/panels/print_parts.h"
#include "web/widgets/slip.h"
#include "web/widgets/tag.h"

namespace pouncemark::web {
namespace {

/// A guide that every piece has.
struct GuideOfPiece {
  GuideKind kind;
  const char* id;
  const char* in_full;
  const char* in_short;
  std::vector<std::int64_t> SheetCounts::*sheets;
};
constexpr std::array kGuides = {
    GuideOfPiece{GuideKind::full_face, "print.full_face", "Print the full-face guide", "Full-face",
                 &SheetCounts::full_face},
    GuideOfPiece{GuideKind::tick_list, "print.tick_list", "Print the tick list", "Tick list",
                 &SheetCounts::tick_list}};

/// How the lines of the list are set out: one way for all of them.
struct LineForm {
  bool in_full = false;      ///< the buttons say all they do
  bool is_beside = false;    ///< the buttons stand right of the words, else under them
  bool is_stacked = false;   ///< one button under the other
  bool is_one_line = false;  ///< the size stands right of the name, else under it
  float high = 0;
  std::array<float, kGuides.size()> buttons{};
};

std::string title_of(const solve::Piece& piece) {
  return (piece.kind == solve::PieceKind::panel ? "Panel " : "Section ") + piece.code;
}

std::string size_of(const solve::Piece& piece) {
  return short_mm_text(piece.width_um, 1) + " " + kTimes + " " + short_mm_text(piece.length_um, 1) +
         ", FRONT";
}

std::int64_t count_at(const std::vector<std::int64_t>& counts, std::size_t index) {
  return index < counts.size() ? counts[index] : 0;
}

/// What its button says; pressed, a guide that cannot be made says why.
std::string press_words(const GuideOfPiece& guide, std::int64_t count, bool in_full) {
  const std::string words = in_full ? guide.in_full : guide.in_short;
  return count == 0 ? words : words + ": " + counted(count, "page", "pages");
}

constexpr float kPad = 16;
constexpr float kGap = 8;

/// Sets the widths of the buttons for the longest count; gives their width side by side.
float fit_buttons(const Page& page, LineForm& form) {
  float row = -kGap;
  for (std::size_t i = 0; i < kGuides.size(); ++i) {
    const auto& counts = page.state.counted.sheets.*kGuides[i].sheets;
    const auto most = std::max_element(counts.begin(), counts.end());
    const std::int64_t count = most == counts.end() ? 0 : *most;
    form.buttons[i] = button_width(page.brush, press_words(kGuides[i], count, form.in_full), false);
    row += form.buttons[i] + kGap;
  }
  return row;
}

/// Widths of the names and sizes of the pieces that may be shown.
struct WordWidths {
  float title = 0;
  float size = 0;
};

/// The roomiest form in which nothing meets.
LineForm line_form(const Page& page, const WordWidths& widths, float width) {
  const float pitch = page.brush.pitch(Role::text);
  const float named = std::max(widths.title, widths.size) + 24;
  LineForm form;
  form.high = 2 * pitch + 22;
  form.is_beside = true;
  const float room = width - 2 * kPad;
  form.in_full = true;
  if (named + fit_buttons(page, form) <= room) return form;
  form.in_full = false;
  const float row = fit_buttons(page, form);
  if (named + row <= room) return form;
  form.is_beside = false;
  form.is_stacked = row > room;
  form.is_one_line = widths.title + 24 + widths.size <= room;
  const float rows = form.is_stacked ? static_cast<float>(kGuides.size()) : 1.0f;
  form.high = (form.is_one_line ? 1.0f : 2.0f) * pitch + 26 + rows * (button_height() + kGap);
  for (float& wide : form.buttons) wide = std::min(wide, room);
  return form;
}

/// Where the button of each guide stands in a line.
std::array<Area, kGuides.size()> button_places(const LineForm& form, const Area& line) {
  std::array<Area, kGuides.size()> places;
  const float height = button_height();
  float x = line.left + kPad;
  float y = line.mid_y() - height / 2;
  if (form.is_beside) {
    x = line.right - kPad + kGap;
    for (const float wide : form.buttons) x -= wide + kGap;
  } else {
    const float lines = form.is_stacked ? static_cast<float>(kGuides.size()) : 1.0f;
    y = line.bottom - 4 - lines * (height + kGap);
  }
  for (std::size_t i = 0; i < kGuides.size(); ++i) {
    places[i] = area_at(x, y, form.buttons[i], height);
    if (form.is_stacked)
      y += height + kGap;
    else
      x += form.buttons[i] + kGap;
  }
  return places;
}

void guide_line(Page& page, std::size_t index, const LineForm& form, const Area& area) {
  const Brush& brush = page.brush;
  const solve::Piece& piece = page.bench.now().results.pieces[index];
  const std::string title = title_of(piece);
  const std::string size = size_of(piece);
  const auto places = button_places(form, area);
  const float pitch = brush.pitch(Role::text);
  const float right = form.is_beside ? places.front().left - 8 : area.right - kPad;
  const Area words = {area.left + kPad, area.top, right, area.bottom};
  brush.start_window(words);
  brush.words({words.left, area.top + 10 + pitch * 0.75f}, title, {Role::text, true, kInk});
  if (form.is_one_line)
    brush.words({right, area.top + 10 + pitch * 0.75f}, size,
                {Role::text, false, kInk, Side::right});
  else
    brush.words({words.left, area.top + 12 + pitch * 1.75f}, size, {});
  brush.end_window();
  page.hand.note("guide_of." + piece.code, words, title + ", " + size);
  for (std::size_t i = 0; i < kGuides.size(); ++i) {
    const GuideOfPiece& guide = kGuides[i];
    const std::int64_t count = count_at(page.state.counted.sheets.*guide.sheets, index);
    const std::string id = index == 0 ? guide.id : guide.id + ("." + piece.code);
    const std::string press = press_words(guide, count, form.in_full);
    const std::string aloud = title + ", " + press;
    if (button(brush, page.hand, id, places[i], press,
               {ButtonKind::plain, false, Role::text, aloud})) {
      page.later([&bench = page.bench, &state = page.state, kind = guide.kind,
                  at = static_cast<int>(index)] {
        print_now(bench, state, {kind, at});
      });
    }
  }
}

/// The buttons that step through a long list of guides.
void list_steps(Page& page, const Area& area, std::size_t shown, std::size_t count) {
  PageState& state = page.state;
  const std::size_t first = std::min(state.first_guide, count - 1);
  const std::string of = " of " + std::to_string(count);
  std::string words = std::to_string(first + 1) + " to " + std::to_string(first + shown) + of;
  const float height = button_height();
  const float wide = button_width(page.brush, "Further", false);
  const Area back = area_at(area.left, area.top, wide, height);
  const Area on = area_at(back.right + 8, area.top, wide, height);
  const bool is_first = first == 0;
  const bool is_last = first + shown >= count;
  if (button(page.brush, page.hand, "guides.back", back, "Back", {ButtonKind::plain, is_first})) {
    page.later([&state, first, fit = shown] { state.first_guide = first - std::min(fit, first); });
  }
  if (button(page.brush, page.hand, "guides.further", on, "Further",
             {ButtonKind::plain, is_last})) {
    page.later([&state, first, shown] { state.first_guide = first + shown; });
  }
  if (on.right + 14 + page.brush.width_of(words, Role::text, false) > area.right) {
    words = "from " + std::to_string(first + 1) + of;
  }
  page.brush.words({on.right + 14, on.mid_y() + page.brush.rise(Role::text) / 2}, words, {});
}

/// Why the last guide asked for was not printed, under the list.
void why_not(Page& page, float left, float top, float width) {
  const std::string& sentence = page.state.print_sentence;
  if (sentence.empty()) return;
  const Brush& brush = page.brush;
  tag(brush, {left, top}, TagKind::stop);
  const float base = top + tag_height() + brush.pitch(Role::text);
  const float end = brush.paragraph({left, base}, sentence, width, {});
  page.hand.note("print.refused", {left, top, left + width, end}, sentence);
}

/// Room that the sentence under the list takes.
float why_not_height(const Page& page, float width) {
  const std::string& sentence = page.state.print_sentence;
  if (sentence.empty()) return 0;
  const auto lines = broken(page.brush, sentence, width, Role::text, false).size();
  return 14 + tag_height() + page.brush.pitch(Role::text) * (static_cast<float>(lines) + 0.5f);
}

WordWidths word_widths(const Page& page, std::size_t first) {
  constexpr std::size_t kMostShown = 24;
  const auto& pieces = page.bench.now().results.pieces;
  WordWidths widths;
  for (std::size_t i = first; i < std::min(pieces.size(), first + kMostShown); ++i) {
    const Brush& brush = page.brush;
    widths.title = std::max(widths.title, brush.width_of(title_of(pieces[i]), Role::text, true));
    widths.size = std::max(widths.size, brush.width_of(size_of(pieces[i]), Role::text, false));
  }
  return widths;
}

}  // namespace

void choose_the_guides(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  const std::size_t count = page.bench.now().results.pieces.size();
  brush.words({area.left, area.top + 26}, "Choose the guides", {Role::figure, true, kInk});
  const float top = area.top + 44;
  if (count == 0) {
    brush.words({area.left, top + brush.pitch(Role::text)}, "No piece yet, so no guide.", {});
    return;
  }
  const std::size_t first = std::min(page.state.first_guide, count - 1);
  const LineForm form = line_form(page, word_widths(page, first), area.width());
  const float room = area.bottom - top - why_not_height(page, area.width());
  auto fit = static_cast<std::size_t>(std::max(1.0f, room / form.high));
  const bool has_steps = count > fit;
  if (has_steps) {
    fit = static_cast<std::size_t>(std::max(1.0f, (room - button_height() - 18) / form.high));
  }
  const std::size_t shown = std::min(count - first, fit);
  slip_paper(brush, {area.left, top, area.right, top + form.high * static_cast<float>(shown)});
  float y = top;
  for (std::size_t i = 0; i < shown; ++i) {
    if (i > 0) brush.line({area.left + kPad, y}, {area.right - kPad, y}, kPale, 1);
    guide_line(page, first + i, form, {area.left, y, area.right, y + form.high});
    y += form.high;
  }
  if (has_steps) {
    list_steps(page, {area.left, y + 16, area.right, area.bottom}, shown, count);
    y += 16 + button_height();
  }
  why_not(page, area.left, y + 14, area.width());
}

}  // namespace pouncemark::web
