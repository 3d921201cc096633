#include <cmath>
#include <optional>
#include <string_view>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/solve/rows.h"
#include "engine/solve/solve.h"

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

layout::RunRule rule_of(const job::StitchRow& row, Um length, Um stitch_um) {
  layout::RunRule rule;
  rule.edge_length_um = length;
  rule.kept_clear_start_um = row.kept_clear_um[0];
  rule.kept_clear_end_um = row.kept_clear_um[1];
  rule.spacing_um = stitch_um;
  return rule;
}

layout::GuideLine upright(Um x, Um length) {
  layout::GuideLine guide;
  guide.line = {{from_um(x), 0}, {from_um(x), from_um(length)}, 0};
  guide.length_um = length;
  return guide;
}

/// What makes centre to centre of the spacing asked for.
Um crown_to_add(const job::Job& job) {
  return job.spacing_is_clear_gap ? job.crown_um.value_or(material::kAssumedCrownUm) : 0;
}

struct Place {
  std::string code;
  RowPlace place = RowPlace::side;
  int piece = 0;
  int sleeve = 0;
};

Asked asked_of(const Place& place, RowKind kind, Um in_um, const layout::RunRule& rule) {
  return {place.code, kind, place.place, place.piece, place.sleeve, in_um, rule, 0};
}

/// A stitch row as it is really sewn: as the chosen trial measured it, where one did.
Asked asked_of(const job::Job& job, const Place& place, Um in_um, const job::StitchRow& row,
               Um length) {
  const Um really = job::stitch_really_um(job.trials, rows_of(place.place), row.stitch_um);
  return {place.code,
          RowKind::stitch,
          place.place,
          place.piece,
          place.sleeve,
          in_um,
          rule_of(row, length, really),
          row.stitch_um};
}

std::optional<Problem> why_not_on(const job::Section& section, const Sleeve& sleeve, Um in_um) {
  if (in_um > sleeve.width_um) return Problem{ProblemCode::row_off_the_piece, {}, {}, {}};
  const Um flange = section.flange_um.value_or(0);
  if (section.make != job::Make::round || in_um <= flange) return std::nullopt;
  return Problem{ProblemCode::row_off_the_flange,
                 {},
                 exact_mm_text(in_um) + " in from the edge",
                 "at most " + exact_mm_text(flange)};
}

