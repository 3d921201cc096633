#include "engine/solve/solve.h"

#include <utility>

#include "engine/solve/rows.h"

namespace pouncemark::solve {
namespace {

void add_to_totals(const Row& row, Totals* totals) {
  const std::int64_t points = own_points(row);
  if (row.kind == RowKind::point) totals->panel_points += points;
  if (row.kind == RowKind::staple) {
    (row.place == RowPlace::lap ? totals->lap_staples : totals->side_staples) += points;
  }
  if (row.kind != RowKind::stitch) return;
  totals->stitch_holes += points;
  totals->row_um += row.run.length_um;
  if (row.place == RowPlace::side) ++totals->side_rows;
  if (row.place == RowPlace::lap) ++totals->lap_rows;
  if (row.place == RowPlace::panel) ++totals->panel_rows;
}

}  // namespace

void lay(const Asked& asked, const layout::GuideLine& guide, Laying* laying) {
  const Result<layout::Run> run = layout::solve_run(asked.rule);
  if (!run) {
    laying->unlaid.push_back({asked.piece, asked.code, run.problem()});
    return;
  }
  Row row;
  row.code = asked.code;
  row.kind = asked.kind;
  row.place = asked.place;
  row.piece = asked.piece;
  row.sleeve = asked.sleeve;
  row.in_from_edge_um = asked.in_from_edge_um;
  row.guide = guide.line;
  row.run = *run;
  row.asked_um = asked.rule.spacing_um;
  row.first_is_shared = guide.first_is_shared;
  laying->rows.push_back(std::move(row));
}

PlaceUm point_um(const Row& row, std::int64_t index) {
  const Vec2 place = point_at(row.guide, from_um(row.run.station_um(index)));
  return {to_um(place.x), to_um(place.y)};
}

std::int64_t own_points(const Row& row) {
  const std::int64_t points = row.run.points();
  return row.first_is_shared && points > 0 ? points - 1 : points;
}

Results solve(const job::Job& job) {
  Results results;
  Laying laying;
  const auto keep = [&](Piece piece, auto lay_rows) {
    piece.first_row = static_cast<int>(laying.rows.size());
    lay_rows(piece, static_cast<int>(results.pieces.size()));
    piece.row_count = static_cast<int>(laying.rows.size()) - piece.first_row;
    results.pieces.push_back(std::move(piece));
  };
  for (std::size_t i = 0; i < job.sections.size(); ++i) {
    keep(section_piece(job.sections[i], static_cast<int>(i)), [&](const Piece& piece, int index) {
      lay_section(job, job.sections[i], piece, index, &laying);
    });
  }
  for (std::size_t i = 0; i < job.panels.size(); ++i) {
    keep(panel_piece(job.panels[i], static_cast<int>(i)),
         [&](const Piece& piece, int index) { lay_panel(job.panels[i], piece, index, &laying); });
  }
  results.rows = std::move(laying.rows);
  for (const Row& row : results.rows) add_to_totals(row, &results.totals);
  results.findings = find_findings(job, results, laying);
  return results;
}

}  // namespace pouncemark::solve
