#include "web/widgets/slip.h"

#include <algorithm>
#include <cstddef>
#include <string_view>

#include "web/widgets/button.h"

namespace pouncemark::web {
namespace {

constexpr float kInside = 18;
constexpr const char* kTo = " \xE2\x86\x92";  ///< from the former figure to the new one
constexpr float kSumInside = 14;              ///< from the bar of a sum to its words

float head_height(const Brush& brush) {
  return 8 + brush.pitch(Role::figure) + brush.pitch(Role::second_line) + 2;
}

/// Numbers in lines no wider than `width`: a new line begins with + − or = or after a comma, so
/// that "8 × 18" is not torn.
std::vector<std::string> broken_numbers(const Brush& brush, const std::string& words, float width) {
  std::vector<std::string> lines(1);
  for (std::size_t from = 0; from < words.size();) {
    std::size_t to = words.size();
    for (const std::string_view sign : {" + ", " − ", " = ", ", "}) {
      const std::size_t at = words.find(sign, from + 1);
      if (at != std::string::npos) to = std::min(to, sign == ", " ? at + 1 : at);
    }
    const std::string part = words.substr(from, to - from);
    const bool fits =
        brush.width_of(lines.back() + part, Role::second_line, false) <= width || from == 0;
    if (fits)
      lines.back() += part;
    else
      lines.push_back(part.substr(part.front() == ' ' ? 1 : 0));
    from = to;
  }
  return lines;
}

/// One set line of a sum.
struct SumWords {
  std::string words;
  bool is_source = false;
  bool is_numbers = false;
};

std::vector<SumWords> sum_words(const Brush& brush, const SlipSum& sum, float width) {
  std::vector<SumWords> set;
  const auto put = [&](const std::string& words, bool is_source, bool is_numbers) {
    for (const auto& line : broken(brush, words, width, Role::second_line, false)) {
      set.push_back(SumWords{line, is_source, is_numbers});
    }
  };
  put(sum.rule, false, false);
  for (const std::string& numbers : sum.numbers) {
    for (const auto& line : broken_numbers(brush, numbers, width)) put(line, false, true);
  }
  put(sum.source, true, false);
  return set;
}

float open_height(const Brush& brush, float width, const SlipLine& line, const SlipLook& look) {
  return look.open_sum == line.id ? sum_height(brush, line.sum, width - 2 * kInside) : 0;
}

/// Widths a line's words take at its right: the unit, the figure, and what it was before.
float figure_width(const Brush& brush, const SlipLine& line, Role before) {
  float width = line.unit.empty() ? 0 : brush.width_of(line.unit, Role::second_line, false) + 5;
  if (line.before.empty()) return width + brush.width_of(line.figure, Role::verb, false);
  width += brush.width_of(line.figure, Role::figure, true) + 6;
  return width + brush.width_of(line.before + kTo, before, false);
}

/// How a line is set so that its label and its figure do not meet: the label without what stands
/// after its comma, then the former figure in smaller signs, then without it.
struct LineSetting {
  std::string label;
  Role before = Role::text;
  bool shows_before = true;
};

LineSetting setting_of(const Brush& brush, const SlipLine& line, float width) {
  constexpr float kApart = 8;
  const auto fits = [&](const std::string& label, Role before) {
    const float words = brush.width_of(label, Role::text, false);
    return words + kApart + figure_width(brush, line, before) <= width;
  };
  if (fits(line.label, Role::text)) return {line.label};
  const std::string brief = line.label.substr(0, line.label.find(','));
  for (const Role before : {Role::text, Role::second_line}) {
    if (fits(brief, before)) return {brief, before};
  }
  return {brief, Role::second_line, false};
}

void figure(const Brush& brush, const SlipLine& line, const LineSetting& setting, Spot right,
            bool is_moving) {
  float x = right.x;
  const float base = right.y;
  if (!line.unit.empty()) {
    x -= brush.words({x, base}, line.unit, {Role::second_line, false, kInk, Side::right}) + 5;
  }
  if (line.before.empty()) {
    brush.words({x, base}, line.figure, {Role::verb, false, kInk, Side::right});
    return;
  }
  const float width = brush.words({x, base}, line.figure, {Role::figure, true, kPen, Side::right});
  if (is_moving)
    brush.dashes({x - width, base + 6}, {x, base + 6}, kPen, 3, 9, 5);
  else
    brush.line({x - width, base + 6}, {x, base + 6}, kPen, 3);
  if (!setting.shows_before) return;
  brush.words({x - width - 6, base}, line.before + kTo, {setting.before, false, kInk, Side::right});
}

/// Dots under a number that no one entered, and under the word that says so.
void underline_assumed(const Brush& brush, const std::string& words, Spot base) {
  const std::string assumed = "assumed";
  const auto wide = [&](std::size_t count) {
    return brush.width_of(std::string_view(words).substr(0, count), Role::second_line, false);
  };
  for (std::size_t at = words.find(assumed); at != std::string::npos;
       at = words.find(assumed, at + 1)) {
    std::size_t from = at;
    if (at >= 2 && words[at - 2] != ' ') {
      const std::size_t blank = words.rfind(' ', at - 2);
      from = blank == std::string::npos ? 0 : blank + 1;
    }
    if (words[from] == '(') ++from;
    const float y = base.y + 3.5f;
    brush.dashes({base.x + wide(from), y}, {base.x + wide(at + assumed.size()), y}, kInk, 1.6f,
                 1.6f, 2.4f);
  }
}

}  // namespace

float sum_height(const Brush& brush, const SlipSum& sum, float width) {
  const auto set = sum_words(brush, sum, width - kSumInside);
  return set.empty() ? 0 : brush.pitch(Role::second_line) * static_cast<float>(set.size()) + 8;
}

void draw_sum(const Brush& brush, const SlipSum& sum, Spot upper_left, float width) {
  const auto set = sum_words(brush, sum, width - kSumInside);
  const float pitch = brush.pitch(Role::second_line);
  const float height = pitch * static_cast<float>(set.size());
  brush.fill({upper_left.x, upper_left.y, upper_left.x + 4, upper_left.y + height}, kInk);
  Spot base = {upper_left.x + kSumInside, upper_left.y + brush.rise(Role::second_line) + 4};
  for (const SumWords& line : set) {
    brush.words(base, line.words, {Role::second_line, false, line.is_source ? kSoft : kInk});
    if (line.is_numbers) underline_assumed(brush, line.words, base);
    base.y += pitch;
  }
}

void slip_paper(const Brush& brush, const Area& area) { brush.slip(area); }

std::string spoken(const SlipLine& line) {
  std::string words = line.label + " ";
  if (!line.before.empty()) words += line.before + " \xE2\x86\x92 ";
  words += line.figure;
  return line.unit.empty() ? words : words + " " + line.unit;
}

std::string spoken(const SlipSum& sum) {
  std::string words;
  const auto put = [&words](const std::string& part) {
    if (part.empty()) return;
    if (!words.empty()) words += " / ";
    words += part;
  };
  put(sum.rule);
  for (const std::string& numbers : sum.numbers) put(numbers);
  put(sum.source);
  return words;
}

float slip_height(const Brush& brush, float width, const std::vector<SlipLine>& lines,
                  const SlipLook& look) {
  float height = head_height(brush) + 6;
  for (const SlipLine& line : lines) {
    height += look.line_height + open_height(brush, width, line, look);
  }
  return height;
}

std::string slip(const Brush& brush, Hand& hand, Area area, const std::vector<SlipLine>& lines,
                 const SlipLook& look) {
  std::string pressed;
  area.bottom = area.top + slip_height(brush, area.width(), lines, look);
  slip_paper(brush, area);
  const float left = area.left + kInside;
  const float right = area.right - kInside;
  float base = area.top + 8 + brush.rise(Role::figure) + 7;
  brush.words({left, base}, look.title, {Role::figure, true, kInk});
  brush.words({left, base + brush.pitch(Role::second_line)}, look.under_title,
              {Role::second_line, false, kSoft});
  float y = area.top + head_height(brush);
  for (const SlipLine& line : lines) {
    const Area row = {area.left, y, area.right, y + look.line_height};
    const Touch touch = hand.touch(line.id, row, spoken(line));
    if (touch.clicked || (touch.focused && hand.sum_key())) pressed = line.id;
    if (touch.over) brush.fill({row.left, row.top + 1, row.right, row.bottom}, kMat);
    brush.line({left, y}, {right, y}, kPale, 1);
    base = y + look.line_height - (look.line_height - brush.rise(Role::verb)) / 2;
    const LineSetting setting = setting_of(brush, line, right - left);
    brush.words({left, base}, setting.label, {Role::text, false, kInk});
    figure(brush, line, setting, {right, base}, look.is_moving);
    focus_ring(brush, hand, row.inset(4), touch.focused);
    y += look.line_height;
    const float more = open_height(brush, area.width(), line, look);
    if (more > 0) {
      draw_sum(brush, line.sum, {left, y - 2}, right - left);
      hand.note(line.id + ".sum", {left, y - 2, right, y - 2 + more}, spoken(line.sum));
    }
    y += more;
  }
  return pressed;
}

}  // namespace pouncemark::web
