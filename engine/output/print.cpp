#include "engine/output/print_run.h"

namespace pouncemark::output {

Result<std::vector<NamedBytes>> print(const job::Job& job, const solve::Results& results,
                                      const PrintOptions& options, const writers::Faces& faces) {
  PrintRun run(job, results, faces);
  const Result<std::int64_t> added = run.add(options);
  if (!added) return added.problem();
  while (run.step()) {
  }
  return run.take_files();
}

}  // namespace pouncemark::output
