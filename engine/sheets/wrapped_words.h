#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/geometry/units.h"

namespace pouncemark::sheets {

/// The room a run of words takes at an em of `size_um`, micrometres: never less than any of our
/// faces takes for letters, figures and stops; a guess for signs beyond ASCII.
Um words_width_um(std::string_view words, Um size_um);

/// The words in lines no wider than `width_um`, broken at blanks, and within a word only where it
/// is wider than a line by itself. A line holds at least one sign. No words: no line.
std::vector<std::string> wrapped(std::string_view words, Um size_um, Um width_um);

/// The same, but no more than `lines` of them: where words are left out the last one ends in "…".
std::vector<std::string> wrapped_at_most(std::size_t lines, std::string_view words, Um size_um,
                                         Um width_um);

}  // namespace pouncemark::sheets
