#include "engine/job/json_node.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using namespace pouncemark::job;

namespace {

std::string again(const std::string& text) { return json_text(*read_json(text)); }

}  // namespace

TEST_CASE("what fits within a line is written on one, the whole never") {
  CHECK(again("{}") == "{}");
  CHECK(again("[]") == "[]");
  CHECK(again("{ \"a\" : [ 1 , 2 ] }") == "{\n \"a\":[1,2]\n}");
  CHECK(again("{\"a\":{\"b\":null,\"c\":true}}") == "{\n \"a\":{\"b\":null,\"c\":true}\n}");
}

TEST_CASE(
    "what does not fit is written one member or item a line, one blank further in each time") {
  const std::string long_text(90, 'x');
  CHECK(again("{\"a\":[\"" + long_text + "\",1]}") ==
        "{\n \"a\":[\n  \"" + long_text + "\",\n  1\n ]\n}");
}

TEST_CASE("a line may be a hundred signs wide and no wider, counted as signs and not as bytes") {
  // ` "a":["` and `"]` and the comma that may follow take ten signs.
  for (const std::string sign : {"x", "\u00e9", "\u6c34"}) {
    std::string fits;
    for (int i = 0; i < 90; ++i) fits += sign;
    CHECK(again("{\"a\":[\"" + fits + "\"]}") == "{\n \"a\":[\"" + fits + "\"]\n}");
    CHECK(again("{\"a\":[\"" + fits + "x\"]}").find("[\n") != std::string::npos);
  }
}

TEST_CASE("figures keep the digits they were written with") {
  CHECK(again("[2.50,-3e2,1E5,12345678901234567890123,0.1]") ==
        "[\n 2.50,\n -3e2,\n 1E5,\n 12345678901234567890123,\n 0.1\n]");
}

TEST_CASE("a text comes back as it was, whatever is in it") {
  CHECK(again("[\"\\\" \\\\ \\n \\t \\u0001 \\u007f \\/ \\u00e9\"]") ==
        "[\n \"\\\" \\\\ \\n \\t \\u0001 \\u007f / \u00e9\"\n]");
}
