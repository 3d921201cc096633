#pragma once

#include <string>
#include <string_view>

namespace pouncemark {

/// SHA-256 of the bytes as 64 lower-case hex digits. Source: FIPS 180-4.
std::string sha256_hex(std::string_view bytes);

}  // namespace pouncemark
