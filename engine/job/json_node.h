#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/base/result.h"

namespace pouncemark::job {

/// One value of a JSON text, kept as it was written: numbers keep their digits, members their
/// order, and every value the line it starts on (from 1; 0 for values we made).
struct JsonNode {
  enum class Kind : std::uint8_t { null, boolean, number, text, list, object };

  Kind kind = Kind::null;
  bool truth = false;
  std::string words;  ///< the digits of a number, the characters of a text
  std::vector<JsonNode> items;
  std::vector<std::pair<std::string, JsonNode>> members;
  int line = 0;

  /// The member with this key; nullptr when there is none or this is no object.
  const JsonNode* find(std::string_view key) const;
  bool operator==(const JsonNode&) const = default;
};

/// Members of an object that this version does not know; written back as they came.
using Extras = std::vector<std::pair<std::string, JsonNode>>;

/// Limits on what is read before anything is built of it: both together keep a hostile file under
/// 256 MB of memory.
inline constexpr std::size_t kLargestJobBytes = 16u * 1024u * 1024u;
inline constexpr int kDeepestJson = 64;
inline constexpr int kMostJsonValues = 400'000;

/// Reads one JSON text strictly: UTF-8, no key twice in an object, no NUL byte, within the limits
/// above. Problems: job_unreadable (with line and column), job_damaged, job_out_of_range.
Result<JsonNode> read_json(std::string_view text);

/// The canonical text of a value: one line where it fits within 100 columns, else one member or
/// item a line with one space of indent per step in. Ends without a line end.
std::string json_text(const JsonNode& node);

}  // namespace pouncemark::job
