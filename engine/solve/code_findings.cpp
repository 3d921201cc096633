#include <algorithm>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/solve/findings.h"

namespace pouncemark::solve {
namespace {

/// "section 2" or "panel P1".
std::string spoken(const Piece& piece) {
  return (piece.kind == PieceKind::section ? "section " : "panel ") + piece.code;
}

void check_missing_sleeves(const job::Section& section, int index, Findings* findings) {
  const std::vector<int> there = job::sleeves_there(section);
  const auto say = [&](int number, int before, int after) {
    const std::string first = before < 0 ? "the left edge" : job::sleeve_code(section, before);
    const std::string next =
        after >= section.count ? "the right edge" : job::sleeve_code(section, after);
    Finding finding = checks::code_missing(job::sleeve_code(section, number), first, next);
    finding.place = "section " + section.code;
    finding.piece = index;
    findings->push_back(std::move(finding));
  };
  int before = -1;
  for (std::size_t i = 0; i <= there.size(); ++i) {
    const int after = i < there.size() ? there[i] : section.count;
    for (int number = before + 1; number < after; ++number) say(number, before, after);
    before = after;
  }
}

/// A code that ends in a number: "P12" is "P" and 12. Nothing where it does not, or where the
/// number is written with a leading zero or is longer than any count of pieces.
std::optional<std::pair<std::string, std::int64_t>> numbered(std::string_view code) {
  std::size_t digits = code.size();
  while (digits > 0 && code[digits - 1] >= '0' && code[digits - 1] <= '9') --digits;
  const std::string_view number = code.substr(digits);
  if (number.empty() || number.size() > 4 || number.front() == '0') return std::nullopt;
  std::int64_t value = 0;
  for (const char digit : number) value = value * 10 + (digit - '0');
  return std::pair{std::string(code.substr(0, digits)), value};
}

/// Gaps in the numbers of the pieces of one kind, where all of them are numbered in one way.
void check_numbers(const Results& results, PieceKind kind, Findings* findings) {
  std::vector<std::int64_t> numbers;
  std::string letters;
  for (const Piece& piece : results.pieces) {
    if (piece.kind != kind) continue;
    const auto code = numbered(piece.code);
    if (!code || (!numbers.empty() && code->first != letters)) return;
    letters = code->first;
    numbers.push_back(code->second);
  }
  std::stable_sort(numbers.begin(), numbers.end());
  const auto code = [&letters](std::int64_t number) { return letters + std::to_string(number); };
  for (std::size_t i = 0; i + 1 < numbers.size(); ++i) {
    if (numbers[i + 1] <= numbers[i] + 1) continue;
    const bool one = numbers[i + 1] == numbers[i] + 2;
    const std::string what = code(numbers[i] + 1) + (one ? "" : " to " + code(numbers[i + 1] - 1));
    findings->push_back(checks::code_missing(what, code(numbers[i]), code(numbers[i + 1])));
  }
}

/// A sleeve and a piece with one code. Only a piece with a dash in its code can be named like one.
void check_same_codes(const Results& results, Findings* findings) {
  std::map<std::string, std::string> named;
  for (const Piece& piece : results.pieces) {
    if (piece.code.find('-') != std::string::npos) named[piece.code] = spoken(piece);
  }
  if (named.empty()) return;
  for (const Piece& piece : results.pieces) {
    for (const Sleeve& sleeve : piece.sleeves) {
      const auto found = named.find(sleeve.code);
      if (found == named.end()) continue;
      findings->push_back(
          checks::code_used_twice(sleeve.code, found->second, "a sleeve of " + spoken(piece)));
    }
  }
}

void check_bays(const job::Job& job, const Results& results, Findings* findings) {
  std::map<std::string, std::string> hung;  // code of a piece to its bay
  for (const Piece& piece : results.pieces) hung[piece.code] = {};
  for (const job::Bay& bay : job.bays) {
    const auto found = hung.find(bay.holds);
    if (found == hung.end()) {
      findings->push_back(checks::code_unknown(bay.holds, bay.code));
    } else if (found->second.empty()) {
      found->second = bay.code;
    } else {
      findings->push_back(checks::code_hung_twice(bay.holds, found->second, bay.code));
    }
  }
}

}  // namespace

void check_codes(const job::Job& job, const Results& results, Findings* findings) {
  for (std::size_t i = 0; i < job.sections.size(); ++i) {
    check_missing_sleeves(job.sections[i], static_cast<int>(i), findings);
  }
  check_numbers(results, PieceKind::section, findings);
  check_numbers(results, PieceKind::panel, findings);
  check_same_codes(results, findings);
  check_bays(job, results, findings);
}

}  // namespace pouncemark::solve
