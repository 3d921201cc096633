#include "engine/sheets/tick_blocks.h"

#include <utility>

#include "engine/base/number_text.h"
#include "engine/drawing/symbols.h"
#include "engine/sheets/list_strips.h"
#include "engine/sheets/tick_words.h"
#include "engine/sheets/wrapped_words.h"

namespace pouncemark::sheets {
namespace {

constexpr Um kStopWideUm = 16'000;
constexpr Um kStopHighUm = 6'000;
constexpr std::size_t kMostPlaceLines = 3;

/// An open stop: its tag, where it is, the whole sentence and what to do.
Block stop_block(const solve::Finding& finding, Um wide) {
  const Um indent = kStopWideUm + 2'500;
  std::vector<Strip> head;
  for (std::string& line :
       wrapped_at_most(kMostPlaceLines, finding.place, kListTextUm, wide - indent)) {
    Strip strip;
    strip.high_um = head.empty() ? kStopHighUm + 1'000 : kListTextPitchUm;
    if (head.empty()) {
      drawing::add_word_banner(strip.picture, {{0, 0}, {kStopWideUm, kStopHighUm}}, "STOP");
    }
    add_words({indent, 1'600}, kBoldWords, drawing::Align::left, std::move(line), &strip.picture);
    head.push_back(std::move(strip));
  }
  Block block =
      text_block("", word_strips(finding.sentence + " " + finding.change, kPlainWords, wide), wide);
  block.head = std::move(head);
  return block;
}

void add_stops(const TickSource& source, std::vector<Block>* blocks) {
  for (const solve::Finding& finding : source.results.findings) {
    if (finding.severity != solve::Severity::stop || finding.piece != source.piece_index) continue;
    blocks->push_back(stop_block(finding, source.wide_um));
  }
}

Block zero_block(const TickSource& source) {
  const bool is_section = source.piece().kind == solve::PieceKind::section;
  std::vector<Strip> lines = word_strips(
      is_section ? "Set the tape's zero at the datum end: BOTTOM for the lists, the section's left "
                   "edge for the lines of the rows."
                 : "Set the tape's zero at the datum end: BOTTOM for the hinge row, the hinge side "
                   "for top and bottom.",
      kBoldWords, source.wide_um);
  append(word_strips("Lengths to half a millimetre; no correction is applied to figures.",
                     kPlainWords, source.wide_um),
         &lines);
  return text_block("", std::move(lines), source.wide_um);
}

/// Rows that are sewn alike: a machine sews them, so their ends are told and not every hole.
Block stitch_block(const TickSource& source, const Rows& group, const Rows& all) {
  std::vector<Strip> lines = word_strips(row_names(group, all), kBoldWords, source.wide_um);
  const auto rows = static_cast<std::int64_t>(group.size());
  std::string words = rows > 1 ? counted(rows, "row", "rows") + ", each: " : "";
  words +=
      stitch_words(*group.front()) + ", measured " + datum_words(source.piece(), *group.front());
  append(word_strips(words, kPlainWords, source.wide_um), &lines);
  Block block = text_block("", std::move(lines), source.wide_um);
  block.stays_whole = true;
  return block;
}

void add_stitch_rows(const TickSource& source, std::vector<Block>* blocks) {
  const Rows all = stitch_rows(source.results, source.piece());
  bool is_first = true;
  for (const Rows& group : groups_of_equal_rows(source.piece(), all)) {
    Block block = stitch_block(source, group, all);
    if (is_first) {
      block.head = word_strips("Stitch rows", kTitleWords, source.wide_um);
      append(word_strips("The machine sews these; the trial seam decides the stitch. A stitch 0.1 "
                         "longer than said is 10 out after 100 stitches.",
                         kPlainWords, source.wide_um),
             &block.head);
      block.head.push_back(empty_strip(1'500));
    }
    is_first = false;
    blocks->push_back(std::move(block));
  }
}

}  // namespace

std::vector<Block> tick_blocks(const TickSource& source) {
  std::vector<Block> blocks;
  add_stops(source, &blocks);
  blocks.push_back(zero_block(source));
  const Rows all = guide_point_rows(source.results, source.piece());
  const std::vector<Rows> groups = groups_of_equal_rows(source.piece(), all);
  ListNumbers lists;
  for (std::size_t i = 0; i < groups.size(); ++i) {
    for (const solve::Row* row : groups[i]) lists[row->code] = static_cast<int>(i) + 1;
  }
  if (source.piece().row_count == 0) {
    blocks.push_back(text_block(
        "No row", word_strips("No row of this piece is laid.", kPlainWords, source.wide_um),
        source.wide_um));
  }
  for (Block& block : row_table_blocks(source, lists)) blocks.push_back(std::move(block));
  for (std::size_t i = 0; i < groups.size(); ++i) {
    for (Block& block : figure_blocks(source, groups[i], all, static_cast<int>(i) + 1)) {
      blocks.push_back(std::move(block));
    }
  }
  add_stitch_rows(source, &blocks);
  return blocks;
}

}  // namespace pouncemark::sheets
