#pragma once

#include <string>
#include <vector>

#include "engine/solve/results.h"

/// What a tick list says in words and figures; nothing of where it stands on the page.
namespace pouncemark::sheets {

/// A length as a list prints it, rounded to half a millimetre, halves away from zero: micrometres.
Um printed_um(Um um);

/// The same as words, always with one decimal: "2380.0".
std::string printed_figure(Um um);

/// The figures of a run as printed, added up, micrometres; 0 where there is no point.
Um sum_of_printed_um(const layout::Run& run);

/// "30 staples, 46.55 centre to centre"; a shared corner is named beside the row's own
/// count, and a last gap that differs is said.
std::string count_words(const solve::Row& row);

/// How the figures come about and what those printed add up to, a line each. Exact: a length that
/// no half millimetre says is written out, and how the list prints it. Empty for a row without
/// points.
std::vector<std::string> sum_check(const layout::Run& run);

/// "first hole 25.0, last hole 1375.0, 246 stitches of 5.49".
std::string stitch_words(const solve::Row& row);

}  // namespace pouncemark::sheets
