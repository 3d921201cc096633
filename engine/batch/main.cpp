#include <cstdio>
#include <string>
#include <vector>

#include "engine/batch/built_in_faces.h"
#include "engine/batch/command.h"
#include "engine/batch/files.h"
#include "engine/job/job_json.h"
#include "engine/job/json_node.h"
#include "engine/output/output.h"
#include "engine/solve/solve.h"

namespace pouncemark::batch {
namespace {

/// What the program says when it ends.
enum ExitCode { kFine = 0, kStopIsOpen = 1, kWrongWords = 2, kNotOpened = 3 };

void say(std::FILE* where, const std::string& words) {
  std::fwrite(words.data(), 1, words.size(), where);
}

int refuse(const Problem& problem, int code) {
  say(stderr, problem_sentence(problem) + "\n");
  return code;
}

int print_files(const Command& command, const job::Job& job, const solve::Results& results) {
  const auto files = output::print(job, results, command.print, built_in_faces());
  if (!files) return refuse(files.problem(), kWrongWords);
  for (const output::NamedBytes& file : *files) {
    const Result<bool> written = write_file(command.out_folder, file.name, file.bytes);
    if (!written) return refuse(written.problem(), kWrongWords);
    say(stdout, file.name + "\n");
  }
  return kFine;
}

int check_job(const solve::Results& results) {
  say(stdout, output::check_lines(results));
  for (const solve::Finding& finding : results.findings) {
    if (finding.severity == solve::Severity::stop) return kStopIsOpen;
  }
  return kFine;
}

int run(const std::vector<std::string>& words) {
  const Result<Command> command = read_command(words);
  if (!command) return refuse(command.problem(), kWrongWords);
  const Result<std::string> text = read_file(command->job_path, job::kLargestJobBytes);
  if (!text) return refuse(text.problem(), kNotOpened);
  const Result<job::OpenedJob> opened = job::open_job(*text);
  if (!opened) return refuse(opened.problem(), kNotOpened);
  if (opened->look_only) say(stderr, opened->note + "\n");
  const solve::Results results = solve::solve(opened->job);
  switch (command->verb) {
    case Verb::figures:
      say(stdout, output::figures_json(opened->job, results));
      return kFine;
    case Verb::check:
      return check_job(results);
    case Verb::print:
      return print_files(*command, opened->job, results);
  }
  return kWrongWords;
}

}  // namespace
}  // namespace pouncemark::batch

int main(int count, char** words) {
  return pouncemark::batch::run(std::vector<std::string>(words + 1, words + count));
}
