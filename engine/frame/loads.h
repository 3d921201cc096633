#pragma once

#include <cstdint>
#include <vector>

#include "engine/geometry/units.h"

/// What the work weighs and what hangs on each stitch and fixing. For the hanging card's figures.
/// Weights in whole milligrams, forces in whole thousandths of a newton.
namespace pouncemark::frame {

/// A square metre of sheet, milligrams; the density in thousandths of g/cm³ (kilograms a cubic
/// metre). Exact.
std::int64_t sheet_mg_m2(Um thickness_um, std::int64_t density);

/// A rectangle of what weighs so much a square metre.
std::int64_t mass_mg(std::int64_t mg_m2, Um width_um, Um length_um);

/// The force of a weight at standard gravity, 9.80665 N for a kilogram.
std::int64_t weight_mn(std::int64_t mass_mg);

/// The force on each when `holders` stitches or fixings share it equally; `holders` > 0. True of
/// stitches hanging in a row, not of fixings (share_of_fixings).
std::int64_t equal_share_mn(std::int64_t weight_mn, std::int64_t holders);

/// A piece lifted by one corner hangs on about this many stitches. Assumed: three to five.
inline constexpr std::int64_t kCornerStitches = 4;

/// The part of the weight that each of `fixings` fixings carries, in order along a stiff batten
/// with equal spaces between them and its weight spread evenly: by the equations of three moments,
/// not by equal parts. They add up to 1 and are the same from both ends; none for no fixing, all of
/// it on a single one, which balances. Source: Clapeyron's theorem; textbook tables of continuous
/// beams.
std::vector<double> share_of_fixings(int fixings);

/// The same as forces, each rounded by itself.
std::vector<std::int64_t> fixing_loads_mn(std::int64_t weight_mn, int fixings);

}  // namespace pouncemark::frame
