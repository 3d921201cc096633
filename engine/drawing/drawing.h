#pragma once

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

/// Floor 2, drawing: a neutral picture in whole micrometres, x to the right, y up, origin at the
/// lower left. Knows no page, no file format, no screen and no job.
namespace pouncemark::drawing {

/// A place on the picture, micrometres.
struct Spot {
  std::int64_t x = 0;
  std::int64_t y = 0;
  bool operator==(const Spot&) const = default;
};

/// A rectangle, micrometres; `low` is the lower left corner.
struct Box {
  Spot low;
  Spot high;
};

enum class Step : std::uint8_t { move, line, curve, close };

/// One step of a path. `curve` is a cubic Bezier with control points `a`, `b` and end `to`.
struct PathStep {
  Step step = Step::move;
  Spot to;
  Spot a;
  Spot b;
};

/// How a stroke looks: width, dashes (empty: solid; alternating on/off lengths), blackness in
/// thousandths (0 black, 1000 white). All lengths micrometres.
struct Pen {
  std::int64_t width_um = 250;
  std::vector<std::int64_t> dash_um;
  int grey_permille = 0;
  bool operator==(const Pen&) const = default;
};

/// Lines and curves drawn with one pen.
struct Stroke {
  Pen pen;
  std::vector<PathStep> steps;
};

/// A filled area (non-zero rule).
struct Fill {
  int grey_permille = 0;
  std::vector<PathStep> steps;
};

enum class Weight : std::uint8_t { regular, bold };
enum class Align : std::uint8_t { left, centre, right };

/// One run of text. `at` is the left end, middle or right end of the base line, by `align`.
/// `size_um` is the em. `quarter_turns` counts anticlockwise quarter turns about `at`
/// (1: reads upwards).
struct Text {
  Spot at;
  std::int64_t size_um = 3500;
  Weight weight = Weight::regular;
  Align align = Align::left;
  int quarter_turns = 0;
  int grey_permille = 0;
  std::string words;
};

/// From here on only what lies inside `box` is drawn, until the matching ClipEnd. May nest.
struct ClipStart {
  Box box;
};
struct ClipEnd {};

using Item = std::variant<Stroke, Fill, Text, ClipStart, ClipEnd>;

/// A picture: its items in drawing order.
struct Drawing {
  std::vector<Item> items;
};

}  // namespace pouncemark::drawing
