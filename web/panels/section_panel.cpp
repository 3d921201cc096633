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

/// Pressed, the lap nearest to the hand is chosen.
void press_laps(Page& page, const solve::Piece& piece, const WholeSection& whole) {
  const Touch touch =
      page.hand.touch("whole", whole.sheet, "the whole section: press near a lap to see it");
  focus_ring(page.brush, page.hand, whole.sheet, touch.focused);
  if (!touch.over) return;
  const float y = page.hand.at().y;
  const Um down = to_um(static_cast<double>(y - whole.sheet.top) / whole.lying.px_per_mm);
  const int lap = lap_nearest(piece, whole.lying.face_down ? piece.width_um - down : down);
  if (lap < 0) return;
  const float middle = whole.lying.y(piece.row_middles_um[static_cast<std::size_t>(lap)]);
  page.brush.line({whole.sheet.left, middle}, {whole.sheet.right, middle}, kPen, 2);
  if (touch.clicked) choose_lap(page, lap);
}

/// The part of the section that the close-up shows, framed in pen; gives its width.
float frame_of_closeup(Page& page, const WholeSection& whole, const LapView& view) {
  if (view.lap < 0) return 0;
  const float middle = whole.lying.y(view.middle_um);
  const auto scale = static_cast<float>(whole.lying.px_per_mm / view.lying.px_per_mm);
  const float high = std::max(view.window.height() * scale / 2, 10.0f);
  const float wide = std::max(view.window.width() * scale, 28.0f);
  page.brush.frame({whole.sheet.left - 4, middle - high, whole.sheet.left + wide, middle + high},
                   kPen, 3, 3);
  return wide;
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

/// `clear` is how far from the bottom end something else stands already.
void words_on(Page& page, const Area& sheet, float clear) {
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
  if (sheet.width() < 2 * ends + clear + front + 16) return;
  label(sheet.left + clear + ends / 2, "BOTTOM");
  label(sheet.right - 30, "TOP");
}

/// Even | Exactly 55 for the staples in the laps, with the spacing that is wanted before them;
/// gives the left edge.
float lap_rule_switch(Page& page, float right, float top) {
  const Solved& now = page.bench.now();
  const Place place = page.bench.place();
  const job::Section& section = *section_at(now.job, now.results, place);
  const auto& piece = now.results.pieces[static_cast<std::size_t>(place.piece)];
  if (!section.lap_rows || section.make == job::Make::round || piece.sleeves.size() < 2) {
    return right;
  }
  const bool exact = section.lap_rows->staple.rule == job::SpacingRule::exact;
  const std::string exactly = "Exactly " + short_mm_text(section.lap_rows->staple.spacing_um, 2);
  const float height = button_height();
  const float exact_width = button_width(page.brush, exactly);
  const float even_width = button_width(page.brush, "Even");
  const Area second = area_at(right - exact_width, top, exact_width, height);
  const Area first = area_at(second.left - 8 - even_width, top, even_width, height);
  const auto kind = [](bool chosen) { return chosen ? ButtonKind::chosen : ButtonKind::plain; };
  const auto choose = [&page, place](job::SpacingRule rule, const std::string& words) {
    page.later([&bench = page.bench, place, rule, words] {
      const Solved& solved = bench.now();
      if (lap_rule_at(solved.job, solved.results, place) == rule) return;
      bench.edit(with_lap_rule(solved.job, solved.results, place, rule),
                 "Chose " + words + " for the lap staples of " + name_of(solved.results, place));
    });
  };
  if (button(page.brush, page.hand, "lap_rule.even", first, "Even",
             {kind(!exact), false, Role::text, "lap staples, even spacing"})) {
    choose(job::SpacingRule::even, "even spacing");
  }
  if (button(page.brush, page.hand, "lap_rule.exact", second, exactly,
             {kind(exact), false, Role::text, "lap staples, " + exactly})) {
    choose(job::SpacingRule::exact,
           "exactly " + exact_mm_text(section.lap_rows->staple.spacing_um));
  }
  const float width = text_size() == TextSize::large ? 92.0f : 74.0f;
  const Area box = area_at(first.left - 12 - width, top, width, height);
  measure_box(page, {"box.lap_spacing",
                     Measure::lap_spacing,
                     box,
                     "spacing wanted of the lap staples",
                     {100, kMostLengthUm}});
  const char* words = "lap staples";
  page.brush.words({box.left - 10, box.mid_y() + page.brush.rise(Role::text) / 2}, words,
                   {Role::text, false, kInk, Side::right});
  return box.left - 20 - page.brush.width_of(words, Role::text, false);
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
  const float second = middle.top + button_height() + 6;
  const float base = second + button_height() / 2 + brush.rise(Role::headline) / 2;
  const float limit = lap_rule_switch(page, middle.right, second);
  headline_words(page, {middle.left, base}, limit - 12, false);
  const float small = brush.pitch(Role::second_line);
  const float top = second + button_height() + 14 + small;
  const float totals_height = std::min(244.0f, (middle.bottom - top) * 0.5f);
  const Area totals = {middle.left, middle.bottom - totals_height, middle.right, middle.bottom};
  const HowTops how_tops{second + button_height() + 8, totals.top - 8};
  cover_for_how(page, how_tops);
  const float room = totals.top - top - small - 16;
  const float share = (middle.width() - 110) * 0.52f;
  const WholeSection whole =
      whole_in(page, piece, {middle.left, top, middle.left + share, top + room});
  const float gutter = text_size() == TextSize::large ? 120.0f : 104.0f;
  const LapView view = lap_view(page, {whole.sheet.right + gutter, top, middle.right, top + room});
  draw_whole(page, piece, whole);
  press_laps(page, piece, whole);
  words_on(page, whole.sheet, frame_of_closeup(page, whole, view));
  const bool down = page.state.is_face_down;
  const std::string first = "left edge, sleeve " + std::to_string(piece.sleeves.front().number + 1);
  const std::string last = "right edge, sleeve " + std::to_string(piece.sleeves.back().number + 1);
  const Ink right{Role::second_line, false, kInk, Side::right};
  brush.words({whole.sheet.right, whole.sheet.top - 7}, down ? last : first, right);
  brush.words({whole.sheet.right, whole.sheet.bottom + small - 3}, down ? first : last, right);
  lap_closeup(page, view);
  running_totals(page, totals);
  pull_handles(page);
  how_slip(page, how_tops);
}

}  // namespace pouncemark::web
