#include <string>

#include "engine/job/json_node.h"

namespace pouncemark::job {
namespace {

constexpr std::size_t kColumns = 100;

void put_escaped(std::string& out, std::string_view words) {
  constexpr std::string_view kHex = "0123456789abcdef";
  out += '"';
  for (const char c : words) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\') {
      out += '\\';
      out += c;
    } else if (c == '\n') {
      out += "\\n";
    } else if (c == '\t') {
      out += "\\t";
    } else if (byte < 0x20 || byte == 0x7f) {
      out += "\\u00";
      out += kHex[byte >> 4];
      out += kHex[byte & 15];
    } else {
      out += c;
    }
  }
  out += '"';
}

/// The value on one line; stops early once `out` is longer than `limit`.
void put_flat(std::string& out, const JsonNode& node, std::size_t limit) {
  if (out.size() > limit) return;
  switch (node.kind) {
    case JsonNode::Kind::null:
      out += "null";
      return;
    case JsonNode::Kind::boolean:
      out += node.truth ? "true" : "false";
      return;
    case JsonNode::Kind::number:
      out += node.words;
      return;
    case JsonNode::Kind::text:
      put_escaped(out, node.words);
      return;
    case JsonNode::Kind::list: {
      out += '[';
      const char* between = "";
      for (const JsonNode& item : node.items) {
        out += between;
        put_flat(out, item, limit);
        between = ",";
      }
      out += ']';
      return;
    }
    case JsonNode::Kind::object: {
      out += '{';
      const char* between = "";
      for (const auto& [key, value] : node.members) {
        out += between;
        put_escaped(out, key);
        out += ':';
        put_flat(out, value, limit);
        between = ",";
      }
      out += '}';
      return;
    }
  }
}

/// Columns a UTF-8 text takes: its code points.
std::size_t columns(std::string_view text) {
  std::size_t count = 0;
  for (const char c : text) count += (static_cast<unsigned char>(c) & 0xc0) != 0x80 ? 1 : 0;
  return count;
}

void put(std::string& out, const JsonNode& node, std::size_t depth, std::size_t used) {
  const bool holds = !node.items.empty() || !node.members.empty();
  if (!holds || depth > 0) {
    std::string flat;
    put_flat(flat, node, 4 * kColumns);
    if (!holds || used + columns(flat) + 1 <= kColumns) {
      if (!holds)
        put_flat(out, node, static_cast<std::size_t>(-1));
      else
        out += flat;
      return;
    }
  }
  const bool is_list = node.kind == JsonNode::Kind::list;
  const std::string indent(depth + 1, ' ');
  const std::size_t count = is_list ? node.items.size() : node.members.size();
  out += is_list ? "[\n" : "{\n";
  for (std::size_t i = 0; i < count; ++i) {
    std::string head = indent;
    if (!is_list) {
      put_escaped(head, node.members[i].first);
      head += ':';
    }
    out += head;
    put(out, is_list ? node.items[i] : node.members[i].second, depth + 1, columns(head));
    out += i + 1 < count ? ",\n" : "\n";
  }
  out.append(depth, ' ');
  out += is_list ? ']' : '}';
}

}  // namespace

std::string json_text(const JsonNode& node) {
  std::string out;
  put(out, node, 0, 0);
  return out;
}

}  // namespace pouncemark::job
