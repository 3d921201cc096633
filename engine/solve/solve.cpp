#include "engine/solve/solve.h"

#include <utility>

#include "engine/solve/bays.h"
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

Piece piece_of(const job::Section& section) { return section_piece(section, 0); }
Piece piece_of(const job::Panel& panel) { return panel_piece(panel, 0); }

void lay_rows(const job::Job& job, const job::Section& section, const Piece& piece,
              Laying* laying) {
  lay_section(job, section, piece, 0, laying);
}
void lay_rows(const job::Job& job, const job::Panel& panel, const Piece& piece, Laying* laying) {
  lay_panel(job, panel, piece, 0, laying);
}

template <typename Entry>
SolvedPiece solved_alone(const job::Job& job, const Entry& entry, std::size_t index) {
  Results alone;
  Laying laying;
  Piece& piece = alone.pieces.emplace_back(piece_of(entry));
  piece.entry = static_cast<int>(index);
  lay_rows(job, entry, piece, &laying);
  piece.row_count = static_cast<int>(laying.rows.size());
  alone.rows = std::move(laying.rows);
  set_stacks(job, entry, &alone);
  SolvedPiece solved;
  solved.of_laying = findings_of_laying(laying, alone);
  solved.of_checks = findings_of(job, entry, alone);
  solved.piece = std::move(piece);
  solved.rows = std::move(alone.rows);
  return solved;
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
  row.asked_um = asked.asked_um > 0 ? asked.asked_um : asked.rule.spacing_um;
  if (asked.kind == RowKind::stitch) row.stitch_um = asked.rule.spacing_um;
  row.first_is_shared = guide.first_is_shared;
  row.edge = asked.edge;
  row.stops_um = asked.stops_um;
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

SolvedPieces solve_pieces(const job::Job& job) { return solve_pieces(job, job, {}); }

SolvedPieces solve_pieces(const job::Job& job, const job::Job& was_job, const SolvedPieces& was) {
  SolvedPieces pieces;
  const bool is_measured_alike = measures_alike(job, was_job);
  // `first` is where the pieces of one kind began.
  const auto keep = [&](const auto& entries, const auto& were, std::size_t first) {
    for (std::size_t i = 0; i < entries.size(); ++i) {
      const bool is_as_it_was =
          is_measured_alike && i < were.size() && first + i < was.size() && entries[i] == were[i];
      pieces.push_back(is_as_it_was
                           ? was[first + i]
                           : std::make_shared<const SolvedPiece>(solved_alone(job, entries[i], i)));
    }
  };
  keep(job.sections, was_job.sections, 0);
  keep(job.panels, was_job.panels, was_job.sections.size());
  return pieces;
}

Results put_together(const job::Job& job, const SolvedPieces& pieces) {
  Results results;
  std::size_t rows = 0;
  for (const auto& one : pieces) rows += one->rows.size();
  results.rows.reserve(rows);
  results.pieces.reserve(pieces.size());
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const SolvedPiece& one = *pieces[i];
    const auto index = static_cast<int>(i);
    const bool is_panel = one.piece.kind == PieceKind::panel;
    Piece& piece = results.pieces.emplace_back(one.piece);
    piece.entry = index - static_cast<int>(is_panel ? job.sections.size() : 0);
    piece.first_row = static_cast<int>(results.rows.size());
    for (const Row& row : one.rows) {
      results.rows.push_back(row);
      results.rows.back().piece = index;
      add_to_totals(row, &results.totals);
    }
  }
  results.bays = bays_of(job, results);
  results.findings = all_findings(job, results, pieces);
  return results;
}

Results solve(const job::Job& job) { return put_together(job, solve_pieces(job)); }

}  // namespace pouncemark::solve
