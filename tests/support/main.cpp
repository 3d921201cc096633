#include "engine/base/insist.h"

#define DOCTEST_CONFIG_IMPLEMENT
#include <doctest/doctest.h>

#include <cstdlib>
#include <string>

namespace {

// A broken claim fails the case that met it and ends the run: what follows could not be trusted.
void fail_the_case(const char* claim, const char* file, int line) {
  ADD_FAIL_AT(file, line, "our own mistake: " << std::string(claim));
  std::abort();
}

}  // namespace

int main(int argc, char** argv) {
  pouncemark::set_insist_handler(fail_the_case);
  doctest::Context context;
  context.applyCommandLine(argc, argv);
  return context.run();
}
