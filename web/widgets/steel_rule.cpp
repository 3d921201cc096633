#include "web/widgets/steel_rule.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "engine/base/number_text.h"

namespace pouncemark::web {
namespace {

float stop_width() { return text_size() == TextSize::large ? 60.0f : 46.0f; }
constexpr float kStopHeight = 38;
constexpr float kStopUnderRule = 9;  ///< the tip stands this far under the rule's edge

void ticks(const Brush& brush, const Area& area, const RuleLook& look) {
  const auto first = static_cast<int>(std::ceil(look.from_mm / look.tick_every));
  for (int i = first;; ++i) {
    const int mm = i * look.tick_every;
    const float x = area.left + static_cast<float>((mm - look.from_mm) * look.px_per_mm);
    if (x > area.right + 0.1f) break;
    const float share = mm % look.figure_every == 0       ? 0.5f
                        : mm % (look.tick_every * 2) == 0 ? 0.36f
                                                          : 0.22f;
    brush.line({x, area.top}, {x, area.top + area.height() * share}, kEngraving, 1.2f);
  }
}

void figures(const Brush& brush, const Area& area, const RuleLook& look) {
  const auto first = static_cast<int>(std::ceil(look.from_mm / look.figure_every));
  for (int i = first;; ++i) {
    const int mm = i * look.figure_every;
    const float x = area.left + static_cast<float>((mm - look.from_mm) * look.px_per_mm);
    if (x > area.right + 0.1f) break;
    const std::string figure = exact_mm_text(static_cast<std::int64_t>(mm) * 1000);
    const float half = brush.width_of(figure, Role::second_line, false) / 2;
    const float low = area.left + half + 3;
    const float high = area.right - half - 3;
    if (low > high) break;
    brush.words({std::clamp(x, low, high), area.bottom - 4}, figure,
                {Role::second_line, false, kEngraving, Side::middle});
  }
}

}  // namespace

void steel_rule(const Brush& brush, const Area& area, const RuleLook& look) {
  brush.fill(area, kSteel);
  brush.frame(area, kEngraving, 1.2f);
  ticks(brush, area, look);
  figures(brush, area, look);
}

Area rule_stop_area(Spot point) {
  const float half = stop_width() / 2;
  return {point.x - half, point.y + kStopUnderRule - 9, point.x + half,
          point.y + kStopUnderRule + kStopHeight};
}

void rule_stop(const Brush& brush, Spot point) {
  const Area area = rule_stop_area(point);
  const float y = point.y + kStopUnderRule;
  const std::array<Spot, 3> tip = {Spot{point.x, y - 9}, Spot{point.x + 12, y + 3},
                                   Spot{point.x - 12, y + 3}};
  brush.shape(tip, kPen);
  brush.fill({area.left, y + 3, area.right, area.bottom}, kPen);
  for (const float by : {-9.0f, 0.0f, 9.0f}) {
    brush.line({point.x + by, y + 13}, {point.x + by, area.bottom - 9}, kWhite, 2.6f);
  }
}

}  // namespace pouncemark::web
