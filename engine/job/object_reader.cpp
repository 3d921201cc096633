#include "engine/job/object_reader.h"

#include <utility>

#include "engine/base/length_entry.h"
#include "engine/base/number_text.h"

namespace pouncemark::job {
namespace {

std::string kind_text(const JsonNode& node) {
  switch (node.kind) {
    case JsonNode::Kind::null:
      return "null";
    case JsonNode::Kind::boolean:
      return node.truth ? "true" : "false";
    case JsonNode::Kind::number:
      return node.words;
    case JsonNode::Kind::text:
      return "the text \"" + node.words + "\"";
    case JsonNode::Kind::list:
      return "a list";
    case JsonNode::Kind::object:
      return "an object";
  }
  return {};
}

std::string bounds_text(Bounds bounds) {
  return exact_mm_text(bounds.least) + " to " + exact_mm_text(bounds.most);
}

}  // namespace

ObjectReader::ObjectReader(const JsonNode& node, std::string path, Fault* fault)
    : node_(node), path_(std::move(path)), fault_(fault) {
  if (node_.kind != JsonNode::Kind::object) {
    refuse(ProblemCode::job_damaged, "", kind_text(node_), "an object in braces");
  }
}

std::string ObjectReader::path_of(std::string_view key) const {
  if (key.empty()) return path_;
  return path_.empty() ? std::string(key) : path_ + "." + std::string(key);
}

bool ObjectReader::has(std::string_view key) const { return node_.find(key) != nullptr; }

void ObjectReader::refuse(ProblemCode code, std::string_view key, std::string found,
                          std::string needed) {
  if (fault_->first) return;
  const JsonNode* member = key.empty() ? nullptr : node_.find(key);
  const int line = member != nullptr ? member->line : node_.line;
  std::string where = path_of(key);
  if (where.empty()) where = "the job";
  if (line > 0) where += ", line " + std::to_string(line);
  fault_->first = Problem{code, std::move(where), std::move(found), std::move(needed)};
}

const JsonNode* ObjectReader::take(std::string_view key, bool needed, JsonNode::Kind kind,
                                   std::string_view kind_words) {
  asked_.insert(std::string(key));
  const JsonNode* member = node_.find(key);
  if (member == nullptr) {
    if (needed) refuse(ProblemCode::job_damaged, key, "nothing there", std::string(kind_words));
    return nullptr;
  }
  if (member->kind != kind) {
    refuse(ProblemCode::job_damaged, key, kind_text(*member), std::string(kind_words));
    return nullptr;
  }
  return member;
}

const JsonNode* ObjectReader::object(std::string_view key, bool needed) {
  return take(key, needed, JsonNode::Kind::object, "an object in braces");
}

const JsonNode* ObjectReader::list(std::string_view key, bool needed) {
  return take(key, needed, JsonNode::Kind::list, "a list in brackets");
}

void ObjectReader::need_text(std::string_view key, std::string* value) {
  const JsonNode* member = take(key, true, JsonNode::Kind::text, "a text in quotes");
  if (member == nullptr) return;
  if (member->words.empty() || member->words.size() > 1'000) {
    return refuse(ProblemCode::job_out_of_range, key,
                  count_text(static_cast<std::int64_t>(member->words.size())) + " bytes of text",
                  "1 to 1,000");
  }
  for (const char c : member->words) {
    const auto byte = static_cast<unsigned char>(c);
    if (byte < 0x20 || byte == 0x7f) {
      return refuse(ProblemCode::job_damaged, key, "a control sign in the text", "plain text");
    }
  }
  *value = member->words;
}

bool ObjectReader::length_of(const JsonNode& node, std::string_view key, Bounds bounds, Um* value,
                             std::string_view needed, std::string_view usual) {
  if (node.kind != JsonNode::Kind::number) {
    refuse(ProblemCode::job_damaged, key, kind_text(node), std::string(needed));
    return false;
  }
  const Result<std::int64_t> um = read_decimal_mm(node.words);
  if (!um || *um < bounds.least || *um > bounds.most) {
    const bool too_fine = !um && um.problem().code == ProblemCode::length_too_fine;
    refuse(ProblemCode::job_out_of_range, key, kind_text(node),
           bounds_text(bounds) + (too_fine ? ", in steps of 0.001" : "") + std::string(usual));
    return false;
  }
  *value = *um;
  return true;
}

bool ObjectReader::pair_of(const JsonNode& node, std::string_view key, Bounds bounds,
                           std::array<Um, 2>* value) {
  if (node.items.size() != 2) {
    refuse(ProblemCode::job_damaged, key,
           counted(static_cast<std::int64_t>(node.items.size()), "number", "numbers"),
           "two numbers");
    return false;
  }
  std::array<Um, 2> read{};
  if (!length_of(node.items[0], key, bounds, &read[0])) return false;
  if (!length_of(node.items[1], key, bounds, &read[1])) return false;
  *value = read;
  return true;
}

void ObjectReader::need_length(std::string_view key, Bounds bounds, Um* value) {
  const JsonNode* member = take(key, true, JsonNode::Kind::number, "a number of millimetres");
  if (member != nullptr) length_of(*member, key, bounds, value);
}

void ObjectReader::may_length(std::string_view key, Bounds bounds, Um* value) {
  if (has(key)) need_length(key, bounds, value);
}

void ObjectReader::may_length(std::string_view key, Bounds bounds, std::optional<Um>* value) {
  if (!has(key)) return;
  Um read = 0;
  need_length(key, bounds, &read);
  *value = read;
}

void ObjectReader::need_pair(std::string_view key, Bounds bounds, std::array<Um, 2>* value) {
  const JsonNode* member = list(key, true);
  if (member != nullptr) pair_of(*member, key, bounds, value);
}

void ObjectReader::may_pair(std::string_view key, Bounds bounds,
                            std::optional<std::array<Um, 2>>* value) {
  if (!has(key)) return;
  std::array<Um, 2> read{};
  need_pair(key, bounds, &read);
  *value = read;
}

void ObjectReader::may_pairs(std::string_view key, Bounds bounds,
                             std::vector<std::array<Um, 2>>* value) {
  constexpr std::size_t kMostPairs = 1'000;
  const JsonNode* member = list(key, false);
  if (member == nullptr) return;
  if (member->items.empty() || member->items.size() > kMostPairs) {
    return refuse(ProblemCode::job_damaged, key,
                  counted(static_cast<std::int64_t>(member->items.size()), "pair", "pairs"),
                  "1 to 1,000");
  }
  std::vector<std::array<Um, 2>> read(member->items.size());
  for (std::size_t i = 0; i < read.size(); ++i) {
    const JsonNode& pair = member->items[i];
    if (pair.kind != JsonNode::Kind::list) {
      return refuse(ProblemCode::job_damaged, key, kind_text(pair), "pairs in brackets");
    }
    if (!pair_of(pair, key, bounds, &read[i])) return;
  }
  *value = std::move(read);
}

void ObjectReader::need_number(std::string_view key, Bounds thousandths, std::int64_t* value,
                               std::string_view usual) {
  const JsonNode* member = take(key, true, JsonNode::Kind::number, "a number");
  if (member != nullptr) length_of(*member, key, thousandths, value, "a number", usual);
}

void ObjectReader::need_count(std::string_view key, Bounds bounds, int* value,
                              std::string_view kind) {
  const JsonNode* member = take(key, true, JsonNode::Kind::number, kind);
  if (member == nullptr) return;
  const Result<std::int64_t> thousandths = read_decimal_mm(member->words);
  const bool whole = thousandths && *thousandths % 1'000 == 0;
  if (!whole || *thousandths / 1'000 < bounds.least || *thousandths / 1'000 > bounds.most) {
    return refuse(
        ProblemCode::job_out_of_range, key, member->words,
        "a whole number from " + count_text(bounds.least) + " to " + count_text(bounds.most));
  }
  *value = static_cast<int>(*thousandths / 1'000);
}

void ObjectReader::may_count(std::string_view key, Bounds bounds, int* value,
                             std::string_view kind) {
  if (has(key)) need_count(key, bounds, value, kind);
}

void ObjectReader::need_lengths(std::string_view key, Bounds bounds, std::vector<Um>* value) {
  const JsonNode* member = list(key, true);
  if (member == nullptr) return;
  if (member->items.empty() || member->items.size() > 10'000) {
    return refuse(ProblemCode::job_damaged, key,
                  counted(static_cast<std::int64_t>(member->items.size()), "number", "numbers"),
                  "1 to 10,000");
  }
  std::vector<Um> read;
  for (const JsonNode& item : member->items) {
    Um um = 0;
    if (!length_of(item, key, bounds, &um)) return;
    read.push_back(um);
  }
  *value = std::move(read);
}

void ObjectReader::need_word(std::string_view key, const std::vector<std::string_view>& words,
                             int* value) {
  std::string allowed;
  for (const std::string_view word : words)
    allowed += (allowed.empty() ? "" : " or ") + std::string(word);
  const JsonNode* member = take(key, true, JsonNode::Kind::text, allowed);
  if (member == nullptr) return;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (member->words == words[i]) {
      *value = static_cast<int>(i);
      return;
    }
  }
  refuse(ProblemCode::job_damaged, key, kind_text(*member), allowed);
}

void ObjectReader::may_word(std::string_view key, const std::vector<std::string_view>& words,
                            std::optional<int>* value) {
  if (!has(key)) return;
  int read = 0;
  need_word(key, words, &read);
  *value = read;
}

void ObjectReader::may_text(std::string_view key, std::string* value) {
  if (has(key)) need_text(key, value);
}

void ObjectReader::may_truth(std::string_view key, std::optional<bool>* value) {
  if (!has(key)) return;
  const JsonNode* member = take(key, true, JsonNode::Kind::boolean, "true or false");
  if (member != nullptr) *value = member->truth;
}

void ObjectReader::may_texts(std::string_view key, std::optional<std::vector<std::string>>* value) {
  if (!has(key)) return;
  const JsonNode* member = list(key, true);
  if (member == nullptr) return;
  std::vector<std::string> read;
  for (const JsonNode& item : member->items) {
    if (item.kind != JsonNode::Kind::text) {
      return refuse(ProblemCode::job_damaged, key, kind_text(item), "texts in quotes");
    }
    read.push_back(item.words);
  }
  *value = std::move(read);
}

Extras ObjectReader::extras() const {
  Extras unknown;
  for (const auto& member : node_.members) {
    if (!asked_.contains(member.first)) unknown.push_back(member);
  }
  return unknown;
}

}  // namespace pouncemark::job
