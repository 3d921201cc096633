#include <algorithm>
#include <string>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/drawing/shapes.h"
#include "engine/sheets/list_strips.h"
#include "engine/sheets/tick_blocks.h"
#include "engine/sheets/tick_words.h"
#include "engine/sheets/wrapped_words.h"

namespace pouncemark::sheets {
namespace {

constexpr WordStyle kFigureWords{5'500, 7'000, drawing::Weight::bold};
constexpr Um kBaseUm = 1'500;
constexpr Um kBesideUm = 2'300;
constexpr Um kBetweenUm = 3'300;
constexpr Um kFifthPenUm = 150;
/// Names that take more of a column than one part in so many stand in a block of their own, which
/// can be parted.
constexpr Um kNamesPart = 3;

/// The right ends of number and figure in an entry.
struct EntryShape {
  Um number_end = 0;
  Um figure_end = 0;
};

EntryShape shape_of(const layout::Run& run) {
  const std::string number = count_text(run.points());
  const std::string low = printed_figure(run.first_um());
  const std::string high = printed_figure(run.last_um());
  EntryShape shape;
  shape.number_end = kTickBoxUm + kBesideUm + words_width_um(number, kListTextUm);
  shape.figure_end = shape.number_end + kBetweenUm +
                     std::max(words_width_um(low, kFigureWords.size_um),
                              words_width_um(high, kFigureWords.size_um));
  return shape;
}

/// One figure: box, number, distance; a thin line under every fifth keeps the eye in its row.
drawing::Drawing figure_entry(const layout::Run& run, std::int64_t point, std::int64_t number,
                              const EntryShape& shape) {
  drawing::Drawing picture;
  add_tick_box({0, kBaseUm}, &picture);
  add_words({shape.number_end, kBaseUm}, kPlainWords, drawing::Align::right, count_text(number),
            &picture);
  add_words({shape.figure_end, kBaseUm}, kFigureWords, drawing::Align::right,
            printed_figure(run.station_um(point)), &picture);
  if (number % 5 == 0) {
    drawing::add_line(picture, {0, 0}, {shape.figure_end, 0}, {kFifthPenUm, {}, 0});
  }
  return picture;
}

/// The corner that is counted with the hinge row; its words go under the figure where they do not
/// fit beside it.
std::vector<Strip> corner_strips(const layout::Run& run, const EntryShape& shape, Um wide) {
  const std::string words = "corner, the hinge row's";
  const Um beside = shape.figure_end + kBesideUm;
  Strip strip;
  strip.high_um = kFigureWords.pitch_um;
  add_tick_box({0, kBaseUm}, &strip.picture);
  add_words({shape.figure_end, kBaseUm}, kFigureWords, drawing::Align::right,
            printed_figure(run.first_um()), &strip.picture);
  const bool fits = beside + words_width_um(words, kListTextUm) <= wide;
  if (fits) add_words({beside, kBaseUm}, kPlainWords, drawing::Align::left, words, &strip.picture);
  std::vector<Strip> strips = {std::move(strip)};
  if (!fits) append(word_strips(words, kPlainWords, wide), &strips);
  return strips;
}

std::vector<Strip> sum_strips(const layout::Run& run, Um wide) {
  std::vector<Strip> strips;
  strips.push_back(empty_strip(1'500));
  for (const std::string& line : sum_check(run))
    append(word_strips(line, kPlainWords, wide), &strips);
  return strips;
}

/// "26 rows: the same list. 30 staples, 46.55 centre to centre, measured from BOTTOM"
std::string list_words(const solve::Piece& piece, const Rows& group) {
  const solve::Row& row = *group.front();
  const auto rows = static_cast<std::int64_t>(group.size());
  const std::string same = rows > 1 ? counted(rows, "row", "rows") + ": the same list. " : "";
  if (row.run.points() == 0) return same + "not laid: no point";
  return same + count_words(row) + ", measured " + datum_words(piece, row);
}

/// The distances of a row, drawn when asked for.
void set_entries(const solve::Row& row, bool has_corner, Um wide, Block* list) {
  const EntryShape shape = shape_of(row.run);
  list->entries = row.run.points() - (has_corner ? 1 : 0);
  list->columns = shape.figure_end + kBesideUm <= wide / 2 ? 2 : 1;
  list->entry_wide_um = wide / list->columns;
  list->entry_high_um = kFigureWords.pitch_um;
  list->entry = [&row, shape, has_corner](std::int64_t index) {
    return figure_entry(row.run, index + (has_corner ? 1 : 0), index + 1, shape);
  };
}

}  // namespace

std::vector<Block> figure_blocks(const TickSource& source, const Rows& group, const Rows& all,
                                 int number) {
  const solve::Row& row = *group.front();
  const Um wide = source.wide_um;
  const std::string title = "List " + std::to_string(number);
  const bool has_corner = row.first_is_shared && row.run.points() > 0;
  std::vector<Block> blocks;
  std::vector<Strip> names = word_strips(row_names(group, all), kBoldWords, wide);
  if (static_cast<Um>(names.size()) * kListTextPitchUm > source.high_um / kNamesPart) {
    blocks.push_back(text_block(title + " serves", std::move(names), wide));
    names = word_strips("Its rows are named before it.", kPlainWords, wide);
  }
  Block list;
  list.head = word_strips(title, kTitleWords, wide);
  append(std::move(names), &list.head);
  append(word_strips(list_words(source.piece(), group), kPlainWords, wide), &list.head);
  list.head.push_back(empty_strip(1'500));
  if (has_corner) append(corner_strips(row.run, shape_of(row.run), wide), &list.head);
  list.again = word_strips(title + ", continued", kBoldWords, wide).front();
  set_entries(row, has_corner, wide, &list);
  list.tail = sum_strips(row.run, wide);
  list.stays_whole = true;
  blocks.push_back(std::move(list));
  return blocks;
}

}  // namespace pouncemark::sheets
