#include "engine/job/json_node.h"

#include <doctest/doctest.h>

#include <string>
#include <string_view>

using namespace pouncemark;
using namespace pouncemark::job;
using enum pouncemark::ProblemCode;

namespace {

struct Bad {
  std::string_view text;
  ProblemCode code;
  const char* where;
};

std::string nested(int deep) {
  return std::string(static_cast<std::size_t>(deep), '[') +
         std::string(static_cast<std::size_t>(deep), ']');
}

std::string list_of(int values) {
  std::string text = "[0";
  for (int i = 2; i < values; ++i) text += ",0";
  return text + "]";
}

}  // namespace

TEST_CASE("every value knows the line it starts on") {
  const Result<JsonNode> root = read_json("{\n\"a\":1,\n\n\"b\":[2,\n3],\"c\":{\n}}");
  CHECK(root->line == 1);
  CHECK(root->find("a")->line == 2);
  CHECK(root->find("b")->line == 4);
  CHECK(root->find("b")->items[1].line == 5);
  CHECK(root->find("c")->line == 5);
  CHECK(root->find("d") == nullptr);
  CHECK(root->find("b")->find("a") == nullptr);
}

TEST_CASE("members keep their order and lists theirs") {
  const Result<JsonNode> root = read_json("{\"z\":1,\"a\":[3,1,2]}");
  CHECK(root->members[0].first == "z");
  CHECK(root->members[1].first == "a");
  CHECK(root->members[1].second.items[0].words == "3");
}

TEST_CASE("what is not JSON is unreadable, with the line and column where it stops being it") {
  const Bad table[] = {
      {"", job_unreadable, "line 1, column 1"},
      {" \n\t\r\n ", job_unreadable, "line 1, column 1"},
      {"Forty staples", job_unreadable, "line 1, column 1"},
      {"{\"a\":}", job_unreadable, "line 1, column 6"},
      {"{\n \"a\":1,\n}", job_unreadable, "line 3, column 1"},
      {"{\"a\":NaN}", job_unreadable, "line 1, column 6"},
      {"{\"a\":01}", job_unreadable, "line 1, column 7"},
      {"{\"a\":1} x", job_unreadable, "line 1, column 9"},
      {"[1,2", job_unreadable, "line 1, column 5"},
      {"[\"\xe1\"]", job_unreadable, "line 1, column 4"},
      {"[\"\\ud83d\"]", job_unreadable, "line 1, column 9"},
      {"// a remark\n{}", job_unreadable, "line 1, column 1"},
  };
  int count = 0;
  for (const Bad& bad : table) {
    CAPTURE(std::string(bad.text));
    const Result<JsonNode> root = read_json(bad.text);
    CHECK(!root);
    if (root) continue;
    CHECK(root.problem().code == bad.code);
    CHECK(root.problem().where == bad.where);
    ++count;
  }
  CHECK(count == 12);
}

TEST_CASE("a mark that says UTF-8 at the start of the file is passed over") {
  CHECK(read_json("\xef\xbb\xbf{\"a\":1}").is_ok());
  CHECK(!read_json("\xef\xbb{\"a\":1}").is_ok());
}

TEST_CASE("a key twice in one object is damage, in two objects it is none") {
  const Result<JsonNode> twice = read_json("{\"a\":1,\n\"b\":2,\n\"a\":3}");
  CHECK(twice.problem().code == job_damaged);
  CHECK(twice.problem().where == "line 3");
  CHECK(twice.problem().found == "the key \"a\" twice");
  CHECK(read_json("{\"a\":1,\"b\":{\"a\":3}}").is_ok());
  CHECK(!read_json("[{\"a\":1,\"\\u0061\":3}]").is_ok());
}

TEST_CASE("a zero byte in what looks like a job is damage and its place is named") {
  const Result<JsonNode> root = read_json(std::string_view("{\n\"a\":\0 1}", 10));
  CHECK(root.problem().code == job_damaged);
  CHECK(root.problem().found == "a zero byte");
  CHECK(root.problem().where == "line 2, column 5");
  CHECK(read_json(std::string_view("\0\0\0", 3)).problem().code == job_unreadable);
  CHECK(read_json("{\"a\":\"\\u0000\"}").is_ok());
}

TEST_CASE("brackets may be 64 deep and not 65, however many are left open") {
  CHECK(read_json(nested(64)).is_ok());
  CHECK(read_json(nested(65)).problem().code == job_out_of_range);
  CHECK(read_json(nested(65)).problem().where == "line 1");
  CHECK(read_json(std::string(1'000'000, '[')).problem().code == job_out_of_range);
  std::string objects;
  for (int i = 0; i < 65; ++i) objects += "{\"a\":";
  CHECK(read_json(objects).problem().code == job_out_of_range);
}

TEST_CASE("a file may hold 400,000 values and not one more") {
  CHECK(read_json(list_of(kMostJsonValues)).is_ok());
  CHECK(read_json(list_of(kMostJsonValues + 1)).problem().code == job_out_of_range);
}

TEST_CASE("a file may be as large as it is read, and not a byte larger") {
  std::string text = "{\"a\":1}";
  text.resize(kLargestJobBytes, ' ');
  CHECK(read_json(text).is_ok());
  text += ' ';
  const Result<JsonNode> root = read_json(text);
  CHECK(root.problem().code == job_out_of_range);
  CHECK(root.problem().found == "16,777,217 bytes");
}
