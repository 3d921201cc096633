#pragma once

#include <cstdio>
#include <string>

namespace pouncemark::tests {

/// The bytes of a file of the repository, named from its root, where the tests are run; empty when
/// it is not there.
inline std::string file_text(const std::string& path) {
  std::string text;
  std::FILE* file = std::fopen(path.c_str(), "rb");
  if (file == nullptr) return text;
  char part[4096];
  std::size_t count = 0;
  while ((count = std::fread(part, 1, sizeof part, file)) > 0) text.append(part, count);
  std::fclose(file);
  return text;
}

}  // namespace pouncemark::tests
