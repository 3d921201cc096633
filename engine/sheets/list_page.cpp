#include "engine/sheets/list_page.h"

#include <algorithm>
#include <utility>

#include "engine/checks/rules.h"
#include "engine/drawing/symbols.h"
#include "engine/sheets/list_strips.h"
#include "engine/sheets/wrapped_words.h"

namespace pouncemark::sheets {
namespace {

using drawing::Spot;

constexpr Um kLeastColumnUm = 80'000;
constexpr Um kColumnGapUm = 8'000;
/// On narrower paper the title stands under number and FRONT instead of between them.
constexpr Um kWidePaperUm = 170'000;
constexpr Um kNumberWideUm = 34'000;
constexpr Um kFrontWideUm = 26'000;
constexpr Um kFrontHighUm = 9'000;
constexpr Um kBesideUm = 4'000;
constexpr WordStyle kNameWords{5'500, 7'200, drawing::Weight::bold};
constexpr std::size_t kMostNameLines = 2;
/// The body is as high on every page, whatever its number.
constexpr std::int64_t kLongPage = 9'999;

bool is_wide(const Paper& paper) { return paper.width_um >= kWidePaperUm; }

Um inner_width(const Paper& paper) { return paper.width_um - 2 * kBorderUm; }

/// Where the lines of the title begin and how wide they are.
struct TitleRoom {
  Um left = 0;
  Um wide = 0;
  Um top = 0;
};

TitleRoom title_room(const Paper& paper) {
  const Um top = paper.length_um - kBorderUm;
  if (!is_wide(paper)) return {kBorderUm, inner_width(paper), top - kFrontHighUm - 2'000};
  return {kBorderUm + kNumberWideUm + kBesideUm,
          inner_width(paper) - kNumberWideUm - kFrontWideUm - 2 * kBesideUm, top};
}

std::string file_words(const std::string& checksum) {
  return "file " + checksum.substr(0, 4) + " " + checksum.substr(4, 4) + " " +
         checksum.substr(8, 4);
}

/// The strips of the title.
std::vector<Strip> title_strips(const Paper& paper, const ListTitle& title, std::int64_t number,
                                std::int64_t pages) {
  const Um wide = title_room(paper).wide;
  std::vector<Strip> strips;
  for (const std::string& line :
       wrapped_at_most(kMostNameLines, title.name, kNameWords.size_um, wide)) {
    append(word_strips(line, kNameWords, wide), &strips);
  }
  append(word_strips(title.what, kPlainWords, wide), &strips);
  const std::string place = "page " + std::to_string(number) + " of " + std::to_string(pages);
  append(
      word_strips(place + ", " + paper.name + ", " + file_words(title.checksum), kPlainWords, wide),
      &strips);
  return strips;
}

std::vector<Strip> caution_strips(const Paper& paper) {
  return word_strips(std::string(checks::caution_line()) + " Not a structural or fire calculation.",
                     kPlainWords, inner_width(paper));
}

Um height_of(const std::vector<Strip>& strips) {
  Um high = 0;
  for (const Strip& strip : strips) high += strip.high_um;
  return high;
}

void add_strips(const std::vector<Strip>& strips, Spot corner, drawing::Drawing* picture) {
  for (const Strip& strip : strips) {
    corner.y -= strip.high_um;
    add_moved(strip.picture, corner, picture);
  }
}

/// The page's number, as large as its room allows.
void add_number(const Paper& paper, std::int64_t number, drawing::Drawing* picture) {
  const std::string words = std::to_string(number);
  const Um high = is_wide(paper) ? 24'000 : 12'000;
  const Um wide = words_width_um(words, 1'000);
  const Um size = std::min(high, kNumberWideUm * 1'000 / wide);
  // A figure is three quarters of the em high and hangs from the border.
  add_words({kBorderUm, paper.length_um - kBorderUm - size * 3 / 4},
            {size, size, drawing::Weight::bold}, drawing::Align::left, words, picture);
}

}  // namespace

ListColumns list_columns(const Paper& paper) {
  const Um room = inner_width(paper);
  ListColumns columns;
  columns.count =
      static_cast<int>(std::max<Um>(1, (room + kColumnGapUm) / (kLeastColumnUm + kColumnGapUm)));
  columns.wide_um = (room - (columns.count - 1) * kColumnGapUm) / columns.count;
  columns.pitch_um = columns.wide_um + kColumnGapUm;
  return columns;
}

drawing::Box list_body(const Paper& paper, const ListTitle& title) {
  const TitleRoom room = title_room(paper);
  ListTitle longest = title;
  longest.checksum = std::string(kAnyChecksum);
  const Um title_foot = room.top - height_of(title_strips(paper, longest, kLongPage, kLongPage));
  const Um front_foot = paper.length_um - kBorderUm - kFrontHighUm;
  return {{kBorderUm, kBorderUm + height_of(caution_strips(paper)) + 2'500},
          {paper.width_um - kBorderUm, std::min(title_foot, front_foot) - 4'500}};
}

void add_list_page(const Paper& paper, const ListTitle& title, std::int64_t number,
                   std::int64_t pages, drawing::Drawing* picture) {
  const Um top = paper.length_um - kBorderUm;
  const Um right = paper.width_um - kBorderUm;
  const TitleRoom room = title_room(paper);
  add_number(paper, number, picture);
  drawing::add_word_box(*picture, {{right - kFrontWideUm, top - kFrontHighUm}, {right, top}},
                        "FRONT");
  add_strips(title_strips(paper, title, number, pages), {room.left, room.top}, picture);
  const drawing::Box body = list_body(paper, title);
  const Um rule = body.high.y + 2'500;
  drawing::add_line(*picture, {kBorderUm, rule}, {right, rule}, {700, {}, 0});
  const std::vector<Strip> caution = caution_strips(paper);
  drawing::add_line(*picture, {kBorderUm, body.low.y - 1'500}, {right, body.low.y - 1'500},
                    {250, {}, 0});
  add_strips(caution, {kBorderUm, kBorderUm + height_of(caution)}, picture);
}

}  // namespace pouncemark::sheets