/// Both rows of one long edge of one sleeve.
void lay_side(const job::Section& section, const Sleeve& sleeve, const Place& place,
              const piece::Edge& edge, const std::array<Asked, 2>& rows, Laying* laying) {
  for (const Asked& asked : rows) {
    if (const auto why_not = why_not_on(section, sleeve, asked.in_from_edge_um)) {
      laying->unlaid.push_back({place.piece, place.code, *why_not});
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

void lay_sides(const job::Job& job, const job::Section& section, const Piece& piece, int index,
               std::size_t at, Laying* laying) {
  const Um crown = crown_to_add(job);
  const Sleeve& sleeve = piece.sleeves[at];
  const Um length = section.length_um;
  const job::RowPair rows = job::side_rows_of(section, sleeve.number);
  const piece::Outline outline =
      piece::sleeve_outline(from_um(sleeve.left_um), from_um(sleeve.width_um), from_um(length));
  for (const char* side : {"left", "right"}) {
    const bool is_left = std::string_view(side) == "left";
    if (!(is_left ? sleeve.has_left_rows : sleeve.has_right_rows)) continue;
    for (const piece::Edge& edge : outline.edges) {
      if (edge.name != side) continue;
      const Place place{sleeve.code + " " + side, RowPlace::side, index, static_cast<int>(at)};
      lay_side(section, sleeve, place, edge,
               {asked_of(place, RowKind::staple, rows.staple.in_from_edge_um,
                         rule_of(rows.staple, length, crown)),
                asked_of(job, place, rows.stitch.in_from_edge_um, rows.stitch, length)},
               laying);
    }
  }
}

void lay_laps(const job::Job& job, const job::Section& section, const Piece& piece, int index,
              Laying* laying) {
  const Um length = section.length_um;
  for (std::size_t i = 0; i < piece.row_middles_um.size(); ++i) {
    const std::string over = piece.sleeves[i + 1].code.substr(section.code.size() + 1);
    const Place place{piece.sleeves[i].code + "+" + over, RowPlace::lap, index,
                      static_cast<int>(i)};
    if (section.make == job::Make::round) {
      laying->unlaid.push_back(
          {index, place.code, {ProblemCode::row_through_the_tube, {}, {}, {}}});
      continue;
    }
    const layout::GuideLine guide = upright(piece.row_middles_um[i], length);
    lay(asked_of(place, RowKind::staple, section.lap_um / 2,
                 rule_of(section.lap_rows->staple, length, crown_to_add(job))),
        guide, laying);
    lay(asked_of(job, place, section.lap_um / 2, section.lap_rows->stitch, length), guide, laying);
  }
}

piece::Blank blank_of(const job::Section& section, Um width) {
  switch (section.make) {
    case job::Make::folded:
      return piece::folded_blank(width, section.fold_radius_um.value_or(0), section.leaf_um);
    case job::Make::round:
      return piece::round_blank(width, section.flange_um.value_or(0), section.leaf_um);
    case job::Make::two_leaf:
      break;
  }
  return piece::two_leaf_blank(width);
}

/// Which long edges of a section's sleeves have side rows of their own.
void mark_side_rows(const job::Section& section, std::vector<Sleeve>* sleeves) {
  const bool both = section.make == job::Make::two_leaf;
  const job::Side sewn = section.sewn_side.value_or(job::Side::right);
  const bool shared = section.side_seams == job::SideSeams::shared;
  for (std::size_t i = 0; i < sleeves->size(); ++i) {
    Sleeve& sleeve = (*sleeves)[i];
    const bool is_first = i == 0;
    const bool is_last = i + 1 == sleeves->size();
    sleeve.has_left_rows = (both || sewn == job::Side::left) && (!shared || is_first);
    sleeve.has_right_rows = (both || sewn == job::Side::right) && (!shared || is_last);
  }
}

}  // namespace

OutBy out_by(const job::Section& section, std::int64_t sleeves) {
  const Um width_off = section.width_tolerance_um.value_or(material::kAssumedWidthToleranceUm);
  const Um lap_off = section.lap_tolerance_um.value_or(material::kAssumedLapToleranceUm);
  const auto n = static_cast<double>(sleeves);
  const double w = from_um(width_off);
  const double l = from_um(lap_off);
  return {to_um(std::sqrt(n * w * w + (n - 1) * l * l)),
          sleeves * width_off + (sleeves - 1) * lap_off};
}

Piece section_piece(const job::Section& section, int entry) {
  Piece piece;
  piece.code = section.code;
  piece.kind = PieceKind::section;
  piece.entry = entry;
  piece.length_um = section.length_um;
  Um left = 0;
  for (const int number : job::sleeves_there(section)) {
    Sleeve sleeve;
    sleeve.code = job::sleeve_code(section, number);
    sleeve.number = number;
    sleeve.left_um = left;
    sleeve.width_um = job::sleeve_width_um(section, number);
    sleeve.blank = blank_of(section, sleeve.width_um);
    if (!piece.sleeves.empty()) piece.row_middles_um.push_back(left + section.lap_um / 2);
    piece.running_totals_um.push_back(left + sleeve.width_um);
    left += sleeve.width_um - section.lap_um;
    piece.sleeves.push_back(std::move(sleeve));
  }
  mark_side_rows(section, &piece.sleeves);
  piece.width_um = piece.running_totals_um.back();
  const OutBy out = out_by(section, std::ssize(piece.sleeves));
  piece.likely_um = out.likely_um;
  piece.worst_um = out.worst_um;
  piece.outline = piece::sleeve_outline(0, from_um(piece.width_um), from_um(piece.length_um));
  return piece;
}

void lay_section(const job::Job& job, const job::Section& section, const Piece& piece, int index,
                 Laying* laying) {
  for (std::size_t i = 0; i < piece.sleeves.size(); ++i) {
    lay_sides(job, section, piece, index, i, laying);
  }
  if (section.lap_rows) lay_laps(job, section, piece, index, laying);
}

}  // namespace pouncemark::solve
