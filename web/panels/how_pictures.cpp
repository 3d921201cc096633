#include "web/panels/how_pictures.h"

#include <algorithm>

namespace pouncemark::web {
namespace {

/// A staple as it lies along its row: crown, a leg at each end, the tick in its middle.
void staple(const Brush& brush, Spot middle, float half) {
  brush.line({middle.x - half, middle.y}, {middle.x + half, middle.y}, kStaple, 3);
  brush.line({middle.x, middle.y - 6}, {middle.x, middle.y + 6}, kStaple, 2);
  for (const float side : {-1.0f, 1.0f})
    brush.disc({middle.x + side * half, middle.y}, 3.2f, kStaple);
}

/// Two staples, and the arrow from what to what.
void spacing_picture(const Brush& brush, bool is_gap, const Area& area) {
  brush.fill(area, kCloth);
  brush.frame(area, kWeave, 1);
  const float half = 15;
  const float y = area.mid_y() - 6;
  const Spot first{area.left + half + 12, y};
  const Spot second{area.right - half - 12, y};
  staple(brush, first, half);
  staple(brush, second, half);
  const float from = is_gap ? first.x + half : first.x;
  const float to = is_gap ? second.x - half : second.x;
  const float low = area.bottom - 7;
  for (const float x : {from, to}) brush.line({x, y + 5}, {x, area.bottom - 2}, kInk, 1.2f);
  brush.arrow({from + 1, low}, {to - 1, low}, kInk, 2, 7, true);
}

/// A hole that both rows have, or the last of its own row.
void hole(const Brush& brush, Spot at) { brush.disc(at, 3.4f, kThread); }

/// The hinge row upright, the row of the top edge coming from the right.
void corner_picture(const Brush& brush, bool is_short, const Area& area) {
  const Area sheet = {area.left, area.top, area.right, area.bottom};
  brush.fill(sheet, kSheet);
  const Area cloth = {sheet.left + 8, sheet.top + 8, sheet.right, sheet.bottom};
  brush.fill(cloth, kCloth);
  brush.line({sheet.left, sheet.top}, {sheet.left, sheet.bottom}, kThread, 4);
  brush.line({sheet.left, sheet.top}, {sheet.right, sheet.top}, kSheetEdge, 2);
  const float x = sheet.left + 26;
  const float y = sheet.top + 24;
  const float start = is_short ? x + 44 : x;
  brush.dashes({x, y}, {x, sheet.bottom}, kThread, 2.4f, 8, 4);
  brush.dashes({start, y}, {sheet.right, y}, kThread, 2.4f, 8, 4);
  hole(brush, {x, y});
  if (!is_short) {
    brush.ring({x, y}, 8, kInk, 1.6f);
    return;
  }
  hole(brush, {start, y});
  const float low = y + 20;
  for (const float at : {x, start}) brush.line({at, y + 6}, {at, low + 5}, kInk, 1.2f);
  brush.arrow({x + 1, low}, {start - 1, low}, kInk, 2, 7, true);
}

}  // namespace

void how_picture(Page& page, Question question, int answer, const Area& area) {
  if (question == Question::measured_from) spacing_picture(page.brush, answer == 1, area);
  if (question == Question::corners) corner_picture(page.brush, answer == 1, area);
}

}  // namespace pouncemark::web
