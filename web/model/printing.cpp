#include "web/model/printing.h"

#include <cstddef>
#include <cstdlib>
#include <numeric>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/output/output.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

output::Guide guide_of(GuideKind kind) {
  switch (kind) {
    case GuideKind::test_page:
      return output::Guide::test_page;
    case GuideKind::full_face:
      return output::Guide::full_face;
    case GuideKind::tick_list:
      return output::Guide::tick_list;
  }
  return output::Guide::test_page;
}

}  // namespace

Printed printed(const Solved& solved, const PaperChoice& choice, const PrintWish& wish,
                const PrintFaces& faces) {
  output::PrintOptions options;
  options.guide = guide_of(wish.guide);
  options.paper = choice.paper.name;
  options.piece = wish.piece;
  // Page 0 is always printed as it is: it is what the bars are measured on.
  if (wish.guide != GuideKind::test_page) {
    options.bar_across_um = choice.measured.across_um;
    options.bar_along_um = choice.measured.along_um;
  }
  Printed made;
  auto files =
      output::print(solved.job, solved.results, options,
                    {faces.main_regular, faces.main_bold, faces.wide_regular, faces.wide_bold});
  if (!files) {
    made.sentence = with_capital(problem_sentence(files.problem()));
    return made;
  }
  for (output::NamedBytes& file : files.value()) {
    made.files.push_back(PrintedFile{std::move(file.name), std::move(file.bytes)});
  }
  return made;
}

SheetCounts sheet_counts(const Solved& solved, const sheets::Paper& paper) {
  SheetCounts counts;
  const auto& pieces = solved.results.pieces;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const auto full_face =
        output::full_face_grid(solved.job, solved.results, static_cast<int>(i), paper.name);
    const auto tick_list =
        output::tick_list_pages(solved.job, solved.results, static_cast<int>(i), paper.name);
    counts.full_face.push_back(full_face ? full_face->sheets() : 0);
    counts.tick_list.push_back(tick_list ? *tick_list : 0);
  }
  return counts;
}

std::int64_t together(const std::vector<std::int64_t>& sheets) {
  return std::accumulate(sheets.begin(), sheets.end(), std::int64_t{0});
}

std::int64_t all_sheets(const SheetCounts& counts) {
  return 1 + together(counts.full_face) + together(counts.tick_list);
}

bool bar_is_refused(Um nominal_um, Um measured_um) {
  return std::abs(measured_um - nominal_um) * 1000 > 20 * nominal_um;
}

std::string bar_words(Um nominal_um, Um measured_um) {
  if (measured_um == 0) return "not measured";
  const Um away = measured_um - nominal_um;
  if (bar_is_refused(nominal_um, measured_um)) return "over 2 % out";
  // Per mille of the bar, as a percentage with one decimal.
  const std::int64_t tenths = divide_round(std::abs(away) * 1000, nominal_um);
  if (tenths == 0) return "true";
  return (away < 0 ? "short " : "long ") + mm_text(tenths * 100, 1) + " %";
}

bool printer_is_refused(const PaperChoice& choice) {
  const auto [nominal, measured] = print_check_of(choice);
  return (measured.across_um != 0 && bar_is_refused(nominal.across_um, measured.across_um)) ||
         (measured.along_um != 0 && bar_is_refused(nominal.along_um, measured.along_um));
}

bool printer_is_proved(const PaperChoice& choice) {
  return choice.measured.across_um != 0 && choice.measured.along_um != 0 &&
         !printer_is_refused(choice);
}

std::string bar_caution(const PaperChoice& choice) {
  constexpr Um kRow = 2'400'000;
  const auto [nominal, measured] = print_check_of(choice);
  Um worst = 0;
  std::string words;
  const auto take = [&](Um is, Um should_be) {
    const Um away = std::abs(is - should_be);
    const Um on_row = divide_round(kRow * away, should_be);
    if (away * 10'000 <= 25 * should_be || on_row <= worst) return;
    worst = on_row;
    words = bar_words(should_be, is);
  };
  take(measured.across_um, nominal.across_um);
  take(measured.along_um, nominal.along_um);
  if (worst == 0) return {};
  return "Your printer is " + words + ": " + mm_text(worst, 1) +
         " on a row of 2400. Guides are corrected by as much; use them from this printer and paper "
         "only.";
}

}  // namespace pouncemark::web
