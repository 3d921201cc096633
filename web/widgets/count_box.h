#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "web/widgets/text_box.h"

namespace pouncemark::web {

/// A count of sleeves in a box, whole numbers from 1 to 1,000: as a length box, but the arrow keys
/// step by 1 (with Shift by 10) in sleeves. Gives the new count when one was kept.
std::optional<int> count_box(const Brush& brush, Hand& hand, OpenBox& open, std::string_view id,
                             const Area& area, int count);

}  // namespace pouncemark::web
