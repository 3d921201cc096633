#pragma once

#include <cstdint>

/// People for a steady push.
namespace pouncemark::frame {

/// How many people it takes at so much each, rounded up; nobody for no force. Thousandths of a
/// newton; `force_mn` >= 0, `each_mn` > 0.
std::int64_t people_needed(std::int64_t force_mn, std::int64_t each_mn);

}  // namespace pouncemark::frame
