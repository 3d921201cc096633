#include "web/panels/whole_strip.h"

#include <algorithm>
#include <array>
#include <utility>

#include "web/panels/lying_marks.h"
#include "web/panels/make_marks.h"

namespace pouncemark::web {

WholeStrip strip_in(const Page& page, const Area& area) {
  // While something is pulled the strip keeps its scale: the hand stays on the thing.
  const Place place = page.bench.place();
  const auto size = [place](const Solved& solved, Measure measure) {
    return measured(solved.job, solved.results, place, measure);
  };
  const Solved& rest = page.bench.at_rest();
  const double length_mm = from_um(std::max<Um>(size(rest, Measure::length), 1));
  const double width_mm = from_um(std::max<Um>(size(rest, Measure::width), 1));
  const Solved& now = page.bench.now();
  WholeStrip strip;
  strip.lying.px_per_mm = std::min(static_cast<double>(area.width()) / length_mm,
                                   static_cast<double>(area.height()) / width_mm);
  strip.lying.width_um = size(now, Measure::width);
  strip.lying.face_down = page.state.is_face_down;
  const auto wide = static_cast<float>(length_mm * strip.lying.px_per_mm);
  const float left = area.left + (area.width() - wide) / 2;
  strip.lying.left_px = static_cast<double>(left);
  strip.lying.top_px = static_cast<double>(area.top);
  strip.sheet = area_at(left, area.top, strip.lying.px(size(now, Measure::length)),
                        strip.lying.px(strip.lying.width_um));
  return strip;
}

void lying_words(Page& page, const Area& sheet, float inset) {
  const Brush& brush = page.brush;
  const float base = sheet.mid_y() + brush.rise(Role::second_line) / 2;
  const bool down = page.state.is_face_down;
  if (down) {
    const Area banner = {sheet.left, sheet.mid_y() - 13, sheet.right, sheet.mid_y() + 13};
    brush.fill(banner, kInk);
  }
  // On cloth of its own, so that no staple of a narrow sleeve runs through a letter.
  const auto word = [&](float x, const char* words, Side side, Role role) {
    const float wide = brush.width_of(words, role, true);
    const float left = side == Side::left ? x : side == Side::right ? x - wide : x - wide / 2;
    const float high = brush.rise(role);
    if (!down) brush.fill({left - 4, base - high - 3, left + wide + 4, base + 4}, kCloth);
    brush.words({x, base}, words, {role, true, down ? kWhite : kInk, side});
  };
  const float room = sheet.width() - 2 * (down ? 4 : inset);
  if (room < brush.width_of(down ? "FACE DOWN" : "FRONT", Role::text, true)) return;
  word(sheet.mid_x(), down ? "FACE DOWN" : "FRONT", Side::middle, Role::text);
  if (sheet.width() <= inset * 2 + 260) return;
  word(sheet.left + inset, "BOTTOM", Side::left, Role::second_line);
  word(sheet.right - inset, "TOP", Side::right, Role::second_line);
}

void draw_strip(Page& page, const WholeStrip& strip) {
  const Solved& now = page.bench.now();
  const Place place = page.bench.place();
  const auto& piece = now.results.pieces[static_cast<std::size_t>(place.piece)];
  LyingPart part;
  part.lying = strip.lying;
  part.window = strip.sheet;
  part.sleeve_left_um = piece.sleeves[static_cast<std::size_t>(place.sleeve)].left_um;
  SheetLook look;
  look.across_to = strip.lying.width_um;
  look.length_um = piece.length_um;
  look.weave_px = 5;
  look.edge_px = 1.5f;
  draw_sheet(page, part, look);
  draw_make(page,
            {*section_at(now.job, now.results, place), *sleeve_at(now.results, place), part.lying,
             part.window.inset(-4), true},
            false);
  RowLook row_look;
  row_look.is_small = true;
  row_look.line_px = 1.4f;
  for (const solve::Row* row : shared_rows(now, place)) draw_row(page, part, *row, row_look);
  for (const auto kind : {solve::RowKind::stitch, solve::RowKind::staple}) {
    for (const solve::Row* row : rows_at(now.results, place, kind)) {
      draw_row(page, part, *row, row_look);
    }
  }
}

void strip_grip(Page& page, const WholeStrip& strip) {
  const Area& sheet = strip.sheet;
  PullHandle handle;
  handle.id = "strip_end";
  handle.words = "top end, length of the sleeve";
  handle.place = page.bench.place();
  handle.measure = Measure::length;
  handle.px_per_mm = strip.lying.px_per_mm;
  handle.line = {sheet.right, sheet.top, sheet.right, sheet.bottom};
  handle.by_tab = false;
  pull_handle(page, std::move(handle));
}

Area end_frame(const WholeStrip& strip, Um from, Um to) {
  return {strip.lying.x(from) - 3, strip.sheet.top - 5, strip.lying.x(to) + 3,
          strip.sheet.bottom + 5};
}

void draw_mat(Page& page, const Area& frame, const Area& mat, bool is_bottom) {
  constexpr float kOpen = 24;
  // It opens from the frame's width to the close-up's.
  const float inner = is_bottom ? std::min(frame.right, mat.right) : std::max(frame.left, mat.left);
  const std::array<Spot, 5> corners = {Spot{is_bottom ? mat.left : inner, frame.bottom},
                                       Spot{is_bottom ? inner : mat.right, frame.bottom},
                                       Spot{mat.right, is_bottom ? mat.top + kOpen : mat.bottom},
                                       Spot{is_bottom ? mat.right : mat.left, mat.bottom},
                                       Spot{mat.left, is_bottom ? mat.bottom : mat.top + kOpen}};
  page.brush.shape(corners, kMat);
}

}  // namespace pouncemark::web
