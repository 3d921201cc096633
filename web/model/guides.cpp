#include "web/model/guides.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <map>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/output/print_order.h"
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

/// What is said of guides that have no map of their pages.
struct GuideText {
  const char* key = "";
  const char* title = "";        ///< of cards; before the piece they are of
  const char* short_under = "";  ///< of cards
  const char* rule = "";         ///< how their sheets are counted
  const char* words = "";        ///< what it is, in a sentence
};
constexpr std::array<GuideText, output::kGuideWords.size()> kTexts = {
    {{"test_page", "", "", "one sheet, both bars on it",
      "Both bars at their true size. Measure them with a steel rule."},
     {},
     {"tick_list", "", "", "as many as its figures and words fill",
      "Figures for tape and pen. Nothing on it is true to size."},
     {"drilling_strip", "Drilling strips", "to drill through",
      "lengths of each strip side by side, as many a sheet as fit",
      "The edges of what hangs, true to size, every hole and slot at its place."},
     {"seam_card", "Seam cards, ", "for the machine",
      "a card for each stitch row, as many a sheet as fit",
      "A card for each row, for the machine. Cut along the dashed lines."},
     {"panel_card", "Panel card, ", "FRONT and FACE DOWN",
      "a card FRONT and one FACE DOWN, as many a sheet as fit",
      "Its sides, rows and creep, FRONT and FACE DOWN. Cut along the dashed lines."},
     {"trial_card", "Trial card", "to try the seam", "a card for each kind of row that is sewn",
      "What to sew on the coupon and what to write down, a page for each kind of row."},
     {"machine_card", "Machine card", "to set it up", "one card for the machine",
      "How the machine is set up, and what lies right of its needle."},
     {"hanging_card", "Hanging cards", "for the tower",
      "a card for each bay, as many a sheet as fit",
      "For each bay its push, people, weight and order of fixing. Cut along the dashed lines."}}};

const GuideText& text_of(GuideKind kind) { return kTexts[static_cast<std::size_t>(kind)]; }

/// Adds the cards of a kind, of a piece or of the whole job, where there are any. Cards are cut out
/// and read: bars out by any amount refuse none.
void add_cards(const Solved& solved, const PaperChoice& choice, GuideKind kind, int index,
               Lines* lines) {
  // Whether there are any does not hang on the paper.
  if (output::card_pages(solved.results, kind, index, "A4")->cards == 0) return;
  const auto pages = output::card_pages(solved.results, kind, index, choice.paper.name);
  const GuideText& text = text_of(kind);
  GuideLine line;
  line.kind = kind;
  line.piece = index;
  line.key = text.key;
  line.title = text.title;
  if (index >= 0) {
    const solve::Piece& piece = solved.results.pieces[static_cast<std::size_t>(index)];
    line.key += "." + piece.code;
    line.title += piece_title(piece, true);
  }
  line.short_under = text.short_under;
  line.under = line.short_under;
  if (pages) {
    line.sheets = pages->pages;
    if (kind == GuideKind::seam_card || kind == GuideKind::hanging_card) {
      line.short_under = counted(pages->cards, "card", "cards");
      line.under = line.short_under + " on " + counted(pages->pages, "sheet", "sheets");
    } else if (kind == GuideKind::trial_card) {
      line.under = counted(pages->cards, "kind of row", "kinds of row") + " to try";
    }
  }
  lines->push_back(std::move(line));
}

/// Only where there is a strip. Bars that are refused correct nothing: the sheets are counted.
void add_strips(const Solved& solved, const PaperChoice& choice, Lines* lines) {
  const sheets::Bars measured = printer_is_refused(choice) ? sheets::Bars{} : choice.measured;
  const auto check = sheets::print_check(choice.paper, measured);
  if (!check) return;
  const auto pages = output::drilling_strip_pages(solved.job, solved.results, choice.paper, *check);
  if (pages.strips == 0) return;
  const GuideText& text = text_of(GuideKind::drilling_strip);
  GuideLine line;
  line.kind = GuideKind::drilling_strip;
  line.key = text.key;
  line.title = text.title;
  line.short_under = text.short_under;
  line.under = "FRONT, " + counted(pages.strips, "edge", "edges");
  line.sheets = pages.pages;
  lines->push_back(std::move(line));
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
    add_cards(solved, choice, GuideKind::seam_card, piece, &lines);
    add_cards(solved, choice, GuideKind::panel_card, piece, &lines);
  }
  add_strips(solved, choice, &lines);
  add_cards(solved, choice, GuideKind::trial_card, -1, &lines);
  add_cards(solved, choice, GuideKind::machine_card, -1, &lines);
  add_cards(solved, choice, GuideKind::hanging_card, -1, &lines);
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
  std::int64_t sheets = 0;
  for (const GuideLine& line : lines) sheets += is_ticked(ticks, line) ? line.sheets : 0;
  return sheets;
}

bool has_strips(const Lines& lines) {
  return std::any_of(lines.begin(), lines.end(),
                     [](const GuideLine& line) { return line.kind == GuideKind::drilling_strip; });
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
  for (const GuideKind kind : {GuideKind::test_page, GuideKind::full_face, GuideKind::tick_list,
                               GuideKind::drilling_strip, GuideKind::seam_card}) {
    if (kind == GuideKind::drilling_strip && !has_strips(lines)) continue;
    words += (words.empty() ? "" : " + ") + count_text(ticked_sheets(lines, ticks, kind));
  }
  sum.figure = count_text(ticked_sheets(lines, ticks));
  sum.rule = has_strips(lines)
                 ? "page 0, full-face guides, tick lists, strips and cards that are ticked"
                 : "page 0, full-face guides, tick lists and cards that are ticked";
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
  sum.rule = text_of(line.kind).rule;
  sum.numbers = {sum.figure};
  sum.source = paper_words(choice.paper);
  return sum;
}

const char* guide_words(GuideKind kind) { return text_of(kind).words; }

std::string order_words(const Lines& lines, const PaperChoice& choice) {
  std::vector<output::PrintOptions> orders;
  for (const GuideLine& line : lines) {
    output::PrintOptions order;
    order.guide = line.kind;
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
