// The lengths that plies lie along a row, against an independent general geometry library.

#include "engine/layout/stack_profile.h"
#include "tests/support/random.h"
#include "tests/support/stars.h"

#include <doctest/doctest.h>
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/linestring.hpp>
#include <boost/geometry/geometries/multi_linestring.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>

#include <cmath>
#include <cstdlib>
#include <exception>
#include <vector>

// Without exceptions the library calls these where it gives up; the test has then failed.
namespace boost {
void throw_exception(const std::exception& /*why*/) { std::abort(); }
struct source_location;
void throw_exception(const std::exception& /*why*/, const source_location& /*where*/) {
  std::abort();
}
}  // namespace boost

using namespace pouncemark;
using namespace pouncemark::layout;
using pouncemark::tests::any_star;
using pouncemark::tests::Dice;

namespace {

namespace bg = boost::geometry;
using Point = bg::model::d2::point_xy<double>;
using Line = bg::model::linestring<Point>;
using Lines = bg::model::multi_linestring<Line>;
using Polygon = bg::model::polygon<Point, false>;

/// Chords so short that they stray less than a millionth of the length from the line.
Line chords_of(const Segment& segment, double first, double last) {
  Line line;
  const int parts = is_straight(segment) ? 1 : 10'000;
  for (int i = 0; i <= parts; ++i) {
    const Vec2 place = point_at(segment, first + (last - first) * i / parts);
    line.push_back({place.x, place.y});
  }
  return line;
}

Polygon polygon_of(const PlyShape& ply) {
  Polygon polygon;
  for (const Segment& edge : ply.edges) polygon.outer().push_back({edge.from.x, edge.from.y});
  polygon.outer().push_back(polygon.outer().front());
  return polygon;
}

double length_within(const Line& line, const PlyShape& ply) {
  Lines within;
  bg::intersection(line, polygon_of(ply), within);
  return static_cast<double>(bg::length(within));
}

}  // namespace

TEST_CASE("thickness along any path adds up to each ply's length on it times its thickness") {
  int paths = 0;
  for (std::uint32_t seed = 1; seed <= 300; ++seed) {
    Dice dice(seed);
    INFO(dice.words());
    std::vector<PlyShape> plies;
    const std::int64_t count = dice.between(1, 6);
    for (std::int64_t i = 0; i < count; ++i) plies.push_back(any_star(dice, false));
    const double from_y = static_cast<double>(dice.between(-90'000, 90'000)) / 1'000;
    const double to_y = static_cast<double>(dice.between(-90'000, 90'000)) / 1'000;
    const bool bends = dice.once_in(3);
    const double rise = bends ? static_cast<double>(dice.between(-60, 60)) : 0;
    const Segment path{{-130, from_y}, {130, to_y}, rise};
    const double last = length(path) * 0.9;
    double ours = 0;
    for (const ProfileStep& step : stack_profile(path, 5, last, plies)) {
      ours += (step.to - step.from) * static_cast<double>(thickness_um(step.left, plies));
    }
    const Line line = chords_of(path, 5, last);
    double theirs = 0;
    for (const PlyShape& ply : plies) {
      theirs += length_within(line, ply) * static_cast<double>(ply.thickness_um);
    }
    const double off = std::fabs(ours - theirs) / (1 + theirs);
    CHECK(off < (is_straight(path) ? 1e-9 : 1e-5));
    paths += theirs > 0 ? 1 : 0;
  }
  CHECK(paths > 250);
}
