#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "engine/sheets/paper.h"

namespace pouncemark::web {

/// The paper that guides are printed on, and what page 0's bars measured on it. A choice of the
/// page, never of the job.
struct PaperChoice {
  sheets::Paper paper = {"A4", 210'000, 297'000};  ///< ISO 216
  bool is_another_size = false;                    ///< typed, not one of those with a name
  sheets::Paper another;                           ///< the size typed last; no name: none yet
  sheets::Bars measured;                           ///< 0: not yet
};

/// The sides of a sheet of paper as the page names them.
enum class PaperSide { wide, long_way };

Um side_of(const sheets::Paper& paper, PaperSide side);

/// The paper with one side as typed. Problems: as read_paper.
Result<sheets::Paper> with_side(const sheets::Paper& paper, PaperSide side, Um um);

/// Reads a side of a sheet as it was typed. As read_length, but a bare "23.4in" is inches: nothing
/// on a sheet of paper is in from an edge.
Result<Um> read_side(std::string_view text);

/// "A4", "600 × 900".
std::string paper_words(const sheets::Paper& paper);

/// "sheet of A4", "sheets of 600 × 900".
std::string sheets_of(std::int64_t count, const sheets::Paper& paper);

/// How long the bars of page 0 are on the paper chosen, and what they measured.
sheets::PrintCheck print_check_of(const PaperChoice& choice);

/// Takes another paper and gives the sentence for the bar. The typed bars belong to page 0 on the
/// paper it was printed on: another size forgets them.
std::string take_paper(PaperChoice& choice, sheets::Paper paper);

/// Takes one of the papers with a name ("A3"), nothing of a name we do not know.
std::string take_named_paper(PaperChoice& choice, const std::string& name);

/// Turns to a size of its own: the one typed last, else that of the paper chosen until now.
std::string take_another_size(PaperChoice& choice);

}  // namespace pouncemark::web
