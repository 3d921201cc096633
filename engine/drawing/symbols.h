#pragma once

#include <cstdint>
#include <string_view>

#include "engine/drawing/drawing.h"
#include "engine/drawing/shapes.h"

/// The marks of the trade in black print, each appended to a picture. All lengths are micrometres.
/// Where a mark stands on a row, `row` is any vector that runs along the row. Where a mark is an
/// edge, walk the outline anticlockwise from `from` to `to`: the piece lies on the left.
namespace pouncemark::drawing {

constexpr std::int64_t kRingRadiusUm = 1500;      ///< Guide point: middle of the ring's line.
constexpr std::int64_t kDotRadiusUm = 450;        ///< Guide point: the dot to prick.
constexpr std::int64_t kCrossLineReachUm = 3000;  ///< Cross line over a row, either side.
constexpr std::int64_t kCheckSegmentUm = 10000;   ///< Check bar: one black or white piece.
constexpr std::int64_t kHingeBarEveryUm = 6000;   ///< Hinge side: from bar to bar.
constexpr std::int64_t kRegistrationRadiusUm =
    3000;  ///< Registration mark: middle of the ring's line.

/// Which way a bar lies on the sheet.
enum class Lie : std::uint8_t { across, along };

/// A bar to be held against a steel rule. It starts at `low`, its lower left corner, and its outer
/// ends are exactly `length_um` apart.
struct Bar {
  Spot low;
  std::int64_t length_um = 0;
  Lie lie = Lie::across;
  std::int64_t thick_um = 4000;
};

/// A solid bar.
void add_solid_bar(Drawing& drawing, const Bar& bar);

/// Black and white pieces of 10 mm, black first, inside a thin frame; a rest makes a shorter last
/// piece. No ink lies outside the bar, so it is measured between its outer ends.
/// INSIST: the bar is longer than nothing and thicker than its frame.
void add_check_bar(Drawing& drawing, const Bar& bar);

/// Ring and upright cross, exactly symmetrical both ways about `centre`; arms reach 4.5 mm.
void add_registration_mark(Drawing& drawing, Spot centre);

/// A solid square with a white 0: distances are counted from here.
void add_datum_square(Drawing& drawing, Spot low, std::int64_t side_um);

/// A point to prick: dot in a ring, and a line over the row at right angles to it.
void add_guide_point(Drawing& drawing, Spot at, Spot row);

/// A staple at its true crown (leg to leg) along the row: bar, a dot for each leg, and the tick in
/// the middle from which spacing is measured.
void add_staple_mark(Drawing& drawing, Spot at, Spot row, std::int64_t crown_um);

/// Hinge side: a thick line whose outer side is the edge, with a bar inward every 6 mm, the first
/// 3 mm from `from`. INSIST: the ends differ.
void add_hinge_edge(Drawing& drawing, Spot from, Spot to);

/// Fly side: never a straight line. The tips of the zigzag lie on the edge, its feet inside the
/// piece; both ends are tips. INSIST: the ends differ.
void add_fly_edge(Drawing& drawing, Spot from, Spot to);

/// Size (em) at which `add_word_box` and `add_word_banner` set their word in a box this high.
std::int64_t boxed_word_size_um(const Box& box);

/// A bold word in the middle of an outlined box (FRONT). The outline lies inside the box. The
/// caller sees to it that the word is not wider than the box.
void add_word_box(Drawing& drawing, const Box& box, std::string_view words);

/// A bold white word in the middle of a solid box (FACE DOWN).
void add_word_banner(Drawing& drawing, const Box& box, std::string_view words);

/// An arrow of `length_um` from `foot` towards the top of the piece, with the word TOP on its
/// right. `quarter_turns` turns both anticlockwise about `foot` (0: the top of the piece is up the
/// sheet).
void add_top_arrow(Drawing& drawing, Spot foot, std::int64_t length_um, int quarter_turns);

}  // namespace pouncemark::drawing
