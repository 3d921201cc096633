#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "web/model/bench.h"
#include "web/model/found.h"
#include "web/model/remedies.h"
#include "web/model/words.h"
#include "web/widgets/stage_row.h"

namespace pouncemark::web {

struct PageState;

/// One finding as it is listed: which of the results it is, and what truly helps with it.
struct ListedFinding {
  std::size_t index = 0;
  std::vector<Remedy> remedies;
};

/// The findings nearest first, worked out for the bench at `turn`.
struct FoundList {
  std::int64_t turn = -1;
  Stage stage = Stage::make;  ///< on Sew those about sewing before all others, on Curve of bays
  std::string bay;            ///< on Curve: those of this bay before all others
  std::vector<ListedFinding> listed;
  std::size_t first = 0;  ///< first one shown, where not all have room
  std::string open;       ///< code and place of the one whose sum is open
};

/// The lines of the slip, worked out for the bench at `turn` with the line `opened` asked for.
struct Followed {
  std::int64_t turn = -1;
  std::string opened;
  std::string stage;  ///< what they are about: empty on Make, else the kind of row or the bay
  std::vector<FollowLine> lines;
  bool is_unfolded = false;  ///< lines that give way are shown as well
};

/// The lap that was chosen on a section, by the number of the sleeve at its left less 1.
struct ChosenLap {
  int piece = -1;
  int number = -1;
};

/// Works slip and findings out anew when the bench has changed since; never while drawing.
void ask_what_follows(const Bench& bench, PageState& state);

/// The lap that is shown of the section on the bench, by the index of the sleeve at its left: the
/// chosen one, or the first to look at; -1 where there is none.
int shown_lap(const Bench& bench, const ChosenLap& chosen);

/// Goes to where a finding is to be seen.
void go_to(Bench& bench, ChosenLap& chosen, const Spotted& spot);

}  // namespace pouncemark::web
