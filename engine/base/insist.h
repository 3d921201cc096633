#pragma once

namespace pouncemark {

/// What happens when our own code is wrong. The default ends the program; tests put in their own.
using InsistHandler = void (*)(const char* claim, const char* file, int line);

/// Puts another handler in place and returns the one before it.
InsistHandler set_insist_handler(InsistHandler handler);

/// Called by INSIST when its claim is false.
void insist_failed(const char* claim, const char* file, int line);

}  // namespace pouncemark

/// A claim about our own code (never about the user's data), kept in every build.
#define INSIST(claim) \
  ((claim) ? static_cast<void>(0) : ::pouncemark::insist_failed(#claim, __FILE__, __LINE__))
