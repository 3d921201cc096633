#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "engine/geometry/units.h"

namespace pouncemark::web {

/// What a box takes, micrometres, both ends counted in.
struct Limits {
  Um least = 0;
  Um most = 0;
};

/// A typed length: the figure, or the sentence that says why it is refused. The text is kept either
/// way, so that nothing typed is lost.
struct Entry {
  std::string text;
  std::optional<Um> um;
  std::string sentence;
};

/// Reads what was typed into a box: `6cm`, `2.4m`, `1/4in`, `5,5`, `2400`.
Entry read_entry(std::string_view text, Limits limits);

/// A figure moved by the arrow keys, held within the limits.
Um stepped(Um um, Um by, Limits limits);

}  // namespace pouncemark::web
