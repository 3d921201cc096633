#include "engine/solve/sum_words.h"

#include <algorithm>
#include <cstddef>
#include <map>
#include <utility>

#include "engine/base/insist.h"
#include "engine/base/number_text.h"

namespace pouncemark::solve {
namespace {

constexpr std::size_t kMostInOrder = 9;
constexpr std::size_t kMostGroups = 6;

struct Group {
  std::int64_t number = 0;
  std::int64_t times = 0;
};

/// Equal numbers together, in the order they first appear.
std::vector<Group> grouped(const std::vector<std::int64_t>& numbers) {
  std::vector<Group> groups;
  std::map<std::int64_t, std::size_t> place_of;
  for (const std::int64_t number : numbers) {
    const auto [found, is_new] = place_of.try_emplace(number, groups.size());
    if (is_new) groups.push_back({number, 0});
    ++groups[found->second].times;
  }
  return groups;
}

void add(std::string* words, const std::string& term) {
  if (!words->empty()) *words += " + ";
  *words += term;
}

}  // namespace

std::string plain_mm(Um um) { return um < 0 ? "−" + exact_mm_text(-um) : exact_mm_text(um); }

std::string shown_mm(Um um, int decimals) {
  const std::string text = mm_text(um < 0 ? -um : um, decimals);
  const bool is_none = text.find_first_of("123456789") == std::string::npos;
  return um < 0 && !is_none ? "−" + text : text;
}

std::string added_mm(Um um) {
  INSIST(um >= 0);
  const std::string exact = exact_mm_text(um);
  const std::size_t point = exact.find('.');
  return count_text(um / 1000) + (point == std::string::npos ? "" : exact.substr(point));
}

std::string less_mm(Um um) {
  return um < 0 ? " + " + exact_mm_text(-um) : " − " + exact_mm_text(um);
}

std::string and_mm(Um um) { return um == 0 ? std::string() : less_mm(-um); }

std::string told(std::string number, bool is_assumed) {
  return is_assumed ? std::move(number) + " assumed" : number;
}

std::string source_of(bool is_assumed) {
  return is_assumed ? "assumed, common practice" : kEnteredSource;
}

std::string added_up(const std::vector<std::int64_t>& numbers, NumberText text) {
  INSIST(!numbers.empty());
  std::vector<Group> groups = grouped(numbers);
  std::string words;
  if (groups.size() > 1 && numbers.size() <= kMostInOrder) {
    for (const std::int64_t number : numbers) add(&words, text(number));
    return words;
  }
  std::int64_t others = 0;
  if (groups.size() > kMostGroups) {
    std::stable_sort(groups.begin(), groups.end(),
                     [](const Group& a, const Group& b) { return a.times > b.times; });
    for (std::size_t i = kMostGroups - 1; i < groups.size(); ++i) {
      others += groups[i].times * groups[i].number;
    }
    groups.resize(kMostGroups - 1);
  }
  for (const Group& one : groups) {
    const std::string number = text(one.number);
    add(&words, one.times == 1 ? number : count_text(one.times) + " × " + number);
  }
  if (others != 0) add(&words, "others " + text(others));
  return words;
}

std::int64_t total_of(const std::vector<std::int64_t>& numbers) {
  std::int64_t total = 0;
  for (const std::int64_t number : numbers) total += number;
  return total;
}

}  // namespace pouncemark::solve
