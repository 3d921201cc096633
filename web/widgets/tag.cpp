#include "web/widgets/tag.h"

#include <array>

namespace pouncemark::web {

float tag_height() { return text_size() == TextSize::large ? 34 : 26; }

Colour tag_colour(TagKind kind) {
  if (kind == TagKind::stop) return kStop;
  return kind == TagKind::warn ? kWarn : kNote;
}

namespace {

const char* word_of(TagKind kind) {
  return kind == TagKind::stop ? "STOP" : kind == TagKind::warn ? "WARN" : "NOTE";
}

}  // namespace

float tag_width(const Brush& brush, TagKind kind) {
  return brush.width_of(word_of(kind), Role::second_line, true) + tag_height() * 0.55f + 24;
}

float tag(const Brush& brush, Spot at, TagKind kind) {
  const char* word = word_of(kind);
  const float height = tag_height();
  const float cut = height * 0.32f;
  const float width = tag_width(brush, kind);
  const Colour colour = tag_colour(kind);
  const float right = at.x + width;
  const float bottom = at.y + height;
  const std::array<Spot, 6> corners = {Spot{at.x + cut, at.y},   Spot{right, at.y},
                                       Spot{right, bottom},      Spot{at.x + cut, bottom},
                                       Spot{at.x, bottom - cut}, Spot{at.x, at.y + cut}};
  brush.shape(corners, kind == TagKind::stop ? colour : kind == TagKind::warn ? kWarnWash : kPaper);
  brush.outline(corners, colour, 2, true);
  const bool solid = kind == TagKind::stop;
  brush.disc({at.x + cut + 3, at.y + height / 2}, 3.4f, solid ? kPaper : colour);
  if (kind == TagKind::warn) {
    for (int i = 0; i < 3; ++i) {
      const float x = right - 4 - static_cast<float>(i) * 5;
      brush.line({x, at.y + 2}, {x, bottom - 2}, colour, 2.4f);
    }
  }
  brush.words({at.x + cut + 13, at.y + height / 2 + brush.rise(Role::second_line) / 2}, word,
              {Role::second_line, true, solid ? kWhite : colour});
  return right;
}

}  // namespace pouncemark::web
