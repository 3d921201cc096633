#include "engine/drawing/shapes.h"

#include "engine/base/insist.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>
#include <variant>

namespace pouncemark::drawing {
namespace {

constexpr std::int64_t kHeadLengthUm = 2000;
constexpr std::int64_t kHeadHalfWidthUm = 700;

// Cosine of the widest turn written as one curve, 23 degrees: a quarter is halved twice.
constexpr double kWidestTurnCosine = 0.92;

// A place relative to an arc's centre.
struct Ray {
  double x = 0.0;
  double y = 0.0;
};

double dot(Ray a, Ray b) { return a.x * b.x + a.y * b.y; }
double cross(Ray a, Ray b) { return a.x * b.y - a.y * b.x; }
double length(Ray a) { return std::sqrt(dot(a, a)); }
Ray scaled(Ray a, double by) { return {a.x * by, a.y * by}; }

Ray ray(Spot centre, Spot at) {
  return {static_cast<double>(at.x - centre.x), static_cast<double>(at.y - centre.y)};
}

Spot spot(Spot centre, Ray from_centre) {
  return {centre.x + std::llround(from_centre.x), centre.y + std::llround(from_centre.y)};
}

// How far a control point stands from its end, as a part of the radius: 4/3 tan(angle/4), written
// with the half chord so that only a square root is needed.
double control_reach(double half_chord) {
  return 4.0 / 3.0 * (1.0 - std::sqrt(1.0 - half_chord * half_chord)) / half_chord;
}

// Walks one arc; `turn` is +1 anticlockwise and -1 clockwise.
class ArcWalk {
 public:
  ArcWalk(std::vector<PathStep>& steps, const Arc& arc)
      : steps_(steps), arc_(arc), turn_(arc.is_anticlockwise ? 1.0 : -1.0) {}

  void walk() {
    const std::size_t before = steps_.size();
    Ray at = ray(arc_.centre, arc_.from);
    const Ray aim = ray(arc_.centre, arc_.to);
    const Ray end = scaled(aim, length(at) / length(aim));
    const bool is_full = arc_.from == arc_.to;
    for (int quarter = 0; quarter < 4; ++quarter) {
      if (!is_full && is_within_a_quarter(at, end)) break;
      if (!is_full && quarter > 0 && is_same_spot(at, end)) break;
      const Ray next = quarter_on(at);
      write_turn(at, next);
      at = next;
    }
    if (!is_full && !is_same_spot(at, end)) write_turn(at, end);
    if (steps_.size() == before) {
      steps_.push_back({Step::line, arc_.to, {}, {}});
    } else {
      steps_.back().to = arc_.to;
    }
  }

 private:
  Ray quarter_on(Ray a) const { return {-turn_ * a.y, turn_ * a.x}; }

  static bool is_same_spot(Ray a, Ray b) {
    const Ray gap{a.x - b.x, a.y - b.y};
    return dot(gap, gap) < 1.0;  // Less than a micrometre: the same place on the picture.
  }

  bool is_within_a_quarter(Ray at, Ray end) const {
    return dot(at, end) > 0.0 && turn_ * cross(at, end) >= 0.0;
  }

  // Halves the turn, by adding its two rays, until one curve is true enough.
  void write_turn(Ray from, Ray to) {
    if (dot(from, to) >= kWidestTurnCosine * dot(from, from)) {
      write_curve(from, to);
      return;
    }
    const Ray sum{from.x + to.x, from.y + to.y};
    const Ray middle = scaled(sum, length(from) / length(sum));
    write_turn(from, middle);
    write_turn(middle, to);
  }

  void write_curve(Ray from, Ray to) {
    const Ray chord{to.x - from.x, to.y - from.y};
    const double half_chord = length(chord) / (2.0 * length(from));
    if (!(half_chord > 0.0)) return;
    const double reach = control_reach(half_chord);
    const Ray leave = scaled(quarter_on(from), reach);
    const Ray arrive = scaled(quarter_on(to), -reach);
    steps_.push_back({Step::curve, spot(arc_.centre, to),
                      spot(arc_.centre, {from.x + leave.x, from.y + leave.y}),
                      spot(arc_.centre, {to.x + arrive.x, to.y + arrive.y})});
  }

