#pragma once

#include <cstdint>
#include <string>

/// Floor 5, checks: one rule per file, from inputs to findings with the sum shown and what to
/// change. Knows rows and pieces, not the job file, no page and no screen.
namespace pouncemark::checks {

/// A stop is passed only with a name and a reason.
enum class Severity : std::uint8_t { stop, warn, note };

/// Something to know before work goes on. `place` names piece and row; `figure` is the headline
/// number; `sentence` says it in trade words, figure first; `change` what to do about it; `sum` how
/// it was worked out, with its source.
struct Finding {
  std::string code;
  Severity severity = Severity::note;
  std::string place;
  std::string figure;
  std::string sentence;
  std::string change;
  std::string sum;
  int piece = -1;  ///< index into Results::pieces; -1: the whole job
};

}  // namespace pouncemark::checks
