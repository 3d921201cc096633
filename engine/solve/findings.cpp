#include <algorithm>
#include <set>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/checks/rules.h"
#include "engine/solve/rows.h"

namespace pouncemark::solve {
namespace {

/// Findings with one cause in one piece are one finding; this gathers where it holds.
class Gathering {
 public:
  void add(Finding finding, const std::string& place) {
    for (Kept& kept : kept_) {
      if (kept.finding.piece == finding.piece && kept.finding.sentence == finding.sentence) {
        if (kept.places.back() != place) kept.places.push_back(place);
        return;
      }
    }
    kept_.push_back({std::move(finding), {place}});
  }

  /// `every` tells how many places of this kind the piece has, so that "all 16 laps" can be said.
  template <typename Every>
  void move_to(std::vector<Finding>* findings, const std::string& what, const Results& results,
               Every every) {
    for (Kept& kept : kept_) {
      const Piece& piece = results.pieces[static_cast<std::size_t>(kept.finding.piece)];
      const std::size_t count = kept.places.size();
      std::string place = piece.kind == PieceKind::section ? "section " : "panel ";
      place += piece.code + ", ";
      if (count == 1) {
        place += kept.places[0];
      } else {
        place += count == every(piece) ? "all " : "";
        place += count_text(static_cast<std::int64_t>(count)) + " " + what;
      }
      kept.finding.place = std::move(place);
      findings->push_back(std::move(kept.finding));
    }
    kept_.clear();
  }

