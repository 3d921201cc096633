#include "engine/writers/pdf_numbers.h"

#include "engine/base/insist.h"

#include <algorithm>
#include <cstddef>
#include <limits>

namespace pouncemark::writers {
namespace {

constexpr std::int64_t kLongestBarUm = 10'000'000;

// Writes the digits of `number` backwards, ending before `end`, and returns where they begin.
template <typename Whole>
char* digits_before(char* end, Whole number) {
  do {
    *--end = static_cast<char>('0' + number % 10);
    number /= 10;
  } while (number != 0);
  return end;
}

}  // namespace

std::int64_t divided(std::int64_t number, std::int64_t by) {
  INSIST(by > 0);
  if (by <= 0) return 0;
  const std::int64_t whole = number / by;
  const std::int64_t rest = number % by;
  if (rest >= by - rest) return whole + 1;
  if (-rest >= by + rest) return whole - 1;
  return whole;
}

void append_decimal(std::string& out, std::int64_t steps, int decimals) {
  INSIST(decimals >= 0 && decimals <= 9);
  char text[32];
  char* const end = text + sizeof text;
  const bool is_negative = steps < 0;
  const std::uint64_t size =
      is_negative ? 0 - static_cast<std::uint64_t>(steps) : static_cast<std::uint64_t>(steps);
  // A division of 64 bits is slow in WebAssembly, and nearly every number is short.
  char* begin = size <= std::numeric_limits<std::uint32_t>::max()
                    ? digits_before(end, static_cast<std::uint32_t>(size))
                    : digits_before(end, size);
  char* const point = end - decimals;
  while (begin >= point) *--begin = '0';
  if (is_negative) out.push_back('-');
  out.append(begin, point);
  char* last = end;
  while (last != point && last[-1] == '0') --last;
  if (last == point) return;
  out.push_back('.');
  out.append(point, last);
}

void append_mm(std::string& out, std::int64_t um) {
  INSIST(um >= -kFurthestUm && um <= kFurthestUm);
  append_decimal(out, std::clamp(um, -kFurthestUm, kFurthestUm), 3);
}

void append_hex4(std::string& out, unsigned value) {
  constexpr char kDigits[] = "0123456789ABCDEF";
  for (int shift = 12; shift >= 0; shift -= 4) out.push_back(kDigits[(value >> shift) & 15U]);
}

void append_points(std::string& out, std::int64_t um) {
  INSIST(um >= -kFurthestUm && um <= kFurthestUm);
  // 1 um is 72/25400 pt, that is 3600/127 steps of 0.0001 pt.
  append_decimal(out, divided(std::clamp(um, -kFurthestUm, kFurthestUm) * 3600, 127), 4);
}

void append_scale(std::string& out, std::int64_t nominal_um, std::int64_t measured_um) {
  const auto is_a_bar = [](std::int64_t um) { return um > 0 && um <= kLongestBarUm; };
  INSIST(is_a_bar(nominal_um) && is_a_bar(measured_um));
  const std::int64_t nominal = std::clamp<std::int64_t>(nominal_um, 1, kLongestBarUm);
  const std::int64_t measured = std::clamp<std::int64_t>(measured_um, 1, kLongestBarUm);
  append_decimal(out, divided(720'000'000'000 * nominal, 254 * measured), 9);
}

}  // namespace pouncemark::writers
