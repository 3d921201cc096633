#include "web/model/outcomes.h"

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/material/assumed.h"
#include "engine/solve/seam_choice.h"
#include "engine/solve/solve.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

using solve::RowKind;
using solve::RowPlace;

std::string mm(Um um) { return short_mm_text(um, 2); }

/// "110 × 1800".
std::string size(Um width, Um length) {
  return short_mm_text(width, 1) + " " + kTimes + " " + short_mm_text(length, 1);
}

std::string bent_words(const job::Section& section, const piece::Blank& blank, bool one) {
  if (section.make == job::Make::folded) {
    return one ? ", fold line at " + short_mm_text(blank.fold_um, 1) + " from its edge"
               : ", fold line at half of each";
  }
  if (section.make == job::Make::round) {
    return ", flange lines at " + short_mm_text(blank.fold_um, 1) +
           (one ? " from each edge" : " from their edges");
  }
  return {};
}

/// "2 leaves of 110 × 1800", "blank 240.5 × 1800, fold line at 120.2 from its edge"; of several
/// sleeves how many and from which width to which.
std::string blank_words(const job::Section& section, const solve::Piece& piece, int sleeve) {
  const auto& sleeves = piece.sleeves;
  if (sleeve >= 0) {
    const piece::Blank& blank = sleeves[static_cast<std::size_t>(sleeve)].blank;
    const std::string cut = size(blank.width_um, piece.length_um);
    return (blank.count == 2 ? "2 leaves of " + cut : "blank " + cut) +
           bent_words(section, blank, true);
  }
  Um least = sleeves.front().blank.width_um;
  Um most = least;
  std::int64_t count = 0;
  for (const solve::Sleeve& one : sleeves) {
    least = std::min(least, one.blank.width_um);
    most = std::max(most, one.blank.width_um);
    count += one.blank.count;
  }
  const std::string what = section.make == job::Make::two_leaf ? counted(count, "leaf", "leaves")
                                                               : counted(count, "blank", "blanks");
  const std::string cut =
      least == most ? " of " + size(least, piece.length_um)
                    : ", " + short_mm_text(least, 1) + " to " + size(most, piece.length_um);
  return what + cut + bent_words(section, sleeves.front().blank, false);
}

/// Rows that are asked for and cannot be laid.
std::string unlaid_words(const job::Section& section, const solve::Results& results) {
  const solve::Piece& piece = results.pieces.front();
  std::int64_t wanted = section.lap_rows ? 2 * std::ssize(piece.row_middles_um) : 0;
  for (const solve::Sleeve& sleeve : piece.sleeves) {
    wanted += (sleeve.has_left_rows ? 2 : 0) + (sleeve.has_right_rows ? 2 : 0);
  }
  const std::int64_t unlaid = wanted - std::ssize(results.rows);
  return unlaid == 0 ? std::string() : counted(unlaid, "row", "rows") + " cannot be laid";
}

Outcome leaves(const Would& would) {
  const job::Section& section = would.job.sections.front();
  const solve::Piece& piece = would.results.pieces.front();
  const int sleeve = would.alone.place.sleeve;
  Outcome outcome;
  std::string blank = blank_words(section, piece, sleeve);
  if (section.make == job::Make::round && sleeve >= 0) {
    const Um width = piece.sleeves[static_cast<std::size_t>(sleeve)].width_um;
    const Um inside = width - section.flange_um.value_or(0) - 2 * section.leaf_um;
    blank += ", tube " + mm(inside) + " inside";
  }
  outcome.follows.push_back(std::move(blank));
  if (sleeve < 0) {
    outcome.follows.push_back(counted(would.results.totals.side_rows, "side row", "side rows"));
  }
  outcome.stop = unlaid_words(section, would.results);
  return outcome;
}

