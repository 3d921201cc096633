#include "engine/plan/seam_card.h"

#include <algorithm>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/plan/card_findings.h"
#include "engine/solve/arm.h"
#include "engine/solve/solve.h"

namespace pouncemark::plan {
namespace {

using material::Field;
using solve::RowPlace;

/// The row a card is of, and what it belongs to.
struct Source {
  const job::Job& job;
  const solve::Results& results;
  int index = 0;

  const solve::Row& row() const { return results.rows[static_cast<std::size_t>(index)]; }
  const solve::Piece& piece() const {
    return results.pieces[static_cast<std::size_t>(row().piece)];
  }
  const job::Section& section() const {
    return job.sections[static_cast<std::size_t>(piece().entry)];
  }
  const job::Panel& panel() const { return job.panels[static_cast<std::size_t>(piece().entry)]; }
  const solve::Sleeve& sleeve(int after = 0) const {
    return piece().sleeves[static_cast<std::size_t>(row().sleeve + after)];
  }
  bool is_lap() const { return row().place == RowPlace::lap; }
  bool is_panel() const { return row().place == RowPlace::panel; }
  bool has_end(std::string_view words) const { return row().code.ends_with(words); }
  job::RowsOf rows_of() const { return static_cast<job::RowsOf>(row().place); }
  const job::Trial* trial() const { return job::chosen_trial(job.trials, rows_of()); }
};
static_assert(static_cast<int>(job::RowsOf::side_rows) == static_cast<int>(RowPlace::side) &&
              static_cast<int>(job::RowsOf::lap_rows) == static_cast<int>(RowPlace::lap) &&
              static_cast<int>(job::RowsOf::panel_rows) == static_cast<int>(RowPlace::panel));

/// The edge of its panel a row is sewn along: the last word of its code, or the one before a
/// number.
std::string panel_edge(const Source& source) {
  std::string name = source.row().code.substr(source.piece().code.size() + 1);
  return name.substr(0, name.find(' '));
}

bool hinge_is_right(const Source& source) {
  const piece::Outline& outline = source.piece().outline;
  for (const piece::Edge& edge : outline.edges) {
    if (edge.role != piece::EdgeRole::hinge_side) continue;
    return side_of(edge, piece::extent(outline)) == "right";
  }
  return false;
}

/// Which row of its kind in its piece this is, from 1, and of how many.
struct Numbered {
  std::int64_t number = 0;
  std::int64_t count = 0;
};

Numbered numbered(const Source& source) {
  Numbered row;
  for (const int index : seam_card_rows(source.results, source.piece())) {
    if (source.results.rows[static_cast<std::size_t>(index)].place != source.row().place) continue;
    ++row.count;
    if (index <= source.index) ++row.number;
  }
  return row;
}

std::string heading(const Source& source) {
  const Numbered row = numbered(source);
  const char* kind = source.is_lap() ? "joining row " : source.is_panel() ? "row " : "side row ";
  return kind + count_text(row.number) + " of " + count_text(row.count);
}

std::string code(const Source& source) {
  if (!source.is_lap()) return source.row().code;
  const bool left = job::left_lies_over(source.section());
  return source.sleeve(left ? 0 : 1).code + " over " + source.sleeve(left ? 1 : 0).code;
}

solve::RowArm arm_of(const Source& source) {
  return solve::row_arm(source.job, source.results, source.row());
}

/// The smaller side of a joining row is the one at the right, the newest sleeve.
bool lies_at_the_right(const Source& source) {
  const solve::RowArm arm = arm_of(source);
  const auto lap = static_cast<std::size_t>(source.row().sleeve);
  return arm.work_um - source.piece().row_middles_um[lap] == arm.side_um;
}

CardRow row_of(const Source& source) {
  const layout::Run& run = source.row().run;
  CardRow row;
  row.place = source.row().place;
  row.left = "BOTTOM";
  row.right = "TOP";
  row.sew = paper_text(run.length_um);
  if (source.is_lap()) {
    row.edge_is_up = job::left_lies_over(source.section());
  } else if (!source.is_panel()) {
    row.edge_is_up = source.has_end(" left");
  } else {
    const std::string edge = panel_edge(source);
    row.is_hinge = edge == "hinge";
    row.ends_at_fly = !row.is_hinge;
    row.is_stopped = source.row().stops_um > 0;
    row.edge_is_up = (row.is_hinge || edge == "top") != hinge_is_right(source);
    if (row.ends_at_fly) {
      row.left = "HINGE SIDE";
      row.right = "FLY SIDE";
    }
  }
  row.begins_at_right = source.is_lap() ? lies_at_the_right(source) : !row.edge_is_up;
  row.start = paper_text(row.begins_at_right ? run.last_um() : run.first_um());
  row.stop = paper_text(row.begins_at_right ? run.first_um() : run.last_um());
  return row;
}

CardCell stitch_cell(const Source& source) {
  const Um asked = source.row().asked_um;
  const Um sewn = source.row().stitch_um;
  const bool is_measured = sewn != asked;
  return {"stitch", short_mm_text(sewn, 2), counted(source.row().run.gaps, "stitch", "stitches"),
          is_measured ? "set at " + short_mm_text(asked, 2) : "mm"};
}

CardCell in_from_cell(const Source& source) {
  const std::string figure = short_mm_text(source.row().in_from_edge_um, 1);
  if (source.is_lap()) {
    return {"in from each edge", figure, {}, "lap " + short_mm_text(source.section().lap_um, 1)};
  }
  if (!source.is_panel()) {
    return {"in from the edge", figure, {}, source.has_end(" left") ? "left edge" : "right edge"};
  }
  const std::string edge = panel_edge(source);
  return {"in from the " + (edge == "hinge" ? "hinge side" : edge + " edge"), figure, {}, {}};
}

/// The thickest place of the stack along the row.
CardCell stack_cell(const solve::Row& row) {
  if (row.stack_um == 0) return {"stack", "?", {}, "not known"};
  const std::string figure = short_mm_text(row.stack_um, 2);
  if (row.stack_is_typed) return {"stack", figure, {}, "mm, typed"};
  return {"stack", figure, "thickest place", "mm, worked out"};
}

CardCell total_or_stack_cell(const Source& source) {
  if (!source.is_lap()) return stack_cell(source.row());
  const auto at = static_cast<std::size_t>(source.row().sleeve);
  const solve::Piece& piece = source.piece();
  const Um likely = solve::out_by(source.section(), source.row().sleeve + 1).likely_um;
  return {"running total, " + piece.sleeves.front().code + " to " + source.sleeve().code,
          paper_text(piece.running_totals_um[at]),
          {},
          "likely ±" + paper_text(likely)};
}

/// Two fifths of the thread that is left for tails hang from each end, one fifth is to spare.
CardCell tail_cell(const Source& source) {
  return {"tail at each end", paper_text(source.job.tails_um * 2 / 5), {}, "no reverse"};
}

const solve::Row* staple_row(const Source& source) {
  if (source.index == 0) return nullptr;
  const solve::Row& before = source.results.rows[static_cast<std::size_t>(source.index - 1)];
  const bool is_ours = before.kind == solve::RowKind::staple && before.code == source.row().code;
  return is_ours ? &before : nullptr;
}

job::StaplesOut staples_out(const Source& source) {
  if (source.is_panel()) return job::StaplesOut::not_said;
  if (source.is_lap()) return source.section().lap_rows->staple.staples;
  return job::side_rows_of(source.section(), source.sleeve().number).staple.staples;
}

/// What is done about an open stop before anything else.
std::string remedy_of(const solve::Finding& stop, std::int64_t staples) {
  if (stop.code == "staple_under_foot") return "STAPLES OUT FIRST, ALL " + count_text(staples);
  if (stop.code == "fly_side_row") return "STOP: NO ROW ON THE FLY SIDE";
  return "STOP: " + (stop.change.empty() ? stop.sentence : stop.change);
}

std::string band(const Source& source, const SeamCard& card, const solve::Finding* stop) {
  if (stop != nullptr) return remedy_of(*stop, card.staples);
  const job::StaplesOut out = staples_out(source);
  if (card.staples > 0 && out == job::StaplesOut::before_the_row) {
    return "STAPLES OUT FIRST, ALL " + count_text(card.staples);
  }
  if (card.staples > 0 && out == job::StaplesOut::as_the_foot_comes) {
    return "STAPLES OUT AS THE FOOT COMES: " + count_text(card.staples);
  }
  if (card.film_stays) return "NO REVERSE: EVERY HOLE STAYS";
  return "PEEL THE FILM: A STRIP OF 40, BOTH FACES";
}

std::string arm_line(const Source& source) {
  const material::Value throat = job::value_of(source.job.materials, Field::machine_throat);
  const std::string line = "Right of the needle " + paper_text(arm_of(source).side_um);
  if (!throat.is_known) return line + ".";
  return line + "; your arm takes " + paper_text(throat.thousandths) + ".";
}

/// A row of this kind is sewn after this one, in another piece.
bool goes_on_elsewhere(const Source& source) {
  const auto& rows = source.results.rows;
  return std::any_of(rows.begin() + source.index + 1, rows.end(), [&source](const solve::Row& row) {
    return row.kind == solve::RowKind::stitch && row.place == source.row().place;
  });
}

/// A bobbin is changed before a row, never within one.
std::string bobbin_line(const Source& source, const takeoff::BobbinPlace& place) {
  std::string line = solve::bobbin_words(place) + ".";
  line[0] = 'B';
  if (!place.is_last) return line;
  const Numbered row = numbered(source);
  if (row.number < row.count)
    return line + " New one before row " + count_text(row.number + 1) + ".";
  return goes_on_elsewhere(source) ? line + " New one before the next." : line;
}

void add_findings(const Source& source, SeamCard* card, const solve::Finding** first_stop) {
  for (const solve::Finding* finding : findings_at(source.results, source.index)) {
    const bool is_stop = finding->severity == solve::Severity::stop;
    if (is_stop && *first_stop == nullptr) *first_stop = finding;
    (is_stop ? card->stops : card->warns).push_back(in_short(*finding));
  }
}

}  // namespace

std::vector<int> seam_card_rows(const solve::Results& results, const solve::Piece& piece) {
  std::vector<int> rows;
  for (int i = piece.first_row; i < piece.first_row + piece.row_count; ++i) {
    const solve::Row& row = results.rows[static_cast<std::size_t>(i)];
    if (row.kind == solve::RowKind::stitch && row.run.points() > 0) rows.push_back(i);
  }
  return rows;
}

CardRow card_row(const job::Job& job, const solve::Results& results, int row) {
  return row_of({job, results, row});
}

SeamCard seam_card(const job::Job& job, const solve::Results& results, const solve::Sewing& sewing,
                   int row) {
  const Source source{job, results, row};
  SeamCard card;
  card.heading = heading(source);
  card.code = code(source);
  card.job_name = job.name;
  card.piece = (source.is_panel() ? "panel " : "section ") + source.piece().code;
  card.row = row_of(source);
  card.cells = {
      stitch_cell(source),         needle_cell(job), thread_cell(job), in_from_cell(source),
      total_or_stack_cell(source), tail_cell(source)};
  const solve::Row* staples = staple_row(source);
  card.staples = staples == nullptr ? 0 : staples->run.points();
  card.staples_stay = staples_out(source) == job::StaplesOut::stay;
  card.film_stays = job::value_of(job.materials, Field::film_left_on).thousandths == 1;
  const solve::Finding* stop = nullptr;
  add_findings(source, &card, &stop);
  card.band = band(source, card, stop);
  const takeoff::BobbinPlace& bobbin = sewing.places[static_cast<std::size_t>(row)];
  if (bobbin.bobbin > 0) card.lines.push_back(bobbin_line(source, bobbin));
  card.lines.push_back(arm_line(source));
  if (source.row().first_is_shared) {
    card.lines.push_back(std::string(card.row.begins_at_right ? "End" : "Begin") +
                         " in the hinge row's corner hole.");
  }
  if (card.row.is_stopped) {
    card.lines.push_back("Stops " + paper_text(source.row().stops_um) +
                         " from the hinge side; the rest stays free.");
  }
  if (source.is_panel()) card.fly_side = fly_side_words(source.piece().outline, false);
  if (const job::Trial* trial = source.trial()) card.signed_by = trial->signed_by;
  return card;
}

}  // namespace pouncemark::plan
