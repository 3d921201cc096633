#include "engine/output/page_counts.h"

#include <algorithm>
#include <cstddef>
#include <limits>

#include "engine/base/number_text.h"
#include "engine/plan/seam_card.h"
#include "engine/plan/trial_card.h"
#include "engine/sheets/card_cut.h"
#include "engine/sheets/drilling_strips.h"
#include "engine/sheets/full_face.h"
#include "engine/sheets/row_groups.h"
#include "engine/sheets/tick_list.h"

namespace pouncemark::output {
namespace {

constexpr std::int64_t kMostMarks = 1'000'000;

std::int64_t marks_of(const solve::Results& results, const solve::Piece& piece) {
  std::int64_t marks = 0;
  for (int i = 0; i < piece.row_count; ++i) {
    const solve::Row& row = results.rows[static_cast<std::size_t>(piece.first_row + i)];
    if (row.kind != solve::RowKind::stitch) marks += row.run.points();
  }
  return marks;
}

/// "690 − 190 = 2 × 180 + 140, so 3 more across": what the first page does not show, in steps from
/// page to page.
std::string way_words(const sheets::Cut& cut, Um length_um, const char* way) {
  const Um beyond = length_um - cut.window_um;
  const std::string shown = exact_mm_text(cut.window_um);
  if (beyond <= 0) return exact_mm_text(length_um) + way + " within the " + shown + " of one page";
  std::string words = exact_mm_text(length_um) + " − " + shown + " = " +
                      count_text(beyond / cut.pitch_um) + " × " + exact_mm_text(cut.pitch_um);
  const Um rest = beyond % cut.pitch_um;
  if (rest > 0) words += " + " + exact_mm_text(rest);
  return words + ", so " + count_text(cut.pages - 1) + " more" + way;
}

std::string pages_words(const sheets::Cut& cut) {
  return cut.pages == 1 ? "1" : "(1 + " + count_text(cut.pages - 1) + ")";
}

std::int64_t card_count(const solve::Results& results, Guide guide, int piece) {
  if (guide == Guide::hanging_card) return static_cast<std::int64_t>(results.bays.size());
  if (is_of_whole_job(guide)) {
    const auto kinds = static_cast<std::int64_t>(plan::trial_card_kinds(results).size());
    return guide == Guide::trial_card ? kinds : std::min<std::int64_t>(kinds, 1);
  }
  const solve::Piece& of = results.pieces[static_cast<std::size_t>(piece)];
  if (guide == Guide::panel_card) return of.kind == solve::PieceKind::panel ? 2 : 0;
  return static_cast<std::int64_t>(plan::seam_card_rows(results, of).size());
}

}  // namespace

FullFacePages full_face_grid(const job::Job& job, const solve::Results& results, int piece,
                             const sheets::Paper& paper, const sheets::PrintCheck& check,
                             std::int64_t most) {
  const solve::Piece& of = results.pieces[static_cast<std::size_t>(piece)];
  FullFacePages pages;
  pages.cut = sheets::cut_pages(of.width_um, of.length_um, paper, check);
  if (pages.all() <= most) {
    pages.left_out = sheets::left_out_pages(job, results, piece, pages.cut);
  }
  return pages;
}

Result<FullFacePages> full_face_grid(const job::Job& job, const solve::Results& results, int piece,
                                     const std::string& paper_words) {
  const Result<sheets::Paper> paper = sheets::read_paper(paper_words);
  if (!paper) return paper.problem();
  const auto check = sheets::print_check(*paper, {});
  if (!check) return check.problem();
  return full_face_grid(job, results, piece, *paper, *check,
                        std::numeric_limits<std::int64_t>::max());
}

solve::Sum full_face_sum(const FullFacePages& pages, const sheets::Paper& paper,
                         const solve::Piece& piece) {
  solve::Sum sum;
  sum.figure = count_text(pages.sheets());
  sum.rule = "pages across × pages along, less those that no row and no edge crosses";
  std::string grid = pages_words(pages.cut.across) + " × " + pages_words(pages.cut.along);
  if (pages.out() > 0) grid += " − " + count_text(pages.out());
  sum.numbers = {way_words(pages.cut.across, piece.width_um, " across"),
                 way_words(pages.cut.along, piece.length_um, " along"),
                 grid + " = " + count_text(pages.sheets())};
  sum.source = paper.name + ", " + exact_mm_text(paper.width_um) + " × " +
               exact_mm_text(paper.length_um) + ", border 10, pages share " +
               exact_mm_text(pages.cut.across.overlap_um);
  return sum;
}

SharedLists tick_list_rows(const solve::Results& results, const solve::Piece& piece) {
  const sheets::Rows rows = sheets::guide_point_rows(results, piece);
  return {static_cast<std::int64_t>(rows.size()),
          static_cast<std::int64_t>(sheets::groups_of_equal_rows(piece, rows).size())};
}

Result<bool> few_enough_points(const solve::Results& results, const solve::Piece& piece) {
  const std::int64_t marks = marks_of(results, piece);
  if (marks <= kMostMarks) return true;
  return Problem{ProblemCode::row_too_many_points, sheets::spoken_name(piece),
                 counted(marks, "point", "points"), "at most " + count_text(kMostMarks)};
}

Result<std::int64_t> full_face_pages(const solve::Piece& piece, const std::string& paper_words) {
  const Result<sheets::Paper> paper = sheets::read_paper(paper_words);
  if (!paper) return paper.problem();
  const auto check = sheets::print_check(*paper, {});
  if (!check) return check.problem();
  return sheets::cut_pages(piece.width_um, piece.length_um, *paper, *check).pages();
}

Result<std::int64_t> tick_list_pages(const job::Job& job, const solve::Results& results, int piece,
                                     const std::string& paper_words) {
  const Result<sheets::Paper> paper = sheets::read_paper(paper_words);
  if (!paper) return paper.problem();
  const Result<bool> few =
      few_enough_points(results, results.pieces[static_cast<std::size_t>(piece)]);
  if (!few) return few.problem();
  return sheets::tick_list_pages(job, results, piece, *paper);
}

StripPages drilling_strip_pages(const job::Job& job, const solve::Results& results,
                                const sheets::Paper& paper, const sheets::PrintCheck& check) {
  const plan::DrillingStrips strips = plan::drilling_strips(job, results);
  return {static_cast<std::int64_t>(strips.strips.size()),
          sheets::DrillingStrips(strips, "", paper, check, "").pages()};
}

Result<CardPages> card_pages(const solve::Results& results, Guide guide, int piece,
                             const std::string& paper_words) {
  const Result<sheets::Paper> paper = sheets::read_paper(paper_words);
  if (!paper) return paper.problem();
  const Result<sheets::CardCut> cut =
      sheets::card_cut(*paper, is_page_card(guide) ? sheets::kPageCard : sheets::kSeamCard);
  if (!cut) return cut.problem();
  const std::int64_t cards = card_count(results, guide, piece);
  return CardPages{cards, divide_up(cards, cut->cards_a_page())};
}

}  // namespace pouncemark::output
