#pragma once

#include <cstdint>
#include <string_view>

#include "engine/base/result.h"

namespace pouncemark {

/// The largest length anywhere, micrometres (100 m).
inline constexpr std::int64_t kLargestLengthUm = 100'000'000;

/// Reads a typed length into whole micrometres, exactly: "2400", "5,5", "6cm", "2.4 m", "1/4in",
/// "2 1/2 in", "3\"". A bare number is millimetres; comma and point are both decimal signs.
/// A whole or decimal number with the bare word "in" is never guessed, because it can mean "in from
/// the edge": length_two_readings shows both. Inches are exactly 25.4 (ISO 31-1 / international
/// yard); a fraction of an inch is rounded to the nearest micrometre. Problems: length_unreadable,
/// length_negative, length_too_large, length_too_fine, length_two_readings; `found` is always the
/// text as typed.
Result<std::int64_t> read_length(std::string_view text);

/// Reads plain decimal digits ("26", "0.25", "1e3") as a JSON number holds millimetres, exactly.
/// Problems as above.
Result<std::int64_t> read_decimal_mm(std::string_view digits);

}  // namespace pouncemark
