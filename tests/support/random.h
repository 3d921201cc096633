#pragma once

#include <cstdint>
#include <random>
#include <string>

namespace pouncemark::tests {

/// Chance for tests: the same draws from one seed in every build. The ranges are our own, because
/// those of the library differ from one to the next. One draw a statement, never two in one list of
/// arguments: their order is not fixed.
class Dice {
 public:
  explicit Dice(std::uint32_t seed) : seed_(seed), numbers_(seed) {}

  /// A whole number from `least` to `most`, both possible.
  std::int64_t between(std::int64_t least, std::int64_t most) {
    const std::uint64_t high = numbers_();
    const std::uint64_t low = numbers_();
    const std::uint64_t width = static_cast<std::uint64_t>(most - least) + 1;
    return least + static_cast<std::int64_t>(((high << 32) | low) % width);
  }

  /// A whole number from `least` to `most`, as often under a thousand as over a million: every
  /// size of number is met, not only large ones.
  std::int64_t of_any_size(std::int64_t least, std::int64_t most) {
    std::int64_t reach = most - least;
    const std::int64_t halvings = between(0, 30);
    for (std::int64_t i = 0; i < halvings && reach > 1'000; ++i) reach /= 2;
    return least + between(0, reach);
  }

  /// True once in `times` draws, in the long run.
  bool once_in(std::int64_t times) { return between(1, times) == 1; }

  /// For INFO: printed beside whatever fails.
  std::string words() const { return "seed " + std::to_string(seed_); }

 private:
  std::uint32_t seed_;
  std::mt19937 numbers_;
};

}  // namespace pouncemark::tests
