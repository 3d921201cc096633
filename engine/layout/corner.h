#pragma once

#include <optional>

#include "engine/layout/edge_guides.h"

/// Inside of layout: where the rows of two edges meet.
namespace pouncemark::layout {

/// The line `in_um` inside an edge; nothing for an arc too tight for it.
std::optional<Segment> inward(const piece::Edge& edge, Um in_um);

/// The place lies within the extent, to the micrometre it is stored in.
bool holds(const piece::Extent& extent, Vec2 place);

/// One end of an edge and the edge whose row it meets there; they do not touch where an edge
/// between them is passed over.
struct Corner {
  const piece::Edge& edge;
  const piece::Edge& neighbour;
  bool at_datum = true;
  bool touch = true;

  bool at_from() const { return at_datum != edge.datum_at_end; }
  Vec2 place() const { return at_from() ? edge.line.from : edge.line.to; }
  /// True when one edge runs into the other without a turn that could be seen.
  bool is_smooth() const;
};

/// Station on the edge's guide where it meets the line of its neighbour; where the edges run into
/// one another so do their guides, at their ends. Nothing where the lines do not meet.
std::optional<Um> corner_station(const GuideLine& guide, const Corner& corner, Um in_um);

/// For each edge, whether a row `in_um` in has no room on it because the rows of its neighbours
/// meet before it: a chamfer or a rounded corner smaller than the row is in. Such an edge is passed
/// over: its neighbours' rows meet one another, at least `in_um` away from it.
std::vector<bool> edges_passed_over(const piece::Outline& outline, Um in_um);

/// The nearest edge before or after `at` that is not passed over.
std::size_t neighbour_of(const std::vector<bool>& passed_over, std::size_t at, bool after);

}  // namespace pouncemark::layout
