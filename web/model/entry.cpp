#include "web/model/entry.h"

#include <algorithm>

#include "engine/base/length_entry.h"
#include "engine/base/number_text.h"
#include "web/model/words.h"

namespace pouncemark::web {

Entry read_entry(std::string_view text, Limits limits) {
  Entry entry;
  entry.text = std::string(text);
  const Result<Um> read = read_length(text);
  if (!read) {
    // A text as long as a page would hide the bench behind its own sentence.
    Problem problem = read.problem();
    problem.found = shortened(problem.found, 40);
    entry.sentence = with_capital(problem_sentence(problem));
  } else if (*read < limits.least) {
    entry.sentence =
        exact_mm_text(*read) + " is too little: give " + exact_mm_text(limits.least) + " or more.";
  } else if (*read > limits.most) {
    entry.sentence =
        exact_mm_text(*read) + " is too much: give " + exact_mm_text(limits.most) + " or less.";
  } else {
    entry.um = *read;
  }
  return entry;
}

Um stepped(Um um, Um by, Limits limits) { return std::clamp(um + by, limits.least, limits.most); }

}  // namespace pouncemark::web
