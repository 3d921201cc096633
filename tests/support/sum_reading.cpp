#include "tests/support/sum_reading.h"

#include <cmath>
#include <cstdlib>
#include <limits>
#include <string_view>

namespace pouncemark::tests {
namespace {

bool is_digit(char sign) { return sign >= '0' && sign <= '9'; }

/// A number as it stands, from `at` on: digits, a comma before three digits, one point.
std::string number_at(std::string_view words, std::size_t at) {
  std::string number;
  for (; at < words.size(); ++at) {
    const bool goes_on = at + 1 < words.size() && is_digit(words[at + 1]);
    const bool inside = (words[at] == ',' || words[at] == '.') && goes_on && !number.empty();
    if (!is_digit(words[at]) && !inside) break;
    number += words[at];
  }
  return number;
}

double value_of(const std::string& number) {
  std::string plain;
  for (const char sign : number) {
    if (sign != ',') plain += sign;
  }
  return std::strtod(plain.c_str(), nullptr);
}

/// Term by term, from left to right.
class Reader {
 public:
  explicit Reader(std::string_view words) : words_(words) {}

  double whole() {
    const double value = added();
    pass_words();
    return at_ == words_.size() ? value : std::numeric_limits<double>::quiet_NaN();
  }

 private:
  bool takes(std::string_view sign) {
    pass_words();
    if (words_.substr(at_, sign.size()) != sign) return false;
    at_ += sign.size();
    return true;
  }

  /// Blanks, letters, units and ± say nothing to a calculator; atan does.
  void pass_words() {
    while (at_ < words_.size()) {
      if (words_.substr(at_, 4) == "atan") return;
      const char sign = words_[at_];
      const bool letter = (sign >= 'a' && sign <= 'z') || (sign >= 'A' && sign <= 'Z');
      if (words_.substr(at_, 2) == "±" || words_.substr(at_, 2) == "°")
        at_ += 2;
      else if (letter || sign == ' ' || sign == ':' || sign == '%')
        ++at_;
      else
        return;
    }
  }

  double added() {
    double value = multiplied();
    while (true) {
      if (takes("+"))
        value += multiplied();
      else if (takes("−"))
        value -= multiplied();
      else
        return value;
    }
  }

  double multiplied() {
    double value = squared();
    while (true) {
      if (takes("×"))
        value *= squared();
      else if (takes("÷"))
        value /= squared();
      else
        return value;
    }
  }

  double squared() {
    const double value = single();
    return takes("²") ? value * value : value;
  }

  double bracket() {
    const double value = added();
    return takes(")") ? value : std::numeric_limits<double>::quiet_NaN();
  }

  double single() {
    if (takes("−")) return -single();
    if (takes("√(")) return std::sqrt(bracket());
    if (takes("atan(")) return std::atan(bracket());
    if (takes("(")) return bracket();
    if (takes("π")) return 3.14159265358979;
    const std::string number = number_at(words_, at_);
    if (number.empty()) return std::numeric_limits<double>::quiet_NaN();
    at_ += number.size();
    return value_of(number);
  }

  std::string_view words_;
  std::size_t at_ = 0;
};

std::vector<std::string> parts_of(const std::string& line) {
  std::vector<std::string> parts;
  std::size_t from = 0;
  for (std::size_t at = line.find(", "); at != std::string::npos; at = line.find(", ", from)) {
    parts.push_back(line.substr(from, at - from));
    from = at + 2;
  }
  parts.push_back(line.substr(from));
  return parts;
}

/// Half of the last place that is written, and what rounding to whole micrometres adds to it.
double allowed(const std::string& number) {
  const std::size_t point = number.find('.');
  const std::size_t places = point == std::string::npos ? 1 : number.size() - point - 1;
  double half = 0.5;
  for (std::size_t i = 0; i < places; ++i) half /= 10;
  return half + 0.000'5 + 1e-9;
}

}  // namespace

double worked_out(const std::string& words) { return Reader(words).whole(); }

std::string last_number(const std::string& words) {
  std::string last;
  for (std::size_t at = 0; at < words.size();) {
    const std::string number = number_at(words, at);
    if (!number.empty()) last = number;
    at += number.empty() ? 1 : number.size();
  }
  return last;
}

std::string fault_in_line(const std::string& line) {
  std::string before;
  for (const std::string& part : parts_of(line)) {
    const std::size_t equals = part.find(" = ");
    if (part.rfind("so ", 0) == 0) {
      const std::size_t right = before.find(" = ");
      if (right == std::string::npos) return "nothing before: " + line;
      const std::string number = number_at(before, right + 3);
      const bool is_exact = std::fabs(worked_out(before.substr(0, right)) -
                                      worked_out(before.substr(right + 3))) < 1e-6;
      const double least = value_of(number);
      const double most = least + (before.find('+') == std::string::npos ? 0 : 1);
      const double told = worked_out(part);
      if (!is_exact || !(told == least || told == most)) return "does not follow: " + line;
    } else if (equals != std::string::npos) {
      const std::string right = part.substr(equals + 3);
      const double off = worked_out(part.substr(0, equals)) - worked_out(right);
      const double atan_off = part.find("atan") == std::string::npos ? 0 : 0.01;
      const bool is_true = std::fabs(off) <= std::fmax(allowed(last_number(right)), atan_off);
      const bool is_split = right.find("×") != std::string::npos;
      if (!is_true || (is_split && std::fabs(off) > 1e-6)) return "is not true: " + line;
    }
    before = part;
  }
  return {};
}

}  // namespace pouncemark::tests
