#include <algorithm>
#include <optional>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include "engine/solve/findings.h"
#include "engine/solve/solve.h"

namespace pouncemark::solve {
namespace {

/// The staples of a row as the foot meets them. Staples beside their own row that come out after it
/// are there while it is sewn.
checks::StapleState state_at_own_row(job::StaplesOut out) {
  switch (out) {
    case job::StaplesOut::before_the_row:
      return checks::StapleState::out_already;
    case job::StaplesOut::as_the_foot_comes:
      return checks::StapleState::comes_out_as_the_foot_comes;
    case job::StaplesOut::not_said:
    case job::StaplesOut::after_the_row:
    case job::StaplesOut::stay:
      return checks::StapleState::there;
  }
  return checks::StapleState::there;
}

/// Side staples still there when the laps are joined: only those that stay, or may.
bool is_there_at_joining(job::StaplesOut out) {
  return out == job::StaplesOut::stay || out == job::StaplesOut::not_said;
}

Um apart(Um a, Um b) { return a > b ? a - b : b - a; }

/// The side rows of one sleeve as far as it has any, by their places across the section.
struct SleeveRows {
  const Sleeve& sleeve;
  job::RowPair rows;
  std::vector<Um> staple_x;
  std::vector<Um> stitch_x;
};

std::vector<SleeveRows> sleeve_rows(const job::Section& section, const Piece& piece) {
  std::vector<SleeveRows> all;
  for (const Sleeve& sleeve : piece.sleeves) {
    SleeveRows one{sleeve, job::side_rows_of(section, sleeve.number), {}, {}};
    const Um left = sleeve.left_um;
    const Um right = left + sleeve.width_um;
    const Um staple_in = one.rows.staple.in_from_edge_um;
    const Um stitch_in = one.rows.stitch.in_from_edge_um;
    if (sleeve.has_left_rows) {
      one.staple_x.push_back(left + staple_in);
      one.stitch_x.push_back(left + stitch_in);
    }
    if (sleeve.has_right_rows) {
      one.staple_x.push_back(right - staple_in);
      one.stitch_x.push_back(right - stitch_in);
    }
    all.push_back(std::move(one));
  }
  return all;
}

/// The least distance between a place of `a` and one of `b`; nothing where one of them is empty.
std::optional<Um> nearest(const std::vector<Um>& a, const std::vector<Um>& b) {
  std::optional<Um> least;
  for (const Um x : a) {
    for (const Um y : b) least = std::min(least.value_or(apart(x, y)), apart(x, y));
  }
  return least;
}

/// What every rule of one piece needs: the limits, the piece it looks at, and where findings go.
struct Looked {
  const Limits& limits;
  int piece;
  Gathering* gathering;

