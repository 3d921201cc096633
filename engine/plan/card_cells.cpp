#include "engine/plan/card_cells.h"

#include <algorithm>
#include <vector>

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

std::string side_of(const piece::Edge& edge, const piece::Extent& extent) {
  const Vec2 middle = (edge.line.from + edge.line.to) * 0.5;
  const double wide = extent.high.x - extent.low.x;
  const double high = extent.high.y - extent.low.y;
  const double x = (2 * middle.x - extent.low.x - extent.high.x) * high;
  const double y = (2 * middle.y - extent.low.y - extent.high.y) * wide;
  if (x * x >= y * y) return x < 0 ? "left" : "right";
  return y < 0 ? "bottom" : "top";
}

std::string fly_side_words(const piece::Outline& outline, bool is_face_down) {
  const piece::Extent extent = piece::extent(outline);
  std::vector<std::string> sides;
  for (const piece::Edge& edge : outline.edges) {
    if (edge.role != piece::EdgeRole::fly_side) continue;
    std::string side = side_of(edge, extent);
    if (is_face_down && side == "left") {
      side = "right";
    } else if (is_face_down && side == "right") {
      side = "left";
    }
    if (std::find(sides.begin(), sides.end(), side) == sides.end()) sides.push_back(side);
  }
  std::string words;
  for (const std::string& side : sides) words += (words.empty() ? "the " : " and the ") + side;
  return "FLY SIDE - DO NOT SEW: " + words + " edge";
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
