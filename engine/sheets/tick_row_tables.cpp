#include <algorithm>
#include <array>
#include <string>
#include <utility>

#include "engine/sheets/list_strips.h"
#include "engine/sheets/tick_blocks.h"
#include "engine/sheets/tick_words.h"
#include "engine/sheets/wrapped_words.h"

namespace pouncemark::sheets {
namespace {

constexpr WordStyle kDistanceWords{4'300, 6'000, drawing::Weight::bold};
constexpr Um kBaseUm = 1'500;
constexpr Um kBesideUm = 2'200;
constexpr Um kCellGapUm = 4'500;
constexpr Um kListUm = 8'500;
constexpr std::size_t kMostCodeLines = 3;

/// The rows of one code: its guide points and its stitches. One that could not be laid is nullptr.
struct CodeRows {
  std::string code;
  const solve::Row* points = nullptr;
  const solve::Row* stitches = nullptr;
};

/// Every code a row was asked for under, laid or not: of a section both long edges that take rows
/// and every lap. Of a panel those laid: the others stand under STOP by name.
std::vector<CodeRows> codes_asked(const TickSource& source, solve::RowPlace place) {
  const solve::Piece& piece = source.piece();
  std::vector<CodeRows> all;
  const auto add = [&all](std::string code) { all.push_back({std::move(code), nullptr, nullptr}); };
  if (place == solve::RowPlace::side) {
    for (const solve::Sleeve& sleeve : piece.sleeves) {
      if (sleeve.has_left_rows) add(sleeve.code + " left");
      if (sleeve.has_right_rows) add(sleeve.code + " right");
    }
  } else if (place == solve::RowPlace::lap) {
    for (std::size_t i = 0; i + 1 < piece.sleeves.size(); ++i) {
      add(piece.sleeves[i].code + "+" + piece.sleeves[i + 1].code.substr(piece.code.size() + 1));
    }
  } else {
    for (int i = 0; i < piece.row_count; ++i) {
      const solve::Row& row = source.results.rows[static_cast<std::size_t>(piece.first_row + i)];
      if (row.place == place && (all.empty() || all.back().code != row.code)) add(row.code);
    }
  }
  return all;
}

std::vector<CodeRows> rows_by_code(const TickSource& source, solve::RowPlace place) {
  std::vector<CodeRows> all = codes_asked(source, place);
  std::map<std::string, std::size_t> index;
  for (std::size_t i = 0; i < all.size(); ++i) index[all[i].code] = i;
  const solve::Piece& piece = source.piece();
  for (int i = 0; i < piece.row_count; ++i) {
    const solve::Row& row = source.results.rows[static_cast<std::size_t>(piece.first_row + i)];
    const auto at = index.find(row.code);
    if (row.place != place || at == index.end()) continue;
    CodeRows& rows = all[at->second];
    (row.kind == solve::RowKind::stitch ? rows.stitches : rows.points) = &row;
  }
  return all;
}

/// Where a row's line lies: across the section, or in from the panel's edge.
Um line_of(const solve::Row& row) {
  return row.place == solve::RowPlace::panel ? row.in_from_edge_um : to_um(row.guide.from.x);
}

/// A distance with its box, no wider than `wide`. Guide points and stitches are laid in pairs:
/// where one of them is missing it could not be laid.
void add_cell(Um end, Um wide, const solve::Row* row, drawing::Drawing* picture) {
  if (row == nullptr || row->run.points() == 0) {
    add_words({end, kBaseUm}, kPlainWords, drawing::Align::right, "not laid", picture);
    return;
  }
  add_tick_box({end - wide, kBaseUm - 300}, picture);
  add_words({end, kBaseUm}, kDistanceWords, drawing::Align::right, printed_figure(line_of(*row)),
            picture);
}

/// One table: codes at the left, two distances and the number of the list at the right.
struct Table {
  std::string title;
  std::string subtitle;
  std::array<const char*, 2> heads{};
  Um wide_um = 0;
  Um cell_um = 0;  ///< box and the longest distance

