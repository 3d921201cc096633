#include "web/panels/how_layout.h"

#include <algorithm>
#include <cstddef>

namespace pouncemark::web {
namespace {

constexpr float kBetweenAnswers = 14;
constexpr float kAbove = 8;  ///< from the rule over a question to its buttons
constexpr float kBelow = 5;

bool is_large() { return text_size() == TextSize::large; }

std::vector<std::string> broken_lines(const Brush& brush, const std::vector<std::string>& words,
                                      float width) {
  std::vector<std::string> lines;
  for (const std::string& one : words) {
    for (std::string& line : broken(brush, one, width, Role::second_line, false)) {
      lines.push_back(std::move(line));
    }
  }
  return lines;
}

float box_width() { return is_large() ? 116.0f : 92.0f; }

/// The least width of every answer and box of a question, in their order.
std::vector<float> least_widths(const Brush& brush, const Asked& asked) {
  std::vector<float> widths;
  for (const Answer& one : asked.answers) widths.push_back(button_width(brush, one.words));
  for (const Measure measure : asked.boxes) {
    widths.push_back(
        std::max(box_width(), brush.width_of(box_words(measure), Role::second_line, false) * 0.6f));
  }
  return widths;
}

/// Where each stands across `width`, row by row: as many side by side as have room, those of a row
/// sharing what is left over. `top` is the number of the row.
std::vector<Area> cells_across(const std::vector<float>& least, float width) {
  std::vector<Area> cells;
  std::size_t first = 0;
  float row = 0;
  while (first < least.size()) {
    std::size_t end = first;
    float used = 0;
    while (end < least.size() && (end == first || used + kBetweenAnswers + least[end] <= width)) {
      used += least[end] + (end == first ? 0 : kBetweenAnswers);
      ++end;
    }
    const float spare = std::max(0.0f, width - used) / static_cast<float>(end - first);
    float left = 0;
    for (; first < end; ++first) {
      cells.push_back(area_at(left, row, least[first] + spare, 0));
      left += least[first] + spare + kBetweenAnswers;
    }
    row += 1;
  }
  return cells;
}

AnswerPlace place_answer(const Brush& brush, const Asked& asked, const Answer& one,
                         const Area& cell) {
  AnswerPlace place;
  const float width = std::min(button_width(brush, one.words), cell.width());
  place.button = area_at(cell.left, cell.top, width, button_height());
  place.lines_top = place.button.bottom;
  const float beside = cell.right - place.button.right - 12;
  if (asked.question == Question::measured_from && beside >= 90) {
    place.picture =
        area_at(place.button.right + 12, cell.top, std::min(beside, 170.0f), place.button.height());
  } else if (asked.question == Question::corners) {
    place.picture = area_at(cell.left, place.button.bottom + 8, std::min(cell.width(), 150.0f), 84);
    place.lines_top = place.picture.bottom;
  }
  place.lines = broken_lines(brush, one.follows, cell.width());
  if (!one.stop.empty()) {
    const std::string words = (one.can_be_had ? "STOP: " : "Not here: ") + one.stop;
    place.stop_lines = broken(brush, words, cell.width(), Role::second_line, true);
  }
  return place;
}

AnswerPlace place_box(const Brush& brush, Measure measure, const Area& cell) {
  AnswerPlace place;
  place.button = area_at(cell.left, cell.top, box_width(), button_height());
  place.lines_top = place.button.bottom;
  place.lines = broken_lines(brush, {box_words(measure)}, cell.width());
  return place;
}

float bottom_of(const Brush& brush, const AnswerPlace& place) {
  const auto lines = static_cast<float>(place.lines.size() + place.stop_lines.size());
  return place.lines_top + lines * brush.pitch(Role::second_line) + 4;
}

}  // namespace

float question_column() { return is_large() ? 204.0f : 164.0f; }

const char* box_words(Measure measure) {
  if (measure == Measure::fold_radius) return "inside radius of the fold";
  return measure == Measure::flange ? "flange, from the edge to the tube"
                                    : "clear of the hinge row";
}

QuestionPlace place_question(const Brush& brush, const Asked& asked, float width) {
  QuestionPlace place;
  const float column = question_column();
  place.words = broken(brush, asked.words, column - 16, Role::text, true);
  if (!asked.of.empty()) {
    place.of = broken(brush, asked.of, column - 16, Role::second_line, false);
  }
  const float answers_width = width - column;
  const std::vector<Area> cells = cells_across(least_widths(brush, asked), answers_width);
  const std::size_t answers = asked.answers.size();
  float row = 0;
  float top = kAbove;
  float bottom = top;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    if (cells[i].top > row) top = bottom + 4;
    row = cells[i].top;
    const Area cell = area_at(column + cells[i].left, top, cells[i].width(), 0);
    const bool is_answer = i < answers;
    const AnswerPlace one = is_answer ? place_answer(brush, asked, asked.answers[i], cell)
                                      : place_box(brush, asked.boxes[i - answers], cell);
    bottom = std::max(bottom, bottom_of(brush, one));
    (is_answer ? place.answers : place.boxes).push_back(one);
  }
  const float words = kAbove + 8 +
                      static_cast<float>(place.words.size()) * brush.pitch(Role::text) +
                      static_cast<float>(place.of.size()) * brush.pitch(Role::second_line);
  place.height = std::max(bottom, words) + kBelow;
  return place;
}

std::size_t questions_shown(const Brush& brush, const std::vector<Asked>& asked, std::size_t first,
                            float width, float room) {
  std::size_t count = 0;
  float height = 0;
  for (std::size_t i = first; i < asked.size(); ++i) {
    height += place_question(brush, asked[i], width).height;
    if (count > 0 && height > room) break;
    ++count;
  }
  return count;
}

}  // namespace pouncemark::web
