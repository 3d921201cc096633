#include <emscripten.h>

#include <array>
#include <cstddef>
#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/base/problem.h"
#include "engine/base/sha256.h"
#include "engine/job/job_json.h"
#include "engine/output/print_order.h"
#include "engine/output/print_run.h"
#include "engine/solve/solve.h"

// The worker's side of printing: it is given a job as saved and an order, solves again, and prints
// a page at a time. Nothing here knows a screen.
namespace pouncemark::web::host {
namespace {

/// What one order is printed from, and the file that was finished last.
struct Work {
  job::Job job;
  solve::Results results;
  std::unique_ptr<output::PrintRun> run;
  std::vector<output::NamedBytes> files;
  std::string sha256;
};

struct Worker {
  std::array<std::string, 3> faces;
  std::unique_ptr<Work> work;
  std::string sentence;
};

Worker& the_worker() {
  static Worker worker;
  return worker;
}

/// A sentence why there is nothing to print; empty when all orders were taken.
std::string start_work(std::string_view job_text, std::string_view order_text) {
  Worker& worker = the_worker();
  const auto orders = output::read_print_order(order_text);
  if (!orders) return "The order to print could not be read.";
  auto job = job::open_job(job_text);
  if (!job) return problem_sentence(job.problem());
  worker.work = std::make_unique<Work>();
  Work& work = *worker.work;
  work.job = std::move(job.value().job);
  work.results = solve::solve(work.job);
  const auto& faces = worker.faces;
  work.run = std::make_unique<output::PrintRun>(
      work.job, work.results, writers::Faces{faces[0], faces[1], faces[2]});
  for (const output::PrintOptions& order : *orders) {
    const auto added = work.run->add(order);
    if (!added) return problem_sentence(added.problem());
  }
  return {};
}

}  // namespace
}  // namespace pouncemark::web::host

extern "C" {

namespace work_host = pouncemark::web::host;

/// One of the three cut faces: main regular, main bold, wide.
EMSCRIPTEN_KEEPALIVE void pm_work_face(int which, const char* bytes, int size) {
  work_host::the_worker().faces[static_cast<std::size_t>(which)].assign(
      bytes, static_cast<std::size_t>(size));
}

/// Takes a job and an order; gives the sentence why not, or no words.
EMSCRIPTEN_KEEPALIVE const char* pm_work_start(const char* job, const char* order) {
  work_host::Worker& worker = work_host::the_worker();
  worker.sentence = work_host::start_work(job, order);
  if (!worker.sentence.empty()) worker.work.reset();
  return worker.sentence.c_str();
}

EMSCRIPTEN_KEEPALIVE int pm_work_pages() {
  return static_cast<int>(work_host::the_worker().work->run->pages());
}

/// Prints one page; how many are printed, -1 when all were.
EMSCRIPTEN_KEEPALIVE int pm_work_step() {
  work_host::Work& work = *work_host::the_worker().work;
  if (!work.run->step()) return -1;
  return static_cast<int>(work.run->printed());
}

/// True when a file is whole; it stands until the next call.
EMSCRIPTEN_KEEPALIVE int pm_work_file() {
  work_host::Work& work = *work_host::the_worker().work;
  work.files = work.run->take_files();
  if (work.files.empty()) return 0;
  work.sha256 = pouncemark::sha256_hex(work.files.front().bytes);
  return 1;
}
EMSCRIPTEN_KEEPALIVE const char* pm_work_file_name() {
  return work_host::the_worker().work->files.front().name.c_str();
}
EMSCRIPTEN_KEEPALIVE const char* pm_work_file_sha256() {
  return work_host::the_worker().work->sha256.c_str();
}
EMSCRIPTEN_KEEPALIVE const char* pm_work_file_bytes() {
  return work_host::the_worker().work->files.front().bytes.data();
}
EMSCRIPTEN_KEEPALIVE int pm_work_file_size() {
  return static_cast<int>(work_host::the_worker().work->files.front().bytes.size());
}

/// Lets go of the job and its files.
EMSCRIPTEN_KEEPALIVE void pm_work_end() { work_host::the_worker().work.reset(); }

}  // extern "C"
