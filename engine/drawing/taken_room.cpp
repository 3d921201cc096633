#include "engine/drawing/taken_room.h"

#include <algorithm>

namespace pouncemark::drawing {
namespace {

/// No sign of our faces is wider on average: hundredths of the em.
constexpr std::int64_t kWidestSignPercent = 64;

bool touch(const Box& a, const Box& b) {
  return a.low.x <= b.high.x && b.low.x <= a.high.x && a.low.y <= b.high.y && b.low.y <= a.high.y;
}

bool touches_none(const std::vector<Box>& boxes, const Box& box) {
  return std::none_of(boxes.begin(), boxes.end(),
                      [&box](const Box& one) { return touch(one, box); });
}

std::int64_t signs_in(const std::string& words) {
  return std::count_if(words.begin(), words.end(),
                       [](char c) { return (static_cast<unsigned char>(c) & 0xc0) != 0x80; });
}

Spot turned(Spot spot, int quarter_turns) {
  switch (quarter_turns & 3) {
    case 1:
      return {-spot.y, spot.x};
    case 2:
      return {-spot.x, -spot.y};
    case 3:
      return {spot.y, -spot.x};
    default:
      return spot;
  }
}

/// A box round each straight step, so that a long outline takes its edges and not its inside; a
/// curve takes the box of its ends and control points.
void take_steps(const std::vector<PathStep>& steps, std::vector<Box>* boxes) {
  Spot at;
  Spot start;
  for (const PathStep& step : steps) {
    if (step.step == Step::move) {
      at = start = step.to;
      continue;
    }
    const Spot to = step.step == Step::close ? start : step.to;
    Box box{{std::min(at.x, to.x), std::min(at.y, to.y)},
            {std::max(at.x, to.x), std::max(at.y, to.y)}};
    if (step.step == Step::curve) {
      for (const Spot& spot : {step.a, step.b}) {
        box.low = {std::min(box.low.x, spot.x), std::min(box.low.y, spot.y)};
        box.high = {std::max(box.high.x, spot.x), std::max(box.high.y, spot.y)};
      }
    }
    boxes->push_back(box);
    at = to;
  }
}

void take_area(const std::vector<PathStep>& steps, std::vector<Box>* boxes) {
  if (steps.empty()) return;
  Box box{steps[0].to, steps[0].to};
  for (const PathStep& step : steps) {
    if (step.step == Step::close) continue;
    box.low = {std::min(box.low.x, step.to.x), std::min(box.low.y, step.to.y)};
    box.high = {std::max(box.high.x, step.to.x), std::max(box.high.y, step.to.y)};
  }
  boxes->push_back(box);
}

}  // namespace

Box box_of(const Text& text) {
  const std::int64_t wide = signs_in(text.words) * text.size_um * kWidestSignPercent / 100;
  const std::int64_t left = text.align == Align::left     ? 0
                            : text.align == Align::centre ? -wide / 2
                                                          : -wide;
  const Spot a = turned({left, -text.size_um / 4}, text.quarter_turns);
  const Spot b = turned({left + wide, text.size_um * 4 / 5}, text.quarter_turns);
  return {{text.at.x + std::min(a.x, b.x), text.at.y + std::min(a.y, b.y)},
          {text.at.x + std::max(a.x, b.x), text.at.y + std::max(a.y, b.y)}};
}

void TakenRoom::take(const Drawing& picture, std::size_t first, std::size_t last) {
  const std::size_t end = std::min(last, picture.items.size());
  for (std::size_t i = first; i < end; ++i) {
    const Item& item = picture.items[i];
    if (const auto* text = std::get_if<Text>(&item)) {
      words_.push_back(box_of(*text));
    } else if (const auto* stroke = std::get_if<Stroke>(&item)) {
      take_steps(stroke->steps, &lines_);
    } else if (const auto* fill = std::get_if<Fill>(&item)) {
      take_area(fill->steps, &lines_);
    }
  }
}

bool TakenRoom::is_free(const Box& box) const {
  return is_free_of_words(box) && touches_none(lines_, box);
}

bool TakenRoom::is_free_of_words(const Box& box) const { return touches_none(words_, box); }

}  // namespace pouncemark::drawing
