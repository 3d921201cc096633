#include <algorithm>
#include <limits>
#include <optional>
#include <utility>

#include "engine/checks/hanging_rules.h"
#include "engine/solve/bay_fixings.h"
#include "engine/solve/findings.h"
#include "engine/solve/plies.h"

namespace pouncemark::solve {
namespace {

using material::Field;

/// One bay with its fixings, while they are looked at.
struct Looked {
  const job::Job& job;
  const Results& results;
  const BayResult& bay;
  const Piece& piece;
  SlotNumbers numbers;
  checks::FixingNeed need;
  std::string place;
  std::vector<Finding>* findings;

  void say(std::optional<Finding> finding, const std::string& edge = {}) const {
    if (!finding) return;
    finding->piece = bay.piece;
    finding->place = place + (edge.empty() ? "" : ", fixings along the " + edge);
    findings->push_back(std::move(*finding));
  }
};

Vec2 place_of(const BayFixing& fixing) { return {from_um(fixing.x_um), from_um(fixing.y_um)}; }

/// The two tight fixings that stand farthest apart.
void check_both_ends(const Looked& at) {
  std::vector<Vec2> tight;
  for (const BayFixings& row : at.bay.fixings) {
    if (row.tight >= 0) tight.push_back(place_of(row.fixings[static_cast<std::size_t>(row.tight)]));
  }
  Um apart = 0;
  for (const Vec2& one : tight) {
    for (const Vec2& other : tight) apart = std::max(apart, to_um(length(other - one)));
  }
  const Um growth = std::abs(grown_um(at.numbers, apart, at.numbers.warmer.thousandths));
  at.say(checks::held_at_both_ends(
      apart, growth, job::value_of(at.job.materials, Field::fixing_play).thousandths));
  const bool has_fixing = !at.bay.fixings.empty();
  if (has_fixing && tight.empty()) at.say(checks::none_is_tight());
}

void check_day(const Looked& at) {
  if (!at.numbers.today.is_known || at.bay.fixings.empty()) return;
  Um shift = 0;
  for (const BayFixings& row : at.bay.fixings) {
    for (const BayFixing& fixing : row.fixings) {
      if (std::abs(fixing.screw_today_um) > std::abs(shift)) shift = fixing.screw_today_um;
    }
  }
  at.say(checks::hanging_temperature(at.numbers.planned.thousandths, at.numbers.today.thousandths,
                                     material::kAssumedOffPlanMk, shift));
}

/// From the middle of a hole to the nearest edge; along its own edge from a slot's rounded end.
Um nearest_edge_um(const Looked& at, const BayFixings& row) {
  const piece::Edge& edge = at.piece.outline.edges[static_cast<std::size_t>(row.outline_edge)];
  const Um along = to_um(length(edge.line));
  Um least = std::numeric_limits<Um>::max();
  for (const BayFixing& fixing : row.fixings) {
    const double in = distance_to(edge.line, 0, length(edge.line), place_of(fixing));
    const Um reach = fixing.is_tight ? 0 : (fixing.slot_um - at.need.screw_um) / 2;
    const Um end = std::min(fixing.station_um, along - fixing.station_um) - reach;
    least = std::min({least, to_um(in), end});
  }
  return least;
}

/// From the middle of a hole to the nearest row of stitches; nothing where the piece has none.
std::optional<Um> nearest_row_um(const Looked& at, const BayFixings& row) {
  std::optional<Um> least;
  for (int i = at.piece.first_row; i < at.piece.first_row + at.piece.row_count; ++i) {
    const Row& sewn = at.results.rows[static_cast<std::size_t>(i)];
    if (sewn.kind != RowKind::stitch || sewn.run.is_empty) continue;
    for (const BayFixing& fixing : row.fixings) {
      const Um near = to_um(distance_to(sewn.guide, from_um(sewn.run.first_um()),
                                        from_um(sewn.run.last_um()), place_of(fixing)));
      least = std::min(least.value_or(near), near);
    }
  }
  return least;
}

/// Where the cloth begins, in from the row's edge, and whether anyone entered it.
struct ClothFrom {
  Um in_um = 0;
  bool is_assumed = false;
};
ClothFrom cloth_from(const Looked& at, const BayFixings& row) {
  const auto entry = static_cast<std::size_t>(at.piece.entry);
  const piece::Edge& edge = at.piece.outline.edges[static_cast<std::size_t>(row.outline_edge)];
  if (at.piece.kind == PieceKind::section) {
    const job::Section& section = at.job.sections[entry];
    const ClothEnds ends = cloth_ends(section);
    const bool is_side = edge.name == "left" || edge.name == "right";
    const job::ClothPlace place = section.cloth.value_or(job::ClothPlace());
    if (!is_side) return {ends.end_um, !place.in_from_end_um};
    return {edge.name == "left" ? ends.left_um : ends.right_um, !place.in_from_edge_um};
  }
  const job::Panel& panel = at.job.panels[entry];
  const PanelCloth cloth = panel_cloth(at.job, panel);
  const job::ClothPlace place = panel.cloth.value_or(job::ClothPlace());
  if (edge.role != piece::EdgeRole::fly_side) return {cloth.sewn_um, !place.in_from_edge_um};
  return {cloth.fly_um - (at.bay.moves_out ? at.bay.creep_um : 0), !place.in_from_fly_side_um};
}

Um least_between_um(const BayFixings& row) {
  Um least = std::numeric_limits<Um>::max();
  for (std::size_t i = 1; i < row.fixings.size(); ++i) {
    const BayFixing& one = row.fixings[i - 1];
    const BayFixing& next = row.fixings[i];
    least = std::min(least, next.station_um - one.station_um - (one.slot_um + next.slot_um) / 2);
  }
  return least;
}

void check_row(const Looked& at, const BayFixings& row) {
  if (row.fixings.empty()) return;
  at.say(checks::fixing_near_edge(nearest_edge_um(at, row), at.need), row.edge);
  const std::optional<Um> near_row = nearest_row_um(at, row);
  if (near_row) at.say(checks::washer_on_row(*near_row, at.need), row.edge);
  const ClothFrom cloth = cloth_from(at, row);
  checks::FixingNeed need = at.need;
  need.is_assumed = cloth.is_assumed;
  const auto entry = static_cast<std::size_t>(row.entry);
  const auto& asked = at.job.bays[static_cast<std::size_t>(&at.bay - at.results.bays.data())];
  at.say(checks::screw_in_cloth(asked.fixings[entry].in_from_edge_um, cloth.in_um, need), row.edge);
  at.say(checks::slots_meet(least_between_um(row), at.need), row.edge);
}

}  // namespace

void check_fixings(const job::Job& job, const Results& results, int bay, std::string place,
                   Findings* findings) {
  const auto index = static_cast<std::size_t>(bay);
  const BayResult& result = results.bays[index];
  if (result.piece < 0 || job.bays[index].fixings.empty()) return;
  const Piece& piece = results.pieces[static_cast<std::size_t>(result.piece)];
  Looked at{job, results, result, piece, slot_numbers(job, piece), {}, std::move(place), findings};
  const auto washer = job::value_of(job.materials, Field::fixing_washer);
  at.need = {at.numbers.screw.thousandths, washer.thousandths,
             at.numbers.screw.is_assumed() || washer.is_assumed()};
  for (const UnlaidFixings& row : lay_fixings(job, job.bays[index], results, result).unlaid) {
    if (row.problem) {
      at.say(checks::row_not_laid(*row.problem), row.edge);
    } else {
      const bool is_section = piece.kind == PieceKind::section;
      at.say(checks::no_such_edge(row.edge, (is_section ? "section " : "panel ") + piece.code));
    }
  }
  check_both_ends(at);
  check_day(at);
  for (const BayFixings& row : result.fixings) check_row(at, row);
}

}  // namespace pouncemark::solve
