#include "engine/writers/utf8.h"

#include "engine/writers/pdf_numbers.h"

#include <cstddef>
#include <cstdint>

namespace pouncemark::writers {
namespace {

constexpr char32_t kBroken = 0xFFFD;

bool is_scalar(char32_t sign) { return sign <= 0x10FFFF && (sign < 0xD800 || sign > 0xDFFF); }

// Takes one sign off the front of `rest`; a byte that begins none is taken by itself.
char32_t take_sign(std::string_view& rest) {
  const auto byte = [&rest](std::size_t i) {
    return static_cast<std::uint32_t>(static_cast<unsigned char>(rest[i]));
  };
  const std::uint32_t lead = byte(0);
  const std::size_t length = lead < 0x80   ? 1
                             : lead < 0xC2 ? 0
                             : lead < 0xE0 ? 2
                             : lead < 0xF0 ? 3
                             : lead < 0xF5 ? 4
                                           : 0;
  constexpr std::uint32_t kLeadBits[] = {0, 0x7F, 0x1F, 0x0F, 0x07};
  constexpr std::uint32_t kLeast[] = {0, 0, 0x80, 0x800, 0x10000};
  std::uint32_t sign = lead & kLeadBits[length];
  bool is_whole = length > 0 && length <= rest.size();
  for (std::size_t i = 1; is_whole && i < length; ++i) {
    is_whole = (byte(i) & 0xC0U) == 0x80U;
    sign = sign << 6 | (byte(i) & 0x3FU);
  }
  is_whole = is_whole && sign >= kLeast[length] && is_scalar(sign);
  rest.remove_prefix(is_whole ? length : 1);
  return is_whole ? static_cast<char32_t>(sign) : kBroken;
}

// source: Unicode 15, general categories Cc and Cf, and the variation selectors.
bool is_unseen(char32_t sign) {
  const auto is_in = [sign](char32_t low, char32_t high) { return sign >= low && sign <= high; };
  return sign < 0x20 || is_in(0x7F, 0x9F) || sign == 0xAD || is_in(0x200B, 0x200F) ||
         is_in(0x2028, 0x202E) || is_in(0x2060, 0x206F) || is_in(0xFE00, 0xFE0F) ||
         sign == 0xFEFF || is_in(0xFFF9, 0xFFFB) || is_in(0xFFFE, 0xFFFF) ||
         is_in(0xE0000, 0xE01EF);
}

}  // namespace

std::u32string printable_signs(std::string_view words) {
  std::u32string signs;
  signs.reserve(words.size());
  while (!words.empty()) {
    const char32_t sign = take_sign(words);
    if (!is_unseen(sign)) signs.push_back(sign);
  }
  return signs;
}

void append_utf8(std::string& out, char32_t sign) {
  const std::uint32_t value = is_scalar(sign) ? sign : kBroken;
  const auto put = [&out](std::uint32_t byte) { out.push_back(static_cast<char>(byte)); };
  if (value < 0x80) {
    put(value);
    return;
  }
  if (value < 0x800) {
    put(0xC0U | value >> 6);
  } else if (value < 0x10000) {
    put(0xE0U | value >> 12);
    put(0x80U | (value >> 6 & 0x3FU));
  } else {
    put(0xF0U | value >> 18);
    put(0x80U | (value >> 12 & 0x3FU));
    put(0x80U | (value >> 6 & 0x3FU));
  }
  put(0x80U | (value & 0x3FU));
}

void append_utf16_hex(std::string& out, char32_t sign) {
  const std::uint32_t value = is_scalar(sign) ? sign : kBroken;
  if (value < 0x10000) {
    append_hex4(out, value);
    return;
  }
  append_hex4(out, 0xD800U + ((value - 0x10000U) >> 10));
  append_hex4(out, 0xDC00U + ((value - 0x10000U) & 0x3FFU));
}

}  // namespace pouncemark::writers
