#include "engine/plan/card_cells.h"

#include <algorithm>

#include "engine/base/number_text.h"

namespace pouncemark::plan {

using material::Field;

std::string paper_text(Um um) { return short_mm_text(divide_round(um, 500) * 500, 1); }

CardCell needle_cell(const job::Job& job) {
  const material::Value system = job::value_of(job.materials, Field::needle_system);
  const material::Value point = job::value_of(job.materials, Field::needle_point);
  std::string words(
      material::choice_word(material::row_of(Field::needle_point), point.thousandths));
  std::replace(words.begin(), words.end(), '_', ' ');
  if (words == "round") words += " point";
  return {"needle size", std::to_string(job.needle_size), system.words, words};
}

CardCell thread_cell(const job::Job& job) {
  const material::Value label = job::value_of(job.materials, Field::thread_label);
  return {"thread, both", "tex " + std::to_string(job.thread_tex), {}, label.words};
}

const char* kind_words(solve::RowPlace place) {
  switch (place) {
    case solve::RowPlace::side:
      return "side rows";
    case solve::RowPlace::lap:
      return "joining rows";
    case solve::RowPlace::panel:
      return "panel rows";
  }
  return "";
}

}  // namespace pouncemark::plan
