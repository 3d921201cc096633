#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/geometry/units.h"
#include "web/model/paper_choice.h"
#include "web/model/solved.h"

namespace pouncemark::web {

/// The four cut faces as bytes, kept by the page.
struct PrintFaces {
  std::string main_regular;
  std::string main_bold;
  std::string wide_regular;
  std::string wide_bold;
};

enum class GuideKind { test_page, full_face, tick_list };

/// What to print. Paper and bars are those of the page's choice when it is printed.
struct PrintWish {
  GuideKind guide = GuideKind::test_page;
  int piece = -1;
};

struct PrintedFile {
  std::string name;
  std::string bytes;
};

/// The files, or the sentence that says why there are none.
struct Printed {
  std::vector<PrintedFile> files;
  std::string sentence;
};

/// Makes the PDF of one guide on the paper chosen. Works from what was solved; never called while
/// drawing.
Printed printed(const Solved& solved, const PaperChoice& choice, const PrintWish& wish,
                const PrintFaces& faces);

/// Sheets of paper that the guides of each piece take, in the order of the pieces; 0: the guide
/// cannot be made.
struct SheetCounts {
  std::vector<std::int64_t> full_face;
  std::vector<std::int64_t> tick_list;
};

/// Counts the sheets on a paper. Never called while drawing.
SheetCounts sheet_counts(const Solved& solved, const sheets::Paper& paper);

/// The sheets of all pieces together.
std::int64_t together(const std::vector<std::int64_t>& sheets);

/// Every sheet of paper: page 0 and each guide of each piece once.
std::int64_t all_sheets(const SheetCounts& counts);

/// What a bar says about the printer: "short 0.4 %", "long 0.3 %", "true", "not measured", or
/// that the sheet is of no use.
std::string bar_words(Um nominal_um, Um measured_um);

/// Over 2 % out: no guide may be printed from it.
bool bar_is_refused(Um nominal_um, Um measured_um);

/// A bar of page 0 was measured and is refused.
bool printer_is_refused(const PaperChoice& choice);

/// Both bars of page 0 were measured and neither is refused.
bool printer_is_proved(const PaperChoice& choice);

/// What a bar more than 0.25 % out means on a row of 2400, and what is done about it; empty where
/// both bars are nearer. The worse of the two is said. Only of a printer that is proved.
std::string bar_caution(const PaperChoice& choice);

}  // namespace pouncemark::web
