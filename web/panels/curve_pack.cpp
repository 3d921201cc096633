#include <algorithm>
#include <cmath>

#include "web/panels/curve_above.h"

namespace pouncemark::web {
namespace {

/// The line moved toward the viewer by so much, square to itself.
Course moved(const Course& line, float by) {
  Course out;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const Spot& before = line[i == 0 ? 0 : i - 1];
    const Spot& after = line[std::min(i + 1, line.size() - 1)];
    const float x = after.x - before.x;
    const float y = after.y - before.y;
    const float size = std::max(1e-3f, std::hypot(x, y));
    out.push_back({line[i].x - by * y / size, line[i].y + by * x / size});
  }
  return out;
}

/// The line without its last `off` pixels; from its left end where `from_left`.
Course shorter(Course line, float off, bool from_left) {
  if (from_left) std::reverse(line.begin(), line.end());
  while (line.size() > 1 && off > 0) {
    const Spot& end = line.back();
    const Spot& next = line[line.size() - 2];
    const float size = std::hypot(end.x - next.x, end.y - next.y);
    if (size > off) {
      const float part = off / size;
      line.back() = {end.x + (next.x - end.x) * part, end.y + (next.y - end.y) * part};
      break;
    }
    off -= size;
    line.pop_back();
  }
  if (from_left) std::reverse(line.begin(), line.end());
  return line;
}

void band(const Brush& brush, const Course& line, float thick, Colour fill, Colour edge) {
  brush.outline(line, edge, thick, false);
  brush.outline(line, fill, thick - 2.5f, false);
}

/// Dashes along a line, every other of its steps.
void dashes_along(const Brush& brush, const Course& line, Colour colour, float thick,
                  std::size_t from) {
  for (std::size_t i = from; i + 1 < line.size(); i += 2) {
    const Spot& a = line[i];
    const Spot& b = line[i + 1];
    brush.line({a.x + (b.x - a.x) * 0.15f, a.y + (b.y - a.y) * 0.15f},
               {a.x + (b.x - a.x) * 0.85f, a.y + (b.y - a.y) * 0.85f}, colour, thick);
  }
}

void timber(const Brush& brush, const Course& face) {
  band(brush, moved(face, -kTimberThick / 2), kTimberThick, kFold, kSoft);
  for (const float deep : {6.5f, 11.5f, 16.5f}) {
    dashes_along(brush, moved(face, -deep), kPale, 1, static_cast<std::size_t>(deep) % 2);
    dashes_along(brush, moved(face, -deep - 1.5f), kPale, 1,
                 static_cast<std::size_t>(deep + 1) % 2);
  }
}

void cloth(const Brush& brush, const Course& middle) {
  band(brush, middle, kClothThick, kCloth, kWeave);
  dashes_along(brush, moved(middle, -1.5f), kWeave, 1.2f, 0);
  dashes_along(brush, moved(middle, 1.5f), kWeave, 1.2f, 1);
}

/// A stitch through the pack: a bar with a knot at either end, square to the line at its end.
void stitch(const Brush& brush, const Course& line, bool at_left, float in, float deep) {
  const Course rest = shorter(line, in, at_left);
  if (rest.size() < 2) return;
  const Spot& at = at_left ? rest.front() : rest.back();
  const Spot& next = at_left ? rest[1] : rest[rest.size() - 2];
  const float size = std::max(1e-3f, std::hypot(next.x - at.x, next.y - at.y));
  const float sign = at_left ? 1.0f : -1.0f;
  const Spot square{-sign * (next.y - at.y) / size, sign * (next.x - at.x) / size};
  const Spot from{at.x - square.x * 4, at.y - square.y * 4};
  const Spot to{at.x + square.x * (deep + 3), at.y + square.y * (deep + 3)};
  brush.line(from, to, kThread, 3);
  brush.disc(from, 3.2f, kThread);
  brush.disc(to, 3.2f, kThread);
}

/// The cloth where both its edges are held: half a wave over the sheet.
Course standing_up(const Course& line, float high) {
  Course out = line;
  const Course one = moved(line, 1);
  const auto last = static_cast<float>(line.size() - 1);
  for (std::size_t i = 0; i < line.size(); ++i) {
    constexpr float kPi = 3.14159265f;
    const float by = high * std::sin(kPi * static_cast<float>(i) / last);
    out[i] = {line[i].x + (one[i].x - line[i].x) * by, line[i].y + (one[i].y - line[i].y) * by};
  }
  return out;
}

void panel(const Page& page, const FromAbove& at, const Course& sheet) {
  const Brush& brush = page.brush;
  const CurveView& view = page.state.curve.view;
  const CurveShape& shape = page.state.curve.shape;
  band(brush, moved(sheet, kSheetThick / 2 + 2), kSheetThick, kSheet, kSheetEdge);
  const Course lies = moved(sheet, kSheetThick + kClothThick / 2 + 2);
  constexpr float kStitchIn = 12;
  const float deep = kSheetThick + kClothThick + 2;
  if (page.state.curve.shows_bulge && view.can_bulge) {
    cloth(brush, standing_up(lies, static_cast<float>(shape.bulge) * at.px));
    stitch(brush, sheet, !view.fly_is_right, kStitchIn, deep);
  } else {
    const float off = static_cast<float>(from_um(view.short_of_fly_um) - shape.creep) * at.px;
    cloth(brush, shorter(lies, off, !view.fly_is_right));
  }
  stitch(brush, sheet, view.fly_is_right, kStitchIn, deep);
  if (!view.has_facing || page.state.curve.shows_bulge) return;
  band(brush, moved(sheet, pack_thick(view) - kSheetThick / 2), kSheetThick, kSheet, kSheetEdge);
}

/// Screws through the pack into the timber: the tight one solid, one in a slot open.
void screws(const Page& page, const Course& sheet) {
  const Brush& brush = page.brush;
  const float front = pack_thick(page.state.curve.view) + 2;
  const Course heads = moved(sheet, front);
  const Course points = moved(sheet, -kTimberThick * 0.7f);
  for (const FixingMark& fixing : page.state.curve.shape.fixings) {
    const Spot head = spot_at(heads, fixing.part);
    brush.line(head, spot_at(points, fixing.part), kStaple, 2.5f);
    brush.disc(head, 5, fixing.is_tight ? kStaple : kPaper);
    brush.ring(head, 5, kStaple, 2);
  }
}

}  // namespace

