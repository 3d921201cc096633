#include <algorithm>
#include <cmath>
#include <string>

#include "web/panels/curve_above.h"

namespace pouncemark::web {
namespace {

/// What stands below the picture: the slider, the free edge, one line for the stop.
void lay_foot(const Page& page, FromAbove* at) {
  const CurveView& view = page.state.curve.view;
  const float line = page.brush.pitch(Role::text);
  const float button = button_height();
  const float foot =
      !view.holds_panel || at->is_low ? button : std::max(3 * line + 44, 2 * button + 8);
  const Area& mat = at->mat;
  const Area low = {mat.left + 14, mat.bottom - 8 - foot, mat.right - 14, mat.bottom - 8};
  at->viewer = low.top - 10;
  at->slider = {low.left, low.bottom - button, low.right, low.bottom};
  if (!view.holds_panel) return;
  const float wide = std::min(300.0f, low.width() * 0.4f);
  at->close = low;
  if (view.fly_is_right) {
    at->close.left = low.right - wide;
    at->slider.right = at->close.left - 24;
  } else {
    at->close.right = low.left + wide;
    at->slider.left = at->close.right + 24;
  }
  at->stop = {at->slider.left, low.top, at->slider.right, low.top + button};
  if (!at->is_low) return;
  // The line of the slip is as high as a button, and the stop stands at its right.
  at->stop = {mat.mid_x() - 20, low.top - 6 - button, low.right, low.top - 6};
  at->viewer = at->stop.mid_y() + page.brush.rise(Role::text) / 2;
}

/// How large the bay can be, and how high it stands.
void lay_bay(const Page& page, FromAbove* at) {
  const CurveView& view = page.state.curve.view;
  const CurveShape& shape = page.state.curve.shape;
  const float line = page.brush.pitch(Role::text);
  const Area& mat = at->mat;
  // From the top: the boxes, then for a bulging bay the chord's arrow, the bay, the words below it.
  const float top = mat.top + box_height() + 20;
  const float bottom =
      std::min(at->viewer - line, at->is_low && view.holds_panel ? at->stop.top - 4 : at->viewer);
  const float chord = at->has_boxes_above ? 20 : box_height() + 24;
  const float words = view.holds_panel ? line + 26 : 26;
  // Beyond the crest stand the words of the radius.
  const float beyond =
      (view.is_hollow ? line + (at->is_low ? 14 : 30) : words) + (view.too_tight ? line : 0);
  const float wide = std::max(60.0f, mat.width() - 120);
  const auto across = static_cast<float>(std::max(1.0, from_um(view.along_um)));
  const auto crest = static_cast<float>(std::max(1.0, shape.crest + shape.trough));
  float inside = view.is_hollow ? words : 0;
  float room = bottom - top - chord - inside - beyond - kTimberThick;
  if (at->is_low && view.is_hollow && room / crest < 0.6f * wide / across) {
    // Narrow, its words stand beside it.
    room += inside - 30;
    inside = 30;
  }
  room = std::max(20.0f, room);
  at->px = std::min(wide / across, room / crest);
  at->middle = mat.mid_x();
  const float rise = static_cast<float>(shape.crest) * at->px;
  const float trough = static_cast<float>(shape.trough) * at->px;
  const float spare = std::max(0.0f, (room - rise - trough) / 2);
  at->ends = top + spare + kTimberThick + (view.is_hollow ? beyond + rise : chord + trough);
  at->words = view.is_hollow ? at->ends + trough : at->ends;
  at->chord_row = view.is_hollow ? at->ends + trough + inside + chord / 2
                                 : at->ends - trough - kTimberThick - chord / 2;
}

FromAbove laid_out(const Page& page, const Area& mat) {
  const CurveView& view = page.state.curve.view;
  FromAbove at;
  at.mat = mat;
  at.toward = view.is_hollow ? -1.0f : 1.0f;
  at.is_low = mat.height() < 440;
  lay_foot(page, &at);
  at.has_boxes_above = at.is_low;
  lay_bay(page, &at);
  const float straight = 2 * static_cast<float>(page.state.curve.shape.timber.back().x) * at.px;
  if (!at.has_boxes_above && straight < 5 * bay_box_width()) {
    at.has_boxes_above = true;
    lay_bay(page, &at);
  }
  for (const float times : {20.0f, 10.0f, 5.0f, 2.0f}) {
    at.times = times;
    const double most = from_um(view.short_of_fly_um) + from_um(view.creep_um);
    if (static_cast<float>(most) * times * at.px <= (at.is_low ? 60 : at.close.width() * 0.6f))
      break;
  }
  return at;
}

/// The words at both ends of a panel, on the viewer's side of the pack; they stay on the mat.
void end_words(const Page& page, const FromAbove& at, const Course& line) {
  const CurveView& view = page.state.curve.view;
  if (!view.holds_panel || line.empty()) return;
  const Brush& brush = page.brush;
  const float down = pack_thick(view) + 6 + brush.rise(Role::text);
  const auto put = [&](bool is_right, const char* words, Colour colour) {
    const float wide = brush.width_of(words, Role::text, true);
    // Beside its end, or as near to that as the mat has room.
    const float left = is_right ? std::min(line.back().x + 36, at.mat.right - 10 - wide)
                                : std::max(line.front().x - 36 - wide, at.mat.left + 10);
    const bool is_beside = is_right ? left > line.back().x : left + wide < line.front().x;
    float low = is_right ? line.back().y - 24 : line.front().y - 24;
    for (const Spot& spot : line) {
      if (spot.x > left - 12 && spot.x < left + wide + 12) low = std::max(low, spot.y);
    }
    if (!is_beside && view.is_hollow) low = std::max(low, at.words);
    const Spot base{left, low + down};
    brush.words(base, words, {Role::text, true, colour});
    return Area{base.x, base.y - 16, base.x + wide, base.y + 4};
  };
  const char* fly = "FLY SIDE - DO NOT SEW";
  page.hand.note("curve.fly", put(view.fly_is_right, fly, kInk), fly);
  const char* hinge = "HINGE SIDE, sewn";
  page.hand.note("curve.hinge", put(!view.fly_is_right, hinge, kThread), hinge);
}

/// Chord and rise on their arrows, typed where they lie.
void measures(Page& page, const FromAbove& at) {
  const Brush& brush = page.brush;
  const CurveShape& shape = page.state.curve.shape;
  if (shape.timber.empty()) return;
  const Spot left = at.spot(shape.timber.front());
  const Spot right = at.spot(shape.timber.back());
  const float row = at.chord_row;
  for (const Spot& end : {left, right}) {
    brush.line({end.x, row < end.y ? end.y - kTimberThick - 6 : at.words + 46},
               {end.x, row + (row < end.y ? -8.0f : 8.0f)}, kInk, 1.2f);
  }
  brush.dashes(left, right, kPale, 1.2f, 5, 4);
  const float crest = at.ends + at.toward * static_cast<float>(shape.crest) * at.px;
  const float tall = std::fabs(crest - at.ends);
  // Through stations the crest stands anywhere, and the rise is only what was typed.
  const bool has_arrow = !page.state.curve.view.is_by_stations;
  if (has_arrow && tall > 16) {
    brush.arrow({at.middle, at.ends}, {at.middle, crest}, kInk, 1.8f, 7, true);
  }
  if (at.has_boxes_above) {
    brush.arrow({left.x + 1, row}, {right.x - 1, row}, kInk, 1.8f, 7, true);
    return;
  }
  const float wide = bay_box_width();
  const float high = box_height();
  const float quarter = (left.x + at.middle) / 2;
  const Area chord = area_at(quarter - wide / 2, row - high / 2, wide, high);
  const std::string& was = page.state.curve.view.chord.was;
  const std::string beside = was.empty() ? "chord" : "was " + was;
  const float after = chord.right + 16 + brush.width_of(beside, Role::text, false);
  brush.arrow({chord.left - 8, row}, {left.x + 1, row}, kInk, 1.8f, 7, false);
  brush.arrow({std::min(after, right.x - 20), row}, {right.x - 1, row}, kInk, 1.8f, 7, false);
  curve_length_box(page, BayBox::chord, chord, "box.chord", "chord");
  const bool has_room = has_arrow && tall > high + 26;
  const float y = has_room ? at.ends + (crest - at.ends) * 0.4f : row;
  const float x = at.middle + (has_room ? 14.0f : 90.0f);
  const Area rise = area_at(x, y - high / 2, wide, high);
  const std::string& rise_was = page.state.curve.view.rise.was;
  const float label =
      brush.width_of(rise_was.empty() ? "rise" : "was " + rise_was, Role::text, false);
  if (!has_room) brush.fill({rise.left - 8, row - 8, rise.right + 16 + label, row + 8}, kMat);
  curve_length_box(page, BayBox::rise, rise, "box.rise", "rise");
}

/// From where it is looked at: an arrow up, below the bay.
void viewer(const Page& page, const FromAbove& at) {
  if (at.is_low) return;
  const Brush& brush = page.brush;
  const float wide = brush.width_of("viewer", Role::text, false);
  const float x = at.middle - wide / 2;
  brush.words({x, at.viewer}, "viewer", {Role::text, false, kSoft});
  brush.arrow({x - 12, at.viewer + 2}, {x - 12, at.viewer - 16}, kSoft, 2, 7, false);
  const float right = at.mat.right - 14;
  const std::string caption = cut_short(brush, "bend true, thickness drawn larger",
                                        right - x - wide - 20, Role::second_line, false);
  brush.words({right, at.viewer}, caption, {Role::second_line, false, kSoft, Side::right});
}

}  // namespace

void curve_picture(Page& page, const Area& mat) {
  page.brush.fill(mat, kMat);
  const FromAbove at = laid_out(page, mat);
  page.brush.start_window(mat);
  const Course sheet = draw_pack(page, at);
  page.brush.end_window();
  bay_switches(page, mat, at.has_boxes_above);
  measures(page, at);
  end_words(page, at, sheet);
  curve_marks(page, at);
  slip_place(page, at, sheet);
  viewer(page, at);
  rows_stop(page, at);
  free_edge(page, at);
  curve_slider(page, at.slider);
}

}  // namespace pouncemark::web
