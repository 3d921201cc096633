#include "web/widgets/slip.h"

#include "web/widgets/button.h"

namespace pouncemark::web {
namespace {

constexpr float kInside = 18;

/// The line as one run of words.
std::string spoken(const SlipLine& line) {
  std::string words = line.label + " ";
  if (!line.before.empty()) words += line.before + " \xE2\x86\x92 ";
  words += line.figure;
  return line.unit.empty() ? words : words + " " + line.unit;
}

float head_height(const Brush& brush) {
  return 8 + brush.pitch(Role::figure) + brush.pitch(Role::second_line) + 2;
}

float sum_height(const Brush& brush, const SlipLine& line, const SlipLook& look) {
  if (look.open_sum != line.id || line.sum.empty()) return 0;
  return brush.pitch(Role::second_line) * static_cast<float>(line.sum.size()) + 8;
}

void figure(const Brush& brush, const SlipLine& line, float right, float base, bool is_moving) {
  float x = right;
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
  brush.words({x - width - 6, base}, line.before + " \xE2\x86\x92",
              {Role::text, false, kInk, Side::right});
}

void sum_lines(const Brush& brush, const SlipLine& line, float left, float top) {
  const float pitch = brush.pitch(Role::second_line);
  const float height = pitch * static_cast<float>(line.sum.size());
  brush.fill({left, top, left + 4, top + height}, kInk);
  float base = top + brush.rise(Role::second_line) + 4;
  for (const std::string& words : line.sum) {
    brush.words({left + 14, base}, words, {Role::second_line, false, kInk});
    base += pitch;
  }
}

}  // namespace

void slip_paper(const Brush& brush, const Area& area) {
  brush.fill({area.left + kPaperEdge, area.top + kPaperEdge, area.right + kPaperEdge,
              area.bottom + kPaperEdge},
             kFold);
  brush.fill(area, kPaper);
}

float slip_height(const Brush& brush, const std::vector<SlipLine>& lines, const SlipLook& look) {
  float height = head_height(brush) + 6;
  for (const SlipLine& line : lines) height += look.line_height + sum_height(brush, line, look);
  return height;
}

std::string slip(const Brush& brush, Hand& hand, Area area, const std::vector<SlipLine>& lines,
                 const SlipLook& look) {
  std::string pressed;
  area.bottom = area.top + slip_height(brush, lines, look);
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
    if (touch.clicked) pressed = line.id;
    if (touch.over) brush.fill({row.left, row.top + 1, row.right, row.bottom}, kMat);
    brush.line({left, y}, {right, y}, kPale, 1);
    base = y + look.line_height - (look.line_height - brush.rise(Role::verb)) / 2;
    brush.words({left, base}, line.label, {Role::text, false, kInk});
    figure(brush, line, right, base, look.is_moving);
    focus_ring(brush, hand, row.inset(4), touch.focused);
    y += look.line_height;
    const float more = sum_height(brush, line, look);
    if (more > 0) sum_lines(brush, line, left, y - 2);
    y += more;
  }
  return pressed;
}

}  // namespace pouncemark::web
