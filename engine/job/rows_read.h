#pragma once

#include <string>

#include "engine/base/length_entry.h"
#include "engine/job/job.h"
#include "engine/job/object_reader.h"

/// Inside of reading a job: the rows of a section and what differs on one sleeve.
namespace pouncemark::job {

/// What may be zero, what may not, and what is a thickness or a tolerance.
inline constexpr Bounds kClear{0, kLargestLengthUm};
inline constexpr Bounds kSize{1, kLargestLengthUm};
inline constexpr Bounds kThin{1, 1'000'000};
/// What stands to either side of a line.
inline constexpr Bounds kHeight{-kLargestLengthUm, kLargestLengthUm};

/// Whether the stack is worked out from the plies and not as typed.
bool read_stack_from(ObjectReader& reader);

/// A staple row, a stitch row and their stack; `on_edge` is false on a lap, whose rows stand on the
/// lap's middle line. The first fault is kept, the result is then not to be used.
RowPair read_row_pair(const JsonNode& node, const std::string& path, Fault* fault, bool on_edge);

/// What differs on one sleeve.
SleeveChange read_change(const JsonNode& node, const std::string& path, Fault* fault);

}  // namespace pouncemark::job
