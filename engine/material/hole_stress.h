#pragma once

#include <optional>

/// Stress in a sheet at the holes of a row of stitches, and what holds a stitch. Small deflections,
/// round holes, sheet that stretches evenly: figures to compare rows by, not a structural check.
namespace pouncemark::material {

/// Part of the sheet left between holes `hole` wide, `apart` from middle to middle: 1 − d/p.
double sheet_left(double hole, double apart);

/// The greatest stress at a hole of one infinite row, by the stress far away, when the sheet is
/// pulled across the row and along it. Read from a table of the exact values at hole ÷ stitch 0.05
/// to 0.8 by a smooth curve through four of them; nothing beyond 0.8.
struct RowStress {
  double across = 0;
  double along = 0;
};
std::optional<RowStress> row_stress(double hole, double apart);

/// The same of one hole in the middle of a strip, by the stress in what is left beside it: a
/// published fit, good to one in a hundred up to half the width.
double strip_stress(double hole, double width);

/// Around one hole far from any edge: pulled one way, pulled alike both ways, sheared.
inline constexpr double kOneHolePulled = 3.0;
inline constexpr double kOneHolePulledBothWays = 2.0;
inline constexpr double kOneHoleSheared = 4.0;

/// The force, N, at which a stitch or staple shears out to the edge: 2 t (e − d/2) τ, 0 where the
/// hole reaches the edge. Millimetres and MPa.
double shear_out_n(double thickness, double hole, double from_edge, double shear_mpa);

/// The force, N, at which it bears its hole out: d t σ.
double bearing_n(double thickness, double hole, double bearing_mpa);

/// The strength of a seam of stitch type 301, both threads alike, N for each millimetre of row:
/// 1.5 × the thread's strength ÷ the stitch. The sheet must not tear first.
double seam_strength_n_mm(double thread_n, double stitch);

/// The stiffness, MPa, of a strip held at one end that droops under its own weight:
/// 1.5 ρ g l⁴ ÷ (δ t²). Density g/cm³; free length, droop and thickness in millimetres.
double droop_modulus_mpa(double density, double length, double droop, double thickness);

}  // namespace pouncemark::material
