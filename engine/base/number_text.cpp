#include "engine/base/number_text.h"

#include "engine/base/insist.h"

namespace pouncemark {
namespace {

std::string fixed(std::int64_t value, int places) {
  const bool below = value < 0;
  std::string digits = std::to_string(below ? -value : value);
  if (places > 0) {
    while (digits.size() <= static_cast<std::size_t>(places)) digits.insert(0, "0");
    digits.insert(digits.size() - static_cast<std::size_t>(places), ".");
  }
  return below ? "-" + digits : digits;
}

std::int64_t rounded(std::int64_t value, std::int64_t unit) {
  const std::int64_t half = unit / 2;
  return value >= 0 ? (value + half) / unit : -((-value + half) / unit);
}

std::int64_t power_of_ten(int exponent) {
  std::int64_t power = 1;
  for (int i = 0; i < exponent; ++i) power *= 10;
  return power;
}

std::string without_trailing_zeros(std::string text) {
  if (text.find('.') == std::string::npos) return text;
  while (text.back() == '0') text.pop_back();
  if (text.back() == '.') text.pop_back();
  return text;
}

}  // namespace

std::string exact_mm_text(std::int64_t um) { return without_trailing_zeros(fixed(um, 3)); }

std::string mm_text(std::int64_t um, int decimals) {
  INSIST(decimals >= 0 && decimals <= 3);
  return fixed(rounded(um, power_of_ten(3 - decimals)), decimals);
}

std::string short_mm_text(std::int64_t um, int decimals) {
  return without_trailing_zeros(mm_text(um, decimals));
}

std::string mm_text_beside(std::int64_t um, std::int64_t other_um) {
  const std::string words = mm_text(um, 1);
  return um != other_um && words == mm_text(other_um, 1) ? exact_mm_text(um) : words;
}

std::string metres_text(std::int64_t um, int decimals) {
  INSIST(decimals >= 0 && decimals <= 3);
  return fixed(rounded(um, power_of_ten(6 - decimals)), decimals);
}

std::string count_text(std::int64_t count) {
  std::string digits = fixed(count, 0);
  const std::size_t first = count < 0 ? 1 : 0;
  for (std::size_t at = digits.size(); at > first + 3;) {
    at -= 3;
    digits.insert(at, ",");
  }
  return digits;
}

std::string counted(std::int64_t count, std::string_view one, std::string_view many) {
  return count_text(count) + " " + std::string(count == 1 ? one : many);
}

}  // namespace pouncemark
