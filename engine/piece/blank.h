#pragma once

#include "engine/geometry/units.h"

namespace pouncemark::piece {

/// The sheet one sleeve is cut from: `count` blanks of `width_um`, and where it is bent, measured
/// from the blank's edge (folded: the middle of the fold; round: where a flange begins, the same at
/// both edges; 0 with two leaves, which are not bent).
struct Blank {
  int count = 1;
  Um width_um = 0;
  Um fold_um = 0;
};

/// Two leaves, each as wide as the sleeve.
Blank two_leaf_blank(Um width_um);

/// One sheet folded over: 2(W - r - t) + π(r + t/2) for a finished width W, inside radius r and
/// sheet t; the fold's middle line keeps its length. W > r + t.
Blank folded_blank(Um width_um, Um radius_um, Um leaf_um);

/// A round tube with a flange of two plies: π(D + t) + 2 flange. The finished width is the tube's
/// outside and the flange beside it, so the inside diameter D is W - flange - 2t; D > 0.
Blank round_blank(Um width_um, Um flange_um, Um leaf_um);

}  // namespace pouncemark::piece
