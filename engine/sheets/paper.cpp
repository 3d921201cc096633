#include "engine/sheets/paper.h"

#include <algorithm>
#include <array>

#include "engine/base/length_entry.h"
#include "engine/base/number_text.h"

namespace pouncemark::sheets {
namespace {

constexpr Um kLongestUm = 5'000'000;
constexpr Um kLeastWidthUm = 100'000;
constexpr Um kLeastLengthUm = 140'000;
/// The bar along stands above the caution and below the bar across.
constexpr Um kRoomUnderAndOver = 30'000;

struct Known {
  const char* name;
  Um width_um;
  Um length_um;
};
constexpr std::array kKnown = {Known{"A4", 210'000, 297'000}, Known{"A3", 297'000, 420'000},
                               Known{"Letter", 215'900, 279'400},
                               Known{"Tabloid", 279'400, 431'800}};

Um largest_bar(Um room) { return std::min<Um>(200'000, room / 20'000 * 20'000); }

Result<bool> within_two_percent(Um measured, Um nominal, const char* way) {
  const Um off = measured > nominal ? measured - nominal : nominal - measured;
  if (off * 1000 <= 20 * nominal) return true;
  return Problem{ProblemCode::paper_bars_out, std::string("the bar ") + way,
                 exact_mm_text(measured) + " of " + exact_mm_text(nominal),
                 exact_mm_text(nominal * 98 / 100) + " to " + exact_mm_text(nominal * 102 / 100)};
}

}  // namespace

Result<Paper> read_paper(const std::string& words) {
  for (const Known& known : kKnown) {
    if (words == known.name) return Paper{known.name, known.width_um, known.length_um};
  }
  const Problem unknown{ProblemCode::paper_unknown, {}, "\"" + words.substr(0, 40) + "\"", {}};
  const std::size_t times = words.find('x');
  if (times == std::string::npos) return unknown;
  const Result<std::int64_t> width = read_decimal_mm(words.substr(0, times));
  const Result<std::int64_t> length = read_decimal_mm(words.substr(times + 1));
  if (!width || !length || *width > kLongestUm || *length > kLongestUm) return unknown;
  if (*width < kLeastWidthUm || *length < kLeastLengthUm) {
    return Problem{ProblemCode::paper_too_small, {}, words, "at least 100x140"};
  }
  return Paper{words, *width, *length};
}

Bars bars_of(const Paper& paper) {
  return {largest_bar(paper.width_um - 2 * kBorderUm),
          largest_bar(paper.length_um - 2 * kBorderUm - kRoomUnderAndOver)};
}

Result<PrintCheck> print_check(const Paper& paper, const Bars& measured) {
  PrintCheck check;
  check.nominal = bars_of(paper);
  check.measured = measured;
  if (check.measured.across_um == 0) check.measured.across_um = check.nominal.across_um;
  if (check.measured.along_um == 0) check.measured.along_um = check.nominal.along_um;
  const auto across =
      within_two_percent(check.measured.across_um, check.nominal.across_um, "across");
  if (!across) return across.problem();
  const auto along = within_two_percent(check.measured.along_um, check.nominal.along_um, "along");
  if (!along) return along.problem();
  return check;
}

}  // namespace pouncemark::sheets
