#include "engine/output/print_order.h"

#include <algorithm>
#include <charconv>
#include <system_error>
#include <utility>

namespace pouncemark::output {
namespace {

/// Cuts the words up to `end` off the front.
std::string_view cut_off(std::string_view& text, char end) {
  const std::size_t at = std::min(text.find(end), text.size());
  const std::string_view front = text.substr(0, at);
  text.remove_prefix(std::min(text.size(), at + 1));
  return front;
}

template <typename Number>
bool read_number(std::string_view words, Number* number) {
  const char* end = words.data() + words.size();
  const auto read = std::from_chars(words.data(), end, *number);
  return read.ec == std::errc() && read.ptr == end;
}

}  // namespace

std::string print_order_text(const std::vector<PrintOptions>& orders) {
  std::string text;
  for (const PrintOptions& order : orders) {
    text += std::to_string(static_cast<int>(order.guide)) + " " + order.paper + " " +
            std::to_string(order.bar_across_um) + " " + std::to_string(order.bar_along_um) + " " +
            std::to_string(order.piece) + "\n";
  }
  return text;
}

std::optional<std::vector<PrintOptions>> read_print_order(std::string_view text) {
  std::vector<PrintOptions> orders;
  while (!text.empty()) {
    std::string_view line = cut_off(text, '\n');
    PrintOptions order;
    int guide = -1;
    const bool has_guide = read_number(cut_off(line, ' '), &guide);
    if (!has_guide || guide < 0 || guide >= static_cast<int>(kGuideWords.size())) {
      return std::nullopt;
    }
    order.guide = static_cast<Guide>(guide);
    order.paper = std::string(cut_off(line, ' '));
    if (!read_number(cut_off(line, ' '), &order.bar_across_um)) return std::nullopt;
    if (!read_number(cut_off(line, ' '), &order.bar_along_um)) return std::nullopt;
    if (!read_number(line, &order.piece)) return std::nullopt;
    orders.push_back(std::move(order));
  }
  return orders;
}

}  // namespace pouncemark::output
