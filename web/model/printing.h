#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/geometry/units.h"
#include "web/model/solved.h"

namespace pouncemark::web {

/// The four cut faces as bytes, kept by the page.
struct PrintFaces {
  std::string main_regular;
  std::string main_bold;
  std::string wide_regular;
  std::string wide_bold;
};

enum class GuideKind { test_page, full_face };

/// What to print, and what page 0's bars measured (0: not measured yet).
struct PrintWish {
  GuideKind guide = GuideKind::test_page;
  int piece = -1;
  Um bar_across_um = 0;
  Um bar_along_um = 0;
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

/// Makes the PDF of one guide on A4. Works from what was solved; never called while drawing.
Printed printed(const Solved& solved, const PrintWish& wish, const PrintFaces& faces);

/// How long the bars of page 0 are on A4, micrometres.
inline constexpr Um kBarAcrossUm = 180'000;
inline constexpr Um kBarAlongUm = 200'000;

/// What a bar says about the printer: "short 0.4 %", "long 0.3 %", "true", "not measured", or
/// that the sheet is of no use.
std::string bar_words(Um nominal_um, Um measured_um);

/// Over 2 % out: no guide may be printed from it.
bool bar_is_refused(Um nominal_um, Um measured_um);

/// Both bars of page 0 were measured and neither is refused.
bool printer_is_proved(Um across_um, Um along_um);

}  // namespace pouncemark::web
