#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include "engine/geometry/units.h"

/// How timber moves with damp: next to nothing along the grain, and more across it than any sheet
/// does with warmth. For fixings on cross rails.
namespace pouncemark::frame {

/// How a board was sawn: which way of the tree its width runs.
enum class Sawn : std::uint8_t {
  quarter,  ///< toward the heart: moves less
  flat,     ///< along the rings: moves most
};

/// A timber and its change of width for each percent of moisture, in hundred-thousandths.
struct Timber {
  std::string_view name;
  std::int64_t quarter = 0;
  std::int64_t flat = 0;
  std::string_view source;
};

/// The timbers whose coefficients are known.
std::span<const Timber> timbers();

/// The timber of that name; nothing for one not in the table.
std::optional<Timber> timber_named(std::string_view name);

/// The moisture contents between which the coefficients hold, thousandths of a percent.
inline constexpr std::int64_t kDriestMpct = 6'000;
inline constexpr std::int64_t kDampestMpct = 14'000;

/// Growth across the grain of `width_um` from one moisture content to another, D · C · (M2 - M1);
/// negative where it dries. Thousandths of a percent. Nothing where either lies outside the table's
/// 6 to 14 %.
std::optional<Um> growth_across_um(const Timber& timber, Sawn sawn, Um width_um,
                                   std::int64_t from_mpct, std::int64_t to_mpct);

/// Moisture content that timber settles to in air of this temperature (thousandths of a degree
/// Celsius) and damp (thousandths of a percent of relative humidity), in thousandths of a percent.
/// Nothing outside 0 to 60 °C or 0 to 100 %. Source: Hailwood and Horrobin's equation with the
/// coefficients of the Wood Handbook (FPL-GTR-190), from memory, checked at published points.
std::optional<std::int64_t> settles_at_mpct(std::int64_t temperature_mc, std::int64_t damp_mpct);

}  // namespace pouncemark::frame
