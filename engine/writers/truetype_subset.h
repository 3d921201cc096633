#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/writers/truetype_face.h"

namespace pouncemark::writers {

/// A TrueType file holding only `glyphs` of `face`: the new number of a glyph is its place in the
/// list, and the parts of composite glyphs follow behind. Glyph 0 (the empty box) must come first.
/// Has no table of signs: the reader is given glyph numbers.
std::string subset(const TrueTypeFace& face, const std::vector<std::uint16_t>& glyphs);

}  // namespace pouncemark::writers
