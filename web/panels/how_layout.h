#pragma once

#include <string>
#include <vector>

#include "web/panels/page.h"

namespace pouncemark::web {

/// Where one answer stands within its question, from the question's upper left corner.
struct AnswerPlace {
  Area button;
  Area picture;  ///< empty where it has none
  std::vector<std::string> lines;
  std::vector<std::string> stop_lines;
  float lines_top = 0;
};

/// Where a question and its answers stand, from its own upper left corner.
struct QuestionPlace {
  std::vector<std::string> words;
  std::vector<std::string> of;
  std::vector<AnswerPlace> answers;
  std::vector<AnswerPlace> boxes;  ///< `button` is the box, `lines` say what it measures
  float height = 0;
};

/// What a box of the slip measures, in words.
const char* box_words(Measure measure);

QuestionPlace place_question(const Brush& brush, const Asked& asked, float width);

/// Which questions stand on the slip, from `first`, in `room` pixels of height: at least one.
std::size_t questions_shown(const Brush& brush, const std::vector<Asked>& asked, std::size_t first,
                            float width, float room);

/// Width of the questions' own column.
float question_column();

}  // namespace pouncemark::web
