#include "web/model/guides.h"

#include <cstddef>
#include <map>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/output/print_order.h"
#include "engine/plan/seam_card.h"
#include "engine/plan/trial_card.h"
#include "web/model/printing.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

using Lines = std::vector<GuideLine>;

constexpr std::int64_t kMostTickedFirst = 300;
/// As many as an order takes: a larger grid cannot be printed, and is not looked at.
constexpr std::int64_t kMostPages = 2'000;

GuideLine full_face_line(const Solved& solved, const PaperChoice& choice, int index) {
  const solve::Piece& piece = solved.results.pieces[static_cast<std::size_t>(index)];
  const output::FullFacePages pages = full_face_pages_of(solved, choice, index);
  GuideLine line;
  line.kind = GuideKind::full_face;
  line.piece = index;
  line.key = "full_face." + piece.code;
  line.title = "Full-face, " + piece_title(piece, true);
  line.short_under = "FRONT";
  line.under = line.short_under + ", " + short_mm_text(piece.width_um, 1) + " " + kTimes + " " +
               short_mm_text(piece.length_um, 1);
  line.left_out = pages.out();
  if (line.left_out > 0) {
    line.under = line.short_under + ", " + count_text(pages.all()) + " less " +
                 count_text(line.left_out) + " left out";
  }
  line.sheets = pages.all() > kMostPages ? 0 : pages.sheets();
  return line;
}

GuideLine tick_list_line(const Solved& solved, const PaperChoice& choice, int index) {
  const solve::Piece& piece = solved.results.pieces[static_cast<std::size_t>(index)];
  const output::SharedLists shared = output::tick_list_rows(solved.results, piece);
  const auto pages = output::tick_list_pages(solved.job, solved.results, index, choice.paper.name);
  GuideLine line;
  line.kind = GuideKind::tick_list;
  line.piece = index;
  line.key = "tick_list." + piece.code;
  line.title = "Tick list, " + piece_title(piece, true);
  line.short_under = "for tape and pen";
  line.under = counted(shared.rows, "row", "rows") +
               (shared.rows > shared.lists ? " share " + counted(shared.lists, "list", "lists")
                                           : ", " + counted(shared.lists, "list", "lists"));
  line.sheets = pages ? *pages : 0;
  return line;
}

/// Cards are cut out and read: bars out by any amount refuse none.
GuideLine seam_card_line(const Solved& solved, const PaperChoice& choice, int index) {
  const solve::Piece& piece = solved.results.pieces[static_cast<std::size_t>(index)];
  const auto pages = output::seam_card_pages(solved.results, index, choice.paper.name);
  GuideLine line;
  line.kind = GuideKind::seam_card;
  line.piece = index;
  line.key = "seam_card." + piece.code;
  line.title = "Seam cards, " + piece_title(piece, true);
  line.short_under = "for the machine";
  line.under = line.short_under;
  if (pages) {
    line.sheets = pages->pages;
    line.short_under = counted(pages->cards, "card", "cards");
    line.under = line.short_under + " on " + counted(pages->pages, "sheet", "sheets");
  }
  return line;
}

/// A card of the whole job; `is_trial`: the trial card, else the machine card.
GuideLine job_card_line(const Solved& solved, const PaperChoice& choice, bool is_trial) {
  const auto pages = output::job_card_pages(solved.results, is_trial, choice.paper.name);
  GuideLine line;
  line.kind = is_trial ? GuideKind::trial_card : GuideKind::machine_card;
  line.key = is_trial ? "trial_card" : "machine_card";
  line.title = is_trial ? "Trial card" : "Machine card";
  line.short_under = is_trial ? "to try the seam" : "to set it up";
  line.under = line.short_under;
  if (!pages) return line;
  line.sheets = pages->pages;
  if (is_trial) line.under = counted(pages->cards, "kind of row", "kinds of row") + " to try";
  return line;
}

bool has_seam_cards(const solve::Results& results, const solve::Piece& piece) {
  return !plan::seam_card_rows(results, piece).empty();
}

GuideLine test_page_line(const PaperChoice& choice) {
  const sheets::Bars bars = print_check_of(choice).nominal;
  GuideLine line;
  line.key = "test_page";
  line.title = "Page 0, the test page";
  line.short_under = "bars to measure";
  line.under = "bars of " + exact_mm_text(bars.across_um) + " and " + exact_mm_text(bars.along_um);
  line.sheets = 1;
  line.is_ticked_first = !printer_is_proved(choice);
  return line;
}

output::Guide guide_of(GuideKind kind) {
  switch (kind) {
    case GuideKind::test_page:
      return output::Guide::test_page;
    case GuideKind::full_face:
      return output::Guide::full_face;
    case GuideKind::tick_list:
      return output::Guide::tick_list;
    case GuideKind::seam_card:
      return output::Guide::seam_card;
    case GuideKind::trial_card:
      return output::Guide::trial_card;
    case GuideKind::machine_card:
      return output::Guide::machine_card;
  }
  return output::Guide::test_page;
}

/// "2 × 28 + 16 = 72"; equal counts are put together.
std::string added_words(const std::map<std::int64_t, std::int64_t>& times, std::int64_t sum) {
  std::string words;
  for (const auto& [sheets, guides] : times) {
    if (!words.empty()) words += " + ";
    if (guides > 1) words += count_text(guides) + " " + kTimes + " ";
    words += count_text(sheets);
  }
  return (words.empty() ? "0" : words) + " = " + count_text(sum);
}

}  // namespace

