#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/checks/rules.h"
#include "engine/solve/arm.h"
#include "engine/solve/rows.h"

/// Inside of solve: how the rules are asked and their findings gathered. Only solve's own files
/// include this.
namespace pouncemark::solve {

using Findings = std::vector<Finding>;

/// Where a rule was asked: in the words of the finding, and as its part of the piece.
struct Asking {
  int piece = 0;
  std::string place;
  checks::Part part = checks::Part::whole;
  std::vector<int> at{};
};

/// Findings with one cause in one piece are one finding; this gathers where it holds.
class Gathering {
 public:
  /// Keeps a finding, if there is one.
  void add(std::optional<Finding> finding, const Asking& asking);

  /// Hands everything over, places said as "section 2, all 16 laps"; `what` is their name in the
  /// plural and `every` how many of them the piece has (0: never all).
  void move_to(Findings* findings, const std::string& what, const Results& results,
               std::size_t every);

 private:
  struct Kept {
    Finding finding;
    std::vector<std::string> places;
  };
  std::vector<Kept> kept_;
};

/// What the rules measure against, from the job or assumed.
struct Limits {
  int needle_size = 0;
  Um wire_um = 0;
  checks::FootNeed foot;
  const std::vector<job::Trial>* trials = nullptr;  ///< never none where a section is checked
};

/// The checks of one section and of one panel; `index` is the piece's.
void check_section(const job::Section& section, const Results& results, int index,
                   const Limits& limits, Findings* findings);
void check_panel(const job::Panel& panel, const Results& results, int index, const Limits& limits,
                 Findings* findings);

/// What machine and stapler do not reach, as far as they were measured; `alone` holds one piece.
void check_reach(const job::Materials& materials, const Rolled& rolled, const Results& alone,
                 Findings* findings);

/// Stitch, sheet, staples, foot and bobbin along the rows of one piece; `alone` holds that piece.
void check_sewing(const job::Job& job, const job::Section& section, const Results& alone,
                  Findings* findings);
void check_sewing(const job::Job& job, const job::Panel& panel, const Results& alone,
                  Findings* findings);

/// Needle, thread, trial seams, machine and the values of materials, of the whole job.
void check_materials(const job::Job& job, const Results& results, Findings* findings);

/// Curves of the bays, and the pieces and rows that are bent over them.
void check_bay_curves(const job::Job& job, const Results& results, Findings* findings);

/// Fixings of one bay; `place` is the bay's.
void check_fixings(const job::Job& job, const Results& results, int bay, std::string place,
                   Findings* findings);

/// Codes that are missing, unknown or used twice anywhere in the job.
void check_codes(const job::Job& job, const Results& results, Findings* findings);

}  // namespace pouncemark::solve
