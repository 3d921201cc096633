#include "web/model/bench.h"
#include "web/model/edits.h"
#include "web/model/words.h"

#include <doctest/doctest.h>

using namespace pouncemark;

namespace {

const web::FollowLine* line_called(const std::vector<web::FollowLine>& lines, std::string_view id) {
  for (const web::FollowLine& line : lines) {
    if (line.id == id) return &line;
  }
  return nullptr;
}

}  // namespace

TEST_CASE("after an edit each line that changed shows before and after, the others do not") {
  web::Bench bench;
  bench.start_with_sleeve();
  bench.edit(web::with_measure(bench.now().job, bench.now().results, bench.place(),
                               web::Measure::kept_clear_bottom, 25'000),
             "moved");
  const auto lines = web::follow_lines(bench.now(), bench.before(), bench.place());
  const web::FollowLine* points = line_called(lines, "points");
  REQUIRE(points != nullptr);
  CHECK(points->before == "37");
  CHECK(points->figure == "36");
  const web::FollowLine* last = line_called(lines, "last");
  REQUIRE(last != nullptr);
  CHECK(last->before == "1782.0");
  CHECK(last->figure == "1775.0");
  const web::FollowLine* pages = line_called(lines, "pages");
  REQUIRE(pages != nullptr);
  CHECK(pages->before.empty());
}

TEST_CASE("every line carries its sum") {
  web::Bench bench;
  bench.start_with_sleeve();
  const auto lines = web::follow_lines(bench.now(), nullptr, bench.place());
  int with_sum = 0;
  for (const web::FollowLine& line : lines) {
    CHECK_FALSE(line.sum.empty());
    ++with_sum;
  }
  CHECK(with_sum == 8);
  const web::FollowLine* points = line_called(lines, "points");
  REQUIRE(points != nullptr);
  CHECK(points->sum.back() == "36 + 1 = 37");
}

TEST_CASE("exactly 50 shows what is left over instead of calling it even") {
  web::Bench bench;
  bench.start_with_sleeve();
  bench.edit(
      web::with_rule(bench.now().job, bench.now().results, bench.place(), job::SpacingRule::exact),
      "exact");
  const web::Headline line = web::headline(bench.now(), bench.before(), bench.place());
  CHECK(web::plain_words(line) == "36 points in each staple row, exactly 50.00 apart");
  CHECK(line.because == "14 left over at the top");
}

TEST_CASE("a box shows whole lengths from 100 bare and anything else with one decimal") {
  CHECK(web::box_text(2'300'000) == "2300");
  CHECK(web::box_text(100'000) == "100");
  CHECK(web::box_text(99'000) == "99.0");
  CHECK(web::box_text(110'500) == "110.5");
}
