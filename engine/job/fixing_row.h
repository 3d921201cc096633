#pragma once

#include <array>
#include <cstdint>
#include <string>

#include "engine/geometry/units.h"
#include "engine/job/json_node.h"

/// Rows of fixings that hold what hangs in a bay to its timber. Part of the job (job.h).
namespace pouncemark::job {

/// Which fixing of a row is the tight one. None: the tight one stands in another row of the bay.
enum class Tight : std::uint8_t { first, middle, last, none };

/// Which way the timber behind a row lies. Along its grain it moves next to nothing with damp.
enum class TimberLies : std::uint8_t { along_grain, across_grain };

/// A row of fixings in from one edge, even: never wider apart than asked.
struct FixingRow {
  std::string edge;  ///< of a panel as OutlineEdge::role; of a section left, right, top or bottom
  Um in_from_edge_um = 0;
  std::array<Um, 2> kept_clear_um{0, 0};  ///< from the datum end, from the far end
  Um spacing_um = 0;
  Tight tight = Tight::middle;
  TimberLies timber = TimberLies::along_grain;
  bool timber_is_said = false;  ///< false: along the grain is assumed
  Extras extras;
  bool operator==(const FixingRow&) const = default;
};

}  // namespace pouncemark::job
