#pragma once

#include <string>

#include "engine/drawing/drawing.h"
#include "engine/job/job.h"
#include "engine/sheets/left_out.h"
#include "engine/sheets/page_cut.h"
#include "engine/solve/results.h"

namespace pouncemark::sheets {

/// What a set of pages of one piece is made from.
struct GuideSet {
  const job::Job& job;
  const solve::Results& results;
  int piece = 0;
  Paper paper;
  PageCut cut;
  std::string checksum;  ///< first 12 hex digits over the job as saved
  LeftOut left_out = {};
};

/// "section 1" or "panel 1" as it is said.
std::string spoken_name(const solve::Piece& piece);

/// One page of the full-face guide, FRONT: the piece's edges, rows and points within the page's
/// window, distances from the datum, tape lines, registration marks, page map, check bars both
/// ways, title and caution. Micrometres of the paper from its lower left corner, before correction.
drawing::Drawing full_face_page(const GuideSet& set, const PageWindow& page);

}  // namespace pouncemark::sheets
