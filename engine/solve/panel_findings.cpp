#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <vector>

#include "engine/geometry/tolerance.h"
#include "engine/solve/findings.h"
#include "engine/solve/rows_stop.h"

namespace pouncemark::solve {
namespace {

double first_mm(const Row& row) { return from_um(row.run.first_um()); }
double last_mm(const Row& row) { return from_um(row.run.last_um()); }

bool is_within(const Row& row, Vec2 place) {
  const double station = station_of(row.guide, place);
  return station >= first_mm(row) && station <= last_mm(row);
}

/// The two rows' runs pass over one another.
bool pass_over(const Row& a, const Row& b) {
  for (const double station : {first_mm(a), last_mm(a)}) {
    const auto place = meeting(a.guide, b.guide, point_at(a.guide, station));
    if (place && is_within(a, *place) && is_within(b, *place)) return true;
  }
  return false;
}

std::vector<PlaceUm> ends_of(const Row& row) {
  return {point_um(row, 0), point_um(row, row.run.points() - 1)};
}

/// An end of one row is an end of the other, to the micrometre each of them is rounded to.
bool share_a_hole(const Row& a, const Row& b) {
  for (const PlaceUm& one : ends_of(a)) {
    for (const PlaceUm& other : ends_of(b)) {
      if (std::abs(one.x - other.x) <= 2 && std::abs(one.y - other.y) <= 2) return true;
    }
  }
  return false;
}

Um apart_um(const Row& a, const Row& b) {
  if (pass_over(a, b)) return 0;
  double least = distance_to(b.guide, first_mm(b), last_mm(b), point_at(a.guide, first_mm(a)));
  const auto take = [&least](const Row& row, const Row& other, double station) {
    const Vec2 place = point_at(row.guide, station);
    const double away = distance_to(other.guide, first_mm(other), last_mm(other), place);
    least = std::min(least, away);
  };
  take(a, b, last_mm(a));
  take(b, a, first_mm(b));
  take(b, a, last_mm(b));
  return to_um(least);
}

bool run_side_by_side(const Row& a, const Row& b) {
  if (!is_straight(a.guide) || !is_straight(b.guide)) return false;
  return std::fabs(cross(direction_at(a.guide, 0), direction_at(b.guide, 0))) <
         tolerance::kSmoothJoint;
}

/// A stitch row and a circle that holds its run, so that rows far apart are passed over quickly.
struct Ringed {
  const Row* row;
  int index;  ///< in Results::rows
  Vec2 middle;
  double reach;
};

std::vector<Ringed> stitch_rows(const Results& results, const Piece& piece) {
  std::vector<Ringed> rows;
  for (int i = 0; i < piece.row_count; ++i) {
    const Row& row = results.rows[static_cast<std::size_t>(piece.first_row + i)];
    if (row.kind != RowKind::stitch || row.run.is_empty) continue;
    const double half = (last_mm(row) - first_mm(row)) / 2.0;
    rows.push_back({&row, piece.first_row + i, point_at(row.guide, first_mm(row) + half), half});
  }
  return rows;
}

/// Caution 6 for every two stitch rows that do not run side by side.
void check_crossings(const Results& results, const Piece& piece, int index, Gathering* gathering) {
  constexpr Um kClear = material::kAssumedCornerClearUm;
  const std::vector<Ringed> rows = stitch_rows(results, piece);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    for (std::size_t j = i + 1; j < rows.size(); ++j) {
      const double reach = rows[i].reach + rows[j].reach + from_um(kClear);
      const Vec2 between = rows[j].middle - rows[i].middle;
      if (dot(between, between) > reach * reach) continue;
      const Row& a = *rows[i].row;
      const Row& b = *rows[j].row;
      if (run_side_by_side(a, b) || share_a_hole(a, b)) continue;
      gathering->add(
          checks::rows_cross(apart_um(a, b), kClear),
          {index, a.code + " and " + b.code, checks::Part::rows, {rows[i].index, rows[j].index}});
    }
  }
}

/// Guide point rows that a stop is about, as indices into the results.
std::vector<int> rows_that_can_stop(const Results& results, const Piece& piece) {
  std::vector<int> rows;
  for (int i = piece.first_row; i < piece.first_row + piece.row_count; ++i) {
    const Row& row = results.rows[static_cast<std::size_t>(i)];
    if (row.kind == RowKind::point && !row.run.is_empty && can_stop(piece, row)) rows.push_back(i);
  }
  return rows;
}

/// A stop that leaves less than a gap, or that lies beyond every row it is about. An outline may
/// have several edges one after the other at its top: one that has no row may be left out by it.
void check_stop(Um stop_um, const Results& results, const Piece& piece, int index,
                Gathering* gathering) {
  const std::vector<int> rows = rows_that_can_stop(results, piece);
  Um farthest = 0;
  std::size_t cut = 0;
  for (const int i : rows) {
    const Row& row = results.rows[static_cast<std::size_t>(i)];
    farthest = std::max(farthest, ends_from_hinge_um(piece, row));
    if (row.stops_um == 0) continue;
    ++cut;
    gathering->add(checks::rows_stop_soon(stop_um, row.run.length_um, row.asked_um),
                   {index, "row " + row.code, checks::Part::rows, {i}});
  }
  const bool leaves_out = piece.outline.edges.size() > 4;
  if (cut > 0 || rows.empty() || leaves_out || farthest >= stop_um) return;
  gathering->add(checks::rows_stop_beyond(stop_um, farthest), {index, "top and bottom"});
}

}  // namespace

void check_panel(const job::Panel& panel, const Results& results, int index, const Limits& limits,
                 Findings* findings) {
  Gathering gathering;
  const bool asks_fly_side =
      panel.rows_on && std::count(panel.rows_on->begin(), panel.rows_on->end(), "fly_side") > 0;
  if (asks_fly_side) gathering.add(checks::fly_side_row(), {index, "fly side"});
  gathering.add(
      checks::edge_distance(panel.panel_in_um, limits.needle_size, material::kAssumedBladesToEdge),
      {index, "hinge side, top and bottom"});
  const Piece& piece = results.pieces[static_cast<std::size_t>(index)];
  check_crossings(results, piece, index, &gathering);
  if (panel.rows_stop_um) check_stop(*panel.rows_stop_um, results, piece, index, &gathering);
  gathering.move_to(findings, "rows", results, 0);
}

}  // namespace pouncemark::solve
