#pragma once

#include <array>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "engine/geometry/units.h"
#include "engine/job/fixing_row.h"
#include "engine/job/json_node.h"
#include "engine/job/materials.h"
#include "engine/job/rows.h"
#include "engine/job/trial.h"
#include "engine/material/assumed.h"

/// Floor 6, job: what the user entered and nothing derived. Rules and repeats, never points.
/// Every length is whole micrometres as typed. Knows no results, no page, no screen, no file.
namespace pouncemark::job {

/// How a sleeve is made. Two leaves: both long edges sewn. Folded: one sheet folded over the cloth,
/// one long edge sewn. Round: a tube with a flange at one side, sewn in the flange only.
enum class Make { two_leaf, folded, round };

/// A side as the viewer sees it from the front.
enum class Side { left, right };

/// Separate: every sleeve keeps its own side rows. Shared: the joining row of a lap doubles as the
/// side seam of both neighbours, so only the section's outermost long edges have side rows.
enum class SideSeams { separate, shared };

/// What a row does where it meets the row of the edge toward the hinge side: it shares that row's
/// corner hole, or it stops short of the row.
enum class Corners { share_hole, stop_short };

/// Sleeves lapped side by side, numbered from the viewer's left; a sleeve on its own is a section
/// of one. A number in `missing` has no sleeve: its neighbours lap one another and nothing is
/// renumbered. At least one sleeve is there.
struct Section {
  std::string code;
  Make make = Make::two_leaf;
  std::optional<Um> fold_radius_um;  ///< needed where folded: inside radius of the fold
  std::optional<Um> flange_um;       ///< needed where round
  std::optional<Side> sewn_side;     ///< needed where folded or round
  Um length_um = 0;
  Um lap_um = 0;
  Um leaf_um = 0;
  std::vector<Um> widths_um;  ///< finished, seen from the front; repeats until each number has one
  int count = 1;              ///< numbers, those missing counted in
  std::optional<Side> lies_over;  ///< the neighbour each sleeve lies over; left out: the right one
  std::vector<std::string> missing;  ///< codes of sleeves that are not there
  SideSeams side_seams = SideSeams::separate;
  std::optional<Um> width_tolerance_um;
  std::optional<Um> lap_tolerance_um;
  RowPair side_rows;
  std::optional<RowPair> lap_rows;  ///< absent only where there is no lap
  std::optional<ClothPlace> cloth;
  std::map<std::string, SleeveChange> changes;
  Extras extras;
  bool operator==(const Section&) const = default;
};

/// One edge of a panel written out: it runs from `from_um` to the next edge's `from_um`,
/// anticlockwise, and bulges outward by `rise_um` (negative: inward, 0: straight).
struct OutlineEdge {
  std::string role;  ///< hinge_side, fly_side, top, bottom
  std::array<Um, 2> from_um{0, 0};
  Um rise_um = 0;
  Extras extras;
  bool operator==(const OutlineEdge&) const = default;
};

/// A textile panel: a rectangle (`backing_um`, `hinge_side`) or an outline. No row on its fly side.
struct Panel {
  std::string code;
  std::array<Um, 2> backing_um{0, 0};  ///< width, length; unused with an outline
  std::string hinge_side = "left";     ///< left or right, seen from the front
  std::vector<OutlineEdge> outline;
  Um backing_thickness_um = 0;
  std::optional<Um> facing_thickness_um;  ///< a clear front sheet, not sewn; absent: none
  Um panel_in_um = 0;
  Um spacing_um = 0;
  Um stitch_um = 0;
  Um stack_um = 0;                ///< as typed
  bool stack_from_plies = false;  ///< the plies are added up along the row instead
  std::optional<ClothPlace> cloth;
  std::optional<std::vector<std::string>> rows_on;  ///< the edges that take a row
  Corners corners = Corners::share_hole;
  std::optional<Um> corner_clear_um;  ///< how far a row that stops short stays from the other
  /// Where top and bottom rows stop, along their edges from the hinge side; left out: they go on to
  /// the row line of the fly side.
  std::optional<Um> rows_stop_um;
  Extras extras;
  bool operator==(const Panel&) const = default;
};

/// One place on the frame.
struct Bay {
  std::string code;
  Um chord_um = 0;
  Um rise_um = 0;
  std::string face;           ///< bulging or hollow
  std::string holds;          ///< code of the section or panel that hangs there
  bool stands_empty = false;  ///< what `holds` names was taken away and nothing hangs there
  /// Measured from a straight batten: how far along it, and how far the timber is from it there,
  /// counted as the rise is: more toward the crest, of a hollow bay too. As typed: few, or in any
  /// order.
  std::vector<std::array<Um, 2>> stations_um;
  std::optional<Um> taped_along_um;  ///< a tape bent round the timber
  Extras extras;
  std::vector<FixingRow> fixings{};
};

struct Job {
  std::string name;
  bool spacing_is_clear_gap = false;  ///< false: centre to centre
  int needle_size = material::kAssumedNeedleSize;
  int thread_tex = material::kAssumedThreadTex;
  Um tails_um = material::kAssumedTailsUm;
  Um slip_distance_um = material::kAssumedSlipDistanceUm;
  std::optional<Um> crown_um;           ///< staple crown, along the row
  std::optional<Um> wire_um;            ///< thickness of a staple's wire
  std::optional<Um> half_foot_um;       ///< half the presser foot's width
  std::optional<Um> foot_tolerance_um;  ///< how far the foot may stray
  Materials materials;
  std::vector<Trial> trials;
  std::vector<Bay> bays;
  std::vector<Section> sections;
  std::vector<Panel> panels;
  Extras extras;
};

/// Width of sleeve `index` (its number less 1) of a section, with its change applied.
Um sleeve_width_um(const Section& section, int index);

/// True where the sleeve at the left of a lap lies over the one at its right, seen from the front.
inline bool left_lies_over(const Section& section) { return section.lies_over != Side::left; }

/// Code of sleeve `index` (its number less 1): "2-07"; three digits from the hundredth on only.
std::string sleeve_code(const Section& section, int index);

/// Indices (from 0) of the numbers that have a sleeve, from the viewer's left; never empty.
std::vector<int> sleeves_there(const Section& section);

/// Side rows of sleeve `index` with its change applied.
RowPair side_rows_of(const Section& section, int index);

/// The job the page starts with: one sleeve 110 x 1800, spacing 50, ends kept 18 clear.
Job first_sleeve_job();

}  // namespace pouncemark::job
