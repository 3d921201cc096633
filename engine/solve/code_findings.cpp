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

/// Numbers that follow one another and have no sleeve, by their index.
struct Gap {
  int first = 0;
  int last = 0;
};

std::vector<Gap> gaps_of(const job::Section& section) {
  std::vector<Gap> gaps;
  int next = 0;
  std::vector<int> there = job::sleeves_there(section);
  there.push_back(section.count);
  for (const int number : there) {
    if (number > next) gaps.push_back({next, number - 1});
    next = number + 1;
  }
  return gaps;
}

Finding about_gap(const job::Section& section, const Gap& gap) {
  const auto code = [&section](int number) { return job::sleeve_code(section, number); };
  const std::string what =
      code(gap.first) + (gap.last > gap.first ? " to " + code(gap.last) : std::string());
  return checks::code_missing(
      what, gap.first == 0 ? "the left edge" : code(gap.first - 1),
      gap.last + 1 == section.count ? "the right edge" : code(gap.last + 1));
}

void check_missing_sleeves(const job::Section& section, int index, Findings* findings) {
  constexpr std::size_t kMostSaid = 8;
  const std::vector<Gap> gaps = gaps_of(section);
  Findings found;
  if (gaps.size() > kMostSaid) {
    found.push_back(checks::codes_missing(static_cast<std::int64_t>(section.missing.size()),
                                          job::sleeve_code(section, gaps.front().first),
                                          job::sleeve_code(section, gaps.back().last)));
  } else {
    for (const Gap& gap : gaps) found.push_back(about_gap(section, gap));
  }
  for (Finding& finding : found) {
    finding.place = "section " + section.code;
    finding.piece = index;
    findings->push_back(std::move(finding));
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
    if (bay.stands_empty) continue;
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
