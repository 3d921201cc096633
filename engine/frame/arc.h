#pragma once

#include <optional>

/// Floor 4, frame: chord, rise and stations → curve, length along it, slip and creep. Knows no job,
/// no page and no screen. Millimetres and radians; nothing is rounded here.
namespace pouncemark::frame {

/// The arc of a bay and what follows from its chord and rise. Flat where the rise is 0; a half
/// circle where it is half the chord; a higher rise is worked out just the same.
struct Arc {
  double chord = 0;   ///< the straight distance
  double rise = 0;    ///< of the crown over the chord
  double radius = 0;  ///< c²/(8h) + h/2; 0 where it is flat
  double turn = 0;    ///< 4·atan(2h/c): no branch at a half circle
  double along = 0;   ///< along the curve: radius × turn; the chord where it is flat

  bool is_flat() const { return radius == 0; }
  /// How much longer the curve is than the straight distance.
  double extra() const { return along - chord; }
};

/// `chord` > 0 and `rise` >= 0, else our own mistake: the job's reader refuses them.
Arc arc_of(double chord, double rise);

/// The arc over this chord that is so long along the curve: what rise a tape bent round the timber
/// speaks for. Flat where both are equal; nothing where the curve is shorter than its chord.
std::optional<Arc> arc_along(double chord, double along);

}  // namespace pouncemark::frame
