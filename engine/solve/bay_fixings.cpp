#include "engine/solve/bay_fixings.h"

#include <cmath>

#include "engine/base/number_text.h"
#include "engine/frame/fixings.h"
#include "engine/layout/edge_guides.h"
#include "engine/solve/bay_force.h"

namespace pouncemark::solve {
namespace {

using material::Field;

/// "hinge side" of "hinge_side".
std::string said(const std::string& word) {
  const std::size_t at = word.find('_');
  return at == std::string::npos ? word : word.substr(0, at) + " " + word.substr(at + 1);
}

/// The word of the job file for an edge of the piece.
std::string word_of(const Piece& piece, const piece::Edge& edge) {
  if (piece.kind == PieceKind::section) return edge.name;
  switch (edge.role) {
    case piece::EdgeRole::hinge_side:
      return "hinge_side";
    case piece::EdgeRole::fly_side:
      return "fly_side";
    case piece::EdgeRole::top:
      return "top";
    default:
      return "bottom";
  }
}

int tight_of(job::Tight tight, std::int64_t points) {
  const auto last = static_cast<int>(points) - 1;
  switch (tight) {
    case job::Tight::first:
      return 0;
    case job::Tight::middle:
      return last / 2;
    case job::Tight::last:
      return last;
    case job::Tight::none:
      break;
  }
  return -1;
}

Result<BayFixings> laid(const job::FixingRow& asked, const piece::Edge& edge) {
  piece::Edge any = edge;
  // Stitches keep off a fly side, fixings need not.
  any.role = piece::EdgeRole::side;
  const Result<layout::GuideLine> guide = layout::guide_along(any, asked.in_from_edge_um);
  if (!guide) return guide.problem();
  layout::RunRule rule;
  rule.edge_length_um = guide->length_um;
  rule.kept_clear_start_um = asked.kept_clear_um[0];
  rule.kept_clear_end_um = asked.kept_clear_um[1];
  rule.spacing_um = asked.spacing_um;
  const Result<layout::Run> run = layout::solve_run(rule);
  if (!run) return run.problem();
  if (run->points() > kMostFixings) {
    return Problem{ProblemCode::row_too_many_points,
                   {},
                   count_text(run->points()) + " fixings",
                   "at most 1,000"};
  }
  BayFixings row;
  row.edge = said(asked.edge);
  row.guide = guide->line;
  row.run = *run;
  row.tight = tight_of(asked.tight, run->points());
  for (std::int64_t i = 0; i < run->points(); ++i) {
    BayFixing& fixing = row.fixings.emplace_back();
    fixing.station_um = run->station_um(i);
    const Vec2 place = point_at(row.guide, from_um(fixing.station_um));
    fixing.x_um = to_um(place.x);
    fixing.y_um = to_um(place.y);
    fixing.is_tight = static_cast<int>(i) == row.tight;
  }
  return row;
}

/// The row whose tight fixing the sheet moves from: its own, else the first of the bay that has
/// one.
void find_tight_rows(std::vector<BayFixings>* rows) {
  int first = -1;
  for (std::size_t i = 0; i < rows->size(); ++i) {
    if (first < 0 && (*rows)[i].tight >= 0) first = static_cast<int>(i);
  }
  for (std::size_t i = 0; i < rows->size(); ++i) {
    BayFixings& row = (*rows)[i];
    row.tight_row = row.tight >= 0 ? static_cast<int>(i) : first;
  }
}

void cut_slot(const SlotNumbers& numbers, bool is_across, BayFixing* fixing) {
  frame::SlotNeed need;
  need.screw_um = numbers.screw.thousandths;
  need.tolerance_um = numbers.tolerance.thousandths;
  need.move_um = std::abs(grown_um(numbers, fixing->from_tight_um, numbers.warmer.thousandths));
  if (is_across) {
    // Thousandths of a percent for each percent, times thousandths of a percent.
    need.damp_um = std::llround(static_cast<double>(fixing->from_tight_um) *
                                static_cast<double>(numbers.across.thousandths) *
                                static_cast<double>(numbers.damp.thousandths) / 1e8);
  }
  fixing->move_um = need.move_um;
  fixing->damp_um = need.damp_um;
  fixing->slot_um = frame::slot_um(need);
  fixing->slot_shown_um = frame::slot_shown_um(fixing->slot_um);
  if (!numbers.today.is_known) return;
  fixing->screw_today_um = -grown_um(numbers, fixing->from_tight_um,
                                     numbers.today.thousandths - numbers.planned.thousandths);
}

void cut_slots(const SlotNumbers& numbers, bool is_across, const std::vector<BayFixings>& rows,
               BayFixings* row) {
  if (row->tight_row < 0) return;
  const BayFixings& held = rows[static_cast<std::size_t>(row->tight_row)];
  const Vec2 tight =
      point_at(held.guide, from_um(held.fixings[static_cast<std::size_t>(held.tight)].station_um));
  for (BayFixing& fixing : row->fixings) {
    if (fixing.is_tight) continue;
    fixing.from_tight_um = to_um(length(point_at(row->guide, from_um(fixing.station_um)) - tight));
    cut_slot(numbers, is_across, &fixing);
  }
}

}  // namespace

Um grown_um(const SlotNumbers& numbers, Um from_tight_um, std::int64_t by_mk) {
  return frame::move_um(from_tight_um,
                        {numbers.sheet.thousandths, numbers.timber.thousandths, by_mk});
}

SlotNumbers slot_numbers(const job::Job& job, const Piece& piece) {
  const auto value = [&job](Field field) { return job::value_of(job.materials, field); };
  SlotNumbers numbers;
  for (const BentSheet& sheet : sheets_of(job, piece)) {
    Field kind = Field::leaf_sheet;
    if (sheet.item == material::Item::backing) kind = Field::backing_sheet;
    if (sheet.item == material::Item::facing) kind = Field::facing_sheet;
    const auto growth = frame::sheet_growth(static_cast<material::Sheet>(value(kind).thousandths));
    if (growth.thousandths > numbers.sheet.thousandths) numbers.sheet = growth;
  }
  numbers.screw = value(Field::fixing_screw);
  numbers.tolerance = value(Field::fixing_tolerance);
  numbers.timber = value(Field::hanging_timber);
  numbers.warmer = value(Field::hanging_warmer);
  numbers.planned = value(Field::hanging_planned);
  numbers.today = value(Field::hanging_today);
  numbers.across = value(Field::hanging_across);
  numbers.damp = value(Field::hanging_damp);
  return numbers;
}

LaidFixings lay_fixings(const job::Job& job, const job::Bay& bay, const Results& results,
                        const BayResult& result) {
  LaidFixings all;
  if (result.piece < 0 || bay.fixings.empty()) return all;
  const Piece& piece = results.pieces[static_cast<std::size_t>(result.piece)];
  for (std::size_t i = 0; i < bay.fixings.size(); ++i) {
    const job::FixingRow& asked = bay.fixings[i];
    const auto entry = static_cast<int>(i);
    bool is_there = false;
    for (std::size_t at = 0; at < piece.outline.edges.size(); ++at) {
      const piece::Edge& edge = piece.outline.edges[at];
      if (word_of(piece, edge) != asked.edge) continue;
      is_there = true;
      const Result<BayFixings> row = laid(asked, edge);
      if (!row) {
        all.unlaid.push_back({entry, said(asked.edge), row.problem()});
        continue;
      }
      BayFixings& kept = all.rows.emplace_back(*row);
      kept.entry = entry;
      kept.outline_edge = static_cast<int>(at);
    }
    if (!is_there) all.unlaid.push_back({entry, said(asked.edge), std::nullopt});
  }
  find_tight_rows(&all.rows);
  const SlotNumbers numbers = slot_numbers(job, piece);
  for (BayFixings& row : all.rows) {
    const job::FixingRow& asked = bay.fixings[static_cast<std::size_t>(row.entry)];
    cut_slots(numbers, asked.timber == job::TimberLies::across_grain, all.rows, &row);
  }
  return all;
}

}  // namespace pouncemark::solve
