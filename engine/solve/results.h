#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/checks/finding.h"
#include "engine/geometry/segment.h"
#include "engine/geometry/units.h"
#include "engine/layout/run.h"
#include "engine/piece/blank.h"
#include "engine/piece/outline.h"
#include "engine/solve/bay_result.h"

/// Floor 7, solve: everything that follows from a job. Results solve(const Job&) is a pure
/// function; screen, paper, tables and tests all read the same Results.
namespace pouncemark::solve {

enum class RowKind : std::uint8_t { staple, stitch, point };
enum class RowPlace : std::uint8_t { side, lap, panel };
enum class PieceKind : std::uint8_t { section, panel };

/// One solved row. Its points lie on `guide`, which is in the millimetres of its piece (x across
/// from the left edge, y from BOTTOM), walked from the datum end of its edge.
struct Row {
  std::string code;  ///< "1-05 left", "1-05+06", "P1 hinge"
  RowKind kind = RowKind::staple;
  RowPlace place = RowPlace::side;
  int piece = 0;   ///< index into Results::pieces
  int sleeve = 0;  ///< index into the piece's sleeves; of a lap: the sleeve at its left
  Um in_from_edge_um = 0;
  Segment guide;
  layout::Run run;
  Um asked_um = 0;               ///< spacing or stitch asked for
  Um stitch_um = 0;              ///< stitch rows: what is sewn, none longer; asked, or a trial's
  Um stack_um = 0;               ///< stitch rows: the thickest place, not pressed; 0: not known
  Um climb_um = 0;               ///< stitch rows: the highest step between plies, up or down
  bool along_a_ply = false;      ///< stitch rows: runs just along the edge of a ply somewhere
  bool stack_is_typed = true;    ///< stitch rows: typed, not worked out from the plies
  bool first_is_shared = false;  ///< its first point belongs to the hinge row and is counted there
  int edge = -1;                 ///< of a panel: index into the edges of its outline
  Um stops_um = 0;  ///< made to stop so far from the hinge side, along its edge; 0: it was not
};

/// The place of point `index` of a row in its piece, whole micrometres.
struct PlaceUm {
  Um x = 0;
  Um y = 0;
  bool operator==(const PlaceUm&) const = default;
};
PlaceUm point_um(const Row& row, std::int64_t index);

/// Points that belong to this row alone: a shared first point is not counted.
std::int64_t own_points(const Row& row);

/// A sleeve that is there. Which neighbour it lies over the job says (job::left_lies_over).
struct Sleeve {
  std::string code;
  int number = 0;  ///< its number less 1: the index job::sleeve_code and its friends take
  Um left_um = 0;  ///< its left edge from the section's left edge
  Um width_um = 0;
  piece::Blank blank;
  bool has_left_rows = true;  ///< side rows on its left long edge
  bool has_right_rows = true;
};

/// One thing that is made and hung: a section or a panel.
struct Piece {
  std::string code;  ///< "1", "P1"
  PieceKind kind = PieceKind::section;
  int entry = 0;  ///< index into job.sections or job.panels
  Um width_um = 0;
  Um length_um = 0;
  piece::Outline outline;
  std::vector<Sleeve> sleeves;        ///< sections only: those there, from the viewer's left
  std::vector<Um> row_middles_um;     ///< sections only: middles of the laps
  std::vector<Um> running_totals_um;  ///< sections only: to each sleeve's right edge
  Um likely_um = 0;                   ///< sections only: could end up, root of summed squares
  Um worst_um = 0;                    ///< sections only: at worst
  int first_row = 0;                  ///< its rows are rows[first_row, first_row + row_count)
  int row_count = 0;
};

using checks::Finding;
using checks::Severity;

struct Totals {
  std::int64_t side_staples = 0;
  std::int64_t lap_staples = 0;
  std::int64_t side_rows = 0;
  std::int64_t lap_rows = 0;
  std::int64_t panel_rows = 0;
  std::int64_t stitch_holes = 0;
  std::int64_t panel_points = 0;
  Um row_um = 0;  ///< length of all stitch rows
};

struct Results {
  std::vector<Piece> pieces;  ///< sections in the job's order, then panels
  std::vector<Row> rows;
  std::vector<BayResult> bays;    ///< in the job's order
  std::vector<Finding> findings;  ///< stops first, then warns, then notes; in the job's order
  Totals totals;
};

}  // namespace pouncemark::solve
