#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "engine/frame/elastica.h"
#include "engine/geometry/units.h"

/// How stiff sheets are and what it takes to bend them: for the force by bay in `figures`, and for
/// who is needed to lift it. Forces in whole thousandths of a newton; one over 10^12 N is none, and
/// nothing is returned.
namespace pouncemark::frame {

/// One sheet of a pack.
struct Ply {
  double thickness_mm = 0;
  double modulus_mpa = 0;  ///< stiffness E
  double poisson = 0;      ///< less than 1
};

/// How the sheets of a pack lie on one another.
enum class Hold : std::uint8_t {
  slipping,  ///< each bends by itself
  locked,    ///< glued or pressed together: they bend as one
};

/// Stiffness D = E t³ / (12 (1 - ν²)) of a millimetre's width, N·mm; 0 without thickness.
double stiffness(const Ply& ply);

/// Stiffness of a pack, its plies in their order: slipping plies add up; locked ones bend about the
/// middle of their stiffness. 0 for no ply.
double stiffness(const std::vector<Ply>& pack, Hold hold);

/// Bending moment of a millimetre's width at this radius, D / R, N·mm; nothing at a radius that is
/// not positive.
std::optional<double> moment(double stiffness, double radius_mm);

/// Strain of the outer face, t / 2R with the radius of the middle of the sheet, in millionths;
/// nothing where that radius is not over half the thickness: no sheet bends so.
std::optional<std::int64_t> surface_strain(Um thickness_um, Um middle_radius_um);

/// The radius down to which a sheet springs back flat, E t / (2 σ), to the middle of the sheet; it
/// may still craze there when held for years. Nothing without a strength at yield.
std::optional<Um> elastic_radius_um(const Ply& ply, double yield_mpa);

/// What is bent: stiffness of a millimetre's width, and the width along the fold lines.
struct Strip {
  double stiffness = 0;  ///< N·mm
  Um width_um = 0;       ///< a bay's height
};

/// Pushing a sheet in the middle until it rises so far over the chord.
struct MiddlePush {
  std::int64_t small_bend_mn = 0;  ///< 48 D w h / c³
  std::int64_t exact_mn = 0;       ///< large bending (elastica.h: pushed_in_middle)
  bool is_beyond_small = false;    ///< the rise is over a twentieth of the chord: show the exact
  Um along_um = 0;                 ///< length of sheet between the supports
  std::optional<Um> tightest_um;   ///< radius under the push; nothing where it stays flat
};

/// Nothing for a chord that is not positive, a negative rise or one over five chords.
std::optional<MiddlePush> middle_push(const Strip& strip, Um chord_um, Um rise_um);

/// The same of a shape that is known (pushed_in_middle of rise ÷ chord): for several strips that
/// are pushed to one shape. `chord_um` > 0, `rise_um` >= 0.
std::optional<MiddlePush> middle_push(const Strip& strip, const PushedInMiddle& shape, Um chord_um,
                                      Um rise_um);

/// The push in the middle that bends a sheet to this radius under it, 4 M / c: at one radius half
/// the chord needs twice the push. Nothing for a chord or radius that is not positive.
std::optional<std::int64_t> push_for_radius_mn(const Strip& strip, Um chord_um, Um radius_um);

/// The push on both ends, hinged, that holds a sheet this long with its ends a chord apart; at full
/// length the push at which it just gives way, π² D w / L². Nothing for a length that is not
/// positive or a chord that is negative or longer than the sheet.
std::optional<std::int64_t> end_push_mn(const Strip& strip, Um length_um, Um chord_um);

}  // namespace pouncemark::frame