  std::optional<Finding> under_foot(Um apart_um, RowPlace place, Um asked_um,
                                    checks::StapleState state, job::StaplesOut out) const {
    const Um stitch = job::stitch_really_um(*limits.trials, rows_of(place), asked_um);
    return checks::staple_under_foot(apart_um, limits.foot,
                                     {limits.wire_um, limits.needle_size, stitch}, state,
                                     out != job::StaplesOut::not_said);
  }
};

void check_sides(const std::vector<SleeveRows>& sleeves, const Looked& looked) {
  for (std::size_t i = 0; i < sleeves.size(); ++i) {
    const SleeveRows& one = sleeves[i];
    const std::optional<Um> least = nearest(one.stitch_x, one.staple_x);
    if (!least) continue;
    const job::StaplesOut out = one.rows.staple.staples;
    const Asking asking{
        looked.piece, "sleeve " + one.sleeve.code, checks::Part::sleeves, {static_cast<int>(i)}};
    looked.gathering->add(
        checks::edge_distance(one.rows.stitch.in_from_edge_um, looked.limits.needle_size,
                              material::kAssumedBladesToEdge),
        asking);
    looked.gathering->add(looked.under_foot(*least, RowPlace::side, one.rows.stitch.stitch_um,
                                            state_at_own_row(out), out),
                          asking);
  }
}

void check_laps(const job::Section& section, const Piece& piece,
                const std::vector<SleeveRows>& sleeves, const Looked& looked) {
  if (!section.lap_rows || section.make == job::Make::round) return;
  const job::RowPair& lap = *section.lap_rows;
  for (std::size_t i = 0; i + 1 < sleeves.size(); ++i) {
    const std::string place = "lap " + sleeves[i].sleeve.code + "+" +
                              sleeves[i + 1].sleeve.code.substr(section.code.size() + 1);
    const Asking asking{looked.piece, place, checks::Part::laps, {static_cast<int>(i)}};
    const Um middle = piece.row_middles_um[i];
    const job::StaplesOut out = lap.staple.staples;
    looked.gathering->add(
        looked.under_foot(0, RowPlace::lap, lap.stitch.stitch_um, state_at_own_row(out), out),
        asking);
    for (const SleeveRows* one : {&sleeves[i], &sleeves[i + 1]}) {
      const job::StaplesOut side = one->rows.staple.staples;
      const std::optional<Um> least = nearest(one->staple_x, {middle});
      if (!least || !is_there_at_joining(side)) continue;
      looked.gathering->add(looked.under_foot(*least, RowPlace::lap, lap.stitch.stitch_um,
                                              checks::StapleState::there, side),
                            asking);
    }
    looked.gathering->add(checks::edge_distance(section.lap_um / 2, looked.limits.needle_size,
                                                material::kAssumedBladesToEdge),
                          asking);
  }
}

/// Rows that were laid, side by side across the section.
void check_rows_apart(const Results& results, const Piece& piece, const Looked& looked) {
  std::vector<std::tuple<Um, std::string, int>> rows;
  for (int i = 0; i < piece.row_count; ++i) {
    const Row& row = results.rows[static_cast<std::size_t>(piece.first_row + i)];
    if (row.kind == RowKind::stitch)
      rows.emplace_back(to_um(row.guide.from.x), row.code, piece.first_row + i);
  }
  std::stable_sort(rows.begin(), rows.end());
  for (std::size_t i = 0; i + 1 < rows.size(); ++i) {
    const auto& [x, code, row] = rows[i];
    const auto& [next_x, next_code, next_row] = rows[i + 1];
    looked.gathering->add(
        checks::rows_apart(next_x - x, looked.limits.needle_size,
                           material::kAssumedBladesBetweenRows),
        {looked.piece, code + " to " + next_code, checks::Part::rows, {row, next_row}});
  }
}

/// Exact rows whose left-over was filled with one more point.
void check_last_gaps(const Results& results, const Piece& piece, const Looked& looked) {
  for (int i = 0; i < piece.row_count; ++i) {
    const Row& row = results.rows[static_cast<std::size_t>(piece.first_row + i)];
    if (row.run.step_um == 0) continue;
    looked.gathering->add(
        checks::short_last_gap(row.run.last_gap_um(), row.run.step_um),
        {looked.piece, "row " + row.code, checks::Part::rows, {piece.first_row + i}});
  }
}

}  // namespace

void check_section(const job::Section& section, const Results& results, int index,
                   const Limits& limits, Findings* findings) {
  const Piece& piece = results.pieces[static_cast<std::size_t>(index)];
  const std::vector<SleeveRows> sleeves = sleeve_rows(section, piece);
  Gathering gathering;
  const Looked looked{limits, index, &gathering};
  check_laps(section, piece, sleeves, looked);
  gathering.move_to(findings, "laps", results, piece.row_middles_um.size());
  check_sides(sleeves, looked);
  gathering.move_to(findings, "sleeves", results, piece.sleeves.size());
  check_rows_apart(results, piece, looked);
  gathering.move_to(findings, "places", results, 0);
  check_last_gaps(results, piece, looked);
  gathering.move_to(findings, "rows", results, 0);
}

}  // namespace pouncemark::solve
