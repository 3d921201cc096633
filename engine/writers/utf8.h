#pragma once

#include <string>
#include <string_view>

/// Signs (Unicode code points) from and to bytes. Text from outside may be anything at all.
namespace pouncemark::writers {

/// The signs of UTF-8 text that can stand on paper: control signs, direction signs, joiners and
/// variation selectors are dropped; each broken byte becomes U+FFFD. Nothing is composed: a letter
/// followed by a combining mark stays two signs.
std::u32string printable_signs(std::string_view words);

/// Appends a sign as UTF-8. Surrogates and numbers above U+10FFFF become U+FFFD.
void append_utf8(std::string& out, char32_t sign);

/// Appends a sign as UTF-16 in hexadecimal: four digits, or eight above U+FFFF.
void append_utf16_hex(std::string& out, char32_t sign);

}  // namespace pouncemark::writers
