#pragma once

#include <memory>

#include "web/host/host.h"

/// Floor 14, panels: what stands where. A panel reads the bench, draws, and asks for acts; it works
/// nothing out and keeps nothing of its own.
namespace pouncemark::web {

/// The whole page: start doors, stages, slip, bar. One for the life of the page.
std::unique_ptr<host::Guest> make_bench_page();

}  // namespace pouncemark::web
