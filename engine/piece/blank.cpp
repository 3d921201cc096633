#include "engine/piece/blank.h"

#include "engine/base/insist.h"

namespace pouncemark::piece {
namespace {

constexpr double kPi = 3.14159265358979323846;

}  // namespace

Blank two_leaf_blank(Um width_um) { return {2, width_um, 0}; }

Blank folded_blank(Um width_um, Um radius_um, Um leaf_um) {
  INSIST(width_um > radius_um + leaf_um);
  const double round = kPi * (from_um(radius_um) + from_um(leaf_um) / 2.0);
  const double width = 2.0 * from_um(width_um - radius_um - leaf_um) + round;
  return {1, to_um(width), to_um(width / 2.0)};
}

Blank round_blank(Um width_um, Um flange_um, Um leaf_um) {
  const Um inside = width_um - flange_um - 2 * leaf_um;
  INSIST(inside > 0);
  const double round = kPi * from_um(inside + leaf_um);
  return {1, to_um(round + 2.0 * from_um(flange_um)), flange_um};
}

}  // namespace pouncemark::piece