 private:
  struct Kept {
    Finding finding;
    std::vector<std::string> places;
  };
  std::vector<Kept> kept_;
};

using Findings = std::vector<Finding>;

struct Limits {
  int needle_size;
  checks::FootNeed foot;
};

Limits limits_of(const job::Job& job) {
  Limits limits;
  limits.needle_size = job.needle_size;
  limits.foot.half_foot_um = job.half_foot_um.value_or(material::kAssumedHalfFootUm);
  limits.foot.tolerance_um = job.foot_tolerance_um.value_or(material::kAssumedFootToleranceUm);
  limits.foot.assumed = !job.half_foot_um || !job.foot_tolerance_um;
  return limits;
}

void add(Gathering* gathering, std::optional<Finding> finding, int piece,
         const std::string& place) {
  if (!finding) return;
  finding->piece = piece;
  gathering->add(std::move(*finding), place);
}

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

struct SleeveRows {
  Sleeve sleeve;
  job::RowPair rows;
  std::array<Um, 2> staple_x{};
  std::array<Um, 2> stitch_x{};
};

std::vector<SleeveRows> sleeve_rows(const job::Section& section, const Piece& piece) {
  std::vector<SleeveRows> all;
  for (int i = 0; i < section.count; ++i) {
    SleeveRows one;
    one.sleeve = piece.sleeves[static_cast<std::size_t>(i)];
    one.rows = job::side_rows_of(section, i);
    const Um left = one.sleeve.left_um;
    const Um right = left + one.sleeve.width_um;
    one.staple_x = {left + one.rows.staple.in_from_edge_um,
                    right - one.rows.staple.in_from_edge_um};
    one.stitch_x = {left + one.rows.stitch.in_from_edge_um,
                    right - one.rows.stitch.in_from_edge_um};
    all.push_back(one);
  }
  return all;
}

/// What every rule of one piece needs: the limits, the piece it looks at, and where findings go.
struct Looked {
  const Limits& limits;
  int piece;
  Gathering* gathering;
};

void check_sides(const std::vector<SleeveRows>& sleeves, const Looked& looked) {
  for (const SleeveRows& one : sleeves) {
    const job::StaplesOut out = one.rows.staple.staples;
    add(looked.gathering,
        checks::edge_distance(one.rows.stitch.in_from_edge_um, looked.limits.needle_size,
                              material::kAssumedBladesToEdge),
        looked.piece, "sleeve " + one.sleeve.code);
    Um nearest = apart(one.stitch_x[0], one.staple_x[0]);
    for (const Um staple : one.staple_x) {
      for (const Um stitch : one.stitch_x) nearest = std::min(nearest, apart(staple, stitch));
    }
    add(looked.gathering,
        checks::staple_under_foot(nearest, looked.limits.foot, state_at_own_row(out),
                                  out != job::StaplesOut::not_said),
        looked.piece, "sleeve " + one.sleeve.code);
  }
}

void check_laps(const job::Section& section, const Piece& piece,
                const std::vector<SleeveRows>& sleeves, const Looked& looked) {
  for (std::size_t i = 0; i + 1 < sleeves.size() && section.lap_rows; ++i) {
    const std::string place = "lap " + sleeves[i].sleeve.code + "+" +
                              sleeves[i + 1].sleeve.code.substr(section.code.size() + 1);
    const Um middle = piece.row_middles_um[i];
    const job::StaplesOut out = section.lap_rows->staple.staples;
    add(looked.gathering,
        checks::staple_under_foot(0, looked.limits.foot, state_at_own_row(out),
                                  out != job::StaplesOut::not_said),
        looked.piece, place);
    for (const SleeveRows* one : {&sleeves[i], &sleeves[i + 1]}) {
      if (!is_there_at_joining(one->rows.staple.staples)) continue;
      const Um nearest = std::min(apart(one->staple_x[0], middle), apart(one->staple_x[1], middle));
      add(looked.gathering,
          checks::staple_under_foot(nearest, looked.limits.foot, checks::StapleState::there,
                                    one->rows.staple.staples != job::StaplesOut::not_said),
          looked.piece, place);
    }
    add(looked.gathering,
        checks::edge_distance(section.lap_um / 2, looked.limits.needle_size,
                              material::kAssumedBladesToEdge),
        looked.piece, place);
  }
}

/// Rows that were laid, side by side across the section.
void check_rows_apart(const Results& results, const Piece& piece, const Looked& looked) {
  std::vector<std::pair<Um, std::string>> rows;
  for (int i = 0; i < piece.row_count; ++i) {
    const Row& row = results.rows[static_cast<std::size_t>(piece.first_row + i)];
    if (row.kind == RowKind::stitch) rows.emplace_back(to_um(row.guide.from.x), row.code);
  }
  std::stable_sort(rows.begin(), rows.end());
  for (std::size_t i = 0; i + 1 < rows.size(); ++i) {
    add(looked.gathering,
        checks::rows_apart(rows[i + 1].first - rows[i].first, looked.limits.needle_size,
                           material::kAssumedBladesBetweenRows),
        looked.piece, rows[i].second + " to " + rows[i + 1].second);
  }
}

std::size_t lap_count(const Piece& piece) { return piece.row_middles_um.size(); }
std::size_t sleeve_count(const Piece& piece) { return piece.sleeves.size(); }
std::size_t never_all(const Piece&) { return 0; }

void check_section(const job::Section& section, const Results& results, int index,
                   const Limits& limits, Findings* findings) {
  const Piece& piece = results.pieces[static_cast<std::size_t>(index)];
  const std::vector<SleeveRows> sleeves = sleeve_rows(section, piece);
  Gathering gathering;
  const Looked looked{limits, index, &gathering};
  check_laps(section, piece, sleeves, looked);
  gathering.move_to(findings, "laps", results, lap_count);
  check_sides(sleeves, looked);
  gathering.move_to(findings, "sleeves", results, sleeve_count);
  check_rows_apart(results, piece, looked);
  gathering.move_to(findings, "places", results, never_all);
}

void check_panel(const job::Panel& panel, const Results& results, int index, const Limits& limits,
                 Findings* findings) {
  Gathering gathering;
  const bool asks_fly_side =
      panel.rows_on && std::count(panel.rows_on->begin(), panel.rows_on->end(), "fly_side") > 0;
  if (asks_fly_side) add(&gathering, checks::fly_side_row(), index, "fly side");
  add(&gathering,
      checks::edge_distance(panel.panel_in_um, limits.needle_size, material::kAssumedBladesToEdge),
      index, "hinge side, top and bottom");
  gathering.move_to(findings, "rows", results, never_all);
}

}  // namespace

std::vector<Finding> find_findings(const job::Job& job, const Results& results,
                                   const std::vector<Unlaid>& unlaid) {
  Findings findings;
  Gathering gathering;
  for (const Unlaid& row : unlaid) {
    add(&gathering, checks::row_not_laid(row.problem), row.piece, "row " + row.code);
  }
  gathering.move_to(&findings, "rows", results, never_all);
  const Limits limits = limits_of(job);
  for (std::size_t i = 0; i < results.pieces.size(); ++i) {
    const Piece& piece = results.pieces[i];
    const auto entry = static_cast<std::size_t>(piece.entry);
    if (piece.kind == PieceKind::section) {
      check_section(job.sections[entry], results, static_cast<int>(i), limits, &findings);
    } else {
      check_panel(job.panels[entry], results, static_cast<int>(i), limits, &findings);
    }
  }
  const std::int64_t staples = results.totals.side_staples + results.totals.lap_staples;
  if (staples > 0) findings.push_back(checks::staple_holes(staples));
  findings.push_back(checks::always_said());
  std::stable_sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
    return static_cast<int>(a.severity) < static_cast<int>(b.severity);
  });
  return findings;
}

}  // namespace pouncemark::solve
