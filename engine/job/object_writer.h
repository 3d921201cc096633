#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/base/number_text.h"
#include "engine/geometry/units.h"
#include "engine/job/json_node.h"

/// Inside of writing a job: values of the file and objects of them.
namespace pouncemark::job {

/// One value of the file.
inline JsonNode text(std::string_view words) {
  JsonNode node;
  node.kind = JsonNode::Kind::text;
  node.words = std::string(words);
  return node;
}

inline JsonNode number(std::string digits) {
  JsonNode node;
  node.kind = JsonNode::Kind::number;
  node.words = std::move(digits);
  return node;
}

inline JsonNode mm(Um um) { return number(exact_mm_text(um)); }
inline JsonNode count(int value) { return number(std::to_string(value)); }

template <typename List>
JsonNode mm_list(const List& lengths) {
  JsonNode node;
  node.kind = JsonNode::Kind::list;
  for (const Um um : lengths) node.items.push_back(mm(um));
  return node;
}

inline JsonNode text_list(const std::vector<std::string>& texts) {
  JsonNode node;
  node.kind = JsonNode::Kind::list;
  for (const std::string& words : texts) node.items.push_back(text(words));
  return node;
}

inline JsonNode word(const std::vector<std::string_view>& words, int index) {
  return text(words[static_cast<std::size_t>(index)]);
}

/// Members in file order; what is empty is left out.
class ObjectWriter {
 public:
  ObjectWriter() { node_.kind = JsonNode::Kind::object; }
  ObjectWriter& put(std::string_view key, JsonNode value) {
    node_.members.emplace_back(std::string(key), std::move(value));
    return *this;
  }
  ObjectWriter& maybe(std::string_view key, const std::optional<Um>& um) {
    return um ? put(key, mm(*um)) : *this;
  }
  ObjectWriter& maybe_word(std::string_view key, const std::vector<std::string_view>& words,
                           std::optional<int> index) {
    return index ? put(key, word(words, *index)) : *this;
  }
  JsonNode with(const Extras& extras) {
    for (const auto& member : extras) node_.members.push_back(member);
    return std::move(node_);
  }

 private:
  JsonNode node_;
};

}  // namespace pouncemark::job
