#include <algorithm>
#include <cmath>
#include <string>

#include "web/panels/curve_above.h"
#include "web/widgets/tag.h"

namespace pouncemark::web {
namespace {

/// Square to the timber at one of its points, away from the viewer, with length 1.
Spot back_of(const FromAbove& at, const std::vector<Vec2>& points, std::size_t i) {
  const Spot before = at.spot(points[i == 0 ? 0 : i - 1]);
  const Spot after = at.spot(points[std::min(i + 1, points.size() - 1)]);
  const float size = std::max(1e-3f, std::hypot(after.x - before.x, after.y - before.y));
  return {(after.y - before.y) / size, -(after.x - before.x) / size};
}

Spot behind(const FromAbove& at, const std::vector<Vec2>& points, std::size_t i, float by) {
  const Spot on = at.spot(points[i]);
  const Spot back = back_of(at, points, i);
  return {on.x + back.x * by, on.y + back.y * by};
}

void tight_places(const Page& page, const FromAbove& at) {
  const CurveShape& shape = page.state.curve.shape;
  for (const auto& part : shape.tight) {
    Course course;
    for (std::size_t i = part[0]; i <= part[1]; ++i) {
      course.push_back(behind(at, shape.timber, i, kTimberThick + 4));
    }
    page.brush.outline(course, kStop, 5, false);
  }
}

/// Ticks with their numbers, those that the words of the radius cover left out.
void stations(Page& page, const FromAbove& at, const Area& covered) {
  const CurveShape& shape = page.state.curve.shape;
  const std::size_t count = shape.stations.size();
  if (count == 0) return;
  const float apart = at.px * static_cast<float>(from_um(page.state.curve.view.along_um)) /
                      static_cast<float>(count);
  const std::size_t every = apart > 30 ? 1 : static_cast<std::size_t>(30 / apart) + 1;
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t point = shape.stations[i];
    page.brush.line(behind(at, shape.timber, point, -3),
                    behind(at, shape.timber, point, kTimberThick + 3), kInk, 2);
    if (i % every != 0 && i + 1 != count) continue;
    const Spot by = behind(at, shape.timber, point, kTimberThick + 14);
    if (covered.inset(-8).holds(by)) continue;
    page.brush.words({by.x, by.y + 6}, std::to_string(i + 1),
                     {Role::second_line, true, kInk, Side::middle});
  }
  page.hand.note("curve.stations", {at.mat.left, at.ends - 10, at.mat.left + 20, at.ends + 10},
                 std::to_string(count) + " stations marked");
}

/// The spot lies on the pack or the timber.
bool near(const Course& sheet, Spot spot) {
  for (const Spot& one : sheet) {
    if (std::fabs(one.x - spot.x) < 12 && std::fabs(one.y - spot.y) < 16) return true;
  }
  return false;
}

/// How far along the sheet that is, as a part of it from its left end.
double share_at(const Course& sheet, float x) {
  const auto last = static_cast<double>(sheet.size() - 1);
  for (std::size_t i = 1; i < sheet.size(); ++i) {
    if (sheet[i].x < x) continue;
    const float step = std::max(1e-3f, sheet[i].x - sheet[i - 1].x);
    const auto part = static_cast<double>((x - sheet[i - 1].x) / step);
    return (static_cast<double>(i - 1) + std::max(0.0, part)) / last;
  }
  return 1;
}

}  // namespace

