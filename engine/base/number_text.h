#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace pouncemark {

/// Whole micrometres as millimetres with the shortest decimal that says them exactly: "26", "0.25".
std::string exact_mm_text(std::int64_t um);

/// Whole micrometres as millimetres rounded to `decimals` (0 to 3) places, halves away from zero,
/// always with that many places: "49.00". Never a comma, never "-0".
std::string mm_text(std::int64_t um, int decimals);

/// Millimetres with at most `decimals` places, trailing zeros dropped: "30", "54.6".
std::string short_mm_text(std::int64_t um, int decimals);

/// One decimal, as the screen shows a length; exactly where one decimal would say the same of
/// `other`, from which it differs.
std::string mm_text_beside(std::int64_t um, std::int64_t other_um);

/// Metres with `decimals` (0 to 3) places: "37.804".
std::string metres_text(std::int64_t um, int decimals);

/// A count; from 1,000 with commas.
std::string count_text(std::int64_t count);

/// A count and its thing, "1 point", "2 points".
std::string counted(std::int64_t count, std::string_view one, std::string_view many);

}  // namespace pouncemark
