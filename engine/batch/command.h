#pragma once

#include <string>
#include <vector>

#include "engine/base/result.h"
#include "engine/output/output.h"

namespace pouncemark::batch {

enum class Verb { figures, check, print };

/// The words of one call, understood.
struct Command {
  Verb verb = Verb::figures;
  std::string job_path;
  output::PrintOptions print;
  std::string out_folder;
};

/// Reads the words after the program's name: `figures JOB`, `check JOB`, or
/// `print JOB --guide G --paper P [--bars 179.3x200.0] --out DIR`. Problem: words_wrong, with what
/// was found and needed; length problems of --bars.
Result<Command> read_command(const std::vector<std::string>& words);

}  // namespace pouncemark::batch
