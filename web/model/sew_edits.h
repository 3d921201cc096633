#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/job/job.h"
#include "engine/solve/results.h"
#include "web/model/making.h"
#include "web/model/place.h"
#include "web/model/solved.h"

namespace pouncemark::web {

/// A whole number as typed, or why it is refused.
struct SewNumber {
  int number = 0;
  std::string sentence;
};
/// A needle size, 20 to 400. What names a needle system ("135x17") is refused as that.
SewNumber read_needle_size(std::string_view typed);
/// A thread's tex, 1 to 2000. A ticket number is not known to be one, and is not asked for.
SewNumber read_thread_tex(std::string_view typed);

/// A kind of row of the piece on the bench: "side", "joining", "hinge", "top", "bottom".
struct SewKind {
  std::string id;
  std::string words;  ///< on its button: "Side rows"
  std::string row;    ///< in a sentence: "side rows of section 2"
  job::RowsOf of = job::RowsOf::side_rows;
  std::vector<int> rows;  ///< indices into Results::rows; not empty
};
/// Those the place has stitch rows of; of a sleeve in a section its own side rows, and the joining
/// rows of the section.
std::vector<SewKind> sew_kinds(const Solved& now, Place place);

/// The boxes on the bench of the stage.
enum class SewBox { needle_size, thread_tex, stitch, stack };

/// The figure as the job has it: needle size and tex as they are, lengths in micrometres.
std::int64_t sew_measured(const Solved& now, Place place, const SewKind& kind, SewBox box);

/// The job with that figure typed: needle and thread of the whole job, the stitch of this kind of
/// row (of one sleeve alone where one lies on the bench), the stack of this kind of row. Refused
/// with a sentence.
Made with_sew_typed(const Solved& now, Place place, const SewKind& kind, SewBox box,
                    std::string_view typed);
/// The same with a figure, as the arrow keys give it; held within its limits.
Made with_sew_figure(const Solved& now, Place place, const SewKind& kind, SewBox box,
                     std::int64_t figure);

/// The stack of this kind of row is worked out from its plies, or typed.
bool stack_is_from_plies(const Solved& now, Place place, const SewKind& kind);
Made with_stack_from_plies(const Solved& now, Place place, const SewKind& kind, bool from_plies);

}  // namespace pouncemark::web
