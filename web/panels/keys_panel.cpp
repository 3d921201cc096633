#include "web/panels/keys_panel.h"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "web/host/host.h"
#include "web/widgets/slip.h"

namespace pouncemark::web {
namespace {

constexpr std::array<const char*, 3> kSizes = {"Small", "Normal", "Large"};
constexpr std::array<const char*, 3> kSizeIds = {"text.small", "text.normal", "text.large"};
constexpr const char* kHands =
    "The wheel or two fingers move a close-up along its piece, once it was pressed; two fingers "
    "apart, or Ctrl and the wheel, make it larger. Neither changes a figure.";
constexpr float kInside = 28;
constexpr float kBetweenCaps = 8;

/// A row of the table as it is set: its keys, one cap each, and its words.
struct KeyLine {
  const KeyRow* row = nullptr;
  std::vector<std::string> caps;
  std::vector<std::string> words;
  float height = 0;
};

std::vector<std::string> caps_of(const KeyRow& row) {
  std::vector<std::string> caps;
  const std::string shown = shown_keys(row);
  for (std::size_t from = 0; from < shown.size();) {
    const std::size_t to = std::min(shown.find(", ", from), shown.size());
    caps.push_back(shown.substr(from, to - from));
    from = to + 2;
  }
  return caps;
}

float cap_width(const Brush& brush, const std::string& cap) {
  return std::max(30.0f, brush.width_of(cap, Role::second_line, true) + 16);
}

/// The widest run of caps that stands on one line; a longer one goes on below.
constexpr float kCapsOfWidth = 0.38f;

struct Column {
  Area area;
  float line = 0;     ///< from one row to the next where each takes one line
  float heading = 0;  ///< height of a heading
  float apart = 6;    ///< from one group to the next
};

std::size_t cap_lines(const Brush& brush, const KeyLine& line, float room) {
  std::size_t lines = 1;
  float x = 0;
  for (const std::string& cap : line.caps) {
    const float wide = cap_width(brush, cap) + kBetweenCaps;
    if (x > 0 && x + wide > room) {
      ++lines;
      x = 0;
    }
    x += wide;
  }
  return lines;
}

KeyLine key_line(const Brush& brush, const KeyRow& row, const Column& column) {
  KeyLine line;
  line.row = &row;
  line.caps = caps_of(row);
  const float caps = column.area.width() * kCapsOfWidth;
  line.words = broken(brush, row.words, column.area.width() - caps, Role::text, false);
  const auto more = std::max(line.words.size(), cap_lines(brush, line, caps)) - 1;
  line.height = column.line + static_cast<float>(more) * brush.pitch(Role::text);
  return line;
}

void draw_caps(const Brush& brush, const KeyLine& line, Spot at, float room, float high) {
  float x = 0;
  for (const std::string& cap : line.caps) {
    const float wide = cap_width(brush, cap);
    if (x > 0 && x + wide + kBetweenCaps > room) {
      at.y += brush.pitch(Role::text);
      x = 0;
    }
    const Area area = area_at(at.x + x, at.y, wide, high);
    brush.frame(area, kSoft, 1.5f, kCorner);
    brush.centred(area, cap, {Role::second_line, true, kInk});
    x += wide + kBetweenCaps;
  }
}

void draw_line(Page& page, const Column& column, const KeyLine& line, float y) {
  const Brush& brush = page.brush;
  const float caps = column.area.width() * kCapsOfWidth;
  const float high = std::min(brush.pitch(Role::second_line) + 2, column.line - 2);
  const float top = y + (column.line - high) / 2;
  draw_caps(brush, line, {column.area.left, top}, caps, high);
  float base = top + high / 2 + brush.rise(Role::text) / 2;
  for (const std::string& words : line.words) {
    brush.words({column.area.left + caps, base}, words, {});
    base += brush.pitch(Role::text);
  }
  const auto index = static_cast<std::size_t>(line.row - key_table().data());
  page.hand.note("key." + std::to_string(index),
                 {column.area.left, y, column.area.right, y + line.height},
                 shown_keys(*line.row) + ": " + line.row->words);
}

float draw_heading(Page& page, const Column& column, KeyGroup group, float y) {
  const Brush& brush = page.brush;
  const float base = y + column.heading - 8;
  brush.words({column.area.left, base}, key_group_words(group), {Role::verb, true, kInk});
  brush.line({column.area.left, base + 6}, {column.area.right, base + 6}, kPale, 1);
  return y + column.heading;
}

float group_height(const Brush& brush, KeyGroup group, const Column& column) {
  float height = column.heading + column.apart;
  for (const KeyRow& row : key_table()) {
    if (row.group == group) height += key_line(brush, row, column).height;
  }
  return height;
}

float draw_group(Page& page, KeyGroup group, const Column& column, float y) {
  y = draw_heading(page, column, group, y);
  for (const KeyRow& row : key_table()) {
    if (row.group != group) continue;
    const KeyLine line = key_line(page.brush, row, column);
    draw_line(page, column, line, y);
    y += line.height;
  }
  return y + column.apart;
}

/// How many groups stand in the first column, so that the longer of the two is shortest; gives its
/// height too.
struct Parted {
  int first = 0;
  float height = 0;
};

Parted parted(const Brush& brush, const Column& column) {
  std::array<float, kKeyGroups + 1> upto{};
  for (int i = 0; i < kKeyGroups; ++i) {
    const auto at = static_cast<std::size_t>(i);
    upto[at + 1] = upto[at] + group_height(brush, static_cast<KeyGroup>(i), column);
  }
  Parted best{0, upto.back()};
  for (int i = 1; i < kKeyGroups; ++i) {
    const float first = upto[static_cast<std::size_t>(i)];
    const float height = std::max(first, upto.back() - first);
    if (height < best.height) best = {i, height};
  }
  return best;
}

/// The groups in two columns; where they would not fit, everything stands closer.
void draw_groups(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  const float pitch = brush.pitch(Role::text);
  Column column{area, pitch + 9, brush.pitch(Role::verb) + 12};
  column.area.right = area.mid_x() - 20;
  Parted now = parted(brush, column);
  if (now.height > area.height()) {
    column = {column.area, pitch + 1, brush.pitch(Role::verb) + 4, 2};
    now = parted(brush, column);
  }
  float y = area.top;
  for (int i = 0; i < kKeyGroups; ++i) {
    if (i == now.first) {
      y = area.top;
      column.area = {area.mid_x() + 20, area.top, area.right, area.bottom};
    }
    y = draw_group(page, static_cast<KeyGroup>(i), column, y);
  }
}

}  // namespace

void take_text_size(float ratio, TextSize size) {
  set_text(ratio, size);
  host::keep_preference("text", kSizes[static_cast<std::size_t>(size)]);
}

TextSize next_text_size() { return static_cast<TextSize>((static_cast<int>(text_size()) + 1) % 3); }

TextSize kept_text_size() {
  const std::string kept = host::preference("text");
  for (std::size_t i = 0; i < kSizes.size(); ++i) {
    if (kept == kSizes[i]) return static_cast<TextSize>(i);
  }
  return TextSize::normal;
}

float text_switch(Page& page, float right, float top) {
  float x = right;
  for (int i = 2; i >= 0; --i) {
    const auto at = static_cast<std::size_t>(i);
    const auto size = static_cast<TextSize>(i);
    const float width = std::max(84.0f, button_width(page.brush, kSizes[at]));
    const Area area = area_at(x - width, top, width, button_height());
    ButtonLook look{text_size() == size ? ButtonKind::chosen : ButtonKind::plain};
    const std::string aloud = std::string("text ") + kSizes[at];
    look.aloud = aloud;
    if (button(page.brush, page.hand, kSizeIds[at], area, kSizes[at], look)) {
      page.later([ratio = page.brush.ratio(), size] { take_text_size(ratio, size); });
    }
    x -= width + 8;
  }
  const float base = top + button_height() / 2 + page.brush.rise(Role::text) / 2;
  x -= 6;
  return x - page.brush.words({x, base}, "Text", {Role::text, false, kInk, Side::right});
}

void keys_panel(Page& page) {
  const Brush& brush = page.brush;
  const float width = std::min(page.layout.width - 2 * kPageEdge, 1240.0f);
  const float spare = std::max(0.0f, page.layout.height - 768) / 2;
  const Area paper = area_at((page.layout.width - width) / 2, 16 + spare, width,
                             page.layout.height - 2 * (16 + spare));
  brush.fill({0, 0, page.layout.width, page.layout.height}, kBench);
  slip_paper(brush, paper);
  const Area area = paper.inset(kInside);
  const float high = button_height();
  const float top = paper.top + 16;
  const float base = top + high / 2 + brush.rise(Role::headline) / 2;
  brush.words({area.left, base}, "Keys", {Role::headline, true, kInk});
  page.hand.note("keys", area_at(area.left, top, 90, high), "Keys");
  const float close_width = button_width(brush, "Close");
  const float right = area.right - close_width - 24;
  text_switch(page, right, top);
  const Area shut = area_at(area.right - close_width, top, close_width, high);
  const bool closed = button(brush, page.hand, "keys.close", shut, "Close", {ButtonKind::main});
  if (closed || page.hand.escape()) {
    page.later([&state = page.state] { state.shows_keys = false; });
  }
  const float foot = brush.pitch(Role::text) * 2 + 8;
  draw_groups(page, {area.left, top + high + 6, area.right, paper.bottom - foot});
  const float words_top = paper.bottom - foot + brush.rise(Role::text);
  brush.paragraph({area.left, words_top}, kHands, area.width(), {Role::text, false, kSoft});
  page.hand.note("keys.hands", {area.left, words_top - 14, area.right, paper.bottom - 4}, kHands);
}

}  // namespace pouncemark::web
