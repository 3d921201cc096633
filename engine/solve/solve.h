#pragma once

#include <memory>
#include <vector>

#include "engine/job/job.h"
#include "engine/solve/results.h"

namespace pouncemark::solve {

/// Everything that follows from the job: pieces, rows, findings, totals. Pure: same job, same
/// results; no state, no clock, no file. A row that cannot be laid is left out and becomes a
/// finding.
Results solve(const job::Job& job);

/// The rows a trial seam may stand for.
inline job::RowsOf rows_of(RowPlace place) {
  if (place == RowPlace::panel) return job::RowsOf::panel_rows;
  return place == RowPlace::lap ? job::RowsOf::lap_rows : job::RowsOf::side_rows;
}

/// What follows for one piece alone, numbered as if it were the job's only one.
struct SolvedPiece {
  Piece piece;
  std::vector<Row> rows;
  std::vector<Finding> of_laying;  ///< rows that could not be laid, edges passed over
  std::vector<Finding> of_checks;
};

/// Sections in the job's order, then panels. Shared, because most of them stay as they are from
/// one edit to the next.
using SolvedPieces = std::vector<std::shared_ptr<const SolvedPiece>>;

/// Solves each piece of the job by itself. A piece that is entered in `job` as it is in `was_job`,
/// and is measured against the same needle, foot and wire, is taken over from `was`, which must
/// come from `was_job`.
SolvedPieces solve_pieces(const job::Job& job);
SolvedPieces solve_pieces(const job::Job& job, const job::Job& was_job, const SolvedPieces& was);

/// The pieces put together with what only the whole job can say: solve(job) by other means.
Results put_together(const job::Job& job, const SolvedPieces& pieces);

/// How far out the first so many sleeves of a section could end up together: likely, and at worst.
struct OutBy {
  Um likely_um = 0;
  Um worst_um = 0;
};
OutBy out_by(const job::Section& section, std::int64_t sleeves);

}  // namespace pouncemark::solve
