#pragma once

#include <string_view>

#include "web/model/making.h"
#include "web/model/solved.h"

/// What is typed and pressed on the stage Curve, as one action each. `bay` counts the bays of the
/// job; of Made, `piece` is then the bay to look at.
namespace pouncemark::web {

enum class BayBox { chord, rise, holds };

/// The job with that figure typed; for `holds` the code of a section or panel. Refused with a
/// sentence.
Made with_bay_typed(const job::Job& job, int bay, BayBox box, std::string_view typed);
/// The chord or the rise longer by so much, held within its limits.
Made with_bay_stepped(const job::Job& job, int bay, BayBox box, Um by);

Made with_bay_face(const job::Job& job, int bay, bool is_hollow);

/// One more bay for the first piece that hangs in none: as wide as it, flat, bulging.
Made with_new_bay(const Solved& now);
Made without_bay(const job::Job& job, int bay);

}  // namespace pouncemark::web
