#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "web/model/making.h"
#include "web/model/solved.h"

/// Where the top and bottom rows of the panel in a bay stop short of the fly side.
namespace pouncemark::web {

/// The line of the stage Curve that says so. Nothing to say where neither a stop is entered nor the
/// slip comes to its limit.
struct StopLine {
  bool is_there = false;
  bool is_entered = false;
  std::string shown;         ///< in its box: "213.5", "run on"
  std::string was;           ///< before the last action, where it was another
  std::optional<Um> offers;  ///< what its button enters; nothing: it takes the stop away
  std::string button;        ///< "Stop at 213.5", "Let them run on"; empty: no button
};
StopLine stop_line(const Solved& now, const Solved* before, int bay);

/// Where they stop at the latest for the slip to stay within its limit in every bay that the piece
/// hangs in: at or before that place, in steps of half a millimetre. Nothing where it does.
std::optional<Um> proposed_stop_um(const Solved& now, int piece);

/// The rows of the panel in that bay stop there; with nothing they run on to the fly side.
Made with_rows_stop(const Solved& now, int bay, std::optional<Um> stop);
/// The same as typed; refused with a sentence.
Made with_rows_stop_typed(const Solved& now, int bay, std::string_view typed);

/// The action in words.
std::string stop_action(const std::string& panel, std::optional<Um> stop);

}  // namespace pouncemark::web
