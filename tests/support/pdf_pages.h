#pragma once

#include <cstdint>
#include <string>

namespace pouncemark::tests {

/// How many pages a PDF of ours has, by the page boxes it states.
inline std::int64_t pages_in(const std::string& pdf) {
  std::int64_t pages = 0;
  for (std::size_t at = pdf.find("/MediaBox"); at != std::string::npos;
       at = pdf.find("/MediaBox", at + 1)) {
    ++pages;
  }
  return pages;
}

}  // namespace pouncemark::tests
