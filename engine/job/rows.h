#pragma once

#include <array>
#include <optional>

#include "engine/geometry/units.h"
#include "engine/job/json_node.h"

/// The rules of rows, and what differs in them on one sleeve. Part of the job (job.h).
namespace pouncemark::job {

/// Even: gaps never wider than asked. Exact: gaps just as asked, the left-over is shown.
enum class SpacingRule { even, exact };

/// Where the left-over of an exact row goes: after the last point, half to each end, or filled with
/// one more point at the far end.
enum class LeftOver { end, split, extra_point };

/// When the staples of a row come out, as far as the job says.
enum class StaplesOut { not_said, before_the_row, as_the_foot_comes, after_the_row, stay };

/// A row of staples: a rule, not points. `in_from_edge_um` is not used on a lap (the row stands on
/// the lap's middle line).
struct StapleRow {
  Um in_from_edge_um = 0;
  std::array<Um, 2> kept_clear_um{0, 0};  ///< from the datum end, from the far end
  Um spacing_um = 0;
  SpacingRule rule = SpacingRule::even;
  LeftOver left_over = LeftOver::end;
  StaplesOut staples = StaplesOut::not_said;
  Extras extras;
  bool operator==(const StapleRow&) const = default;
};

/// A row of stitches; stitches are never longer than asked.
struct StitchRow {
  Um in_from_edge_um = 0;
  std::array<Um, 2> kept_clear_um{0, 0};
  Um stitch_um = 0;
  Extras extras;
  bool operator==(const StitchRow&) const = default;
};

/// The staple row and the stitch row of one place, and the stack the needle meets there.
struct RowPair {
  StapleRow staple;
  StitchRow stitch;
  Um stack_um = 0;                ///< as typed
  bool stack_from_plies = false;  ///< the plies are added up along the row instead
  Extras extras;
  bool operator==(const RowPair&) const = default;
};

/// What differs on one sleeve from its section; an empty field follows the section.
struct StapleChange {
  std::optional<Um> in_from_edge_um;
  std::optional<std::array<Um, 2>> kept_clear_um;
  std::optional<Um> spacing_um;
  std::optional<SpacingRule> rule;
  std::optional<LeftOver> left_over;
  std::optional<StaplesOut> staples;
  Extras extras;
  bool operator==(const StapleChange&) const = default;
};
struct StitchChange {
  std::optional<Um> in_from_edge_um;
  std::optional<std::array<Um, 2>> kept_clear_um;
  std::optional<Um> stitch_um;
  Extras extras;
  bool operator==(const StitchChange&) const = default;
};
struct SleeveChange {
  std::optional<Um> width_um;
  std::optional<StapleChange> staple;
  std::optional<StitchChange> stitch;
  Extras side_rows_extras;
  Extras extras;
  bool operator==(const SleeveChange&) const = default;
};

/// Where the cloth lies in a sleeve or on a panel; an empty field is assumed where it is needed.
struct ClothPlace {
  std::optional<Um> in_from_edge_um;      ///< from the long edges; on a panel from the sewn edges
  std::optional<Um> in_from_end_um;       ///< from BOTTOM and TOP of a sleeve
  std::optional<Um> in_from_fly_side_um;  ///< panels only
  std::optional<Um> hem_um;               ///< width of the edge turned under; panels only
  std::optional<Um> interlining_in_um;    ///< in from the sewn edges; panels only
  std::optional<Um> adhesive_band_um;     ///< width of the band from each sewn edge; panels only
  Extras extras;
  bool operator==(const ClothPlace&) const = default;
};

}  // namespace pouncemark::job
