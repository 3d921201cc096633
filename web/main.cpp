#include "web/host/host.h"
#include "web/panels/bench_page.h"

#include <memory>
#include <string>

namespace {

using pouncemark::web::host::Guest;

/// The one guest of the page, made when the surface stands. It lives as long as the page.
Guest& bench_page() {
  static const std::unique_ptr<Guest> page = pouncemark::web::make_bench_page();
  return *page;
}

}  // namespace

int main() {
  pouncemark::web::host::start();
  pouncemark::web::host::set_guest(&bench_page());
  pouncemark::web::host::request_frames();
  return 0;
}

/// The open job as it would be saved. The words stand until the next call.
extern "C" __attribute__((used)) const char* pm_job() {
  static std::string words;
  words = pouncemark::web::host::job_text();
  return words.c_str();
}
