#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "web/panels/curve_parts.h"

namespace pouncemark::web {
namespace {

/// Plies are drawn thicker than they are, or none could be told from the next.
constexpr float kTimberThick = 12;
constexpr float kSheetThick = 5;
constexpr float kClothThick = 7;

float bay_box_width() { return text_size() == TextSize::large ? 116.0f : 96.0f; }

/// Where everything stands; the bay at `px` CSS pixels a millimetre.
struct FromAbove {
  Area mat;
  Area close;  ///< the free edge, larger; empty where no panel hangs here
  Area slider;
  float px = 1;
  float middle = 0;     ///< halfway between the ends
  float ends = 0;       ///< their height
  float words = 0;      ///< of a hollow bay: how low its timber goes, the words stand under it
  float toward = 1;     ///< 1 where the crest lies down the screen, toward the viewer, else -1
  float chord_row = 0;  ///< middle of the chord's arrow
  float times = 20;     ///< of the close-up, the picture's scale

  Spot spot(Vec2 at) const {
    return {middle + static_cast<float>(at.x) * px, ends + toward * static_cast<float>(at.y) * px};
  }
};

FromAbove laid_out(const Page& page, const Area& mat) {
  const CurveView& view = page.state.curve.view;
  const CurveShape& shape = page.state.curve.shape;
  const float line = page.brush.pitch(Role::text);
  FromAbove at;
  at.mat = mat;
  at.toward = view.is_hollow ? -1.0f : 1.0f;
  const float foot = view.holds_panel ? 3 * line + 44 : button_height() + 12;
  Area low = {mat.left + 14, mat.bottom - 8 - foot, mat.right - 14, mat.bottom - 8};
  at.slider = {low.left, low.bottom - button_height(), low.right, low.bottom};
  if (view.holds_panel) {
    const float wide = std::min(300.0f, low.width() * 0.4f);
    at.close = low;
    (view.fly_is_right ? at.close.left : at.close.right) =
        view.fly_is_right ? low.right - wide : low.left + wide;
    (view.fly_is_right ? at.slider.right : at.slider.left) =
        view.fly_is_right ? at.close.left - 24 : at.close.right + 24;
  }
  // From the top: the boxes, then for a bulging bay the chord's arrow, the bay, the words below it.
  const float top = mat.top + box_height() + 26;
  const float bottom = low.top - line - 6;
  const float chord = box_height() + 24;
  const float words = line + 22;
  const float room = std::max(20.0f, bottom - top - chord - words);
  const float wide = std::max(60.0f, mat.width() - 120);
  const auto across = static_cast<float>(std::max(1.0, from_um(view.along_um)));
  const auto crest = static_cast<float>(std::max(1.0, shape.crest + shape.trough));
  at.px = std::min(wide / across, room / crest);
  at.middle = mat.mid_x();
  const float rise = static_cast<float>(shape.crest) * at.px;
  const float trough = static_cast<float>(shape.trough) * at.px;
  const float spare = std::max(0.0f, (room - rise - trough) / 2);
  at.ends = top + spare + (view.is_hollow ? rise : chord + trough);
  at.words = view.is_hollow ? at.ends + trough : at.ends;
  at.chord_row =
      view.is_hollow ? at.ends + trough + words + chord / 2 : at.ends - trough - chord / 2 - 4;
  for (const float times : {20.0f, 10.0f, 5.0f, 2.0f}) {
    at.times = times;
    const double most = from_um(view.short_of_fly_um) + from_um(view.creep_um);
    if (static_cast<float>(most) * times * at.px <= at.close.width() * 0.6f) break;
  }
  return at;
}

/// The line moved toward the viewer by so much, square to itself.
std::vector<Spot> moved(const std::vector<Spot>& line, float by) {
  std::vector<Spot> out;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const Spot& before = line[i == 0 ? 0 : i - 1];
    const Spot& after = line[std::min(i + 1, line.size() - 1)];
    const float x = after.x - before.x;
    const float y = after.y - before.y;
    const float size = std::max(1e-3f, std::sqrt(x * x + y * y));
    out.push_back({line[i].x - by * y / size, line[i].y + by * x / size});
  }
  return out;
}

/// The line without its last `off` pixels; from its left end where `fly_is_right`.
std::vector<Spot> shorter(std::vector<Spot> line, float off, bool fly_is_right) {
  if (!fly_is_right) std::reverse(line.begin(), line.end());
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
  if (!fly_is_right) std::reverse(line.begin(), line.end());
  return line;
}

void band(const Brush& brush, const std::vector<Spot>& line, float thick, Colour fill,
          Colour edge) {
  brush.outline(line, edge, thick, false);
  brush.outline(line, fill, thick - 2.5f, false);
}

std::vector<Spot> spots_of(const FromAbove& at, const std::vector<Vec2>& points, float down) {
  std::vector<Spot> line;
  for (const Vec2& point : points) {
    Spot spot = at.spot(point);
    spot.y += down;
    line.push_back(spot);
  }
  return line;
}

/// Timber and, on the viewer's side of it, the pack; gives the sheet's own line.
std::vector<Spot> draw_bay(const Page& page, const FromAbove& at) {
  const Brush& brush = page.brush;
  const CurveView& view = page.state.curve.view;
  const CurveShape& shape = page.state.curve.shape;
  band(brush, moved(spots_of(at, shape.timber, 0), -kTimberThick / 2), kTimberThick, kFold, kSoft);
  // A bulging bay meets the sheet at its crest first, a hollow one at its ends.
  const double gap = view.is_hollow ? 0 : shape.crest - shape.sheet_crest;
  const auto line = spots_of(at, shape.sheet, static_cast<float>(gap) * at.px);
  band(brush, moved(line, kSheetThick / 2 + 2), kSheetThick, kSheet, kSheetEdge);
  if (view.holds_panel) {
    const float off = static_cast<float>(from_um(view.short_of_fly_um) - shape.creep) * at.px;
    const auto cloth =
        shorter(moved(line, kSheetThick + kClothThick / 2 + 2), off, view.fly_is_right);
    band(brush, cloth, kClothThick, kCloth, kWeave);
  }
  return line;
}

/// The words at both ends of a panel, on the viewer's side; they stay on the mat.
void end_words(const Page& page, const FromAbove& at, const std::vector<Spot>& line) {
  const CurveView& view = page.state.curve.view;
  if (!view.holds_panel || line.empty()) return;
  const Brush& brush = page.brush;
  const float down = kSheetThick + kClothThick + 8 + brush.rise(Role::text);
  const auto put = [&](bool is_right, const char* words, bool is_bold) {
    const Spot& end = is_right ? line.back() : line.front();
    const float wide = brush.width_of(words, Role::text, is_bold);
    const float x = is_right ? end.x + 30 - wide : end.x - 30;
    const Spot base{
        std::clamp(x, at.mat.left + 8, std::max(at.mat.left + 8, at.mat.right - wide - 8)),
        std::max(end.y, at.words) + down};
    brush.words(base, words, {Role::text, is_bold, kInk});
    return Area{base.x, base.y - 16, base.x + wide, base.y + 4};
  };
  const char* fly = "FLY SIDE - DO NOT SEW";
  page.hand.note("curve.fly", put(view.fly_is_right, fly, true), fly);
  put(!view.fly_is_right, "hinge side, sewn", false);
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
    brush.line({end.x, end.y + (row < end.y ? -16.0f : 42.0f)},
               {end.x, row + (row < end.y ? -8.0f : 8.0f)}, kInk, 1.2f);
  }
  brush.dashes(left, right, kPale, 1.2f, 5, 4);
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
  const float crest = at.ends + at.toward * static_cast<float>(shape.crest) * at.px;
  const float tall = std::fabs(crest - at.ends);
  // Through stations the crest stands anywhere, and the rise is only what was typed.
  const bool has_arrow = !page.state.curve.view.is_by_stations;
  if (has_arrow && tall > 16) {
    brush.arrow({at.middle, at.ends}, {at.middle, crest}, kInk, 1.8f, 7, true);
  }
  const bool has_room = has_arrow && tall > high + 26;
  const float y = has_room ? (at.ends + crest) / 2 : row;
  const float x = at.middle + (has_room ? 14.0f : 90.0f);
  const Area rise = area_at(x, y - high / 2, wide, high);
  const std::string& rise_was = page.state.curve.view.rise.was;
  const float label =
      brush.width_of(rise_was.empty() ? "rise" : "was " + rise_was, Role::text, false);
  if (!has_room) brush.fill({rise.left - 8, row - 8, rise.right + 16 + label, row + 8}, kMat);
  curve_length_box(page, BayBox::rise, rise, "box.rise", "rise");
}

