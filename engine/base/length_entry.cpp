#include "engine/base/length_entry.h"

#include <array>
#include <optional>
#include <string>

#include "engine/base/number_text.h"

namespace pouncemark {
namespace {

constexpr std::int64_t kInchUm = 25'400;
constexpr std::size_t kMostDigits = 15;

bool is_digit(char c) { return c >= '0' && c <= '9'; }

std::string trimmed(std::string_view text) {
  std::string kept;
  for (const char c : text) {
    const bool blank = c == ' ' || c == '\t' || c == '\r' || c == '\n';
    if (blank && (kept.empty() || kept.back() == ' ')) continue;
    kept += blank ? ' ' : c;
  }
  if (!kept.empty() && kept.back() == ' ') kept.pop_back();
  return kept;
}

Problem about(ProblemCode code, std::string_view text, std::string needed = {}) {
  return {code, {}, "\"" + std::string(text) + "\"", std::move(needed)};
}

/// digits with `places` of them after the decimal sign
struct Decimal {
  std::int64_t digits = 0;
  int places = 0;
};

std::optional<Decimal> take_decimal(std::string_view& text) {
  Decimal decimal;
  std::size_t used = 0;
  std::size_t digits = 0;
  bool after_sign = false;
  for (; used < text.size(); ++used) {
    const char c = text[used];
    if (is_digit(c)) {
      if (++digits > kMostDigits) return std::nullopt;
      decimal.digits = decimal.digits * 10 + (c - '0');
      if (after_sign) ++decimal.places;
    } else if ((c == '.' || c == ',') && !after_sign) {
      after_sign = true;
    } else {
      break;
    }
  }
  if (digits == 0) return std::nullopt;
  text.remove_prefix(used);
  return decimal;
}

std::optional<std::int64_t> take_whole(std::string_view& text) {
  std::string_view rest = text;
  const std::optional<Decimal> decimal = take_decimal(rest);
  if (!decimal || decimal->places != 0) return std::nullopt;
  text = rest;
  return decimal->digits;
}

void skip_blank(std::string_view& text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
}

/// `decimal` times `unit_um`, if that is a whole number of micrometres
Result<std::int64_t> exactly(const Decimal& decimal, std::int64_t unit_um, std::string_view typed) {
  std::int64_t divisor = 1;
  for (int i = 0; i < decimal.places; ++i) divisor *= 10;
  if (decimal.digits / divisor > kLargestLengthUm / unit_um) {
    return about(ProblemCode::length_too_large, typed, "at most 100 m");
  }
  const std::int64_t whole = decimal.digits / divisor * unit_um;
  const std::int64_t part = decimal.digits % divisor;
  std::int64_t numerator = 0;
  std::int64_t rest = part;
  std::int64_t unit = unit_um;
  while (divisor > 1 && unit % 10 == 0) {
    unit /= 10;
    divisor /= 10;
  }
  if (unit != 0 && rest > INT64_MAX / unit) return about(ProblemCode::length_too_fine, typed);
  numerator = rest * unit;
  if (numerator % divisor != 0) return about(ProblemCode::length_too_fine, typed, "0.001 steps");
  const std::int64_t um = whole + numerator / divisor;
  if (um > kLargestLengthUm) return about(ProblemCode::length_too_large, typed, "at most 100 m");
  return um;
}

struct Unit {
  std::string_view word;
  std::int64_t um;
};
constexpr std::array kUnits = {
    Unit{"", 1'000},     Unit{"mm", 1'000},       Unit{"cm", 10'000},    Unit{"m", 1'000'000},
    Unit{"\"", kInchUm}, Unit{"\u2033", kInchUm}, Unit{"inch", kInchUm}, Unit{"inches", kInchUm}};

/// "1/4in", "2 1/2 in"; nothing when the text has no fraction
std::optional<Result<std::int64_t>> inch_fraction(std::string_view text, std::string_view typed) {
  if (text.find('/') == std::string_view::npos) return std::nullopt;
  const Problem unreadable = about(ProblemCode::length_unreadable, typed);
  std::optional<std::int64_t> first = take_whole(text);
  if (!first) return unreadable;
  std::int64_t whole = 0;
  if (!text.empty() && text.front() == ' ') {
    skip_blank(text);
    whole = *first;
    first = take_whole(text);
    if (!first) return unreadable;
  }
  if (text.empty() || text.front() != '/') return unreadable;
  text.remove_prefix(1);
  const std::optional<std::int64_t> below = take_whole(text);
  skip_blank(text);
  const bool inches = text == "in" || text == "inch" || text == "\"" || text == "\u2033";
  if (!below || *below == 0 || *below > 1024 || !inches || *first > 1024) return unreadable;
  const std::int64_t part = (*first * kInchUm + *below / 2) / *below;
  if (whole > (kLargestLengthUm - part) / kInchUm) {
    return about(ProblemCode::length_too_large, typed, "at most 100 m");
  }
  return whole * kInchUm + part;
}

}  // namespace

Result<std::int64_t> read_length(std::string_view text) {
  const std::string typed = trimmed(text);
  std::string_view rest = typed;
  const bool minus = rest.starts_with("-") || rest.starts_with("\u2212");
  if (minus) rest.remove_prefix(rest.front() == '-' ? 1 : 3);
  const auto fraction = inch_fraction(rest, typed);
  if (fraction && minus && fraction->is_ok()) return about(ProblemCode::length_negative, typed);
  if (fraction) return *fraction;
  const std::optional<Decimal> decimal = take_decimal(rest);
  if (!decimal) return about(ProblemCode::length_unreadable, typed);
  skip_blank(rest);
  if (rest == "in" && minus) return about(ProblemCode::length_negative, typed);
  if (rest == "in") {
    const auto as_mm = exactly(*decimal, 1'000, typed);
    const auto as_inch = exactly(*decimal, kInchUm, typed);
    if (!as_mm) return as_mm;
    if (!as_inch) return as_inch;
    return about(
        ProblemCode::length_two_readings, typed,
        exact_mm_text(*as_mm) + " (in from the edge) or " + exact_mm_text(*as_inch) + " (inches)");
  }
  for (const Unit& unit : kUnits) {
    if (rest != unit.word) continue;
    if (minus) return about(ProblemCode::length_negative, typed);
    return exactly(*decimal, unit.um, typed);
  }
  return about(ProblemCode::length_unreadable, typed);
}

Result<std::int64_t> read_decimal_mm(std::string_view digits) {
  std::string_view rest = digits;
  const bool minus = !rest.empty() && rest.front() == '-';
  if (minus) rest.remove_prefix(1);
  std::optional<Decimal> decimal = take_decimal(rest);
  if (!decimal) return about(ProblemCode::length_too_large, digits, "at most 100 m");
  if (!rest.empty() && (rest.front() == 'e' || rest.front() == 'E')) {
    rest.remove_prefix(1);
    const bool down = !rest.empty() && rest.front() == '-';
    if (!rest.empty() && (rest.front() == '-' || rest.front() == '+')) rest.remove_prefix(1);
    const std::optional<std::int64_t> power = take_whole(rest);
    if (!power || *power > 12) {
      return about(down ? ProblemCode::length_too_fine : ProblemCode::length_too_large, digits);
    }
    for (std::int64_t i = 0; i < *power; ++i) {
      if (down || decimal->places > 0) {
        decimal->places += down ? 1 : -1;
      } else if (decimal->digits > kLargestLengthUm) {
        return about(ProblemCode::length_too_large, digits, "at most 100 m");
      } else {
        decimal->digits *= 10;
      }
    }
  }
  if (!rest.empty()) return about(ProblemCode::length_unreadable, digits);
  if (decimal->places > 18) return about(ProblemCode::length_too_fine, digits, "0.001 steps");
  const Result<std::int64_t> um = exactly(*decimal, 1'000, digits);
  if (um && minus) return -*um;
  return um;
}

}  // namespace pouncemark
