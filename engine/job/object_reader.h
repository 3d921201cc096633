#pragma once

#include <array>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/result.h"
#include "engine/geometry/units.h"
#include "engine/job/json_node.h"

namespace pouncemark::job {

/// The first thing found wrong while a job is read; later ones are not looked for, so that the user
/// gets one sentence.
struct Fault {
  std::optional<Problem> first;
};

/// Bounds of a length or count, both allowed.
struct Bounds {
  std::int64_t least = 0;
  std::int64_t most = 0;
};

/// Reads the members of one object with their types and bounds checked, and knows at the end which
/// members nobody asked for. Every number goes through here: nothing wraps, nothing is rounded.
class ObjectReader {
 public:
  ObjectReader(const JsonNode& node, std::string path, Fault* fault);

  /// Needed members. The value is left as it was when something is wrong.
  void need_text(std::string_view key, std::string* value);
  void need_length(std::string_view key, Bounds bounds, Um* value);
  void need_pair(std::string_view key, Bounds bounds, std::array<Um, 2>* value);
  /// A number that is no length, in thousandths. One out of range is told `usual` as well.
  void need_number(std::string_view key, Bounds thousandths, std::int64_t* value,
                   std::string_view usual = {});
  /// What is no number is told `kind`.
  void need_count(std::string_view key, Bounds bounds, int* value,
                  std::string_view kind = "a whole number");
  void need_lengths(std::string_view key, Bounds bounds, std::vector<Um>* value);
  /// One of the words; `value` gets its index.
  void need_word(std::string_view key, const std::vector<std::string_view>& words, int* value);

  /// Members that may be left out.
  void may_length(std::string_view key, Bounds bounds, std::optional<Um>* value);
  void may_length(std::string_view key, Bounds bounds, Um* value);
  void may_pair(std::string_view key, Bounds bounds, std::optional<std::array<Um, 2>>* value);
  void may_pairs(std::string_view key, Bounds bounds, std::vector<std::array<Um, 2>>* value);
  void may_count(std::string_view key, Bounds bounds, int* value,
                 std::string_view kind = "a whole number");
  void may_word(std::string_view key, const std::vector<std::string_view>& words,
                std::optional<int>* value);
  void may_text(std::string_view key, std::string* value);
  void may_truth(std::string_view key, std::optional<bool>* value);
  void may_texts(std::string_view key, std::optional<std::vector<std::string>>* value);

  /// The member as an object or list, marked as asked for; nullptr when it is not there (and, if
  /// needed, the fault is set) or of another kind (fault set).
  const JsonNode* object(std::string_view key, bool needed);
  const JsonNode* list(std::string_view key, bool needed);

  /// True when the member is there.
  bool has(std::string_view key) const;

  /// Path of a member, for the sub-readers: "sections[1].side_rows".
  std::string path_of(std::string_view key) const;

  /// Sets the fault about a member ("" for the object itself), unless one is set already.
  void refuse(ProblemCode code, std::string_view key, std::string found, std::string needed);

  /// Members nobody asked for, in their order.
  Extras extras() const;

 private:
  const JsonNode* take(std::string_view key, bool needed, JsonNode::Kind kind,
                       std::string_view kind_words);
  bool length_of(const JsonNode& node, std::string_view key, Bounds bounds, Um* value,
                 std::string_view needed = "a number of millimetres", std::string_view usual = {});
  bool pair_of(const JsonNode& node, std::string_view key, Bounds bounds, std::array<Um, 2>* value);

  const JsonNode& node_;
  std::string path_;
  Fault* fault_;
  std::set<std::string, std::less<>> asked_;
};

}  // namespace pouncemark::job
