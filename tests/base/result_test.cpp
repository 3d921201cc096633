#include "engine/base/result.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;

TEST_CASE("a result holds its value or its problem, and says which") {
  const Result<std::string> value = std::string("1-05 left");
  CHECK(value.is_ok());
  CHECK(*value == "1-05 left");
  CHECK(value->size() == 9);
  const Result<std::string> none = Problem{ProblemCode::row_too_short, "1-05", {}, {}};
  CHECK(!none);
  CHECK(none.problem().where == "1-05");
}
