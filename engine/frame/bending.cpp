#include "engine/frame/bending.h"

#include <cmath>
#include <numbers>

#include "engine/frame/elastica.h"

namespace pouncemark::frame {
namespace {

using std::numbers::pi;

/// A force beyond this many newtons is nobody's push; counted in thousandths it would not fit.
constexpr double kMostNewtons = 1e12;

std::optional<std::int64_t> to_mn(double newtons) {
  if (!(newtons <= kMostNewtons)) return std::nullopt;
  return std::llround(newtons * 1000.0);
}

/// Stiffness of a ply against stretching where its width cannot draw in.
double plate_modulus(const Ply& ply) { return ply.modulus_mpa / (1.0 - ply.poisson * ply.poisson); }

double cube(double a) { return a * a * a; }

double locked_stiffness(const std::vector<Ply>& pack) {
  double stretch = 0;
  double first_moment = 0;
  double below = 0;
  for (const Ply& ply : pack) {
    const double one = plate_modulus(ply) * ply.thickness_mm;
    stretch += one;
    first_moment += one * (below + ply.thickness_mm / 2.0);
    below += ply.thickness_mm;
  }
  if (stretch <= 0) return 0;
  const double middle = first_moment / stretch;
  double sum = 0;
  below = 0;
  for (const Ply& ply : pack) {
    const double away = below + ply.thickness_mm / 2.0 - middle;
    sum += stiffness(ply) + plate_modulus(ply) * ply.thickness_mm * away * away;
    below += ply.thickness_mm;
  }
  return sum;
}

}  // namespace

double stiffness(const Ply& ply) { return plate_modulus(ply) * cube(ply.thickness_mm) / 12.0; }

double stiffness(const std::vector<Ply>& pack, Hold hold) {
  if (hold == Hold::locked) return locked_stiffness(pack);
  double sum = 0;
  for (const Ply& ply : pack) sum += stiffness(ply);
  return sum;
}

std::optional<double> moment(double stiffness, double radius_mm) {
  if (!(radius_mm > 0)) return std::nullopt;
  return stiffness / radius_mm;
}

std::optional<std::int64_t> surface_strain(Um thickness_um, Um middle_radius_um) {
  if (thickness_um < 0 || 2 * middle_radius_um <= thickness_um) return std::nullopt;
  return divide_round(thickness_um * 1'000'000, 2 * middle_radius_um);
}

std::optional<Um> elastic_radius_um(const Ply& ply, double yield_mpa) {
  if (!(yield_mpa > 0)) return std::nullopt;
  return to_um(ply.modulus_mpa * ply.thickness_mm / (2.0 * yield_mpa));
}

std::optional<MiddlePush> middle_push(const Strip& strip, Um chord_um, Um rise_um) {
  if (chord_um <= 0 || rise_um < 0) return std::nullopt;
  const auto shape = pushed_in_middle(from_um(rise_um) / from_um(chord_um));
  if (!shape) return std::nullopt;
  return middle_push(strip, *shape, chord_um, rise_um);
}

std::optional<MiddlePush> middle_push(const Strip& strip, const PushedInMiddle& shape, Um chord_um,
                                      Um rise_um) {
  const double chord = from_um(chord_um);
  const double unit = strip.stiffness * from_um(strip.width_um) / (chord * chord);
  const auto small = to_mn(unit * shape.small);
  const auto exact = to_mn(unit * shape.load);
  if (!small || !exact) return std::nullopt;
  MiddlePush push;
  push.small_bend_mn = *small;
  push.exact_mn = *exact;
  push.is_beyond_small = 20 * rise_um > chord_um;
  push.along_um = to_um(chord * shape.along);
  if (rise_um > 0) push.tightest_um = to_um(chord / shape.bend);
  return push;
}

std::optional<std::int64_t> push_for_radius_mn(const Strip& strip, Um chord_um, Um radius_um) {
  if (chord_um <= 0 || radius_um <= 0) return std::nullopt;
  const double bent = strip.stiffness * from_um(strip.width_um) / from_um(radius_um);
  return to_mn(4.0 * bent / from_um(chord_um));
}

std::optional<std::int64_t> end_push_mn(const Strip& strip, Um length_um, Um chord_um) {
  if (length_um <= 0) return std::nullopt;
  const double length = from_um(length_um);
  const auto shape = pushed_to_chord(from_um(chord_um) / length);
  if (!shape) return std::nullopt;
  const double gives_way = pi * pi * strip.stiffness * from_um(strip.width_um) / (length * length);
  return to_mn(gives_way * shape->load);
}

}  // namespace pouncemark::frame
