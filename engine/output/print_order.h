#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/output/output.h"

/// A print order as words, to be handed from the page to its worker.
namespace pouncemark::output {

/// One line an order: guide, paper, both bars in micrometres, piece.
std::string print_order_text(const std::vector<PrintOptions>& orders);

/// The orders again; nothing when the words are not ours.
std::optional<std::vector<PrintOptions>> read_print_order(std::string_view text);

}  // namespace pouncemark::output
