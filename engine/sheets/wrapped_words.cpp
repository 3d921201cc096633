#include "engine/sheets/wrapped_words.h"

#include <array>

namespace pouncemark::sheets {
namespace {

/// The widest advance of each sign from U+0020 to U+007E in our four faces, hundredths of the em,
/// rounded up.
constexpr std::array<int, 95> kWidestPercent = {
    35, 42, 47, 85, 63, 91, 79, 28, 45, 45, 56, 76, 35, 45,  35, 56, 65, 65,  65,
    65, 65, 65, 65, 65, 65, 65, 36, 36, 76, 76, 76, 56, 100, 70, 69, 67, 75,  62,
    62, 74, 76, 34, 45, 70, 58, 90, 76, 80, 66, 80, 70, 65,  62, 74, 70, 100, 70,
    66, 66, 45, 56, 50, 76, 56, 56, 61, 65, 54, 65, 62, 40,  65, 65, 31, 31,  60,
    35, 94, 65, 62, 65, 65, 45, 54, 44, 65, 59, 84, 59, 59,  53, 65, 33, 65,  76};
constexpr Um kOtherSignPercent = 112;

bool continues_a_sign(char c) { return (static_cast<unsigned char>(c) & 0xc0) == 0x80; }

Um sign_percent(char first) {
  const auto byte = static_cast<unsigned char>(first);
  if (byte < 0x20 || byte > 0x7e) return kOtherSignPercent;
  return kWidestPercent[byte - 0x20u];
}

/// How many bytes of `words` fit the line, whole signs and at least one.
std::size_t bytes_that_fit(std::string_view words, Um size_um, Um width_um) {
  Um percent = 0;
  for (std::size_t at = 0; at < words.size(); ++at) {
    if (continues_a_sign(words[at])) continue;
    percent += sign_percent(words[at]);
    if (at > 0 && percent * size_um > width_um * 100) return at;
  }
  return words.size();
}

std::string_view without_blanks_ahead(std::string_view words) {
  while (!words.empty() && words.front() == ' ') words.remove_prefix(1);
  return words;
}

}  // namespace

Um words_width_um(std::string_view words, Um size_um) {
  Um percent = 0;
  for (const char c : words) {
    if (!continues_a_sign(c)) percent += sign_percent(c);
  }
  return percent * size_um / 100;
}

std::vector<std::string> wrapped(std::string_view words, Um size_um, Um width_um) {
  std::vector<std::string> lines;
  words = without_blanks_ahead(words);
  while (!words.empty()) {
    std::size_t end = bytes_that_fit(words, size_um, width_um);
    if (end < words.size() && words[end] != ' ') {
      const std::size_t blank = words.substr(0, end).rfind(' ');
      if (blank != std::string_view::npos) end = blank;
    }
    std::string_view line = words.substr(0, end);
    while (!line.empty() && line.back() == ' ') line.remove_suffix(1);
    lines.emplace_back(line);
    words = without_blanks_ahead(words.substr(end));
  }
  return lines;
}

std::vector<std::string> wrapped_at_most(std::size_t lines, std::string_view words, Um size_um,
                                         Um width_um) {
  std::vector<std::string> all = wrapped(words, size_um, width_um);
  if (all.size() <= lines) return all;
  all.resize(lines);
  if (all.empty()) return all;
  std::string& last = all.back();
  while (!last.empty() && words_width_um(last + "…", size_um) > width_um) {
    while (continues_a_sign(last.back())) last.pop_back();
    last.pop_back();
  }
  last += "…";
  return all;
}

}  // namespace pouncemark::sheets