output::FullFacePages full_face_pages_of(const Solved& solved, const PaperChoice& choice,
                                         int piece) {
  // A bar that is refused corrects nothing: the guide is not printed, but its pages are counted.
  const sheets::Bars measured = printer_is_refused(choice) ? sheets::Bars{} : choice.measured;
  const auto check = sheets::print_check(choice.paper, measured);
  if (!check) return {};
  return output::full_face_grid(solved.job, solved.results, piece, choice.paper, *check,
                                kMostPages);
}

std::string piece_title(const solve::Piece& piece, bool in_title) {
  const bool is_panel = piece.kind == solve::PieceKind::panel;
  const std::string word =
      is_panel ? (in_title ? "panel " : "Panel ") : (in_title ? "section " : "Section ");
  return word + piece.code;
}

Lines guide_lines(const Solved& solved, const PaperChoice& choice) {
  Lines lines;
  lines.push_back(test_page_line(choice));
  const int pieces = static_cast<int>(solved.results.pieces.size());
  std::int64_t all = 0;
  for (int piece = 0; piece < pieces; ++piece) {
    lines.push_back(full_face_line(solved, choice, piece));
    all += lines.back().sheets;
    lines.push_back(tick_list_line(solved, choice, piece));
    if (has_seam_cards(solved.results, solved.results.pieces[static_cast<std::size_t>(piece)])) {
      lines.push_back(seam_card_line(solved, choice, piece));
    }
  }
  if (!plan::trial_card_kinds(solved.results).empty()) {
    lines.push_back(job_card_line(solved, choice, true));
    lines.push_back(job_card_line(solved, choice, false));
  }
  for (GuideLine& line : lines) {
    if (line.kind == GuideKind::full_face) line.is_ticked_first = all <= kMostTickedFirst;
  }
  return lines;
}

bool is_ticked(const GuideTicks& ticks, const GuideLine& line) {
  if (ticks.on.count(line.key) > 0) return true;
  return line.is_ticked_first && ticks.off.count(line.key) == 0;
}

void tick(GuideTicks& ticks, const GuideLine& line, bool on) {
  (on ? ticks.off : ticks.on).erase(line.key);
  (on ? ticks.on : ticks.off).insert(line.key);
}

std::int64_t ticked_sheets(const Lines& lines, const GuideTicks& ticks, GuideKind kind) {
  std::int64_t sheets = 0;
  for (const GuideLine& line : lines) {
    if (counted_as(line.kind) == kind && is_ticked(ticks, line)) sheets += line.sheets;
  }
  return sheets;
}

std::int64_t ticked_sheets(const Lines& lines, const GuideTicks& ticks) {
  return ticked_sheets(lines, ticks, GuideKind::test_page) +
         ticked_sheets(lines, ticks, GuideKind::full_face) +
         ticked_sheets(lines, ticks, GuideKind::tick_list) +
         ticked_sheets(lines, ticks, GuideKind::seam_card);
}

std::int64_t ticked_left_out(const Lines& lines, const GuideTicks& ticks) {
  std::int64_t left_out = 0;
  for (const GuideLine& line : lines) {
    if (is_ticked(ticks, line)) left_out += line.left_out;
  }
  return left_out;
}

solve::Sum sheets_sum(const Lines& lines, const GuideTicks& ticks) {
  solve::Sum sum;
  std::string words;
  for (const GuideKind kind :
       {GuideKind::test_page, GuideKind::full_face, GuideKind::tick_list, GuideKind::seam_card}) {
    words += (words.empty() ? "" : " + ") + count_text(ticked_sheets(lines, ticks, kind));
  }
  sum.figure = count_text(ticked_sheets(lines, ticks));
  sum.rule = "page 0, full-face guides, tick lists and cards that are ticked";
  sum.numbers = {words + " = " + sum.figure};
  sum.source = "the list of guides";
  return sum;
}

solve::Sum sheets_sum(const Lines& lines, const GuideTicks& ticks, GuideKind kind) {
  std::map<std::int64_t, std::int64_t> times;
  for (const GuideLine& line : lines) {
    if (counted_as(line.kind) == kind && is_ticked(ticks, line)) ++times[line.sheets];
  }
  const std::int64_t sheets = ticked_sheets(lines, ticks, kind);
  solve::Sum sum;
  sum.figure = count_text(sheets);
  sum.rule = "sheets of each guide that is ticked";
  sum.numbers = {added_words(times, sheets)};
  sum.source = "the list of guides";
  return sum;
}

solve::Sum guide_sum(const Solved& solved, const PaperChoice& choice, const GuideLine& line) {
  if (line.kind == GuideKind::full_face) {
    return output::full_face_sum(full_face_pages_of(solved, choice, line.piece), choice.paper,
                                 solved.results.pieces[static_cast<std::size_t>(line.piece)]);
  }
  solve::Sum sum;
  sum.figure = count_text(line.sheets);
  sum.rule = line.kind == GuideKind::test_page ? "one sheet, both bars on it"
             : line.kind == GuideKind::seam_card
                 ? "a card for each stitch row, as many a sheet as fit"
             : line.kind == GuideKind::trial_card   ? "a card for each kind of row that is sewn"
             : line.kind == GuideKind::machine_card ? "one card for the machine"
                                                    : "as many as its figures and words fill";
  sum.numbers = {sum.figure};
  sum.source = paper_words(choice.paper);
  return sum;
}

std::string order_words(const Lines& lines, const PaperChoice& choice) {
  std::vector<output::PrintOptions> orders;
  for (const GuideLine& line : lines) {
    output::PrintOptions order;
    order.guide = guide_of(line.kind);
    order.paper = choice.paper.name;
    order.piece = line.piece;
    if (line.kind != GuideKind::test_page) {
      order.bar_across_um = choice.measured.across_um;
      order.bar_along_um = choice.measured.along_um;
    }
    orders.push_back(std::move(order));
  }
  return output::print_order_text(orders);
}

}  // namespace pouncemark::web
