#include "engine/solve/sum_asked.h"

#include <cstddef>
#include <optional>

#include "engine/base/insist.h"
#include "engine/base/number_text.h"
#include "engine/solve/rows_stop.h"
#include "engine/solve/solve.h"
#include "engine/solve/sum_words.h"

namespace pouncemark::solve {
namespace {

const Piece& piece_of(const Results& results, const Row& row) {
  return results.pieces[static_cast<std::size_t>(row.piece)];
}

/// The staple rule of a side or lap row.
job::StapleRow staple_rule(const job::Section& section, const Piece& piece, const Row& row) {
  if (row.place == RowPlace::lap) return section.lap_rows->staple;
  const Sleeve& sleeve = piece.sleeves[static_cast<std::size_t>(row.sleeve)];
  return job::side_rows_of(section, sleeve.number).staple;
}

/// The edge of a panel that the row runs along.
const piece::Edge& edge_of(const Piece& piece, const Row& row) {
  INSIST(row.edge >= 0);
  return piece.outline.edges[static_cast<std::size_t>(row.edge)];
}

/// "800² ÷ (8 × 120) + 120 ÷ 2 = 726.667 radius", and the length of the row's line on it.
void add_arc(const Piece& piece, const Row& row, const RowAsked& asked,
             std::vector<std::string>* lines) {
  const Segment& edge = edge_of(piece, row).line;
  const Um chord = to_um(length(edge.to - edge.from));
  const Um rise = to_um(edge.rise < 0 ? -edge.rise : edge.rise);
  const Um on_edge = to_um(radius(edge));
  const Um on_row = to_um(radius(row.guide));
  const std::string half = plain_mm(rise);
  lines->push_back(plain_mm(chord) + "² ÷ (8 × " + half + ") + " + half +
                   " ÷ 2 = " + plain_mm(on_edge) + " radius");
  lines->push_back(plain_mm(on_edge) + less_mm(on_edge - on_row) + " = " + plain_mm(on_row) +
                   " on the row");
  lines->push_back(plain_mm(on_row) + " × 4 × atan(2 × " + half + " ÷ " + plain_mm(chord) +
                   ") = " + plain_mm(asked.length_um) + " along");
}

/// The trial seam that the stitch was measured on, where there is one.
void add_trial(const job::Job& job, const Row& row, RowAsked* asked) {
  const job::Trial* trial = job::chosen_trial(job.trials, rows_of(row.place));
  if (trial == nullptr || !trial->ten_stitches_um || trial->stitch_um != row.asked_um) return;
  asked->ten_stitches_um = *trial->ten_stitches_um;
  asked->set_um = trial->stitch_um;
}

}  // namespace

RowAsked asked_of(const job::Job& job, const Results& results, const Row& row) {
  INSIST(!row.run.is_empty);
  const Piece& piece = piece_of(results, row);
  RowAsked asked;
  const bool is_stitch = row.kind == RowKind::stitch;
  asked.spacing_um = is_stitch ? row.stitch_um : row.asked_um;
  asked.length_um = row.place == RowPlace::panel ? to_um(length(row.guide)) : piece.length_um;
  asked.clear_start_um = row.run.first_um();
  asked.clear_end_um = asked.length_um - row.run.last_um();
  if (is_stitch) add_trial(job, row, &asked);
  if (row.kind != RowKind::staple) return asked;
  const job::Section& section = job.sections[static_cast<std::size_t>(piece.entry)];
  const job::StapleRow rule = staple_rule(section, piece, row);
  asked.clear_start_um = rule.kept_clear_um[0];
  asked.clear_end_um = rule.kept_clear_um[1];
  asked.spacing_um = rule.spacing_um;
  asked.left_over = rule.left_over;
  if (job.spacing_is_clear_gap) {
    asked.crown_um = row.asked_um - rule.spacing_um;
    asked.crown_is_assumed = !job.crown_um;
  }
  return asked;
}

std::vector<std::string> usable_lines(const Results& results, const Row& row,
                                      const RowAsked& asked) {
  if (row.stops_um > 0) {
    std::vector<std::string> lines = stop_lines(results, row, asked);
    lines.push_back(plain_mm(row.run.last_um()) + less_mm(asked.clear_start_um) + " = " +
                    plain_mm(asked.usable_um()));
    return lines;
  }
  std::vector<std::string> lines;
  if (!is_straight(row.guide)) add_arc(piece_of(results, row), row, asked, &lines);
  lines.push_back(plain_mm(asked.length_um) + less_mm(asked.clear_start_um) +
                  less_mm(asked.clear_end_um) + " = " + plain_mm(asked.usable_um()));
  return lines;
}

std::vector<std::string> stop_lines(const Results& results, const Row& row, const RowAsked& asked) {
  const Piece& piece = piece_of(results, row);
  const StopEdge edge = stop_edge(piece.outline, static_cast<std::size_t>(row.edge), row.guide);
  std::vector<std::string> lines;
  const std::string along = plain_mm(row.stops_um - edge.before_um);
  if (edge.before_um > 0) {
    lines.push_back(plain_mm(row.stops_um) + less_mm(edge.before_um) + " = " + along);
  }
  if (edge.edge_um == edge.line_um) return lines;
  add_arc(piece, row, asked, &lines);
  lines.push_back(along + " × " + plain_mm(edge.line_um) + " ÷ " + plain_mm(edge.edge_um) + " = " +
                  plain_mm(row.run.last_um()) + " on the row");
  return lines;
}

std::string crown_line(const RowAsked& asked) {
  return plain_mm(asked.spacing_um) + " + " +
         told(plain_mm(asked.crown_um), asked.crown_is_assumed) + " = " +
         plain_mm(asked.centres_um());
}

std::string trial_line(const RowAsked& asked) {
  return "the trial seam: " + plain_mm(asked.ten_stitches_um) +
         " ÷ 10 = " + plain_mm(asked.spacing_um) + ", set at " + plain_mm(asked.set_um);
}

std::vector<std::string> gap_lines(const Row& row, const RowAsked& asked) {
  std::vector<std::string> lines;
  if (asked.crown_um > 0) lines.push_back(crown_line(asked));
  if (asked.ten_stitches_um > 0) lines.push_back(trial_line(asked));
  const Um usable = asked.usable_um();
  const Um spacing = asked.centres_um();
  const std::int64_t whole = usable / spacing;
  // The shorter words keep the line on one line of the slip.
  const std::string gaps =
      row.kind == RowKind::stitch ? count_text(row.run.gaps) : counted(row.run.gaps, "gap", "gaps");
  lines.push_back(plain_mm(usable) + " = " + count_text(whole) + " × " + plain_mm(spacing) +
                  and_mm(usable % spacing) + ", so " + gaps);
  return lines;
}

std::string spacing_rule(const Row& row, const RowAsked& asked) {
  const std::string most = plain_mm(asked.centres_um());
  if (row.kind == RowKind::stitch) return "fewest even stitches, none over " + most;
  if (row.run.step_um == 0) return "fewest even gaps, none over " + most;
  const bool adds = asked.left_over == job::LeftOver::extra_point && row.run.left_over_um > 0;
  return "gaps of exactly " + most + (adds ? ", one shorter" : "");
}

std::string row_source(const Row& row, const RowAsked& asked) {
  if (!is_straight(row.guide)) return "intersecting chords, Euclid III.35";
  if (asked.crown_um == 0) return kExactSource;
  return std::string("crown ") + source_of(asked.crown_is_assumed) + "; " + kExactSource;
}

}  // namespace pouncemark::solve