Outcome sewn_side(const Would& would) {
  const bool is_left = would.answer == 0;
  const job::Make make = would.job.sections.front().make;
  const std::string other =
      make == job::Make::folded ? "the fold lies at the " : "the tube at the ";
  return {{other + (is_left ? "right" : "left")}, {}};
}

/// "37 points at 49.00", "36 points at exactly 50.00, 14 left over".
std::string run_words(const layout::Run& run) {
  const std::string points = counted(run.points(), "point", "points");
  if (run.gaps == 0) return points;
  const std::string spaced =
      points + " at " + (run.step_um > 0 ? "exactly " : "") + mm_text(run.spacing_um(), 2);
  if (run.left_over_um == 0) return spaced;
  const bool is_filled = run.last_gap_um() != run.step_um;
  return spaced + (is_filled ? ", the last gap " + mm(run.left_over_um)
                             : ", " + mm(run.left_over_um) + " left over");
}

Outcome measured_from(const Would& would) {
  const auto rows = rows_at(would.results, would.alone.place, RowKind::staple);
  if (rows.empty()) return {{"no staple row here"}, {}};
  std::int64_t all = 0;
  bool alike = true;
  for (const solve::Row* row : rows) {
    all += row->run.points();
    alike = alike && run_words(row->run) == run_words(rows.front()->run);
  }
  const bool has_crown = would.job.crown_um.has_value();
  const Um crown = would.job.crown_um.value_or(material::kAssumedCrownUm);
  const Um asked = rows.front()->asked_um;
  std::string from = mm(asked) + " wanted, centre to centre";
  if (would.answer == 1) {
    from = mm(asked - crown) + " + crown " + mm(crown) + (has_crown ? "" : " (assumed)") + " = " +
           mm(asked) + " centre to centre";
  }
  if (!alike) return {{count_text(all) + " staples in all"}, {}};
  return {{run_words(rows.front()->run), from}, {}};
}

Outcome left_over(const Would& would) {
  for (const solve::Row* row : rows_at(would.results, would.alone.place, RowKind::staple)) {
    const layout::Run& run = row->run;
    if (run.step_um == 0) continue;
    const std::string points = counted(run.points(), "point", "points");
    const std::string left = mm(run.left_over_um);
    if (run.left_over_um == 0) return {{points, "nothing is left over"}, {}};
    const std::string ends =
        "from " + mm_text(run.first_um(), 1) + " to " + mm_text(run.last_um(), 1);
    if (would.answer == 1)
      return {{points + ", " + ends, left + " left over, half at each end"}, {}};
    if (would.answer == 2) return {{points + ", " + ends, "the last gap is " + left}, {}};
    return {{points + ", " + ends, left + " left over at the top"}, {}};
  }
  return {};
}

/// What the foot meets with this answer and would not meet were the staples out before.
Outcome staples_out(const Would& would, Question question) {
  const auto& alone = would.alone;
  const job::Job before = with_answer(alone.job, alone.results, alone.place, question,
                                      static_cast<int>(job::StaplesOut::before_the_row));
  const solve::Results none = solve::solve(before);
  Outcome outcome;
  for (const solve::Finding& finding : would.results.findings) {
    if (finding.code != "staple_under_foot") continue;
    const bool anyway = std::any_of(
        none.findings.begin(), none.findings.end(), [&finding](const solve::Finding& one) {
          return one.place == finding.place && one.sentence == finding.sentence;
        });
    if (anyway) continue;
    if (finding.severity == solve::Severity::stop && outcome.stop.empty()) {
      outcome.stop = finding.figure + " short for the foot";
    } else if (finding.severity != solve::Severity::stop) {
      outcome.follows = {"count them out as they were counted in"};
    }
  }
  if (outcome.stop.empty() && outcome.follows.empty()) {
    outcome.follows = {"the foot meets none of them"};
  }
  return outcome;
}

