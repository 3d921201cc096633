#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/solve/results.h"

namespace pouncemark::output {

/// A name as it may stand in a file name: lower case ASCII letters and digits; Latin letters lose
/// their accents, everything else becomes a single dash; at most 60 long; never empty.
std::string file_word(std::string_view name);

/// "section-1", "panel-1".
std::string piece_word(const solve::Piece& piece);

/// The word of every piece, each different: where two would be alike the later gets "-2", "-3" ...
std::vector<std::string> piece_words(const solve::Results& results);

}  // namespace pouncemark::output
