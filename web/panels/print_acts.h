#pragma once

#include <memory>

#include "web/panels/page.h"

/// What the Print stage does between two frames.
namespace pouncemark::web {

/// Counts the guides and lays out the map where the stage shows them, once after each change; a
/// file that is shown and is no longer that of the job is put away.
void work_out_prints(const Bench& bench, PageState& state);

/// Prints guides in the worker, to be saved or to be looked at.
void print_guides(Bench& bench, PageState& state, std::vector<GuideLine> lines, host::Then then);
/// Those that are ticked.
void print_ticked(Bench& bench, PageState& state);
void stop_print(Bench& bench, PageState& state);

/// Shows the guide that is looked at as a file, opened at a page of it, from 1.
void view_page(Bench& bench, PageState& state, std::int64_t page);
void close_view(PageState& state);

/// Hears what the worker says.
std::unique_ptr<host::PrintGuest> make_print_guest(Bench& bench, PageState& state);

}  // namespace pouncemark::web
