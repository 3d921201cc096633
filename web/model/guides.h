#pragma once

#include <cstdint>
#include <set>
#include <string>
#include <vector>

#include "engine/output/guide.h"
#include "engine/output/page_counts.h"
#include "engine/solve/sums.h"
#include "web/model/paper_choice.h"
#include "web/model/solved.h"

namespace pouncemark::web {

using GuideKind = output::Guide;

/// Cards of every kind are counted together, as seam cards.
constexpr GuideKind counted_as(GuideKind kind) {
  return output::is_card(kind) ? GuideKind::seam_card : kind;
}

/// One guide that may be printed: the test page, then each guide of each piece, then the cards of
/// the whole job; cards only where there is a row to sew.
struct GuideLine {
  GuideKind kind = GuideKind::test_page;
  int piece = -1;           ///< index into Results::pieces; -1: a guide of the whole job
  std::string key;          ///< "test_page", "full_face.P1"
  std::string title;        ///< "Full-face, panel 1"
  std::string under;        ///< "FRONT, 24 less 8 left out"
  std::string short_under;  ///< the same where there is no room
  std::int64_t sheets = 0;  ///< 0: it cannot be made
  std::int64_t left_out = 0;
  bool is_ticked_first = false;  ///< until it is ticked by hand
};

/// Every guide of the job with its sheets, for this paper and printer. Page 0 is ticked until the
/// printer is proved; full-face guides are where they are not more than 300 sheets together. Never
/// called while drawing.
std::vector<GuideLine> guide_lines(const Solved& solved, const PaperChoice& choice);

/// Which guides are ticked, as far as a hand has said so.
struct GuideTicks {
  std::set<std::string> on;
  std::set<std::string> off;
};
bool is_ticked(const GuideTicks& ticks, const GuideLine& line);
void tick(GuideTicks& ticks, const GuideLine& line, bool on);

/// Sheets of the ticked guides of one kind, as they are counted; of all.
std::int64_t ticked_sheets(const std::vector<GuideLine>& lines, const GuideTicks& ticks,
                           GuideKind kind);
std::int64_t ticked_sheets(const std::vector<GuideLine>& lines, const GuideTicks& ticks);
/// True where there are drilling strips to choose.
bool has_strips(const std::vector<GuideLine>& lines);
/// Pages left out of the ticked full-face guides.
std::int64_t ticked_left_out(const std::vector<GuideLine>& lines, const GuideTicks& ticks);

/// How the sheets of the ticked guides add up: kind by kind; within one kind.
solve::Sum sheets_sum(const std::vector<GuideLine>& lines, const GuideTicks& ticks);
solve::Sum sheets_sum(const std::vector<GuideLine>& lines, const GuideTicks& ticks, GuideKind kind);

/// The pages of the full-face guide of a piece, for this paper and printer.
output::FullFacePages full_face_pages_of(const Solved& solved, const PaperChoice& choice,
                                         int piece);

/// How the sheets of one guide are counted, where that takes more than counting.
solve::Sum guide_sum(const Solved& solved, const PaperChoice& choice, const GuideLine& line);

/// What a guide that has no map of pages is, in a sentence.
const char* guide_words(GuideKind kind);

/// The order to print these guides, in words for the worker. Page 0 carries no correction: it is
/// what the bars are measured on.
std::string order_words(const std::vector<GuideLine>& lines, const PaperChoice& choice);

/// "Section 1", "Panel 1"; with a small letter within a title.
std::string piece_title(const solve::Piece& piece, bool in_title);

}  // namespace pouncemark::web
