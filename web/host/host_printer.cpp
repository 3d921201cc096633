#include "web/host/printer.h"

#include <emscripten.h>

// What printer.js does for us, and what it calls.
// clang-format off
EM_JS(void, pm_js_print_start,
      (const char* job, int job_size, const char* order, int order_size, int looks),
      { Pm.startPrinting(UTF8ToString(job, job_size), UTF8ToString(order, order_size), !!looks); });
EM_JS(void, pm_js_print_prepare, (), { Pm.preparePrinting(); });
EM_JS(void, pm_js_print_stop, (), { Pm.stopPrinting(); });
EM_JS(int, pm_js_viewer_is_there, (), { return Pm.canShowPrinted() ? 1 : 0; });
EM_JS(void, pm_js_viewer_lay, (float left, float top, float right, float bottom, int page),
      { Pm.showPrinted(left, top, right, bottom, page); });
EM_JS(void, pm_js_viewer_act, (int act),
      { [Pm.putPrintedAway, Pm.savePrinted, Pm.printShown][act](); });
// clang-format on

namespace pouncemark::web::host {
namespace {

PrintGuest*& print_guest() {
  static PrintGuest* guest = nullptr;
  return guest;
}

int size_of(std::string_view words) { return static_cast<int>(words.size()); }

}  // namespace

void set_print_guest(PrintGuest* guest) { print_guest() = guest; }

void prepare_printing() { pm_js_print_prepare(); }

void start_printing(std::string_view job, std::string_view order, Then then) {
  pm_js_print_start(job.data(), size_of(job), order.data(), size_of(order), then == Then::look);
}

void stop_printing() { pm_js_print_stop(); }

bool can_show_printed() { return pm_js_viewer_is_there() != 0; }

void show_printed(float left, float top, float right, float bottom, int page) {
  pm_js_viewer_lay(left, top, right, bottom, page);
}

void put_printed_away() { pm_js_viewer_act(0); }
void save_printed() { pm_js_viewer_act(1); }
void print_shown() { pm_js_viewer_act(2); }

}  // namespace pouncemark::web::host

extern "C" {

namespace print_host = pouncemark::web::host;

EMSCRIPTEN_KEEPALIVE void pm_print_went_on(int printed, int pages) {
  if (print_host::print_guest() != nullptr) {
    print_host::print_guest()->print_went_on(printed, pages);
  }
}

EMSCRIPTEN_KEEPALIVE void pm_print_made(const char* name, const char* sha256, int bytes) {
  if (print_host::print_guest() != nullptr) {
    print_host::print_guest()->print_made({name, sha256, bytes});
  }
}

EMSCRIPTEN_KEEPALIVE void pm_print_ended() {
  if (print_host::print_guest() != nullptr) print_host::print_guest()->print_ended();
}

EMSCRIPTEN_KEEPALIVE void pm_print_failed(const char* sentence) {
  if (print_host::print_guest() != nullptr) print_host::print_guest()->print_failed(sentence);
}

}  // extern "C"
