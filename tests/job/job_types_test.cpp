#include "engine/job/job_json.h"

#include "tests/support/files.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using namespace pouncemark::job;

// Walks the frozen job of version 1 and puts, in the place of each value we read, a value of every
// other kind.
namespace {

using Kind = JsonNode::Kind;

JsonNode of_kind(Kind kind) {
  JsonNode node;
  node.kind = kind;
  if (kind == Kind::number) node.words = "12";
  if (kind == Kind::text) node.words = "twelve";
  return node;
}

/// The kinds tried at a place, how many were refused there, and how many were not as they should.
struct Tally {
  int tried = 0;
  int refused = 0;
  std::string first_wrong;
};

void try_other_kinds(const JsonNode& root, JsonNode* place, const std::string& reported,
                     Tally* tally) {
  const JsonNode kept = *place;
  for (int kind = 0; kind <= static_cast<int>(Kind::object); ++kind) {
    if (static_cast<Kind>(kind) == kept.kind) continue;
    *place = of_kind(static_cast<Kind>(kind));
    const Result<OpenedJob> opened = open_job(json_text(root));
    ++tally->tried;
    const ProblemCode needed =
        reported == "format" ? ProblemCode::job_not_ours : ProblemCode::job_damaged;
    const std::string where = reported == "format" ? "the file" : reported + ", line ";
    if (!opened && opened.problem().code == needed && opened.problem().where.find(where) == 0) {
      ++tally->refused;
    } else if (tally->first_wrong.empty()) {
      tally->first_wrong = reported + " as " + json_text(*place);
    }
  }
  *place = kept;
}

bool is_entry(const std::string& key) {
  return key == "bays" || key == "sections" || key == "panels" || key == "outline";
}

void walk(const JsonNode& root, JsonNode* node, const std::string& path, Tally* tally) {
  for (auto& [key, value] : node->members) {
    if (key.find("later_") == 0) continue;
    const std::string here = path.empty() ? key : path + "." + key;
    try_other_kinds(root, &value, here, tally);
    walk(root, &value, here, tally);
    for (std::size_t i = 0; i < value.items.size(); ++i) {
      const bool entry = is_entry(key);
      const std::string item = here + "[" + std::to_string(i) + "]";
      try_other_kinds(root, &value.items[i], entry ? item : here, tally);
      walk(root, &value.items[i], item, tally);
    }
  }
}

void leave_out(const JsonNode& root, JsonNode* node, Tally* tally) {
  for (std::size_t i = 0; i < node->members.size(); ++i) {
    const auto kept = node->members[i];
    node->members.erase(node->members.begin() + static_cast<std::ptrdiff_t>(i));
    const Result<OpenedJob> opened = open_job(json_text(root));
    ++tally->tried;
    // Left out, a member is assumed or missed by name; an outline, by the rectangle in its place.
    if (opened) {
      const std::string saved = save_job(opened->job);
      if (save_job(open_job(saved)->job) == saved) ++tally->refused;
    } else if (opened.problem().where.find(kept.first) != std::string::npos ||
               kept.first == "format" || kept.first == "outline") {
      ++tally->refused;
    } else if (tally->first_wrong.empty()) {
      tally->first_wrong = "without " + kept.first + ": " + problem_sentence(opened.problem());
    }
    node->members.insert(node->members.begin() + static_cast<std::ptrdiff_t>(i), kept);
    leave_out(root, &node->members[i].second, tally);
    for (JsonNode& item : node->members[i].second.items) leave_out(root, &item, tally);
  }
}

}  // namespace

TEST_CASE("a value of another kind anywhere in a job is damage, and its place is named") {
  Result<JsonNode> root = read_json(tests::file_text("tests/versions/v1.json"));
  Tally tally;
  walk(*root, &root.value(), "", &tally);
  CHECK(tally.first_wrong == "");
  CHECK(tally.refused == tally.tried);
  CHECK(tally.tried > 600);
}

TEST_CASE("any member left out is either assumed or missed by name") {
  Result<JsonNode> root = read_json(tests::file_text("tests/versions/v1.json"));
  Tally tally;
  leave_out(*root, &root.value(), &tally);
  CHECK(tally.first_wrong == "");
  CHECK(tally.refused == tally.tried);
  CHECK(tally.tried > 120);
}
