#include "web/model/paper_choice.h"

#include <utility>

#include "engine/base/length_entry.h"
#include "engine/base/number_text.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

std::string size_name(Um width_um, Um length_um) {
  return exact_mm_text(width_um) + "x" + exact_mm_text(length_um);
}

}  // namespace

Um side_of(const sheets::Paper& paper, PaperSide side) {
  return side == PaperSide::wide ? paper.width_um : paper.length_um;
}

Result<sheets::Paper> with_side(const sheets::Paper& paper, PaperSide side, Um um) {
  return sheets::read_paper(side == PaperSide::wide ? size_name(um, paper.length_um)
                                                    : size_name(paper.width_um, um));
}

Result<Um> read_side(std::string_view text) {
  const Result<Um> read = read_length(text);
  if (read || read.problem().code != ProblemCode::length_two_readings) return read;
  std::string inches(text.substr(0, text.rfind("in")));
  return read_length(inches + "inch");
}

std::string paper_words(const sheets::Paper& paper) {
  if (paper.name != size_name(paper.width_um, paper.length_um)) return paper.name;
  return short_mm_text(paper.width_um, 1) + " " + kTimes + " " + short_mm_text(paper.length_um, 1);
}

std::string sheets_of(std::int64_t count, const sheets::Paper& paper) {
  return (count == 1 ? "sheet of " : "sheets of ") + paper_words(paper);
}

sheets::PrintCheck print_check_of(const PaperChoice& choice) {
  return {sheets::bars_of(choice.paper), choice.measured};
}

std::string take_paper(PaperChoice& choice, sheets::Paper paper) {
  const sheets::Paper was = std::exchange(choice.paper, std::move(paper));
  const std::string now = "Paper: " + paper_words(choice.paper);
  const sheets::Paper& is = choice.paper;
  if (choice.is_another_size) choice.another = is;
  if (is.width_um == was.width_um && is.length_um == was.length_um) return now;
  const sheets::Bars typed = std::exchange(choice.measured, {});
  if (typed.across_um == 0 && typed.along_um == 0) {
    return now + ". Print page 0 on it and measure both bars";
  }
  return now + ". Prove the printer again: the bars typed for " + paper_words(was) +
         " are forgotten";
}

std::string take_named_paper(PaperChoice& choice, const std::string& name) {
  Result<sheets::Paper> paper = sheets::read_paper(name);
  if (!paper) return {};
  choice.is_another_size = false;
  return take_paper(choice, std::move(paper.value()));
}

std::string take_another_size(PaperChoice& choice) {
  choice.is_another_size = true;
  sheets::Paper paper = choice.another;
  if (paper.name.empty()) {
    paper = choice.paper;
    paper.name = size_name(paper.width_um, paper.length_um);
  }
  return take_paper(choice, std::move(paper));
}

}  // namespace pouncemark::web
