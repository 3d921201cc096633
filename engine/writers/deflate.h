#pragma once

#include <string>
#include <string_view>

/// Packing of whole blocks with zlib. The library is built from one source for every target, so the
/// same bytes in give the same bytes out everywhere.
namespace pouncemark::writers {

/// `bytes` as one zlib stream (RFC 1950). `level` 0 (stored) to 9. INSIST: level in range.
std::string deflated(std::string_view bytes, int level);

}  // namespace pouncemark::writers
