#include <cstddef>
#include <utility>

#include "engine/base/insist.h"
#include "engine/base/number_text.h"
#include "engine/solve/sum_words.h"
#include "engine/solve/sums.h"

namespace pouncemark::solve {
namespace {

const Piece& piece_at(const Results& results, int piece) {
  return results.pieces[static_cast<std::size_t>(piece)];
}

const job::Section& section_of(const job::Job& job, const Results& results, int piece) {
  const Piece& found = piece_at(results, piece);
  INSIST(found.kind == PieceKind::section);
  return job.sections[static_cast<std::size_t>(found.entry)];
}

std::int64_t sleeves_in(const Piece& piece) {
  return static_cast<std::int64_t>(piece.sleeves.size());
}

std::string width_text(Um um) { return plain_mm(um); }

Sum entered_sum(std::string rule, std::string figure) {
  Sum sum;
  sum.rule = std::move(rule);
  sum.figure = std::move(figure);
  sum.source = kEnteredSource;
  return sum;
}

void close(const std::string& words, Sum* sum) {
  sum->numbers.push_back(words + " = " + sum->figure);
}

/// What a section's width may be out by, and which of it no one entered.
struct Tolerances {
  Um width_um = 0;
  Um lap_um = 0;
  bool width_is_assumed = false;
  bool lap_is_assumed = false;
};

Tolerances tolerances_of(const job::Section& section) {
  return {section.width_tolerance_um.value_or(material::kAssumedWidthToleranceUm),
          section.lap_tolerance_um.value_or(material::kAssumedLapToleranceUm),
          !section.width_tolerance_um, !section.lap_tolerance_um};
}

/// Rule, tolerances and source; the closing line is still to come.
Sum out_by(const Tolerances& off, std::string rule, Um um) {
  Sum sum;
  sum.rule = std::move(rule);
  sum.figure = "±" + mm_text(um, 1);
  sum.rests_on_assumed = off.width_is_assumed || off.lap_is_assumed;
  sum.numbers.push_back("widths ±" + told(plain_mm(off.width_um), off.width_is_assumed) +
                        ", laps ±" + told(plain_mm(off.lap_um), off.lap_is_assumed));
  sum.source = source_of(off.width_is_assumed);
  if (off.width_is_assumed != off.lap_is_assumed) {
    sum.source =
        "widths " + source_of(off.width_is_assumed) + "; laps " + source_of(off.lap_is_assumed);
  }
  return sum;
}

std::int64_t laid_rows(const Results& results, const Piece& piece, RowPlace place) {
  std::int64_t rows = 0;
  for (int i = piece.first_row; i < piece.first_row + piece.row_count; ++i) {
    const Row& row = results.rows[static_cast<std::size_t>(i)];
    rows += row.kind == RowKind::stitch && row.place == place ? 1 : 0;
  }
  return rows;
}

std::string not_laid(std::int64_t rows) {
  return rows == 0 ? std::string() : " − " + count_text(rows) + " not laid";
}

}  // namespace

Sum sleeves_sum(const job::Job& job, const Results& results, int piece) {
  const job::Section& section = section_of(job, results, piece);
  Sum sum = entered_sum("numbers of the section, less those missing",
                        count_text(sleeves_in(piece_at(results, piece))));
  const auto missing = static_cast<std::int64_t>(section.missing.size());
  close(count_text(section.count) + " − " + count_text(missing) + " missing", &sum);
  return sum;
}

Sum width_sum(const job::Job& job, const Results& results, int piece) {
  const Piece& found = piece_at(results, piece);
  const job::Section& section = section_of(job, results, piece);
  Sum sum = entered_sum("widths of the sleeves less their laps", short_mm_text(found.width_um, 1));
  const std::int64_t laps = sleeves_in(found) - 1;
  std::vector<std::int64_t> widths;
  for (const Sleeve& sleeve : found.sleeves) widths.push_back(sleeve.width_um);
  if (laps == 0) sum.rule = "the width of its one sleeve";
  close(added_up(widths, width_text) +
            (laps == 0 ? "" : " − " + count_text(laps) + " × " + plain_mm(section.lap_um)),
        &sum);
  return sum;
}

Sum row_middle_sum(const job::Job& job, const Results& results, int piece, int lap) {
  const Piece& found = piece_at(results, piece);
  const auto at = static_cast<std::size_t>(lap);
  Sum sum =
      entered_sum("running total less half a lap", short_mm_text(found.row_middles_um[at], 1));
  close(plain_mm(found.running_totals_um[at]) + " − " +
            plain_mm(section_of(job, results, piece).lap_um) + " ÷ 2",
        &sum);
  return sum;
}

Sum running_total_sum(const job::Job& job, const Results& results, int piece, int sleeve) {
  const Piece& found = piece_at(results, piece);
  const auto at = static_cast<std::size_t>(sleeve);
  Sum sum = entered_sum("the total before, and the width less a lap",
                        short_mm_text(found.running_totals_um[at], 1));
  const std::string width = plain_mm(found.sleeves[at].width_um);
  if (sleeve == 0) {
    sum.rule = "its own width";
    close(width, &sum);
    return sum;
  }
  close(plain_mm(found.running_totals_um[at - 1]) + " + " + width + " − " +
            plain_mm(section_of(job, results, piece).lap_um),
        &sum);
  return sum;
}

Sum likely_sum(const job::Job& job, const Results& results, int piece) {
  const Piece& found = piece_at(results, piece);
  const Tolerances off = tolerances_of(section_of(job, results, piece));
  Sum sum = out_by(off, "root of the summed squares", found.likely_um);
  const std::int64_t sleeves = sleeves_in(found);
  close("√(" + count_text(sleeves) + " × " + plain_mm(off.width_um) + "² + " +
            count_text(sleeves - 1) + " × " + plain_mm(off.lap_um) + "²)",
        &sum);
  return sum;
}

Sum worst_sum(const job::Job& job, const Results& results, int piece) {
  const Piece& found = piece_at(results, piece);
  const Tolerances off = tolerances_of(section_of(job, results, piece));
  Sum sum = out_by(off, "every sleeve and lap out the same way", found.worst_um);
  const std::int64_t sleeves = sleeves_in(found);
  close(count_text(sleeves) + " × " + plain_mm(off.width_um) + " + " + count_text(sleeves - 1) +
            " × " + plain_mm(off.lap_um),
        &sum);
  return sum;
}

Sum side_rows_sum(const Results& results, int piece) {
  const Piece& found = piece_at(results, piece);
  std::int64_t left = 0;
  std::int64_t right = 0;
  for (const Sleeve& sleeve : found.sleeves) {
    left += sleeve.has_left_rows ? 1 : 0;
    right += sleeve.has_right_rows ? 1 : 0;
  }
  const std::int64_t laid = laid_rows(results, found, RowPlace::side);
  Sum sum;
  sum.rule = "long edges with rows of their own, left and right";
  sum.figure = count_text(laid);
  sum.source = kExactSource;
  close(count_text(left) + " + " + count_text(right) + not_laid(left + right - laid), &sum);
  return sum;
}

Sum laps_sum(const Results& results, int piece) {
  const std::int64_t sleeves = sleeves_in(piece_at(results, piece));
  Sum sum;
  sum.rule = "between each two sleeves";
  sum.figure = count_text(sleeves - 1);
  sum.source = kExactSource;
  close(count_text(sleeves) + " − 1", &sum);
  return sum;
}

Sum joining_rows_sum(const Results& results, int piece) {
  const Piece& found = piece_at(results, piece);
  const std::int64_t laps = sleeves_in(found) - 1;
  const std::int64_t laid = laid_rows(results, found, RowPlace::lap);
  Sum sum;
  sum.rule = "a lap less than sleeves, one row in each";
  sum.figure = count_text(laid);
  sum.source = kExactSource;
  close(count_text(laps + 1) + " − 1" + not_laid(laps - laid), &sum);
  return sum;
}

Sum blank_sum(const job::Job& job, const Results& results, int piece, int sleeve) {
  const Piece& found = piece_at(results, piece);
  const job::Section& section = section_of(job, results, piece);
  const Sleeve& made = found.sleeves[static_cast<std::size_t>(sleeve)];
  const std::string blank = mm_text(made.blank.width_um, 1);
  const std::string leaf = plain_mm(section.leaf_um);
  const std::string width = plain_mm(made.width_um);
  Sum sum = entered_sum(
      "", short_mm_text(made.blank.width_um, 1) + " × " + short_mm_text(found.length_um, 1));
  if (section.make == job::Make::folded) {
    const std::string radius = plain_mm(section.fold_radius_um.value_or(0));
    sum.rule = "two flats, and the fold along its middle";
    sum.numbers.push_back("2 × (" + width + " − " + radius + " − " + leaf + ") + π × (" + radius +
                          " + " + leaf + " ÷ 2) = " + blank);
  } else if (section.make == job::Make::round) {
    const Um flange = section.flange_um.value_or(0);
    const Um inside = made.width_um - flange - 2 * section.leaf_um;
    sum.rule = "round the tube's middle, two flanges";
    sum.numbers.push_back(width + " − " + plain_mm(flange) + " − 2 × " + leaf + " = " +
                          plain_mm(inside) + " inside");
    sum.numbers.push_back("π × (" + plain_mm(inside) + " + " + leaf + ") + 2 × " +
                          plain_mm(flange) + " = " + blank);
  } else {
    sum.rule = "two leaves, each as wide as the sleeve";
  }
  sum.numbers.push_back(sum.figure);
  return sum;
}

Sum fold_sum(const job::Job& job, const Results& results, int piece, int sleeve) {
  const job::Section& section = section_of(job, results, piece);
  const piece::Blank& blank =
      piece_at(results, piece).sleeves[static_cast<std::size_t>(sleeve)].blank;
  INSIST(blank.count == 1);
  Sum sum = entered_sum("half the blank, from either edge", short_mm_text(blank.fold_um, 1));
  if (section.make == job::Make::round) {
    sum.rule = "one flange, from either edge";
    sum.numbers.push_back(sum.figure);
  } else {
    close(plain_mm(blank.width_um) + " ÷ 2", &sum);
  }
  return sum;
}

}  // namespace pouncemark::solve
