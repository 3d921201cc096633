#include <algorithm>
#include <cmath>

#include "engine/base/number_text.h"
#include "engine/frame/wave.h"
#include "web/model/curve.h"

namespace pouncemark::web {
namespace {

/// Steps each stretch is drawn in: smooth at the size of a screen, and even, so that half a stretch
/// ends on a step.
constexpr int kSteps = 12;
constexpr int kStepsOfArc = 60;

int steps_of(const CurveView& view) { return view.stretches.size() == 1 ? kStepsOfArc : kSteps; }

/// A curve walked from its left end, level between its ends, the middle of these at 0.
std::vector<Vec2> walked(const CurveView& view, double hung) {
  const int steps = steps_of(view);
  std::vector<Vec2> points = {{0, 0}};
  double heading = 0;
  for (const frame::Stretch& stretch : view.stretches) {
    const double turn = stretch.turn * hung / steps;
    const double along = stretch.along / steps;
    for (int i = 0; i < steps; ++i) {
      const double middle = heading - turn / 2;
      points.push_back(points.back() + Vec2{along * std::cos(middle), along * std::sin(middle)});
      heading -= turn;
    }
  }
  const Vec2 end = points.back();
  const double straight = length(end);
  if (straight <= 0) return points;
  const Vec2 level{end.x / straight, end.y / straight};
  for (Vec2& point : points) {
    point = {point.x * level.x + point.y * level.y - straight / 2,
             point.y * level.x - point.x * level.y};
  }
  return points;
}

double crest_of(const std::vector<Vec2>& points) {
  double crest = 0;
  for (const Vec2& point : points) crest = std::max(crest, point.y);
  return crest;
}

/// Where radius, stations and what is too tight stand on the timber.
void set_marks(const CurveView& view, CurveShape* shape) {
  const std::size_t last = shape->timber.size() - 1;
  const auto steps = static_cast<std::size_t>(steps_of(view));
  if (!view.is_by_stations) {
    // Beside the crest, where the rise has its arrow.
    shape->radius_at = last * 3 / 5;
    if (view.too_tight) shape->tight.push_back({0, last});
    return;
  }
  for (std::size_t at = 0; at <= last; at += steps) shape->stations.push_back(at);
  const auto point = [steps](int station) {
    return (static_cast<std::size_t>(station) - 1) * steps;
  };
  if (view.tightest_station > 0) shape->radius_at = point(view.tightest_station);
  for (const int station : view.tight_stations) {
    shape->tight.push_back({point(station) - steps / 2, point(station) + steps / 2});
  }
}

std::string way_words(Um um, bool is_out) {
  return um == 0 ? "0" : mm_text(um, 2) + (is_out ? " out" : " in");
}

double whole_of(const CurveView& view) {
  double all = 0;
  for (const frame::Stretch& stretch : view.stretches) all += stretch.along;
  return all;
}

/// How far along the curve a part of the steps goes, and the other way round. A stretch has the
/// same steps whether it is long or short.
double along_at(const CurveView& view, double part) {
  const double at = part * static_cast<double>(view.stretches.size());
  double along = 0;
  for (std::size_t i = 0; i < view.stretches.size(); ++i) {
    along += view.stretches[i].along * std::clamp(at - static_cast<double>(i), 0.0, 1.0);
  }
  return along;
}
double part_at(const CurveView& view, double along) {
  double steps = 0;
  for (const frame::Stretch& stretch : view.stretches) {
    steps += std::clamp(along / stretch.along, 0.0, 1.0);
    along -= stretch.along;
  }
  return steps / static_cast<double>(view.stretches.size());
}

/// Slip at a place, from the hinge side to it.
void set_place(const CurveView& view, double hung, double place, CurveShape* shape) {
  auto stretches = view.stretches;
  for (frame::Stretch& stretch : stretches) stretch.turn *= hung;
  if (!view.fly_is_right) std::reverse(stretches.begin(), stretches.end());
  const double from_left = along_at(view, place);
  const double from_hinge = view.fly_is_right ? from_left : whole_of(view) - from_left;
  const double slip = frame::slip_along(stretches, from_um(view.apart_um), from_hinge);
  shape->place_words = "slip " + way_words(to_um(std::fabs(slip)), (slip > 0) == view.is_hollow) +
                       ", " + mm_text(to_um(from_hinge), 0) + " from the hinge side";
}

}  // namespace

CurveShape curve_shape(const CurveView& view, double hung, double place) {
  CurveShape shape;
  shape.timber = walked(view, 1);
  shape.sheet = walked(view, hung);
  shape.crest = crest_of(shape.timber);
  shape.sheet_crest = crest_of(shape.sheet);
  for (const Vec2& point : shape.timber) shape.trough = std::max(shape.trough, -point.y);
  set_marks(view, &shape);
  for (const FixingMark& fixing : view.fixings) {
    shape.fixings.push_back({part_at(view, fixing.part * whole_of(view)), fixing.is_tight});
  }
  // Slip goes with the turn, so at half the turn the cloth has crept half as far.
  const Um creep = to_um(from_um(view.creep_um) * hung);
  shape.creep = view.moves_out ? from_um(creep) : -from_um(creep);
  shape.creep_words = way_words(creep, view.moves_out);
  if (view.holds_panel) set_place(view, hung, place, &shape);
  if (view.can_bulge) {
    const Um bulge = to_um(frame::bulge_height(from_um(view.along_um), from_um(creep)));
    shape.bulge = from_um(bulge);
    shape.bulge_words = "sewn all round the cloth would stand up " + mm_text(bulge, 1);
  }
  return shape;
}

}  // namespace pouncemark::web
