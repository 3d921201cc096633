#pragma once

/// All small constants of the engine stand here, each with its reason; nowhere else.
namespace pouncemark::tolerance {

/// Two places nearer than this are the same place: a thousandth of the micrometre we store.
inline constexpr double kSamePointMm = 1e-6;

/// An arc that rises less than this over its chord is drawn and measured as a straight line: the
/// micrometre we store cannot show the difference.
inline constexpr double kCurveMm = 1e-6;

/// Two directions whose cross product (of unit vectors) is smaller than this count as parallel:
/// their meeting point would lie a thousand kilometres away.
inline constexpr double kParallel = 1e-9;

/// Two edges that turn less than this (sine of the angle) where they meet run into one another: the
/// rise of a rounded corner, entered to the micrometre, is true to about a tenth of it.
inline constexpr double kSmoothJoint = 1e-3;

/// Two edges of an outline touch where they come this near: the micrometre their ends are stored
/// in.
inline constexpr double kTouchMm = 1e-3;

/// A row that stays this near to the edge of a ply runs along it.
inline constexpr double kAlongEdgeMm = 2e-6;

/// So far to its left and right it is looked at what lies on either side of such an edge: well
/// beyond what counts as along it, far under what any ply is cut to.
inline constexpr double kBesideEdgeMm = 2e-5;

}  // namespace pouncemark::tolerance