void curve_marks(Page& page, const FromAbove& at) {
  const CurveView& view = page.state.curve.view;
  const CurveShape& shape = page.state.curve.shape;
  const Brush& brush = page.brush;
  tight_places(page, at);
  const std::string& fixings = view.fixing_words;
  if (!fixings.empty()) {
    page.hand.note("curve.fixings", {at.mat.left, at.ends - 30, at.mat.left + 20, at.ends - 10},
                   fixings);
  }
  if (view.radius_words.empty() || shape.radius_at == 0) return stations(page, at, Area());
  // On the side it bulges to, its tip on the timber or the pack.
  const float past_number = view.is_by_stations ? 20 : 0;
  const float by = view.is_hollow ? kTimberThick + 8 + past_number : -(pack_thick(view) + 6);
  const Spot tip = behind(at, shape.timber, shape.radius_at, by);
  const Spot tail = behind(at, shape.timber, shape.radius_at,
                           by + (by > 0 ? 1.0f : -1.0f) * (at.is_low ? 12 : 24));
  const Colour colour = view.too_tight ? kStop : kInk;
  brush.arrow(tail, tip, colour, 1.8f, 7, false);
  const float line = brush.pitch(Role::text);
  const float wide = std::max(brush.width_of(view.radius_words, Role::text, true),
                              brush.width_of(view.limit_words, Role::text, false));
  const TagKind kind = view.too_tight == solve::Severity::stop ? TagKind::stop : TagKind::warn;
  const float tagged = view.too_tight ? tag_width(brush, kind) + 10 : 0;
  const float high = view.too_tight ? 2 * line : line;
  const float x = std::clamp(tail.x + 8, at.mat.left + 10, at.mat.right - 10 - wide - tagged);
  const float below = view.is_hollow ? -high : -line / 2;
  const Area words = area_at(x, tail.y + below, tagged + wide, high);
  stations(page, at, words);
  if (view.too_tight) tag(brush, {words.left, words.top}, kind);
  brush.words({words.left + tagged, words.top + line * 0.75f}, view.radius_words,
              {Role::text, true, colour});
  brush.words({words.left + tagged, words.top + line * 1.75f}, view.limit_words,
              {Role::text, false, colour});
  figure_on_bench(page,
                  {"curve.radius", "slip.radius", words.inset(-3),
                   view.radius_words + (view.limit_words.empty() ? "" : ", " + view.limit_words) +
                       ", show the sum"});
}

void slip_place(Page& page, const FromAbove& at, const Course& sheet) {
  CurveStage& curve = page.state.curve;
  if (!curve.view.holds_panel || sheet.size() < 2) return;
  if (curve.shows_bulge && curve.view.can_bulge) {
    const Spot base{at.mat.left + 14, at.viewer};
    const std::string& words = curve.shape.bulge_words;
    const float wide = page.brush.words(base, words, {Role::text, true, kStop});
    return page.hand.note("curve.bulge.said", {base.x, base.y - 16, base.x + wide, base.y + 5},
                          words);
  }
  const Brush& brush = page.brush;
  const Spot on = spot_at(sheet, curve.place);
  const float low = on.y + pack_thick(curve.view) + 3;
  const Area grip = {on.x - 22, low - 18, on.x + 22, low + 24};
  const Touch touch = page.hand.touch("curve.place", grip, curve.shape.place_words);
  if (touch.focused) page.hand.stands_on(kOnFigure);
  const auto pointer = [&brush](Spot tip) {
    const Spot corners[] = {tip, {tip.x + 7, tip.y + 12}, {tip.x - 7, tip.y + 12}};
    brush.shape(corners, kPen);
  };
  pointer({on.x, low});
  focus_ring(brush, page.hand, grip.inset(4), touch.focused);
  pointer({at.mat.left + 22, at.viewer - 12});
  brush.words({at.mat.left + 38, at.viewer}, curve.shape.place_words, {Role::text, false, kPen});
  const Spot hand = page.hand.at();
  const auto set = [&](double to, float asked) {
    page.later([&stage = page.state.curve, to, asked] {
      stage.place = std::clamp(to, 0.0, 1.0);
      stage.asked_at = asked;
    });
  };
  // The pointer that goes along the bay asks by itself; a finger pulls the mark.
  const bool is_pulled = touch.held && page.hand.is_down();
  const bool goes_along = !page.hand.is_down() && !page.hand.is_finger() &&
                          page.hand.is_over(at.mat) && near(sheet, hand);
  if ((is_pulled || goes_along) && hand.x != curve.asked_at) {
    return set(share_at(sheet, hand.x), hand.x);
  }
  const int step = touch.focused ? page.hand.step() + page.hand.arrow_right() : 0;
  if (step != 0) set(curve.place + step * 0.01, curve.asked_at);
}

}  // namespace pouncemark::web