  std::vector<PathStep>& steps_;
  const Arc& arc_;
  double turn_;
};

std::vector<PathStep> line_steps(Spot from, Spot to) {
  return {{Step::move, from, {}, {}}, {Step::line, to, {}, {}}};
}

}  // namespace

Way way_of(Spot vector) {
  INSIST(vector.x != 0 || vector.y != 0);
  const Ray whole{static_cast<double>(vector.x), static_cast<double>(vector.y)};
  const double size = length(whole);
  if (!(size > 0.0)) return {};
  return {whole.x / size, whole.y / size};
}

Spot stepped(Spot at, Way way, double along, double across) {
  return spot(at, {way.x * along - way.y * across, way.y * along + way.x * across});
}

// Built in place: moving a picture's item makes GCC 12 warn of values it wrongly takes for unset.
void add_stroke(Drawing& drawing, const Pen& pen, std::vector<PathStep> steps) {
  drawing.items.emplace_back(std::in_place_type<Stroke>, Stroke{pen, std::move(steps)});
}

void add_fill(Drawing& drawing, int grey_permille, std::vector<PathStep> steps) {
  drawing.items.emplace_back(std::in_place_type<Fill>, Fill{grey_permille, std::move(steps)});
}

void add_text(Drawing& drawing, Text text) {
  drawing.items.emplace_back(std::in_place_type<Text>, std::move(text));
}

void append_arc(std::vector<PathStep>& steps, const Arc& arc) {
  const bool has_radius = arc.from != arc.centre && arc.to != arc.centre;
  INSIST(has_radius);
  if (has_radius) ArcWalk(steps, arc).walk();
}

std::vector<PathStep> circle_steps(Spot centre, std::int64_t radius_um) {
  INSIST(radius_um > 0);
  const std::int64_t r = radius_um;
  const std::int64_t k = std::llround(static_cast<double>(r) * control_reach(std::sqrt(0.5)));
  const auto at = [centre](std::int64_t x, std::int64_t y) {
    return Spot{centre.x + x, centre.y + y};
  };
  return {{Step::move, at(r, 0), {}, {}},
          {Step::curve, at(0, r), at(r, k), at(k, r)},
          {Step::curve, at(-r, 0), at(-k, r), at(-r, k)},
          {Step::curve, at(0, -r), at(-r, -k), at(-k, -r)},
          {Step::curve, at(r, 0), at(k, -r), at(r, -k)},
          {Step::close, at(r, 0), {}, {}}};
}

std::vector<PathStep> box_steps(const Box& box) {
  return {{Step::move, box.low, {}, {}},
          {Step::line, {box.high.x, box.low.y}, {}, {}},
          {Step::line, box.high, {}, {}},
          {Step::line, {box.low.x, box.high.y}, {}, {}},
          {Step::close, box.low, {}, {}}};
}

void add_line(Drawing& drawing, Spot from, Spot to, const Pen& pen) {
  add_stroke(drawing, pen, line_steps(from, to));
}

void add_rectangle(Drawing& drawing, const Box& box, const Pen& pen) {
  add_stroke(drawing, pen, box_steps(box));
}

void add_solid(Drawing& drawing, const Box& box, int grey_permille) {
  add_fill(drawing, grey_permille, box_steps(box));
}

void add_circle(Drawing& drawing, Spot centre, std::int64_t radius_um, const Pen& pen) {
  add_stroke(drawing, pen, circle_steps(centre, radius_um));
}

void add_dot(Drawing& drawing, Spot centre, std::int64_t radius_um) {
  add_fill(drawing, 0, circle_steps(centre, radius_um));
}

void add_cross(Drawing& drawing, Spot centre, std::int64_t reach_um, const Pen& pen) {
  add_stroke(drawing, pen,
             {{Step::move, {centre.x - reach_um, centre.y}, {}, {}},
              {Step::line, {centre.x + reach_um, centre.y}, {}, {}},
              {Step::move, {centre.x, centre.y - reach_um}, {}, {}},
              {Step::line, {centre.x, centre.y + reach_um}, {}, {}}});
}

void add_arrow(Drawing& drawing, Spot from, Spot tip, const Pen& pen) {
  INSIST(from != tip);
  const Ray whole = ray(from, tip);
  const Way way = way_of({tip.x - from.x, tip.y - from.y});
  const double wanted = static_cast<double>(std::max(kHeadLengthUm, 7 * pen.width_um));
  const double head = std::min(wanted, length(whole));
  const double half = static_cast<double>(std::max(kHeadHalfWidthUm, 5 * pen.width_um / 2));
  // The line ends inside the head, so that its square end never shows beside the point.
  add_line(drawing, from, stepped(tip, way, -head / 2.0, 0.0), pen);
  add_fill(drawing, pen.grey_permille,
           {{Step::move, tip, {}, {}},
            {Step::line, stepped(tip, way, -head, half), {}, {}},
            {Step::line, stepped(tip, way, -head, -half), {}, {}},
            {Step::close, tip, {}, {}}});
}

void add_hatching(Drawing& drawing, const Box& box, std::int64_t apart_um, const Pen& pen) {
  INSIST(apart_um > 0);
  if (apart_um <= 0) return;
  const std::int64_t wide = box.high.x - box.low.x;
  const std::int64_t high = box.high.y - box.low.y;
  std::vector<PathStep> steps;
  // A line leaves the foot of the box `foot` to the right of its corner; a negative one enters by
  // the left side.
  for (std::int64_t foot = -(high / apart_um) * apart_um; foot < wide; foot += apart_um) {
    const std::int64_t start = std::max<std::int64_t>(foot, 0);
    const std::int64_t end = std::min(foot + high, wide);
    if (end <= start) continue;
    steps.push_back({Step::move, {box.low.x + start, box.low.y + start - foot}, {}, {}});
    steps.push_back({Step::line, {box.low.x + end, box.low.y + end - foot}, {}, {}});
  }
  if (!steps.empty()) add_stroke(drawing, pen, std::move(steps));
}

}  // namespace pouncemark::drawing
