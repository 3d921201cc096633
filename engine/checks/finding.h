#pragma once

#include <cstdint>
#include <string>
#include <vector>

/// Floor 5, checks: one rule per file, from inputs to findings with the sum shown and what to
/// change. Knows rows and pieces, not the job file, no page and no screen.
namespace pouncemark::checks {

/// A stop is passed only with a name and a reason.
enum class Severity : std::uint8_t { stop, warn, note };

/// What of its piece a finding is about: laps by the index of the sleeve at their left, sleeves by
/// theirs, rows by their index in Results::rows.
enum class Part : std::uint8_t { whole, laps, sleeves, rows };

/// Something to know before work goes on. `place` names piece and row; `figure` is the headline
/// number; `sentence` says it in trade words, figure first; `brief` what was found and what is
/// needed, for a tag at the place itself (empty: the tag says it all); `change` what to do about
/// it; `sum` how it was worked out, with its source.
struct Finding {
  std::string code;
  Severity severity = Severity::note;
  std::string place;
  std::string figure;
  std::string sentence;
  std::string brief;
  std::string change;
  std::string sum;
  int piece = -1;  ///< index into Results::pieces; -1: the whole job
  Part part = Part::whole;
  std::vector<int> at;  ///< the laps, sleeves or rows it is about; each once, in their order
};

}  // namespace pouncemark::checks
