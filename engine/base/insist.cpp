#include "engine/base/insist.h"

#include <cstdio>
#include <cstdlib>

namespace pouncemark {
namespace {

void end_the_program(const char* claim, const char* file, int line) {
  std::fprintf(stderr, "pouncemark: our own mistake at %s:%d: %s\n", file, line, claim);
  std::abort();
}

InsistHandler& handler() {
  static InsistHandler current = end_the_program;
  return current;
}

}  // namespace

InsistHandler set_insist_handler(InsistHandler replacement) {
  InsistHandler before = handler();
  handler() = replacement;
  return before;
}

void insist_failed(const char* claim, const char* file, int line) { handler()(claim, file, line); }

}  // namespace pouncemark
