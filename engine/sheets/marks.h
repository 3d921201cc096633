#pragma once

#include "engine/geometry/units.h"

namespace pouncemark::sheets {

/// A stitch row on paper: one dashed stroke from hole to hole, each stitch seven tenths ink.
inline constexpr Um kStitchPenUm = 500;
inline constexpr int kStitchInkTenths = 7;
/// The first and last hole of a stitch row carry an open square of this size.
inline constexpr Um kRowEndSquareUm = 2'000;
inline constexpr Um kThinPenUm = 200;
/// Labels at arm's length: em of at least 3.5 (judged by eye).
inline constexpr Um kLabelUm = 3'500;

}  // namespace pouncemark::sheets
