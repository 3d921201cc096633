#include <algorithm>
#include <array>
#include <cmath>

#include "engine/base/number_text.h"
#include "web/model/words.h"
#include "web/panels/how_slip.h"
#include "web/panels/lap_closeup.h"
#include "web/panels/lying_marks.h"
#include "web/panels/make_marks.h"
#include "web/panels/page.h"
#include "web/panels/running_totals.h"
#include "web/panels/whole_strip.h"

namespace pouncemark::web {
namespace {

/// The section as it lies, in true proportion; pressing a sleeve goes to it.
struct WholeSection {
  Lying lying;
  Area sheet;
};

WholeSection whole_in(const Page& page, const solve::Piece& piece, const Area& area) {
  WholeSection whole;
  whole.lying.px_per_mm =
      std::min(static_cast<double>(area.width()) / from_um(std::max<Um>(piece.length_um, 1)),
               static_cast<double>(area.height()) / from_um(std::max<Um>(piece.width_um, 1)));
  whole.lying.width_um = piece.width_um;
  whole.lying.face_down = page.state.is_face_down;
  whole.lying.left_px = static_cast<double>(area.left);
  whole.lying.top_px = static_cast<double>(area.top);
  whole.sheet =
      area_at(area.left, area.top, whole.lying.px(piece.length_um), whole.lying.px(piece.width_um));
  return whole;
}

void press_sleeves(Page& page, const solve::Piece& piece, const WholeSection& whole) {
  for (std::size_t i = 0; i < piece.sleeves.size(); ++i) {
    const solve::Sleeve& sleeve = piece.sleeves[i];
    const float a = whole.lying.y(sleeve.left_um);
    const float b = whole.lying.y(sleeve.left_um + sleeve.width_um);
    const Area area = {whole.sheet.left, std::min(a, b), whole.sheet.right, std::max(a, b)};
    const Touch touch = page.hand.touch("sleeve." + sleeve.code, area, "sleeve " + sleeve.code);
    if (touch.over) page.brush.frame(area, kPen, 2);
    if (touch.clicked) {
      const Place to{page.bench.place().piece, static_cast<int>(i)};
      page.later([&bench = page.bench, to] { bench.go(to); });
    }
  }
}

/// What the make shows of every sleeve.
void folds(Page& page, const solve::Piece& piece, const WholeSection& whole) {
  const Solved& now = page.bench.now();
  const job::Section& section = *section_at(now.job, now.results, page.bench.place());
  for (const solve::Sleeve& sleeve : piece.sleeves) {
    Lying lying = whole.lying;
    lying.width_um = sleeve.width_um;
    const Um right = sleeve.left_um + sleeve.width_um;
    const Um above = lying.face_down ? piece.width_um - right : sleeve.left_um;
    lying.top_px += from_um(above) * lying.px_per_mm;
    draw_make(page, {section, sleeve, lying, whole.sheet.inset(-3), true}, false);
  }
}

void draw_whole(Page& page, const solve::Piece& piece, const WholeSection& whole) {
  LyingPart part;
  part.lying = whole.lying;
  part.window = whole.sheet;
  const Brush& brush = page.brush;
  brush.fill(whole.sheet, kSheet);
  constexpr Um kIn = 12'000;
  for (const solve::Sleeve& sleeve : piece.sleeves) {
    const float a = whole.lying.y(sleeve.left_um + kIn);
    const float b = whole.lying.y(sleeve.left_um + sleeve.width_um - kIn);
    brush.fill(
        {whole.lying.x(kIn), std::min(a, b), whole.lying.x(piece.length_um - kIn), std::max(a, b)},
        kCloth);
  }
  for (const solve::Sleeve& sleeve : piece.sleeves) {
    for (const Um across : {sleeve.left_um, sleeve.left_um + sleeve.width_um}) {
      const float y = whole.lying.y(across);
      brush.line({whole.sheet.left, y}, {whole.sheet.right, y}, kSheetEdge, 1);
    }
  }
  brush.frame(whole.sheet, kSheetEdge, 1.5f);
  folds(page, piece, whole);
  const Place place = page.bench.place();
  RowLook look;
  look.is_small = true;
  for (const auto kind : {solve::RowKind::stitch, solve::RowKind::staple}) {
    for (const solve::Row* row : rows_at(page.bench.now().results, place, kind)) {
      look.line_px = row->place == solve::RowPlace::lap ? 1.6f : 0.8f;
      draw_row(page, part, *row, look);
    }
  }
}

void words_on(Page& page, const Area& sheet) {
  const Brush& brush = page.brush;
  const auto label = [&](float x, const char* words) {
    const float wide = brush.width_of(words, Role::second_line, true) + 12;
    const Area area = area_at(std::clamp(x - wide / 2, sheet.left + 4, sheet.right - wide - 4),
                              sheet.mid_y() - 13, wide, 26);
    brush.fill(area, kPaper);
    brush.centred(area, words, {Role::second_line, true, kInk});
  };
  if (page.state.is_face_down) return lying_words(page, sheet, 60);
  const float ends = brush.width_of("BOTTOM", Role::second_line, true) + 28;
  const float front = brush.width_of("FRONT", Role::second_line, true) + 12;
  label(sheet.mid_x(), "FRONT");
  if (sheet.width() < 2 * ends + front + 16) return;
  label(sheet.left + ends / 2 + 4, "BOTTOM");
  label(sheet.right - 30, "TOP");
}

}  // namespace

void section_panel(Page& page) {
  const Area& middle = page.layout.middle;
  const Solved& now = page.bench.now();
  const auto& piece = now.results.pieces[static_cast<std::size_t>(page.bench.place().piece)];
  const Brush& brush = page.brush;
  const float switch_left = face_switch(page, middle.right, middle.top);
  const float how = how_opener(page, switch_left - 16, middle.top, Side::right);
  place_line(page, {middle.left, middle.top + 24}, how - 12);
  const float base = middle.top + std::max(72.0f, button_height() + 34);
  headline_words(page, {middle.left, base}, 1e6f, false);
  const float small = brush.pitch(Role::second_line);
  const float top = base + 20 + small;
  const float totals_height = std::min(244.0f, (middle.bottom - top) * 0.5f);
  const Area totals = {middle.left, middle.bottom - totals_height, middle.right, middle.bottom};
  const HowTops how_tops{base + 14, totals.top - 8};
  cover_for_how(page, how_tops);
  const float room = totals.top - top - small - 16;
  const float share = (middle.width() - 110) * 0.52f;
  const WholeSection whole =
      whole_in(page, piece, {middle.left, top, middle.left + share, top + room});
  draw_whole(page, piece, whole);
  press_sleeves(page, piece, whole);
  words_on(page, whole.sheet);
  const bool down = page.state.is_face_down;
  const std::string first = "left edge, sleeve " + std::to_string(piece.sleeves.front().number + 1);
  const std::string last = "right edge, sleeve " + std::to_string(piece.sleeves.back().number + 1);
  const Ink right{Role::second_line, false, kInk, Side::right};
  brush.words({whole.sheet.right, whole.sheet.top - 7}, down ? last : first, right);
  brush.words({whole.sheet.right, whole.sheet.bottom + small - 3}, down ? first : last, right);
  lap_closeup(page, {whole.sheet.right + (text_size() == TextSize::large ? 120.0f : 104.0f), top,
                     middle.right, top + room});
  running_totals(page, totals);
  how_slip(page, how_tops);
}

}  // namespace pouncemark::web