/// The free edge, larger: where the cloth ended flat and where it ends now.
void free_edge(Page& page, const FromAbove& at) {
  const CurveView& view = page.state.curve.view;
  if (!view.holds_panel) return;
  const Brush& brush = page.brush;
  const CurveShape& shape = page.state.curve.shape;
  const Area& area = at.close;
  const float line = brush.pitch(Role::text);
  const std::string caption = std::string("free edge, ") + kTimes +
                              std::to_string(static_cast<int>(at.times)) + " the picture";
  brush.fill(area, kPaper);
  brush.frame(area, kPale, 1.2f);
  brush.words({area.left + 8, area.top + line}, caption, {Role::second_line, false, kSoft});
  const float way = view.fly_is_right ? 1.0f : -1.0f;
  const float scale = at.times * at.px;
  const float inner = view.fly_is_right ? area.left : area.right;
  const float outer = (view.fly_is_right ? area.right : area.left) - way * 34;
  const float flat = outer - way * static_cast<float>(from_um(view.short_of_fly_um)) * scale;
  const float now = flat + way * static_cast<float>(shape.creep) * scale;
  const float top = area.top + line + 8;
  const auto ply = [&](float y, float to, Colour fill, Colour edge) {
    const Area one = {std::min(inner, to), y, std::max(inner, to), y + 12};
    brush.fill(one, fill);
    brush.frame(one, edge, 1.5f);
  };
  brush.start_window(area);
  ply(top, outer, kSheet, kSheetEdge);
  ply(top + 12, now, kCloth, kWeave);
  brush.dashes({flat, top + 8}, {flat, top + 34}, kInk, 1.5f, 4, 3);
  if (std::fabs(now - flat) > 3) {
    brush.arrow({flat, top + 31}, {now, top + 31}, kPen, 2, std::min(7.0f, std::fabs(now - flat)),
                false);
  }
  brush.end_window();
  const std::string words = "creep " + shape.creep_words;
  const float base = area.bottom - 8;
  const float wide = brush.words({area.left + 8, base}, words, {Role::figure, true, kInk});
  figure_on_bench(page, {"figure.edge",
                         "slip.creep",
                         {area.left + 8, base - 20, area.left + 8 + wide, base + 4},
                         words + ", drawn " + caption.substr(11) + ", show the sum"});
}

/// From where it is looked at: an arrow up, below the bay.
void viewer(const Page& page, const FromAbove& at) {
  const Brush& brush = page.brush;
  const float foot = std::min(at.slider.top, at.close.width() > 0 ? at.close.top : at.slider.top);
  const float base = foot - 8;
  const float wide = brush.width_of("viewer", Role::text, false);
  const float x = at.middle - wide / 2;
  brush.words({x, base}, "viewer", {Role::text, false, kSoft});
  brush.arrow({x - 12, base + 2}, {x - 12, base - 16}, kSoft, 2, 7, false);
}

}  // namespace

void curve_picture(Page& page, const Area& mat) {
  page.brush.fill(mat, kMat);
  const FromAbove at = laid_out(page, mat);
  page.brush.start_window(mat);
  const auto line = draw_bay(page, at);
  page.brush.end_window();
  bay_switches(page, mat);
  measures(page, at);
  end_words(page, at, line);
  viewer(page, at);
  free_edge(page, at);
  curve_slider(page, at.slider);
}

}  // namespace pouncemark::web
