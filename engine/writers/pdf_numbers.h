#pragma once

#include <cstdint>
#include <string>

/// Numbers as a page description wants them: exact, from whole numbers only, never an exponent, a
/// locale or a minus zero. Points (1/72 in) exist here and in pdf.cpp, nowhere else.
namespace pouncemark::writers {

/// Nothing further from the sheet's corner than this reaches a page, micrometres.
constexpr std::int64_t kFurthestUm = 10'000'000'000;

/// `number` / `by`, to the nearest whole number, halves away from zero. INSIST: by > 0.
std::int64_t divided(std::int64_t number, std::int64_t by);

/// Appends `steps` / 10^`decimals` without trailing zeros: (12500, 3) is 12.5. Decimals 0 to 9.
void append_decimal(std::string& out, std::int64_t steps, int decimals);

/// Appends micrometres as millimetres with at most three decimals. INSIST: within kFurthestUm.
void append_mm(std::string& out, std::int64_t um);

/// Appends the lowest sixteen bits as four hexadecimal digits.
void append_hex4(std::string& out, unsigned value);

/// Appends micrometres as points with at most four decimals.
/// source: ISO 32000-1 8.3.2.3, one unit of user space is 1/72 in; 1 in is 25.4 mm.
void append_points(std::string& out, std::int64_t um);

/// Appends the scale from millimetres to points, nine decimals, enlarged by nominal / measured.
/// INSIST: both are 1 um to 10 m.
void append_scale(std::string& out, std::int64_t nominal_um, std::int64_t measured_um);

}  // namespace pouncemark::writers