float pack_thick(const CurveView& view) {
  const float sheets = view.has_facing ? 2 * kSheetThick + 2 : kSheetThick;
  return view.holds.empty() ? 2 : 2 + sheets + kClothThick;
}

Spot spot_at(const Course& course, double part) {
  const double at = part * static_cast<double>(course.size() - 1);
  const std::size_t i = std::min(static_cast<std::size_t>(at), course.size() - 2);
  const auto rest = static_cast<float>(at - static_cast<double>(i));
  return {course[i].x + (course[i + 1].x - course[i].x) * rest,
          course[i].y + (course[i + 1].y - course[i].y) * rest};
}

Course draw_pack(const Page& page, const FromAbove& at) {
  const Brush& brush = page.brush;
  const CurveView& view = page.state.curve.view;
  const CurveShape& shape = page.state.curve.shape;
  Course face;
  for (const Vec2& point : shape.timber) face.push_back(at.spot(point));
  timber(brush, face);
  // A bulging bay meets the sheet at its crest first, a hollow one at its ends.
  const double gap = view.is_hollow ? 0 : shape.crest - shape.sheet_crest;
  Course sheet;
  for (const Vec2& point : shape.sheet) {
    sheet.push_back(at.spot(point));
    sheet.back().y += static_cast<float>(gap) * at.px;
  }
  if (view.holds_panel) {
    panel(page, at, sheet);
  } else if (!view.holds.empty()) {
    // A section: cloth between its two leaves.
    const float mid = kSheetThick + kClothThick / 2 + 1;
    cloth(brush, moved(sheet, mid));
    for (const float side : {-1.0f, 1.0f}) {
      band(brush, moved(sheet, mid + side * (kClothThick + 3) / 2), 4, kSheet, kSheetEdge);
    }
  }
  screws(page, sheet);
  return sheet;
}

}  // namespace pouncemark::web
