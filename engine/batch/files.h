#pragma once

#include <string>
#include <string_view>

#include "engine/base/result.h"

/// Floor 11, batch: the batch program. The only engine folder that knows files and the console.
namespace pouncemark::batch {

/// Bytes of a file, at most `most` of them (a longer file gives most + 1 bytes, which the reader of
/// the job refuses). Problem: file_not_read (missing, a folder, not allowed).
Result<std::string> read_file(const std::string& path, std::size_t most);

/// Writes a file of a folder; the folder is made if it is missing. Problem: file_not_written.
Result<bool> write_file(const std::string& folder, const std::string& name, std::string_view bytes);

}  // namespace pouncemark::batch
