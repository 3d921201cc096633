#include "engine/job/json_node.h"

#include <nlohmann/json.hpp>

#include <set>
#include <string>

#include "engine/base/number_text.h"

namespace pouncemark::job {
namespace {

/// Where the reader stands: counted while the library walks the bytes.
struct Place {
  int line = 1;
  char last = 0;
};

/// Walks the bytes and counts line ends on the way; copies share one Place.
class CountingBytes {
 public:
  using difference_type = std::ptrdiff_t;
  using value_type = char;
  using pointer = const char*;
  using reference = const char&;
  using iterator_category = std::input_iterator_tag;

  CountingBytes(const char* at, Place* place) : at_(at), place_(place) {}
  const char& operator*() const { return *at_; }
  CountingBytes& operator++() {
    place_->last = *at_;
    if (*at_ == '\n') ++place_->line;
    ++at_;
    return *this;
  }
  CountingBytes operator++(int) {
    CountingBytes before = *this;
    ++*this;
    return before;
  }
  bool operator==(const CountingBytes& other) const { return at_ == other.at_; }
  bool operator!=(const CountingBytes& other) const { return at_ != other.at_; }

 private:
  const char* at_;
  Place* place_;
};

std::string line_and_column(std::string_view text, std::size_t byte) {
  std::int64_t line = 1;
  std::int64_t column = 1;
  for (std::size_t i = 0; i + 1 < byte && i < text.size(); ++i) {
    ++column;
    if (text[i] == '\n') {
      ++line;
      column = 1;
    }
  }
  return "line " + std::to_string(line) + ", column " + std::to_string(column);
}

/// Builds the tree value by value and stops at the first thing a job may not have.
class Builder {
 public:
  using number_integer_t = nlohmann::json::number_integer_t;
  using number_unsigned_t = nlohmann::json::number_unsigned_t;
  using number_float_t = nlohmann::json::number_float_t;
  using string_t = std::string;
  using binary_t = nlohmann::json::binary_t;

  Builder(std::string_view text, const Place* place) : text_(text), place_(place) {}

  bool null() { return put(made(JsonNode::Kind::null)); }
  bool boolean(bool truth) {
    JsonNode node = made(JsonNode::Kind::boolean);
    node.truth = truth;
    return put(std::move(node));
  }
  bool number_integer(number_integer_t value) { return number(std::to_string(value)); }
  bool number_unsigned(number_unsigned_t value) { return number(std::to_string(value)); }
  bool number_float(number_float_t, const string_t& digits) { return number(digits); }
  bool string(string_t& words) {
    JsonNode node = made(JsonNode::Kind::text);
    node.words = std::move(words);
    return put(std::move(node));
  }
  bool binary(binary_t&) { return false; }
  bool start_object(std::size_t) { return open(JsonNode::Kind::object); }
  bool start_array(std::size_t) { return open(JsonNode::Kind::list); }
  bool end_object() { return close(); }
  bool end_array() { return close(); }
  bool key(string_t& key) {
    if (!keys_.back().insert(key).second) {
      return refuse(ProblemCode::job_damaged, "the key \"" + key + "\" twice", "each key once");
    }
    key_ = std::move(key);
    return true;
  }
  bool parse_error(std::size_t byte, const std::string&, const nlohmann::detail::exception&) {
    problem_ = {ProblemCode::job_unreadable,
                line_and_column(text_, byte),
                "something that is not JSON",
                {}};
    return false;
  }

  JsonNode root;
  Problem problem() const { return problem_; }

 private:
  JsonNode made(JsonNode::Kind kind) const {
    JsonNode node;
    node.kind = kind;
    node.line = place_->line;
    return node;
  }
  bool number(std::string digits) {
    JsonNode node = made(JsonNode::Kind::number);
    if (place_->last == '\n') --node.line;
    node.words = std::move(digits);
    return put(std::move(node));
  }
  bool refuse(ProblemCode code, std::string found, std::string needed) {
    problem_ = {code, "line " + std::to_string(place_->line), std::move(found), std::move(needed)};
    return false;
  }
  bool put(JsonNode node) {
    if (++values_ > kMostJsonValues) {
      return refuse(ProblemCode::job_out_of_range, "more than 400,000 values", "fewer");
    }
    place_in_parent(std::move(node));
    return true;
  }
  JsonNode* place_in_parent(JsonNode node) {
    if (open_.empty()) {
      root = std::move(node);
      return &root;
    }
    JsonNode& parent = *open_.back();
    if (parent.kind == JsonNode::Kind::list) {
      parent.items.push_back(std::move(node));
      return &parent.items.back();
    }
    parent.members.emplace_back(std::move(key_), std::move(node));
    return &parent.members.back().second;
  }
  bool open(JsonNode::Kind kind) {
    if (open_.size() >= static_cast<std::size_t>(kDeepestJson)) {
      return refuse(ProblemCode::job_out_of_range, "brackets more than 64 deep", "at most 64");
    }
    if (++values_ > kMostJsonValues) {
      return refuse(ProblemCode::job_out_of_range, "more than 400,000 values", "fewer");
    }
    open_.push_back(place_in_parent(made(kind)));
    keys_.emplace_back();
    return true;
  }
  bool close() {
    open_.pop_back();
    keys_.pop_back();
    return true;
  }

  std::string_view text_;
  const Place* place_;
  Problem problem_;
  std::vector<JsonNode*> open_;
  std::vector<std::set<std::string>> keys_;  ///< keys met so far in each open bracket
  std::string key_;
  int values_ = 0;
};

std::size_t first_visible(std::string_view text) {
  std::size_t at = text.starts_with("\xef\xbb\xbf") ? 3 : 0;
  while (at < text.size() &&
         (text[at] == ' ' || text[at] == '\t' || text[at] == '\r' || text[at] == '\n')) {
    ++at;
  }
  return at;
}

}  // namespace

const JsonNode* JsonNode::find(std::string_view key) const {
  for (const auto& [name, value] : members) {
    if (name == key) return &value;
  }
  return nullptr;
}

Result<JsonNode> read_json(std::string_view text) {
  if (text.size() > kLargestJobBytes) {
    return Problem{ProblemCode::job_out_of_range, "the file",
                   count_text(static_cast<std::int64_t>(text.size())) + " bytes",
                   "at most " + count_text(static_cast<std::int64_t>(kLargestJobBytes))};
  }
  const std::size_t first = first_visible(text);
  if (first == text.size()) {
    return Problem{ProblemCode::job_unreadable, "line 1, column 1", "an empty file", {}};
  }
  const std::size_t nul = text.find('\0');
  const bool looks_like_json = text[first] == '{' || text[first] == '[';
  if (nul != std::string_view::npos && looks_like_json) {
    return Problem{ProblemCode::job_damaged, line_and_column(text, nul + 1), "a zero byte", {}};
  }
  Place place;
  Builder builder(text, &place);
  const CountingBytes begin(text.data(), &place);
  const CountingBytes end(text.data() + text.size(), &place);
  if (!nlohmann::json::sax_parse(begin, end, &builder)) return builder.problem();
  return std::move(builder.root);
}

}  // namespace pouncemark::job
