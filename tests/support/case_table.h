#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "engine/geometry/segment.h"
#include "engine/piece/outline.h"

/// One case is every case: each is also tried turned, mirrored and walked another way.
namespace pouncemark::tests {

inline Vec2 quarter_turned(Vec2 p) { return {-p.y, p.x}; }
inline Vec2 mirrored(Vec2 p) { return {-p.x, p.y}; }

inline Segment quarter_turned(const Segment& s) {
  return {quarter_turned(s.from), quarter_turned(s.to), s.rise};
}

/// Mirrored left for right; an arc that bulged to the right of the walk now bulges to its left.
inline Segment mirrored(const Segment& s) { return {mirrored(s.from), mirrored(s.to), -s.rise}; }

inline piece::Outline quarter_turned(piece::Outline outline) {
  for (piece::Edge& edge : outline.edges) edge.line = quarter_turned(edge.line);
  return outline;
}

/// Mirrored left for right and walked anticlockwise again.
inline piece::Outline mirrored(piece::Outline outline) {
  for (piece::Edge& edge : outline.edges) {
    edge.line = reversed(mirrored(edge.line));
    edge.datum_at_end = !edge.datum_at_end;
  }
  std::reverse(outline.edges.begin(), outline.edges.end());
  return outline;
}

/// The same outline, its list beginning one edge later.
inline piece::Outline begun_later(piece::Outline outline) {
  std::rotate(outline.edges.begin(), outline.edges.begin() + 1, outline.edges.end());
  return outline;
}

/// A case and what it is called when it fails.
template <typename Case>
struct Told {
  std::string way;
  Case value;
};

/// The line as given, walked the other way, turned a quarter, mirrored.
inline std::vector<Told<Segment>> every_way(const Segment& segment) {
  std::vector<Told<Segment>> ways;
  ways.push_back({"as given", segment});
  ways.push_back({"walked the other way", reversed(segment)});
  ways.push_back({"turned a quarter", quarter_turned(segment)});
  ways.push_back({"mirrored", mirrored(segment)});
  return ways;
}

/// The outline as given, begun one edge later, turned a quarter, mirrored.
inline std::vector<Told<piece::Outline>> every_way(const piece::Outline& outline) {
  std::vector<Told<piece::Outline>> ways;
  ways.push_back({"as given", outline});
  ways.push_back({"begun one edge later", begun_later(outline)});
  ways.push_back({"turned a quarter", quarter_turned(outline)});
  ways.push_back({"mirrored", mirrored(outline)});
  return ways;
}

}  // namespace pouncemark::tests
