#pragma once

#include <optional>

#include "engine/geometry/units.h"
#include "engine/geometry/vec2.h"

namespace pouncemark {

/// A straight line, or the arc over a chord. `rise` is the height of the arc's crown over its
/// chord, positive to the right of the walk from `from` to `to` (outward, on an anticlockwise
/// outline); 0 is straight. Millimetres.
struct Segment {
  Vec2 from;
  Vec2 to;
  double rise = 0;
};

/// True when the segment is drawn and measured as a straight line.
bool is_straight(const Segment& segment);

/// Radius c²/(8h) + h/2 of the arc over chord c with rise h; infinite is never returned: our own
/// mistake on a straight segment. Source: intersecting chords, Euclid III.35.
double radius(const Segment& arc);

/// Centre of the arc's circle; our own mistake on a straight segment.
Vec2 centre(const Segment& arc);

/// Length along the segment: chord, or R times 4·atan(2h/c) (no branch at a half circle).
double length(const Segment& segment);

/// The place `station` millimetres along, measured along the segment; may lie beyond its ends.
Vec2 point_at(const Segment& segment, double station);

/// Direction of the walk at that station, length 1.
Vec2 direction_at(const Segment& segment, double station);

/// The station of the place on the segment (or its continuation) nearest to `place`.
double station_of(const Segment& segment, Vec2 place);

/// The same line walked the other way.
Segment reversed(const Segment& segment);

/// The line at `distance` to the left, concentric for an arc; nothing when an arc's radius would
/// not stay positive.
std::optional<Segment> parallel(const Segment& segment, double distance);

/// Up to two places.
struct Meetings {
  int count = 0;
  Vec2 a;
  Vec2 b;
};

/// All places where the two lines, continued as far as needed, meet; none for lines that run
/// alongside or over one another.
Meetings meetings(const Segment& a, const Segment& b);

/// Where the two lines, continued as far as needed, meet nearest to `near`; nothing when they do
/// not.
std::optional<Vec2> meeting(const Segment& a, const Segment& b, Vec2 near);

/// Distance from `place` to the part of the line between two of its stations, `first` <= `last`.
/// An arc's part turns at most a half circle.
double distance_to(const Segment& line, double first, double last, Vec2 place);

}  // namespace pouncemark
