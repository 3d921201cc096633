#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "engine/checks/finding.h"
#include "engine/frame/bending.h"
#include "engine/geometry/units.h"

/// Rules about bending the work onto its frame and fixing it there, each in a file of its own.
/// Forces in thousandths of a newton, temperatures in thousandths of a degree.
namespace pouncemark::checks {

/// Caution 39, stop: a sheet held tight at two fixings `apart_um` apart that grows `growth_um`
/// between them, more than the `play_um` of its holes. Exactly as much passes.
std::optional<Finding> held_at_both_ends(Um apart_um, Um growth_um, Um play_um);

/// Caution 40, note: a hanging day more than `off_mk` colder or warmer than planned, and what that
/// shifts the screw farthest from the tight fixing: `shift_um` from the middle of its slot, outward
/// where positive. Exactly as far off passes.
std::optional<Finding> hanging_temperature(std::int64_t planned_mc, std::int64_t today_mc,
                                           std::int64_t off_mk, Um shift_um);

/// Caution 41, warn: a push that takes more than `hands` people at `each_mn`; assumed unless
/// entered. Exactly as much as they push passes.
std::optional<Finding> many_hands(std::int64_t force_mn, std::int64_t each_mn, std::int64_t hands,
                                  bool is_assumed);

/// Caution 38, note: a chord no longer than half of the job's longest; `push_mn` is what bending
/// the short bay takes. One micrometre more passes.
std::optional<Finding> short_bay(Um chord_um, Um longest_um, std::int64_t push_mn);

/// Caution 42, warn: a rise over a fifth of the chord, where the small-bend formula reads high.
std::optional<Finding> deep_curve(Um chord_um, Um rise_um, const frame::MiddlePush& push);

/// Warn: fixings asked for along an edge that the piece does not have.
Finding no_such_edge(const std::string& edge, const std::string& piece);

/// Warn: a bay whose fixings all stand in slots: nothing holds the sheet in its place.
Finding none_is_tight();

/// A limit or a place that fixings are held against.
struct FixingNeed {
  Um screw_um = 0;
  Um washer_um = 0;
  bool is_assumed = false;  ///< no one entered the place or the measure
};

/// Warn: a hole whose middle is nearer to an edge of sheet than two screws across (assumed limit);
/// `near_um` from the middle, or of a slot from its rounded end. Exactly at the limit passes.
std::optional<Finding> fixing_near_edge(Um near_um, const FixingNeed& need);

/// Warn: a washer that lies on a row of stitches `near_um` from the middle of its screw.
std::optional<Finding> washer_on_row(Um near_um, const FixingNeed& need);

/// Stop, or warn where the cloth's place was entered by no one: a screw `in_um` in from an edge
/// whose cloth begins `cloth_um` in, or after it has crept out. Touching passes.
std::optional<Finding> screw_in_cloth(Um in_um, Um cloth_um, const FixingNeed& need);

/// Warn: two slots with less than a screw's width of sheet between their ends.
std::optional<Finding> slots_meet(Um between_um, const FixingNeed& need);

}  // namespace pouncemark::checks
