#include "web/panels/lap_closeup.h"

#include <algorithm>
#include <array>

#include "engine/base/number_text.h"
#include "web/panels/lying_marks.h"
#include "web/panels/make_marks.h"

namespace pouncemark::web {
namespace {

constexpr Um kIn = 12'000;

/// What is needed of the lap that is shown.
struct Lap {
  int left_sleeve = 0;
  Um middle_um = 0;
  Um lap_um = 0;
};

/// The middle lap, or the first one over a missing sleeve: what is not as usual is to be seen.
int shown_lap(const solve::Piece& piece) {
  for (std::size_t i = 0; i + 1 < piece.sleeves.size(); ++i) {
    if (piece.sleeves[i + 1].number > piece.sleeves[i].number + 1) return static_cast<int>(i);
  }
  return static_cast<int>((piece.row_middles_um.size() - 1) / 2);
}

void sheets(Page& page, const LyingPart& part, const Lap& lap, Um length) {
  const Brush& brush = page.brush;
  const Area& seen = part.window;
  const Lying& lying = part.lying;
  const float edge_left = lying.y(lap.middle_um - lap.lap_um / 2);
  const float edge_right = lying.y(lap.middle_um + lap.lap_um / 2);
  const float upper = std::min(edge_left, edge_right);
  const float lower = std::max(edge_left, edge_right);
  brush.fill(seen, kSheet);
  brush.fill({seen.left, upper, seen.right, lower}, kLap);
  const float in = lying.px(kIn);
  const float x0 = lying.x(kIn);
  const float x1 = lying.x(length - kIn);
  // The cloth of each sleeve ends short of its own edge, under the joining row of neither.
  const float cloth_upper = lower - in;
  const float cloth_lower = upper + in;
  draw_cloth(page, part, {x0, seen.top - 20, x1, cloth_upper}, 7);
  draw_cloth(page, part, {x0, cloth_lower, x1, seen.bottom + 20}, 7);
  // The sleeve at the left lies over its right neighbour: its edge is seen, the other is hidden.
  brush.line({seen.left, edge_right}, {seen.right, edge_right}, kSheetEdge, 3);
  brush.dashes({seen.left, edge_left}, {seen.right, edge_left}, kSheetEdge, 2, 8, 5);
  brush.line({seen.left, seen.top}, {seen.left, seen.bottom}, kSheetEdge, 3);
  const Solved& now = page.bench.now();
  const job::Section& section = *section_at(now.job, now.results, page.bench.place());
  if (section.make != job::Make::folded) return;
  // Sewn at the left, the upper sleeve is folded at the edge that is seen, else the lower one at
  // the edge that is hidden: a second line runs beside it within its own sleeve.
  constexpr float kApart = 6;
  const float down = lying.face_down ? -1.0f : 1.0f;
  if (section.sewn_side.value_or(job::Side::right) == job::Side::left) {
    fold_line(brush, seen.left, seen.right, edge_right, -down, kApart);
  } else {
    const float second = edge_left + down * kApart;
    brush.dashes({seen.left, second}, {seen.right, second}, kSheetEdge, 2, 8, 5);
  }
}

void rows(Page& page, const LyingPart& part) {
  RowLook look;
  look.line_px = 2.4f;
  const Place place = page.bench.place();
  for (const auto kind : {solve::RowKind::stitch, solve::RowKind::staple}) {
    for (const solve::Row* row : rows_at(page.bench.now().results, place, kind)) {
      const Um across = to_um(row->guide.from.x);
      const float y = part.lying.y(across);
      if (y < part.window.top + 3 || y > part.window.bottom - 3) continue;
      draw_row(page, part, *row, look);
      if (row->place != solve::RowPlace::lap || kind != solve::RowKind::stitch) continue;
      // A joining row has a cross tick on every stitch.
      const float stitch = part.lying.px(row->run.spacing_um());
      if (stitch < 4) continue;
      for (float x = part.lying.x(row->run.first_um()) + stitch / 2 - 1.5f; x < part.window.right;
           x += stitch) {
        page.brush.line({x, y - 4.5f}, {x, y + 4.5f}, kThread, 1.4f);
      }
    }
  }
}

void torn_right(Page& page, const Area& seen) {
  const int count = std::max(2, static_cast<int>(seen.height() / 9));
  const float step = (seen.height() + 6) / static_cast<float>(count);
  for (int i = 0; i < count; ++i) {
    const float y = seen.top - 3 + step * static_cast<float>(i);
    const std::array<Spot, 3> tooth = {Spot{seen.right + 1, y}, Spot{seen.right - 5, y + step / 2},
                                       Spot{seen.right + 1, y + step}};
    page.brush.shape(tooth, kBench);
  }
}

void labels(Page& page, const LyingPart& part, const Lap& lap, const solve::Piece& piece,
            float upper, float lower) {
  const Brush& brush = page.brush;
  const Area& seen = part.window;
  const float left = seen.left + part.lying.px(kIn) + 14;
  const auto code = [&](int sleeve) {
    return piece.sleeves[static_cast<std::size_t>(sleeve)].code;
  };
  const bool down = page.state.is_face_down;
  const std::string over = code(lap.left_sleeve) + " lies over";
  const std::string under = code(lap.left_sleeve + 1) + " lies under";
  const auto label = [&](float base, const std::string& words) {
    const float wide = brush.width_of(words, Role::text, true);
    const float high = brush.rise(Role::text);
    brush.fill({left - 6, base - high - 6, left + 6 + wide, base + 8}, kCloth);
    brush.words({left, base}, words, {Role::text, true, kInk});
  };
  label(seen.top + 28, down ? under : over);
  label(seen.bottom - 16, down ? over : under);
  const float x = seen.left - 14;
  brush.arrow({x, upper}, {x, lower}, kInk, 2, 7, true);
  brush.words({x - 10, seen.mid_y() - 24}, "lap", {Role::second_line, false, kInk, Side::right});
  const job::Section* section =
      section_at(page.bench.now().job, page.bench.now().results, page.bench.place());
  Um narrowest = section->widths_um.empty() ? 0 : section->widths_um.front();
  for (const solve::Sleeve& sleeve : piece.sleeves)
    narrowest = std::min(narrowest, sleeve.width_um);
  const float width = text_size() == TextSize::large ? 84.0f : 68.0f;
  measure_box(page, {"box.lap",
                     Measure::lap,
                     area_at(x - 8 - width, seen.mid_y() - 16, width, box_height() - 6),
                     "lap",
                     {1000, std::max<Um>(narrowest - 1000, 1000)}});
}

}  // namespace

void lap_closeup(Page& page, const Area& area) {
  const Solved& now = page.bench.now();
  const Place place = page.bench.place();
  const auto& piece = now.results.pieces[static_cast<std::size_t>(place.piece)];
  const job::Section* section = section_at(now.job, now.results, place);
  if (section == nullptr || piece.row_middles_um.empty() || area.width() < 120) return;
  Lap lap;
  lap.left_sleeve = shown_lap(piece);
  lap.middle_um = piece.row_middles_um[static_cast<std::size_t>(lap.left_sleeve)];
  lap.lap_um = section->lap_um;
  LyingPart part;
  part.window = area;
  part.lying.px_per_mm = std::clamp(static_cast<double>(area.height()) / 110.0, 1.0, 4.0);
  part.lying.left_px = static_cast<double>(area.left);
  part.lying.width_um = piece.width_um;
  part.lying.face_down = page.state.is_face_down;
  const Um down = part.lying.face_down ? piece.width_um - lap.middle_um : lap.middle_um;
  part.lying.top_px = static_cast<double>(area.mid_y()) - from_um(down) * part.lying.px_per_mm;
  sheets(page, part, lap, piece.length_um);
  rows(page, part);
  torn_right(page, area);
  const float half = part.lying.px(lap.lap_um) / 2;
  labels(page, part, lap, piece, area.mid_y() - half, area.mid_y() + half);
  const auto number_of = [&piece](int sleeve) {
    return std::to_string(piece.sleeves[static_cast<std::size_t>(sleeve)].number + 1);
  };
  page.brush.words({area.left, area.top - 7},
                   "lap " + number_of(lap.left_sleeve) + " to " + number_of(lap.left_sleeve + 1) +
                       " at the bottom end",
                   {Role::second_line, false, kInk});
}

}  // namespace pouncemark::web
