#pragma once

#include <cstdint>
#include <string>

#include "engine/base/result.h"
#include "engine/job/job.h"
#include "engine/output/guide.h"
#include "engine/sheets/left_out.h"
#include "engine/sheets/paper.h"
#include "engine/solve/results.h"
#include "engine/solve/sums.h"

/// How many sheets of paper a guide takes, told without drawing it.
namespace pouncemark::output {

/// The pages of the full-face guide of one piece: the grid they are numbered in, and those of it
/// that are left out because nothing crosses them.
struct FullFacePages {
  sheets::PageCut cut;
  sheets::LeftOut left_out;

  std::int64_t all() const { return cut.pages(); }
  std::int64_t out() const { return sheets::count_of(left_out); }
  std::int64_t sheets() const { return all() - out(); }
};

/// The pages on a paper, for a printer whose bars measured so. A grid of more than `most` pages is
/// not looked at page by page: none is left out.
FullFacePages full_face_grid(const job::Job& job, const solve::Results& results, int piece,
                             const sheets::Paper& paper, const sheets::PrintCheck& check,
                             std::int64_t most);

/// The same on "A4", for a true printer. Problem: paper_unknown, paper_too_small.
Result<FullFacePages> full_face_grid(const job::Job& job, const solve::Results& results, int piece,
                                     const std::string& paper);

/// How the sheets of a full-face guide were counted.
solve::Sum full_face_sum(const FullFacePages& pages, const sheets::Paper& paper,
                         const solve::Piece& piece);

/// True, or the problem row_too_many_points.
Result<bool> few_enough_points(const solve::Results& results, const solve::Piece& piece);

/// Pages of the grid of one piece on a paper ("A4"), those left out counted too.
Result<std::int64_t> full_face_pages(const solve::Piece& piece, const std::string& paper);

/// How many rows of guide points a piece has, and how many lists serve them on a tick list: equal
/// rows share one.
struct SharedLists {
  std::int64_t rows = 0;
  std::int64_t lists = 0;
};
SharedLists tick_list_rows(const solve::Results& results, const solve::Piece& piece);

/// Pages the tick list of one piece (index into Results::pieces) takes on a paper. Problems:
/// paper_unknown, paper_too_small, row_too_many_points.
Result<std::int64_t> tick_list_pages(const job::Job& job, const solve::Results& results, int piece,
                                     const std::string& paper);

/// The strips to drill by, and the sheets they take on a paper for a printer whose bars measured
/// so.
struct StripPages {
  std::int64_t strips = 0;
  std::int64_t pages = 0;
};
StripPages drilling_strip_pages(const job::Job& job, const solve::Results& results,
                                const sheets::Paper& paper, const sheets::PrintCheck& check);

/// The cards of one kind, of one piece or of the whole job, and the pages they take on a paper.
/// Problems: paper_unknown, paper_too_small.
struct CardPages {
  std::int64_t cards = 0;
  std::int64_t pages = 0;
};
Result<CardPages> card_pages(const solve::Results& results, Guide guide, int piece,
                             const std::string& paper);

}  // namespace pouncemark::output
