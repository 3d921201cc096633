#include <cmath>

#include "engine/solve/rows.h"

namespace pouncemark::solve {
namespace {

layout::RunRule rule_of(const job::StapleRow& row, Um length, Um crown_to_add) {
  layout::RunRule rule;
  rule.edge_length_um = length;
  rule.kept_clear_start_um = row.kept_clear_um[0];
  rule.kept_clear_end_um = row.kept_clear_um[1];
  rule.spacing_um = row.spacing_um + crown_to_add;
  rule.exact = row.rule == job::SpacingRule::exact;
  rule.left_over = static_cast<layout::RunRule::LeftOver>(row.left_over);
  return rule;
}

layout::RunRule rule_of(const job::StitchRow& row, Um length) {
  layout::RunRule rule;
  rule.edge_length_um = length;
  rule.kept_clear_start_um = row.kept_clear_um[0];
  rule.kept_clear_end_um = row.kept_clear_um[1];
  rule.spacing_um = row.stitch_um;
  return rule;
}

layout::GuideLine upright(Um x, Um length) {
  layout::GuideLine guide;
  guide.line = {{from_um(x), 0}, {from_um(x), from_um(length)}, 0};
  guide.length_um = length;
  return guide;
}

struct Place {
  std::string code;
  RowPlace place = RowPlace::side;
  int piece = 0;
  int sleeve = 0;
};

Asked asked_of(const Place& place, RowKind kind, Um in_um, const layout::RunRule& rule) {
  return {place.code, kind, place.place, place.piece, place.sleeve, in_um, rule};
}

/// Both rows of one long edge of one sleeve.
void lay_side(const Place& place, const piece::Edge& edge, Um width,
              const std::array<Asked, 2>& rows, Laying* laying) {
  for (const Asked& asked : rows) {
    if (asked.in_from_edge_um > width) {
      laying->unlaid.push_back(
          {place.piece, place.code, {ProblemCode::row_off_the_piece, {}, {}, {}}});
      continue;
    }
    const Result<layout::GuideLine> guide = layout::guide_along(edge, asked.in_from_edge_um);
    if (guide) {
      lay(asked, *guide, laying);
    } else {
      laying->unlaid.push_back({place.piece, place.code, guide.problem()});
    }
  }
}

}  // namespace

Piece section_piece(const job::Section& section, int entry) {
  Piece piece;
  piece.code = section.code;
  piece.kind = PieceKind::section;
  piece.entry = entry;
  piece.length_um = section.length_um;
  Um left = 0;
  for (int i = 0; i < section.count; ++i) {
    const Um width = job::sleeve_width_um(section, i);
    if (i > 0) piece.row_middles_um.push_back(left + section.lap_um / 2);
    piece.sleeves.push_back({job::sleeve_code(section, i), left, width});
    piece.running_totals_um.push_back(left + width);
    left += width - section.lap_um;
  }
  piece.width_um = piece.running_totals_um.back();
  const Um width_off = section.width_tolerance_um.value_or(material::kAssumedWidthToleranceUm);
  const Um lap_off = section.lap_tolerance_um.value_or(material::kAssumedLapToleranceUm);
  const double n = section.count;
  const double w = from_um(width_off);
  const double l = from_um(lap_off);
  piece.likely_um = to_um(std::sqrt(n * w * w + (n - 1) * l * l));
  piece.worst_um = section.count * width_off + (section.count - 1) * lap_off;
  piece.outline = piece::sleeve_outline(0, from_um(piece.width_um), from_um(piece.length_um));
  return piece;
}

void lay_section(const job::Job& job, const job::Section& section, const Piece& piece, int index,
                 Laying* laying) {
  const Um crown = job.spacing_is_clear_gap ? job.crown_um.value_or(material::kAssumedCrownUm) : 0;
  const Um length = section.length_um;
  for (int i = 0; i < section.count; ++i) {
    const Sleeve& sleeve = piece.sleeves[static_cast<std::size_t>(i)];
    const job::RowPair rows = job::side_rows_of(section, i);
    const piece::Outline outline =
        piece::sleeve_outline(from_um(sleeve.left_um), from_um(sleeve.width_um), from_um(length));
    for (const char* side : {"left", "right"}) {
      for (const piece::Edge& edge : outline.edges) {
        if (edge.name != side) continue;
        const Place place{sleeve.code + " " + side, RowPlace::side, index, i};
        lay_side(place, edge, sleeve.width_um,
                 {asked_of(place, RowKind::staple, rows.staple.in_from_edge_um,
                           rule_of(rows.staple, length, crown)),
                  asked_of(place, RowKind::stitch, rows.stitch.in_from_edge_um,
                           rule_of(rows.stitch, length))},
                 laying);
      }
    }
  }
  if (!section.lap_rows) return;
  for (std::size_t i = 0; i < piece.row_middles_um.size(); ++i) {
    const std::string over = piece.sleeves[i + 1].code.substr(section.code.size() + 1);
    const Place place{piece.sleeves[i].code + "+" + over, RowPlace::lap, index,
                      static_cast<int>(i)};
    const layout::GuideLine guide = upright(piece.row_middles_um[i], length);
    lay(asked_of(place, RowKind::staple, section.lap_um / 2,
                 rule_of(section.lap_rows->staple, length, crown)),
        guide, laying);
    lay(asked_of(place, RowKind::stitch, section.lap_um / 2,
                 rule_of(section.lap_rows->stitch, length)),
        guide, laying);
  }
}

}  // namespace pouncemark::solve
