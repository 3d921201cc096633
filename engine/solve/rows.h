#pragma once

#include <string>
#include <vector>

#include "engine/job/job.h"
#include "engine/layout/edge_guides.h"
#include "engine/solve/results.h"
#include "engine/solve/solve.h"

/// Inside of solve: how the rows of one piece are laid. Only solve's own files include this.
namespace pouncemark::solve {

/// A row that could not be laid, and where.
struct Unlaid {
  int piece = 0;
  std::string code;
  Problem problem;
};

/// An edge too short for a row of its own, whose neighbours' rows meet before it.
struct PassedOver {
  int piece = 0;
  std::string code;
};

/// Rows laid so far and those that could not be.
struct Laying {
  std::vector<Row> rows;
  std::vector<Unlaid> unlaid;
  std::vector<PassedOver> passed_over;
};

/// What is asked of one row on one guide line.
struct Asked {
  std::string code;
  RowKind kind = RowKind::stitch;
  RowPlace place = RowPlace::side;
  int piece = 0;
  int sleeve = 0;
  Um in_from_edge_um = 0;
  layout::RunRule rule;
  Um asked_um = 0;  ///< of a stitch row whose stitch a trial measured: as asked; 0: as ruled
  int edge = -1;    ///< as Row::edge
  Um stops_um = 0;  ///< as Row::stops_um
};

/// Solves the run and keeps the row, or keeps why it could not be laid.
void lay(const Asked& asked, const layout::GuideLine& guide, Laying* laying);

/// The piece of a section with its sleeves and totals, and its rows.
Piece section_piece(const job::Section& section, int entry);
void lay_section(const job::Job& job, const job::Section& section, const Piece& piece, int index,
                 Laying* laying);

/// The piece of a panel, and its rows.
Piece panel_piece(const job::Panel& panel, int entry);
void lay_panel(const job::Job& job, const job::Panel& panel, const Piece& piece, int index,
               Laying* laying);

/// Says of each stitch row of the piece in `alone` what stack the needle meets.
void set_stacks(const job::Job& job, const job::Section& section, Results* alone);
void set_stacks(const job::Job& job, const job::Panel& panel, Results* alone);

/// What the laying of one piece has to say; `alone` holds that piece only.
std::vector<Finding> findings_of_laying(const Laying& laying, const Results& alone);

/// What the checks of one section or panel have to say; `alone` holds that piece only.
std::vector<Finding> findings_of(const job::Job& job, const job::Section& section,
                                 const Results& alone);
std::vector<Finding> findings_of(const job::Job& job, const job::Panel& panel,
                                 const Results& alone);

/// Both jobs ask the checks and the rows of a piece for the same: clear gap and crown, needle, wire
/// and foot, thread and tails, materials and trial seams.
bool measures_alike(const job::Job& a, const job::Job& b);

/// Everything the checks have to say, stops first: of the pieces, then of the whole job.
std::vector<Finding> all_findings(const job::Job& job, const Results& results,
                                  const SolvedPieces& pieces);

}  // namespace pouncemark::solve
