#pragma once

#include "engine/base/insist.h"

namespace pouncemark::tests {

/// Counts broken claims instead of ending the run, for as long as it lives; then puts the former
/// handler back. Only for claims after which the code can go on. One at a time.
class ClaimsCounted {
 public:
  ClaimsCounted() : before_(set_insist_handler(count_one)) { tally() = 0; }
  ~ClaimsCounted() { set_insist_handler(before_); }
  ClaimsCounted(const ClaimsCounted&) = delete;
  ClaimsCounted& operator=(const ClaimsCounted&) = delete;

  /// How many claims were broken since this was made.
  int broken() const { return tally(); }

 private:
  static int& tally() {
    static int count = 0;
    return count;
  }
  static void count_one(const char*, const char*, int) { ++tally(); }

  InsistHandler before_;
};

}  // namespace pouncemark::tests
