#include <utility>

#include "engine/base/insist.h"
#include "engine/base/number_text.h"
#include "engine/layout/landing.h"
#include "engine/solve/sum_asked.h"
#include "engine/solve/sum_words.h"
#include "engine/solve/sums.h"

namespace pouncemark::solve {
namespace {

Sum begun(const Row& row, const RowAsked& asked) {
  Sum sum;
  sum.source = row_source(row, asked);
  sum.rests_on_assumed = asked.rests_on_assumed();
  return sum;
}

/// The same of a figure that the stitch is in: it may be a trial seam's.
Sum begun_with_stitch(const Row& row, const RowAsked& asked) {
  Sum sum = begun(row, asked);
  if (asked.ten_stitches_um > 0) sum.source = "trial seam, measured; " + sum.source;
  return sum;
}

void put(std::vector<std::string> lines, Sum* sum) {
  for (std::string& line : lines) sum->numbers.push_back(std::move(line));
}

/// The last line: what stands before the sign of equality, and the figure.
void close(const std::string& words, std::string figure, Sum* sum) {
  sum->figure = std::move(figure);
  sum->numbers.push_back(words.empty() ? sum->figure : words + " = " + sum->figure);
}

/// The corner a panel's row begins at, where it stays clear of the row it would have met.
void close_at_corner(const job::Job& job, const Results& results, const Row& row, Sum* sum) {
  const Piece& piece = results.pieces[static_cast<std::size_t>(row.piece)];
  const job::Panel& panel = job.panels[static_cast<std::size_t>(piece.entry)];
  const std::string figure = shown_mm(row.run.first_um(), 1);
  const Um clear = panel.corner_clear_um.value_or(material::kAssumedCornerClearUm);
  const Um beyond = row.run.first_um() - panel.panel_in_um;
  if (panel.corners == job::Corners::share_hole || row.first_is_shared || beyond < clear) {
    sum->rule = row.first_is_shared ? "its first point is the other row's corner point"
                                    : "the corner, as far in from both edges";
    return close({}, figure, sum);
  }
  const bool is_assumed = !panel.corner_clear_um;
  sum->rests_on_assumed = is_assumed;
  sum->source = source_of(is_assumed);
  const std::string wanted = told(plain_mm(clear), is_assumed);
  if (beyond == clear) {
    sum->rule = "in from the edge, and clear of the row it does not meet";
    return close(plain_mm(panel.panel_in_um) + " + " + wanted, figure, sum);
  }
  sum->rule = "where it is first clear of the row it does not meet";
  sum->numbers.push_back("clear by " + wanted);
  close({}, figure, sum);
}

/// Where fewer, longer stitches would come nearer to what is sewn, says so: rows are laid with none
/// longer.
void note_nearest(const Row& row, Sum* sum) {
  const layout::Landing nearest = layout::land_nearest(row.run.length_um, row.stitch_um);
  if (nearest.stitches == row.run.gaps) return;
  sum->numbers.push_back("nearest would be " + count_text(nearest.stitches) + " of " +
                         mm_text(nearest.stitch_um(), 3));
}

}  // namespace

bool is_clear_gap(const job::Job& job, const Row& row) {
  return job.spacing_is_clear_gap && row.kind == RowKind::staple;
}

Um clear_gap_um(const job::Job& job, const Row& row) {
  return row.run.spacing_um() - job.crown_um.value_or(material::kAssumedCrownUm);
}

Sum points_sum(const job::Job& job, const Results& results, const Row& row) {
  const RowAsked asked = asked_of(job, results, row);
  Sum sum = begun_with_stitch(row, asked);
  sum.rule = spacing_rule(row, asked);
  put(usable_lines(results, row, asked), &sum);
  put(gap_lines(row, asked), &sum);
  close(count_text(row.run.gaps) + " + 1", count_text(row.run.points()), &sum);
  return sum;
}

Sum spacing_sum(const job::Job& job, const Results& results, const Row& row) {
  INSIST(row.run.gaps > 0);
  const RowAsked asked = asked_of(job, results, row);
  Sum sum = begun_with_stitch(row, asked);
  const std::string figure = mm_text(row.run.spacing_um(), 2);
  if (row.run.step_um != 0) {
    sum.rule = "exactly as asked for, centre to centre";
    sum.source = source_of(asked.rests_on_assumed());
    if (asked.crown_um > 0) sum.numbers.push_back(crown_line(asked));
    close({}, figure, &sum);
    return sum;
  }
  sum.rule = spacing_rule(row, asked);
  if (asked.crown_um > 0) sum.numbers.push_back(crown_line(asked));
  if (asked.ten_stitches_um > 0) sum.numbers.push_back(trial_line(asked));
  put(usable_lines(results, row, asked), &sum);
  const bool is_stitch = row.kind == RowKind::stitch;
  if (is_stitch) note_nearest(row, &sum);
  close(plain_mm(row.run.length_um) + " ÷ " +
            counted(row.run.gaps, is_stitch ? "stitch" : "gap", is_stitch ? "stitches" : "gaps"),
        figure, &sum);
  return sum;
}

Sum clear_gap_sum(const job::Job& job, const Results& results, const Row& row) {
  INSIST(row.run.gaps > 0);
  const RowAsked asked = asked_of(job, results, row);
  Sum sum = begun(row, asked);
  sum.rule = "centre to centre less the crown";
  sum.source = std::string("crown ") + source_of(asked.crown_is_assumed);
  close(plain_mm(row.run.spacing_um()) + " − " +
            told(plain_mm(asked.crown_um), asked.crown_is_assumed),
        shown_mm(clear_gap_um(job, row), 2), &sum);
  return sum;
}

Sum left_over_sum(const job::Job& job, const Results& results, const Row& row) {
  const RowAsked asked = asked_of(job, results, row);
  Sum sum = begun(row, asked);
  const std::int64_t whole = asked.usable_um() / asked.centres_um();
  sum.rule = "what whole gaps of " + plain_mm(asked.centres_um()) + " do not fill";
  put(usable_lines(results, row, asked), &sum);
  if (asked.crown_um > 0) sum.numbers.push_back(crown_line(asked));
  close(plain_mm(asked.usable_um()) + " − " + count_text(whole) + " × " +
            plain_mm(asked.centres_um()),
        mm_text(row.run.left_over_um, 2), &sum);
  return sum;
}

Sum last_gap_sum(const job::Job& job, const Results& results, const Row& row) {
  Sum sum = left_over_sum(job, results, row);
  sum.rule += ": one more point stands after it";
  return sum;
}

Sum first_sum(const job::Job& job, const Results& results, const Row& row) {
  const RowAsked asked = asked_of(job, results, row);
  Sum sum = begun(row, asked);
  if (row.place == RowPlace::panel) {
    close_at_corner(job, results, row, &sum);
    return sum;
  }
  const std::string figure = shown_mm(row.run.first_um(), 1);
  sum.source = kEnteredSource;
  if (row.run.first_um() == asked.clear_start_um) {
    sum.rule = "kept clear at the bottom end";
    sum.rests_on_assumed = false;
    close({}, figure, &sum);
    return sum;
  }
  sum.rule = "kept clear at the bottom end, and half of what is left over";
  close(plain_mm(asked.clear_start_um) + " + " + plain_mm(row.run.left_over_um) + " ÷ 2", figure,
        &sum);
  return sum;
}

Sum last_sum(const job::Job& job, const Results& results, const Row& row) {
  const RowAsked asked = asked_of(job, results, row);
  Sum sum = begun(row, asked);
  if (row.stops_um > 0) {
    sum.rule = "where the rows stop: along the edge, from the edge of the hinge side";
    sum.source = kEnteredSource;
    sum.numbers = stop_lines(results, row, asked);
    close({}, mm_text(row.run.last_um(), 1), &sum);
    return sum;
  }
  sum.rule = "the first point, and first point to last";
  const std::string figure = mm_text(row.run.last_um(), 1);
  if (row.run.step_um == 0) {
    sum.rests_on_assumed = false;
    if (is_straight(row.guide)) sum.source = kExactSource;
    put(usable_lines(results, row, asked), &sum);
    close(plain_mm(row.run.first_um()) + " + " + plain_mm(row.run.length_um), figure, &sum);
    return sum;
  }
  const bool adds = row.run.length_um != row.run.gaps * row.run.step_um;
  if (asked.crown_um > 0) sum.numbers.push_back(crown_line(asked));
  close(plain_mm(row.run.first_um()) + " + " + count_text(row.run.gaps - (adds ? 1 : 0)) + " × " +
            plain_mm(row.run.step_um) + (adds ? and_mm(row.run.left_over_um) : ""),
        figure, &sum);
  return sum;
}

}  // namespace pouncemark::solve
