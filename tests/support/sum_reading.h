#pragma once

#include <string>
#include <vector>

/// Reads a sum as a stranger with a pocket calculator would, knowing nothing of how it was made.
namespace pouncemark::tests {

/// The value of "2 × (120 − 0.5 − 0.25) + π × (0.5 + 0.25 ÷ 2)"; words between the numbers are
/// passed over. Not a number where it cannot be worked out.
double worked_out(const std::string& words);

/// What is wrong with one line of a sum; empty when it is true. Its parts stand between ", ". A
/// part with "=" must be true as far as its right side is written. "so 42 gaps" after
/// "2256 = 41 × 55 + 1" must be 41, or 42 where something is over.
std::string fault_in_line(const std::string& line);

/// The last number of the text as it is written, "2,150"; empty when there is none.
std::string last_number(const std::string& words);

}  // namespace pouncemark::tests
