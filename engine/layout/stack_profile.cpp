#include "engine/layout/stack_profile.h"

#include <algorithm>
#include <cmath>

#include "engine/base/insist.h"
#include "engine/geometry/tolerance.h"

namespace pouncemark::layout {
namespace {

using tolerance::kAlongEdgeMm;
using tolerance::kBesideEdgeMm;
using tolerance::kSamePointMm;

/// What one ply is like from one station on.
struct Change {
  double station = 0;
  PlySet ply = 0;
  bool left = false;
  bool right = false;
  bool along = false;
};

/// The path as it is asked about.
struct Path {
  const Segment& line;
  double first = 0;
  double last = 0;
  bool is_straight = true;
  Vec2 way;  ///< of a straight one

  Vec2 at(double station) const {
    return is_straight ? line.from + way * station : point_at(line, station);
  }
  Vec2 way_at(double station) const { return is_straight ? way : direction_at(line, station); }
};

void add_station(const Path& path, double station, std::vector<double>* stations) {
  if (station > path.first + kSamePointMm && station < path.last - kSamePointMm) {
    stations->push_back(station);
  }
}

/// Stations where a straight path meets a straight edge: the ends that lie on it, and the crossing.
void meet_straight(const Path& path, const Segment& edge, std::vector<double>* stations) {
  const Vec2 from = edge.from - path.line.from;
  const Vec2 to = edge.to - path.line.from;
  const double high = cross(path.way, from);
  const double low = cross(path.way, to);
  const bool is_on = std::fabs(high) < kSamePointMm;
  if (is_on) add_station(path, dot(path.way, from), stations);
  if (is_on || std::fabs(low) < kSamePointMm || (high > 0) == (low > 0)) return;
  const double part = high / (high - low);
  add_station(path, dot(path.way, from + (to - from) * part), stations);
}

/// The same of lines that bend. A place that is on no edge is harmless: nothing changes there.
void meet_bent(const Path& path, const Segment& edge, std::vector<double>* stations) {
  const double station = station_of(path.line, edge.from);
  if (length(path.at(station) - edge.from) < kSamePointMm) add_station(path, station, stations);
  const Meetings places = meetings(path.line, edge);
  if (places.count > 0) add_station(path, station_of(path.line, places.a), stations);
  if (places.count > 1) add_station(path, station_of(path.line, places.b), stations);
}

bool is_beside(const Segment& edge, Vec2 place, double near) {
  if (!is_straight(edge)) return distance_to(edge, 0, length(edge), place) < near;
  const Vec2 chord = edge.to - edge.from;
  const Vec2 away = place - edge.from;
  const double size = length(chord);
  const double along = dot(chord, away);
  if (along < -near * size || along > (size + near) * size) return false;
  return std::fabs(cross(chord, away)) < near * size;
}

/// The place lies beyond the chord of an arc that bulges over it, or short of the chord of one that
/// is hollow. A place on the chord goes with the side that the count of crossings has it on.
bool is_in_cap(const Segment& edge, double side, Vec2 place) {
  if (length(place - centre(edge)) >= radius(edge)) return false;
  const bool is_upward =
      edge.to.y > edge.from.y || (edge.to.y == edge.from.y && edge.to.x < edge.from.x);
  const bool is_right = is_upward ? side <= 0 : side < 0;
  return edge.rise > 0 ? is_right : !is_right;
}

/// Within an odd number of the outlines.
bool is_on_ply(const PlyShape& ply, Vec2 place) {
  bool is_on = false;
  for (const Segment& edge : ply.edges) {
    const double side = cross(edge.to - edge.from, place - edge.from);
    const bool is_above_from = edge.from.y <= place.y;
    if (is_above_from != (edge.to.y <= place.y) && (is_above_from ? side > 0 : side < 0)) {
      is_on = !is_on;
    }
    if (!is_straight(edge) && is_in_cap(edge, side, place)) is_on = !is_on;
  }
  return is_on;
}

Change look_at(const Path& path, const PlyShape& ply, double from, double to) {
  const double middle = from + (to - from) / 2.0;
  const Vec2 place = path.at(middle);
  Change change;
  change.station = from;
  change.along = std::any_of(ply.edges.begin(), ply.edges.end(), [place](const Segment& edge) {
    return is_beside(edge, place, kAlongEdgeMm);
  });
  if (!change.along) {
    change.left = change.right = is_on_ply(ply, place);
    return change;
  }
  const Vec2 aside = left_of(path.way_at(middle)) * kBesideEdgeMm;
  change.left = is_on_ply(ply, place + aside);
  change.right = is_on_ply(ply, place - aside);
  // Two edges of one ply that lie on one another are no edge.
  change.along = change.left != change.right;
  return change;
}

/// Where the ply begins, ends, and is run along.
void add_changes(const Path& path, const PlyShape& ply, PlySet bit, std::vector<double>* stations,
                 std::vector<Change>* changes) {
  stations->clear();
  for (const Segment& edge : ply.edges) {
    if (path.is_straight && is_straight(edge)) {
      meet_straight(path, edge, stations);
    } else {
      meet_bent(path, edge, stations);
    }
  }
  std::stable_sort(stations->begin(), stations->end());
  double from = path.first;
  for (std::size_t i = 0; i <= stations->size(); ++i) {
    const double to = i < stations->size() ? (*stations)[i] : path.last;
    if (to - from < kSamePointMm) continue;
    Change change = look_at(path, ply, from, to);
    change.ply = bit;
    changes->push_back(change);
    from = to;
  }
}

void put(PlySet* set, PlySet bit, bool is_in) { *set = is_in ? *set | bit : *set & ~bit; }

}  // namespace

Um thickness_um(PlySet set, std::span<const PlyShape> plies) {
  Um thickness = 0;
  for (std::size_t i = 0; i < plies.size(); ++i) {
    if ((set >> i & 1U) != 0) thickness += plies[i].thickness_um;
  }
  return thickness;
}

std::vector<ProfileStep> stack_profile(const Segment& path, double first, double last,
                                       std::span<const PlyShape> plies) {
  INSIST(plies.size() <= kMostPlies);
  std::vector<ProfileStep> steps;
  if (last - first < kSamePointMm) return steps;
  const bool straight = is_straight(path);
  const Path asked{path, first, last, straight, straight ? unit(path.to - path.from) : Vec2{}};
  std::vector<double> stations;
  std::vector<Change> changes;
  for (std::size_t i = 0; i < plies.size(); ++i) {
    add_changes(asked, plies[i], PlySet{1} << i, &stations, &changes);
  }
  std::stable_sort(changes.begin(), changes.end(),
                   [](const Change& a, const Change& b) { return a.station < b.station; });
  ProfileStep now{first, last, 0, 0, 0};
  for (std::size_t i = 0; i < changes.size();) {
    ProfileStep next = now;
    next.from = changes[i].station;
    for (; i < changes.size() && changes[i].station - next.from < kSamePointMm; ++i) {
      put(&next.left, changes[i].ply, changes[i].left);
      put(&next.right, changes[i].ply, changes[i].right);
      put(&next.along, changes[i].ply, changes[i].along);
    }
    if (next.left == now.left && next.right == now.right && next.along == now.along) continue;
    if (next.from > now.from) {
      now.to = next.from;
      steps.push_back(now);
    }
    now = next;
    now.to = last;
  }
  steps.push_back(now);
  return steps;
}

}  // namespace pouncemark::layout
