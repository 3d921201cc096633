#pragma once

#include "engine/job/job.h"
#include "engine/solve/results.h"
#include "engine/solve/sums.h"
#include "engine/takeoff/under_arm.h"

namespace pouncemark::solve {

/// The work as it lies at the machine while one row is sewn: a side row on its sleeve alone, a
/// joining row once the sleeves to its right edge are joined one by one from the left, a panel's
/// row on the panel turned so that its edge is at the right.
struct RowArm {
  Um work_um = 0;  ///< width of the work then, across the row
  Um side_um = 0;  ///< the smaller side of the row, which goes under the arm
  Um roll_um = 0;  ///< across the roll, were it rolled; 0 where the work's thickness is not known
  takeoff::UnderArm how = takeoff::UnderArm::not_known;
};

/// What is rolled under the arm: its thickness, its stiffest ply, and how tight that may stay bent,
/// in times its thickness.
struct Rolled {
  Um thickness_um = 0;
  Um sheet_um = 0;
  material::Value times;
  Um radius_um() const { return divide_up(sheet_um * times.thousandths, 1'000); }
};
Rolled rolled_of(const job::Materials& materials, const job::Section& section);
Rolled rolled_of(const job::Materials& materials, const job::Panel& panel);
Rolled rolled_of(const job::Job& job, const Piece& piece);

/// The same of a piece by itself.
RowArm row_arm(const Piece& piece, const Rolled& rolled, const takeoff::Arm& arm, const Row& row);

/// The machine's throat and height, as far as they were entered.
takeoff::Arm arm_of(const job::Materials& materials);

/// `row` is any stitch row or a staple row.
RowArm row_arm(const job::Job& job, const Results& results, const Row& row);

/// How the smaller side was worked out, and the roll.
Sum side_sum(const job::Job& job, const Results& results, const Row& row);
Sum roll_sum(const job::Job& job, const Results& results, const Row& row);

}  // namespace pouncemark::solve
