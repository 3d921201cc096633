#include "web/panels/make_marks.h"

#include <algorithm>
#include <cmath>

#include "engine/base/number_text.h"

namespace pouncemark::web {
namespace {

constexpr float kFoldApart = 6;
constexpr float kSmallFoldApart = 3;

/// A name beside a line, on the sleeve's side of it, at the right of the window.
void name_line(Page& page, const Area& window, float y, float inward, const std::string& words) {
  const float base = inward > 0 ? y + page.brush.rise(Role::second_line) + 11 : y - 11;
  page.brush.words({window.right - 16, base}, words,
                   {Role::second_line, true, kSheetEdge, Side::right});
}

/// Which way on the screen leads from one long edge of a sleeve into it.
float inward_at(const Lying& lying, Um across) {
  const bool from_left = across < lying.width_um / 2;
  return from_left != lying.face_down ? 1.0f : -1.0f;
}

/// The turn of the sheet at an end of the fold, seen from that end.
void round_end(const Brush& brush, float x, float y, float apart, float outward) {
  std::vector<Spot> turn;
  constexpr int kSteps = 8;
  constexpr float kHalfTurn = 3.14159265f;
  for (int i = 0; i <= kSteps; ++i) {
    const float angle = kHalfTurn * static_cast<float>(i) / kSteps;
    turn.push_back({x + outward * std::sin(angle) * std::fabs(apart) / 2,
                    y + apart * (1 - std::cos(angle)) / 2});
  }
  brush.outline(turn, kSheetEdge, 2, false);
}

}  // namespace

MakeLine make_line(const job::Section& section, const solve::Sleeve& sleeve, const Lying& lying) {
  const bool sewn_left = section.sewn_side.value_or(job::Side::right) == job::Side::left;
  const Um width = sleeve.width_um;
  if (section.make == job::Make::round) {
    const Um flange = section.flange_um.value_or(0);
    return {lying.y(sewn_left ? flange : width - flange), inward_at(lying, sewn_left ? 0 : width)};
  }
  const Um across = sewn_left ? width : 0;
  const float inward = inward_at(lying, across);
  return {lying.y(across) + inward * kFoldApart, inward};
}

void fold_line(const Brush& brush, float left, float right, float y, float inward, float apart) {
  for (const float at : {y, y + inward * apart}) {
    brush.line({left, at}, {right, at}, kSheetEdge, 2);
  }
}

void draw_make(Page& page, const LyingSleeve& drawn, bool with_words) {
  const job::Section& section = drawn.section;
  if (section.make == job::Make::two_leaf) return;
  const Brush& brush = page.brush;
  const Lying& lying = drawn.lying;
  const bool sewn_left = section.sewn_side.value_or(job::Side::right) == job::Side::left;
  const Um width = drawn.sleeve.width_um;
  const float first = lying.x(0);
  const float last = lying.x(section.length_um);
  const float left = std::max(drawn.window.left, first);
  const float right = std::min(drawn.window.right, last);
  if (section.make == job::Make::round) {
    const Um flange = section.flange_um.value_or(0);
    const auto [y, inward] = make_line(section, drawn.sleeve, lying);
    brush.line({left, y}, {right, y}, kSheetEdge, drawn.is_small ? 1.2f : 2.0f);
    if (with_words) name_line(page, drawn.window, y, -inward, "flange " + exact_mm_text(flange));
    return;
  }
  const Um across = sewn_left ? width : 0;
  const float y = lying.y(across);
  const float inward = inward_at(lying, across);
  const float apart = drawn.is_small ? kSmallFoldApart : kFoldApart;
  fold_line(brush, left, right, y, inward, apart);
  if (first >= drawn.window.left) round_end(brush, first, y, inward * apart, -1);
  if (last <= drawn.window.right) round_end(brush, last, y, inward * apart, 1);
  if (with_words) name_line(page, drawn.window, y, inward, "fold");
}

SewnEdges sewn_edges(const solve::Sleeve& sleeve, bool face_down) {
  return face_down ? SewnEdges{sleeve.has_right_rows, sleeve.has_left_rows}
                   : SewnEdges{sleeve.has_left_rows, sleeve.has_right_rows};
}

std::vector<const solve::Row*> shared_rows(const Solved& now, Place place) {
  std::vector<const solve::Row*> shared;
  const job::Section* section = section_at(now.job, now.results, place);
  if (section == nullptr || section->side_seams != job::SideSeams::shared) return shared;
  for (const auto kind : {solve::RowKind::stitch, solve::RowKind::staple}) {
    for (const solve::Row* row : rows_at(now.results, {place.piece, -1}, kind)) {
      if (row->place != solve::RowPlace::lap) continue;
      if (row->sleeve == place.sleeve || row->sleeve + 1 == place.sleeve) shared.push_back(row);
    }
  }
  return shared;
}

}  // namespace pouncemark::web
