#include "engine/drawing/symbols.h"

#include "engine/base/insist.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

namespace pouncemark::drawing {
namespace {

constexpr std::int64_t kThinUm = 200;
constexpr std::int64_t kFrameUm = 250;
constexpr std::int64_t kRegistrationReachUm = 4500;
constexpr std::int64_t kStapleBarUm = 600;
constexpr std::int64_t kStapleLegRadiusUm = 900;
constexpr std::int64_t kHingeLineUm = 800;
constexpr std::int64_t kHingeBarReachUm = 3500;
constexpr std::int64_t kHingeBarUm = 350;
constexpr std::int64_t kFlyToothUm = 5000;
constexpr std::int64_t kFlyToothDeepUm = 2500;
constexpr std::int64_t kFlyLineUm = 350;
constexpr std::int64_t kWordBoxLineUm = 500;
constexpr std::int64_t kTopArrowPenUm = 500;
constexpr std::int64_t kTopWordSizeUm = 3800;
constexpr double kTopWordAwayUm = 2500.0;

// Height of capitals and figures in the main face, thousandths of the em.
// source: B612 Regular 1.008, top of H at 1520 of 2000 units.
constexpr std::int64_t kCapitalPermille = 760;

Pen solid_pen(std::int64_t width_um) { return Pen{width_um, {}, 0}; }

// The part of the bar from `from` to `to` along its length and from `low` to `high` in thickness.
Box part_of(const Bar& bar, std::int64_t from, std::int64_t to, std::int64_t low,
            std::int64_t high) {
  if (bar.lie == Lie::across) {
    return {{bar.low.x + from, bar.low.y + low}, {bar.low.x + to, bar.low.y + high}};
  }
  return {{bar.low.x + low, bar.low.y + from}, {bar.low.x + high, bar.low.y + to}};
}

double distance(Spot from, Spot to) {
  const double x = static_cast<double>(to.x - from.x);
  const double y = static_cast<double>(to.y - from.y);
  return std::sqrt(x * x + y * y);
}

void add_middle_word(Drawing& drawing, const Box& box, std::string_view words, int grey_permille) {
  const std::int64_t size = boxed_word_size_um(box);
  const std::int64_t foot = (box.high.y - box.low.y - size * kCapitalPermille / 1000) / 2;
  Text text;
  text.at = {box.low.x + (box.high.x - box.low.x) / 2, box.low.y + foot};
  text.size_um = size;
  text.weight = Weight::bold;
  text.align = Align::centre;
  text.grey_permille = grey_permille;
  text.words = std::string(words);
  add_text(drawing, std::move(text));
}

}  // namespace

void add_solid_bar(Drawing& drawing, const Bar& bar) {
  INSIST(bar.length_um > 0 && bar.thick_um > 0);
  add_solid(drawing, part_of(bar, 0, bar.length_um, 0, bar.thick_um));
}

void add_check_bar(Drawing& drawing, const Bar& bar) {
  const std::int64_t length = bar.length_um;
  const std::int64_t thick = bar.thick_um;
  INSIST(length > 0 && thick > 2 * kFrameUm);
  for (std::int64_t from = 0; from < length; from += 2 * kCheckSegmentUm) {
    add_solid(drawing, part_of(bar, from, std::min(from + kCheckSegmentUm, length), 0, thick));
  }
  add_solid(drawing, part_of(bar, 0, length, 0, kFrameUm));
  add_solid(drawing, part_of(bar, 0, length, thick - kFrameUm, thick));
  add_solid(drawing, part_of(bar, std::max<std::int64_t>(length - kFrameUm, 0), length, 0, thick));
}

void add_registration_mark(Drawing& drawing, Spot centre) {
  add_circle(drawing, centre, kRegistrationRadiusUm, solid_pen(kThinUm));
  add_cross(drawing, centre, kRegistrationReachUm, solid_pen(kThinUm));
}

void add_datum_square(Drawing& drawing, Spot low, std::int64_t side_um) {
  INSIST(side_um > 0);
  const Box box{low, {low.x + side_um, low.y + side_um}};
  add_solid(drawing, box);
  add_middle_word(drawing, box, "0", 1000);
}

void add_guide_point(Drawing& drawing, Spot at, Spot row) {
  const Way way = way_of(row);
  const double reach = static_cast<double>(kCrossLineReachUm);
  add_circle(drawing, at, kRingRadiusUm, solid_pen(kThinUm));
  add_dot(drawing, at, kDotRadiusUm);
  add_line(drawing, stepped(at, way, 0.0, -reach), stepped(at, way, 0.0, reach),
           solid_pen(kThinUm));
}

void add_staple_mark(Drawing& drawing, Spot at, Spot row, std::int64_t crown_um) {
  const Way way = way_of(row);
  const double half = static_cast<double>(crown_um) / 2.0;
  const double reach = static_cast<double>(kCrossLineReachUm);
  const Spot first = stepped(at, way, -half, 0.0);
  const Spot last = stepped(at, way, half, 0.0);
  add_line(drawing, first, last, solid_pen(kStapleBarUm));
  add_dot(drawing, first, kStapleLegRadiusUm);
  add_dot(drawing, last, kStapleLegRadiusUm);
  add_line(drawing, stepped(at, way, 0.0, -reach), stepped(at, way, 0.0, reach),
           solid_pen(kFrameUm));
}

void add_hinge_edge(Drawing& drawing, Spot from, Spot to) {
  const Way way = way_of({to.x - from.x, to.y - from.y});
  const double inward = static_cast<double>(kHingeLineUm) / 2.0;
  add_line(drawing, stepped(from, way, 0.0, inward), stepped(to, way, 0.0, inward),
           solid_pen(kHingeLineUm));
  std::vector<PathStep> bars;
  const double length = distance(from, to);
  const double reach = static_cast<double>(kHingeBarReachUm);
  for (std::int64_t at = kHingeBarEveryUm / 2; static_cast<double>(at) < length;
       at += kHingeBarEveryUm) {
    const double along = static_cast<double>(at);
    bars.push_back({Step::move, stepped(from, way, along, 0.0), {}, {}});
    bars.push_back({Step::line, stepped(from, way, along, reach), {}, {}});
  }
  if (!bars.empty()) add_stroke(drawing, solid_pen(kHingeBarUm), std::move(bars));
}

void add_fly_edge(Drawing& drawing, Spot from, Spot to) {
  const Way way = way_of({to.x - from.x, to.y - from.y});
  const double length = distance(from, to);
  const std::int64_t teeth =
      std::max<std::int64_t>(1, std::llround(length / static_cast<double>(kFlyToothUm)));
  const double half = length / static_cast<double>(2 * teeth);
  const double deep = static_cast<double>(kFlyToothDeepUm);
  std::vector<PathStep> zigzag{{Step::move, from, {}, {}}};
  for (std::int64_t half_tooth = 1; half_tooth < 2 * teeth; ++half_tooth) {
    const double across = half_tooth % 2 == 0 ? 0.0 : deep;
    const Spot next = stepped(from, way, half * static_cast<double>(half_tooth), across);
    zigzag.push_back({Step::line, next, {}, {}});
  }
  zigzag.push_back({Step::line, to, {}, {}});
  add_stroke(drawing, solid_pen(kFlyLineUm), std::move(zigzag));
}

std::int64_t boxed_word_size_um(const Box& box) { return (box.high.y - box.low.y) * 2 / 3; }

void add_word_box(Drawing& drawing, const Box& box, std::string_view words) {
  const std::int64_t half = kWordBoxLineUm / 2;
  add_rectangle(drawing,
                {{box.low.x + half, box.low.y + half}, {box.high.x - half, box.high.y - half}},
                solid_pen(kWordBoxLineUm));
  add_middle_word(drawing, box, words, 0);
}

void add_word_banner(Drawing& drawing, const Box& box, std::string_view words) {
  add_solid(drawing, box);
  add_middle_word(drawing, box, words, 1000);
}

void add_top_arrow(Drawing& drawing, Spot foot, std::int64_t length_um, int quarter_turns) {
  INSIST(length_um > 0);
  const int turns = ((quarter_turns % 4) + 4) % 4;
  constexpr Way kUp[] = {{0.0, 1.0}, {-1.0, 0.0}, {0.0, -1.0}, {1.0, 0.0}};
  const Way up = kUp[turns];
  const double length = static_cast<double>(length_um);
  add_arrow(drawing, foot, stepped(foot, up, length, 0.0), solid_pen(kTopArrowPenUm));
  constexpr std::int64_t kCapitalUm = kTopWordSizeUm * kCapitalPermille / 1000;
  Text text;
  text.at = stepped(foot, up, (length - static_cast<double>(kCapitalUm)) / 2.0, -kTopWordAwayUm);
  text.size_um = kTopWordSizeUm;
  text.weight = Weight::bold;
  text.quarter_turns = turns;
  text.words = "TOP";
  add_text(drawing, std::move(text));
}

}  // namespace pouncemark::drawing
