#pragma once

#include "web/widgets/brush.h"

namespace pouncemark::web {

/// Stop: solid. Warn: hatched end. Note: outline. The word is the sign, never the colour alone.
enum class TagKind { stop, warn, note };

/// A tie-on label with two cut corners; gives its right edge.
float tag(const Brush& brush, Spot upper_left, TagKind kind);

/// The colour that belongs to the tag, for the figure beside it.
Colour tag_colour(TagKind kind);

float tag_height();
float tag_width(const Brush& brush, TagKind kind);

}  // namespace pouncemark::web
