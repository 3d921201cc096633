#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/geometry/units.h"

/// Inside of solve's sums: how numbers stand in them. Only the sums include this.
namespace pouncemark::solve {

inline constexpr const char* kExactSource = "exact whole-number arithmetic";
inline constexpr const char* kEnteredSource = "entered";

/// A length just as it is: "2300", "0.25", "−3.2".
std::string plain_mm(Um um);

/// A length as the screen shows it, with that many decimals and a true minus: "−9.09".
std::string shown_mm(Um um, int decimals);

/// Millimetres added up over many rows: "112,800", "4,512.25".
std::string added_mm(Um um);

/// The length taken away or put to what stands before it: " − 22", and " + 3.2" of a negative one.
std::string less_mm(Um um);

/// A length put to what stands before it: " + 55"; nothing where it is 0.
std::string and_mm(Um um);

/// A number, and the word that it was entered by no one.
std::string told(std::string number, bool is_assumed);

/// "entered", or "assumed, common practice".
std::string source_of(bool is_assumed);

/// How a number of a list is written.
using NumberText = std::string (*)(std::int64_t);

/// Several numbers added up: equal ones as "34 × 377", up to nine in their own order, more than
/// that with equal ones together; of more than six different ones the least frequent as one,
/// "others 3,700". Needs one number.
std::string added_up(const std::vector<std::int64_t>& numbers, NumberText text);

std::int64_t total_of(const std::vector<std::int64_t>& numbers);

}  // namespace pouncemark::solve
