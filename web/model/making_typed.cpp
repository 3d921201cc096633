#include <algorithm>
#include <cstddef>

#include "engine/base/length_entry.h"
#include "engine/base/number_text.h"
#include "web/model/entry.h"
#include "web/model/making.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

constexpr Limits kWidth{1'000, 20'000'000};

bool is_blank(char c) { return c == ' ' || c == '\t'; }

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && is_blank(text.front())) text.remove_prefix(1);
  while (!text.empty() && is_blank(text.back())) text.remove_suffix(1);
  return text;
}

/// A comma stands between widths where a blank follows it, or where there are others like it; else
/// it may be a decimal sign.
bool parts_widths(std::string_view text, std::size_t at) {
  if (text[at] == ';') return true;
  if (text[at] != ',') return false;
  return at + 1 == text.size() || is_blank(text[at + 1]) || (at > 0 && is_blank(text[at - 1])) ||
         std::count(text.begin(), text.end(), ',') > 1;
}

/// "110,96": one width, or two.
bool has_two_readings(std::string_view text) {
  const std::size_t comma = text.find(',');
  return comma != std::string_view::npos && text.size() - comma - 1 >= 2 &&
         std::all_of(text.begin() + static_cast<std::ptrdiff_t>(comma) + 1, text.end(),
                     [](char c) { return c >= '0' && c <= '9'; });
}

std::string width_refused(std::string_view text) {
  if (text.empty()) return "A width is missing: give one, or several in turn, \"110, 96, 110\".";
  const std::string typed(text);
  if (has_two_readings(text)) {
    const std::string rest = typed.substr(typed.find(',') + 1);
    const std::string whole = typed.substr(0, typed.find(','));
    return typed + " can be one width or two: write " + whole + "." + rest + ", or " + whole +
           ", " + rest + " with a blank between them.";
  }
  return read_entry(text, kWidth).sentence;
}

}  // namespace

CountEntry read_count(std::string_view text) {
  constexpr int kMost = kMostSleevesOfSection;
  const std::string typed(trimmed(text));
  const std::string give = " Give a whole number from 1 to " + count_text(kMost) + ".";
  std::int64_t count = 0;
  bool is_whole = !typed.empty() && typed.size() <= 9;
  for (const char c : typed) {
    if (c < '0' || c > '9') is_whole = false;
    if (is_whole) count = count * 10 + (c - '0');
  }
  if (!is_whole) return {0, "\"" + shortened(typed, 30) + "\" is no count of sleeves." + give};
  if (count >= 1 && count <= kMost) return {static_cast<int>(count), {}};
  return {0,
          count_text(count) +
              (count < 1 ? " sleeves make no section." : " sleeves are too many for a section.") +
              give};
}

WidthsEntry read_widths(std::string_view text) {
  WidthsEntry entry;
  std::size_t from = 0;
  for (std::size_t at = 0; at <= text.size(); ++at) {
    if (at < text.size() && !parts_widths(text, at)) continue;
    const std::string_view one = trimmed(text.substr(from, at - from));
    from = at + 1;
    if (one.empty() && at == text.size() && !entry.widths_um.empty()) break;
    entry.sentence = width_refused(one);
    if (entry.sentence.empty() && entry.widths_um.size() == kMostSleevesOfSection) {
      entry.sentence = "More than 1,000 widths: give at most one for each sleeve.";
    }
    if (!entry.sentence.empty()) return {{}, entry.sentence};
    entry.widths_um.push_back(*read_entry(one, kWidth).um);
  }
  return entry;
}

std::string widths_text(const std::vector<Um>& widths_um) {
  std::string words;
  for (const Um um : widths_um) words += (words.empty() ? "" : ", ") + exact_mm_text(um);
  return words;
}

}  // namespace pouncemark::web
