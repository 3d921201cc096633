#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "web/host/printer.h"
#include "web/model/guides.h"
#include "web/model/page_map.h"

namespace pouncemark::web {

/// What stands at the left of the Print stage where there is no room for everything.
enum class PrintPart : std::uint8_t { printer, guides, map };

/// What was worked out for the stage, and for which turn of the bench and which choices.
struct PrintFigures {
  std::string made_for;
  std::vector<GuideLine> lines;
  std::size_t looked_at = 0;  ///< index into lines
  PageMap map;
  std::int64_t sheets = 0;
  std::int64_t left_out = 0;
  solve::Sum all_sum;
  solve::Sum full_face_sum;
  solve::Sum tick_list_sum;
  solve::Sum strip_sum;
  solve::Sum card_sum;
  solve::Sum guide_sum;  ///< of the guide that is looked at
};

/// The Print stage as the page remembers it. Nothing of the job.
struct PrintStage {
  GuideTicks ticks;
  std::string looked_at;  ///< key of the guide that is looked at; empty: the first with pages
  PrintPart part = PrintPart::printer;
  std::string open_sum;  ///< id of the count whose sum is open
  PrintFigures figures;

  bool is_printing = false;
  host::Then then = host::Then::save;
  std::int64_t printed = 0;
  std::int64_t pages = 0;
  std::vector<host::PrintedFile> made;
  std::string sentence;         ///< why nothing was printed
  std::vector<GuideLine> last;  ///< what was asked for, to try again

  bool is_viewing = false;
  std::int64_t view_page = 1;
  std::string viewed;    ///< key of the guide that is shown
  std::string view_job;  ///< the job it was printed from, as saved
};

}  // namespace pouncemark::web
