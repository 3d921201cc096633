#include "engine/batch/files.h"

#include <sys/stat.h>

#include <cstdio>

namespace pouncemark::batch {
namespace {

bool is_plain_file(const std::string& path) {
  struct stat found = {};
  return stat(path.c_str(), &found) == 0 && S_ISREG(found.st_mode);
}

void make_folder(const std::string& path) {
  for (std::size_t at = path.find('/', 1); at != std::string::npos; at = path.find('/', at + 1)) {
    mkdir(path.substr(0, at).c_str(), 0777);
  }
  mkdir(path.c_str(), 0777);
}

}  // namespace

Result<std::string> read_file(const std::string& path, std::size_t most) {
  std::FILE* file = is_plain_file(path) ? std::fopen(path.c_str(), "rb") : nullptr;
  if (file == nullptr) return Problem{ProblemCode::file_not_read, path, {}, {}};
  std::string bytes;
  std::string part(65'536, '\0');
  std::size_t count = 0;
  while (bytes.size() <= most && (count = std::fread(part.data(), 1, part.size(), file)) > 0) {
    bytes.append(part, 0, count);
  }
  const bool failed = std::ferror(file) != 0;
  std::fclose(file);
  if (failed) return Problem{ProblemCode::file_not_read, path, {}, {}};
  return bytes;
}

Result<bool> write_file(const std::string& folder, const std::string& name,
                        std::string_view bytes) {
  make_folder(folder);
  const std::string path = folder + "/" + name;
  std::FILE* file = std::fopen(path.c_str(), "wb");
  if (file == nullptr) return Problem{ProblemCode::file_not_written, path, {}, {}};
  const bool written = std::fwrite(bytes.data(), 1, bytes.size(), file) == bytes.size();
  if (std::fclose(file) != 0 || !written) {
    return Problem{ProblemCode::file_not_written, path, {}, {}};
  }
  return true;
}

}  // namespace pouncemark::batch
