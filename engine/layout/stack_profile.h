#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "engine/geometry/segment.h"
#include "engine/geometry/units.h"

namespace pouncemark::layout {

/// A ply as it lies: the edges of its closed outlines in any order, none of them crossing
/// another, and its thickness. A place within an odd number of the outlines is on it, so that an
/// outline within another leaves a bare place.
struct PlyShape {
  std::vector<Segment> edges;
  Um thickness_um = 0;
};

/// The most plies one profile takes.
inline constexpr std::size_t kMostPlies = 64;

/// A set of plies: bit `i` stands for ply `i`.
using PlySet = std::uint64_t;

/// A piece of the path over which the plies stay the same on either side.
struct ProfileStep {
  double from = 0;  ///< stations of the path, millimetres
  double to = 0;
  PlySet left = 0;   ///< close at the left of the path, walked forward
  PlySet right = 0;  ///< close at its right
  PlySet along = 0;  ///< those whose edge the path runs along: left and right differ by them
};

/// The plies along the path between two of its stations, `first` < `last`: steps that follow one
/// another without a gap, each as long as it can be. No step where `last` is not beyond `first`. An
/// edge that bends turns at most a half circle.
std::vector<ProfileStep> stack_profile(const Segment& path, double first, double last,
                                       std::span<const PlyShape> plies);

/// The thickness of a set of plies.
Um thickness_um(PlySet set, std::span<const PlyShape> plies);

}  // namespace pouncemark::layout
