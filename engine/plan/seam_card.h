#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <vector>

#include "engine/job/job.h"
#include "engine/plan/card_cells.h"
#include "engine/solve/results.h"
#include "engine/solve/sewing.h"

namespace pouncemark::plan {

/// The row as it lies on the bench, FRONT UP, the datum end of its edge at the left. The piece's
/// left edge, and the top of a panel whose hinge is at the left, are up.
struct CardRow {
  solve::RowPlace place = solve::RowPlace::side;
  bool edge_is_up = false;   ///< the edge it is sewn along is above it; a lap: that edge lies under
  bool is_hinge = false;     ///< that edge is the hinge side
  bool ends_at_fly = false;  ///< it runs from the hinge side to the fly side
  bool is_stopped = false;   ///< made to stop on the way there: the rest stays free
  /// It is sewn from the right of the picture to its left: the work is fed away from the sewer, so
  /// what is up then lies right of the needle, and that must be the smaller side.
  bool begins_at_right = false;
  std::string left;   ///< "BOTTOM", "HINGE SIDE"
  std::string right;  ///< "TOP", "FLY SIDE"
  std::string start;  ///< where sewing begins, "22", from the datum end of its edge
  std::string stop;
  std::string sew;  ///< from the first hole to the last
};

/// Everything the sewer needs for one row, for one page. Figures to half a millimetre, but stitch
/// and stack to a hundredth.
struct SeamCard {
  std::string heading;  ///< "joining row 7 of 16"
  std::string code;     ///< "2-07 over 2-08", "1-05 left", "P1 hinge"
  std::string job_name;
  std::string piece;  ///< "section 2"
  CardRow row;
  std::array<CardCell, 6> cells;
  std::string band;                ///< the one thing to do first
  std::vector<std::string> lines;  ///< bobbin, right of the needle, a corner hole
  std::string fly_side;            ///< panels: "FLY SIDE - DO NOT SEW: the right edge"
  std::vector<std::string> stops;  ///< findings at this row
  std::vector<std::string> warns;
  std::int64_t staples = 0;  ///< that hold this row; 0: none
  bool staples_stay = false;
  bool film_stays = false;  ///< left on while sewing
  std::string signed_by;    ///< who approved the trial seam, and when; empty: open
};

/// The stitch rows of a piece in the order of the results, as indices into Results::rows: one card
/// each.
std::vector<int> seam_card_rows(const solve::Results& results, const solve::Piece& piece);

/// How a stitch row with at least one hole lies, and at which end it begins, by its index in
/// Results::rows.
CardRow card_row(const job::Job& job, const solve::Results& results, int row);

/// The card of one stitch row with at least one hole, by its index in Results::rows. `sewing` is
/// solve::sewing_of of the same job: worked out once for all cards.
SeamCard seam_card(const job::Job& job, const solve::Results& results, const solve::Sewing& sewing,
                   int row);

}  // namespace pouncemark::plan
