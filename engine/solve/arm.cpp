#include "engine/solve/arm.h"

#include <algorithm>

#include "engine/base/insist.h"
#include "engine/base/number_text.h"
#include "engine/solve/sum_words.h"

namespace pouncemark::solve {
namespace {

using material::Field;
using material::Value;

std::optional<Um> known(const job::Materials& materials, Field field) {
  const Value value = job::value_of(materials, field);
  return value.is_known ? std::optional<Um>(value.thousandths) : std::nullopt;
}

/// The two sleeves that meet in a lap, and the run with both.
struct Lap {
  Um run_um = 0;
  Um row_um = 0;
};
Lap lap_of(const Piece& piece, const Row& row) {
  const auto at = static_cast<std::size_t>(row.sleeve);
  INSIST(at + 1 < piece.sleeves.size());
  return {piece.running_totals_um[at + 1], piece.row_middles_um[at]};
}

const Piece& piece_of(const Results& results, const Row& row) {
  return results.pieces[static_cast<std::size_t>(row.piece)];
}

}  // namespace

Rolled rolled_of(const job::Materials& materials, const job::Section& section) {
  return {section.side_rows.stack_um, section.leaf_um,
          job::value_of(materials, Field::leaf_stay_bent)};
}

Rolled rolled_of(const job::Materials& materials, const job::Panel& panel) {
  return {panel.stack_um, panel.backing_thickness_um,
          job::value_of(materials, Field::backing_stay_bent)};
}

Rolled rolled_of(const job::Job& job, const Piece& piece) {
  const auto entry = static_cast<std::size_t>(piece.entry);
  return piece.kind == PieceKind::panel ? rolled_of(job.materials, job.panels[entry])
                                        : rolled_of(job.materials, job.sections[entry]);
}

takeoff::Arm arm_of(const job::Materials& materials) {
  return {known(materials, Field::machine_throat), known(materials, Field::machine_under_arm)};
}

RowArm row_arm(const Piece& piece, const Rolled& rolled, const takeoff::Arm& arm, const Row& row) {
  RowArm at;
  if (row.place == RowPlace::lap) {
    const Lap lap = lap_of(piece, row);
    at.work_um = lap.run_um;
    at.side_um = takeoff::smaller_side_um(lap.run_um, lap.row_um);
  } else {
    const bool is_side = row.place == RowPlace::side;
    const bool is_across = !is_side && std::abs(row.guide.to.x - row.guide.from.x) >
                                           std::abs(row.guide.to.y - row.guide.from.y);
    at.work_um = is_side ? piece.sleeves[static_cast<std::size_t>(row.sleeve)].width_um
                         : (is_across ? piece.length_um : piece.width_um);
    at.side_um = takeoff::smaller_side_um(at.work_um, row.in_from_edge_um);
  }
  at.roll_um = takeoff::roll_across_um(at.side_um, rolled.thickness_um, rolled.radius_um());
  at.how = takeoff::under_arm(at.side_um, at.roll_um, arm);
  return at;
}

RowArm row_arm(const job::Job& job, const Results& results, const Row& row) {
  const Piece& piece = piece_of(results, row);
  return row_arm(piece, rolled_of(job, piece), arm_of(job.materials), row);
}

Sum side_sum(const job::Job& job, const Results& results, const Row& row) {
  const RowArm arm = row_arm(job, results, row);
  const Piece& piece = piece_of(results, row);
  Sum sum;
  sum.figure = mm_text(arm.side_um, 1);
  sum.source = source_of(false);
  if (row.place != RowPlace::lap) {
    sum.rule = "the piece turned so that the row's own edge lies right of the needle";
    sum.numbers = {sum.figure};
    return sum;
  }
  const Lap lap = lap_of(piece, row);
  sum.rule = "the smaller side of the row, the sleeves joined one by one from the left";
  sum.numbers = {plain_mm(lap.run_um) + " − " + plain_mm(lap.row_um) + " = " +
                     plain_mm(lap.run_um - lap.row_um),
                 "the smaller of " + plain_mm(lap.row_um) + " and " +
                     plain_mm(lap.run_um - lap.row_um) + ": " + sum.figure};
  return sum;
}

Sum roll_sum(const job::Job& job, const Results& results, const Row& row) {
  const RowArm arm = row_arm(job, results, row);
  const Rolled rolled = rolled_of(job, piece_of(results, row));
  const bool is_assumed = rolled.times.is_assumed();
  Sum sum;
  sum.figure = mm_text(arm.roll_um, 1);
  sum.rule = "across a roll: 2 √(R² + side × thickness ÷ π), R as tight as the sheet may stay bent";
  sum.numbers = {plain_mm(rolled.sheet_um) + " × " +
                     told(exact_mm_text(rolled.times.thousandths), is_assumed) + " = " +
                     plain_mm(rolled.radius_um()),
                 "2 × √(" + plain_mm(rolled.radius_um()) + "² + " + plain_mm(arm.side_um) + " × " +
                     plain_mm(rolled.thickness_um) + " ÷ π) = " + sum.figure};
  sum.source = rolled.times.source.empty() ? source_of(false) : rolled.times.source;
  sum.rests_on_assumed = is_assumed;
  return sum;
}

}  // namespace pouncemark::solve
