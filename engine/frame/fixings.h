#pragma once

#include <cstdint>
#include <optional>

#include "engine/geometry/units.h"
#include "engine/material/fields.h"

/// Where screws hold a sheet to the timber: one is tight, the rest stand in slots in which the
/// sheet grows and shrinks past them. For the slots of a bay on its drilling strip.
namespace pouncemark::frame {

/// How much a kind of sheet grows for each degree, in thousandths of a millionth of its length,
/// with where that comes from: the largest that suppliers give, so that no slot comes out short.
material::Value sheet_growth(material::Sheet sheet);

/// Sheet against timber. Growth in thousandths of a millionth of the length a degree, a difference
/// of temperature in thousandths of a degree.
struct Warming {
  std::int64_t sheet = 0;
  std::int64_t timber = 0;
  std::int64_t by_mk = 0;
};

/// How far the sheet moves past the timber at `from_tight_um` from the tight fixing; away from it
/// is positive. Negative where it shrinks, or where the timber grows more.
Um move_um(Um from_tight_um, const Warming& warming);

/// The farthest a fixing can stand from the tight one, which lies at `tight_um` between fixings at
/// 0 and `last_um`: from the middle half the way moves half as far.
Um farthest_um(Um tight_um, Um last_um);

/// What a slot must take up, all of it either way from where the screw is set.
struct SlotNeed {
  Um screw_um = 0;      ///< the screw's diameter
  Um move_um = 0;       ///< with warmth; the sign does not matter
  Um damp_um = 0;       ///< of timber across its grain; 0 where the row runs along the grain
  Um tolerance_um = 0;  ///< how far off a hole or screw may stand
};

/// Length of the slot, the screw in its middle: screw + 2 (move + damp) + 2 tolerance.
Um slot_um(const SlotNeed& need);

/// The length as shown and drilled: up to the next half millimetre, never down.
Um slot_shown_um(Um slot_um);

/// Where to set the screw in a slot on a day that is not as warm as the middle of what is expected:
/// so far from the slot's middle, away from the tight fixing where positive. Hung colder, the sheet
/// has yet to grow outward past the screw, so the screw goes to the slot's outer part.
Um screw_from_middle_um(Um from_tight_um, const Warming& from_middle_to_today);

}  // namespace pouncemark::frame