void add_seams(Outcome& outcome, const std::string& what, const solve::SeamCount& count) {
  outcome.follows.push_back(what + counted(count.rows, "row", "rows") + ", " +
                            counted(count.stitch_holes, "hole", "holes"));
  outcome.follows.push_back(metres_text(count.row_um, 2) + " m to sew, " +
                            counted(count.staples, "staple", "staples"));
}

Outcome side_seams(const Would& would, const Solved& now) {
  const auto seams = static_cast<job::SideSeams>(would.answer);
  Outcome outcome;
  add_seams(outcome, now.job.sections.size() > 1 ? "this section: " : "",
            solve::count_seams(would.job, would.job.sections.front(), seams));
  if (now.job.sections.size() > 1) {
    add_seams(outcome, "all sections: ", solve::count_seams(now.job, seams));
  }
  outcome.follows.push_back(would.answer == 0 ? "can be opened: each sleeve by itself"
                                              : "can be opened: only two neighbours together");
  return outcome;
}

Outcome is_there(const Would& would) {
  const solve::Piece& piece = would.results.pieces.front();
  Outcome outcome;
  outcome.follows.push_back("section " + piece.code + ": " +
                            counted(std::ssize(piece.sleeves), "sleeve", "sleeves") + ", " +
                            short_mm_text(piece.width_um, 1) + " wide");
  const auto& now = would.alone.results.pieces.front().sleeves;
  const auto index = static_cast<std::size_t>(std::max(would.alone.place.sleeve, 0));
  if (would.answer == 1 && index > 0 && index + 1 < now.size()) {
    const bool left_over = job::left_lies_over(would.job.sections.front());
    const std::size_t upper = left_over ? index - 1 : index + 1;
    const std::size_t under = left_over ? index + 1 : index - 1;
    outcome.follows.push_back(now[upper].code + " then lies over " + now[under].code);
  }
  return outcome;
}

Outcome corners(const Would& would) {
  std::int64_t points = 0;
  std::int64_t holes = 0;
  const solve::Row* crossing = nullptr;
  for (const solve::Row& row : would.results.rows) {
    (row.kind == RowKind::point ? points : holes) += solve::own_points(row);
    const bool is_hinge = row.code.find(" hinge") != std::string::npos;
    if (row.kind == RowKind::point && !is_hinge && crossing == nullptr) crossing = &row;
  }
  Outcome outcome;
  outcome.follows.push_back(counted(points, "point", "points") + ", " +
                            counted(holes, "stitch hole", "stitch holes"));
  if (crossing != nullptr && crossing->run.points() > 0) {
    outcome.follows.push_back(crossing->code + ": first point at " +
                              mm_text(crossing->run.first_um(), 1) +
                              (crossing->first_is_shared ? ", the shared hole" : ""));
  }
  return outcome;
}

}  // namespace

Alone alone_of(const Solved& now, Place place) {
  Alone alone;
  alone.job = now.job;
  alone.job.bays.clear();
  alone.job.sections.clear();
  alone.job.panels.clear();
  if (const job::Section* section = section_at(now.job, now.results, place)) {
    alone.job.sections.push_back(*section);
  } else if (const job::Panel* panel = panel_at(now.job, now.results, place)) {
    alone.job.panels.push_back(*panel);
  }
  alone.results = solve::solve(alone.job);
  alone.place = {0, place.sleeve};
  return alone;
}

Outcome outcome_of(const Would& would, Question question, const Solved& now) {
  switch (question) {
    case Question::leaves:
      return leaves(would);
    case Question::sewn_side:
      return sewn_side(would);
    case Question::measured_from:
      return measured_from(would);
    case Question::left_over:
      return left_over(would);
    case Question::staples_out:
    case Question::lap_staples_out:
      return staples_out(would, question);
    case Question::side_seams:
      return side_seams(would, now);
    case Question::is_there:
      return is_there(would);
    case Question::put_back:
      return is_there({would.alone, would.job, would.results, 0});
    case Question::corners:
      return corners(would);
  }
  return {};
}

}  // namespace pouncemark::web