  Um list_end() const { return wide_um; }
  Um second_end() const { return wide_um - kListUm; }
  Um first_end() const { return second_end() - cell_um - kCellGapUm; }
  Um code_wide() const { return first_end() - cell_um - kBesideUm; }
};

void add_heads(const Table& table, drawing::Drawing* picture) {
  add_words({0, kBaseUm}, kPlainWords, drawing::Align::left, "row", picture);
  add_words({table.first_end(), kBaseUm}, kPlainWords, drawing::Align::right, table.heads[0],
            picture);
  add_words({table.second_end(), kBaseUm}, kPlainWords, drawing::Align::right, table.heads[1],
            picture);
  add_words({table.list_end(), kBaseUm}, kPlainWords, drawing::Align::right, "list", picture);
}

constexpr Um kHeadsHighUm = kListTextPitchUm + 600;

Strip heads_strip(const Table& table) {
  Strip strip;
  strip.high_um = kHeadsHighUm;
  add_heads(table, &strip.picture);
  return strip;
}

/// Over what is continued: which table it is, and its heads.
Strip again_strip(const Table& table) {
  Strip strip;
  strip.high_um = kHeadsHighUm + kListTextPitchUm;
  add_words({0, kHeadsHighUm + kListTextPitchUm / 4}, kBoldWords, drawing::Align::left,
            table.title + ", continued", &strip.picture);
  add_heads(table, &strip.picture);
  return strip;
}

/// A code of several lines ends on the line of its distances.
drawing::Drawing table_entry(const Table& table, const CodeRows& rows, const ListNumbers& lists) {
  drawing::Drawing picture;
  std::vector<std::string> code =
      wrapped_at_most(kMostCodeLines, rows.code, kListTextUm, table.code_wide());
  Um up = kBaseUm + kListTextPitchUm * (static_cast<Um>(code.size()) - 1);
  for (std::string& line : code) {
    add_words({0, up}, kBoldWords, drawing::Align::left, std::move(line), &picture);
    up -= kListTextPitchUm;
  }
  add_cell(table.first_end(), table.cell_um, rows.points, &picture);
  add_cell(table.second_end(), table.cell_um, rows.stitches, &picture);
  const auto list = lists.find(rows.code);
  add_words({table.list_end(), kBaseUm}, kPlainWords, drawing::Align::right,
            list == lists.end() ? "–" : std::to_string(list->second), &picture);
  return picture;
}

Um cell_width(const std::vector<CodeRows>& rows) {
  Um widest = 0;
  for (const CodeRows& one : rows) {
    for (const solve::Row* row : {one.points, one.stitches}) {
      if (row == nullptr) continue;
      const std::string distance = printed_figure(line_of(*row));
      widest = std::max(widest, words_width_um(distance, kDistanceWords.size_um));
    }
  }
  return kTickBoxUm + kBesideUm + std::max(widest, words_width_um("not laid", kListTextUm));
}

Block table_block(const Table& table, std::vector<CodeRows> rows, const ListNumbers& lists) {
  std::size_t code_lines = 1;
  for (const CodeRows& one : rows) {
    code_lines =
        std::max(code_lines,
                 wrapped_at_most(kMostCodeLines, one.code, kListTextUm, table.code_wide()).size());
  }
  Block block;
  append(word_strips(table.title, kTitleWords, table.wide_um), &block.head);
  append(word_strips(table.subtitle, kPlainWords, table.wide_um), &block.head);
  block.head.push_back(heads_strip(table));
  block.again = again_strip(table);
  block.entries = static_cast<std::int64_t>(rows.size());
  block.entry_wide_um = table.wide_um;
  block.entry_high_um =
      kDistanceWords.pitch_um + kListTextPitchUm * static_cast<Um>(code_lines - 1);
  block.entry = [table, rows = std::move(rows), lists](std::int64_t index) {
    return table_entry(table, rows[static_cast<std::size_t>(index)], lists);
  };
  return block;
}

/// "staples 26.0: 1-01 left to 1-09 right", a line for each distance.
void add_insets(const char* what, const Rows& rows, Um wide, std::vector<Strip>* strips) {
  std::map<Um, Rows> by_inset;
  Rows side_rows;
  for (const solve::Row* row : rows) {
    if (row->place != solve::RowPlace::side) continue;
    side_rows.push_back(row);
    by_inset[printed_um(row->in_from_edge_um)].push_back(row);
  }
  for (const auto& [inset, some] : by_inset) {
    append(word_strips(
               std::string(what) + " " + printed_figure(inset) + ": " + row_names(some, side_rows),
               kPlainWords, wide),
           strips);
  }
}

/// How far side rows stand in from their own sleeve's edge, for the sleeve before it is joined.
Block inset_block(const TickSource& source) {
  const Um wide = source.wide_um;
  std::vector<Strip> lines =
      word_strips("Side rows, in from their sleeve's edge", kBoldWords, wide);
  const std::size_t said = lines.size();
  add_insets("staples", guide_point_rows(source.results, source.piece()), wide, &lines);
  add_insets("stitches", stitch_rows(source.results, source.piece()), wide, &lines);
  if (lines.size() == said) lines.clear();
  return text_block("", std::move(lines), wide);
}

}  // namespace

std::vector<Block> row_table_blocks(const TickSource& source, const ListNumbers& lists) {
  const Table kinds[] = {
      {"Side rows", "Their lines, from the section's left edge", {"staples", "stitches"}, 0, 0},
      {"Joining rows", "Their lines, from the section's left edge", {"staples", "stitches"}, 0, 0},
      {"Rows", "They stand in from the edge by", {"points", "stitches"}, 0, 0}};
  const solve::RowPlace places[] = {solve::RowPlace::side, solve::RowPlace::lap,
                                    solve::RowPlace::panel};
  std::vector<Block> blocks;
  Block insets = inset_block(source);
  if (insets.entries > 0) blocks.push_back(std::move(insets));
  for (std::size_t i = 0; i < std::size(places); ++i) {
    std::vector<CodeRows> rows = rows_by_code(source, places[i]);
    if (rows.empty()) continue;
    Table table = kinds[i];
    table.wide_um = source.wide_um;
    table.cell_um = cell_width(rows);
    blocks.push_back(table_block(table, std::move(rows), lists));
  }
  return blocks;
}

}  // namespace pouncemark::sheets
