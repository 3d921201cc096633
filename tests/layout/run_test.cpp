#include "engine/layout/run.h"

#include "engine/base/number_text.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::layout;
using enum pouncemark::ProblemCode;

namespace {

RunRule rule_of(Um length_mm, Um clear_mm, Um spacing_mm) {
  RunRule rule;
  rule.edge_length_um = length_mm * 1'000;
  rule.kept_clear_start_um = clear_mm * 1'000;
  rule.kept_clear_end_um = clear_mm * 1'000;
  rule.spacing_um = spacing_mm * 1'000;
  return rule;
}

RunRule exact(RunRule rule, RunRule::LeftOver left_over) {
  rule.exact = true;
  rule.left_over = left_over;
  return rule;
}

}  // namespace

TEST_CASE(
    "2400 kept 20 clear at 60 takes 41 points 59.00 apart, the first at 20, the last at 2380") {
  const Result<Run> run = solve_run(rule_of(2'400, 20, 60));
  CHECK(run->points() == 41);
  CHECK(mm_text(run->spacing_um(), 2) == "59.00");
  CHECK(run->station_um(0) == 20'000);
  CHECK(run->station_um(40) == 2'380'000);
  CHECK(run->left_over_um == 0);
}

TEST_CASE("1240 kept 20 clear at 60 takes 21 points exactly 60 apart") {
  const Result<Run> run = solve_run(rule_of(1'240, 20, 60));
  CHECK(run->points() == 21);
  CHECK(run->spacing_um() == 60'000);
}

TEST_CASE("a row measured to the micrometre beside a whole number of gaps takes the gap it needs") {
  RunRule rule = rule_of(1'240, 20, 60);
  CHECK(solve_run(rule)->gaps == 20);
  rule.edge_length_um += 1;
  CHECK(solve_run(rule)->gaps == 21);
  rule.edge_length_um -= 2;
  CHECK(solve_run(rule)->gaps == 20);
}

TEST_CASE("an exact row shows what is left over, and puts it where it is told") {
  const RunRule rule = rule_of(2'400, 20, 60);
  const Result<Run> end = solve_run(exact(rule, RunRule::LeftOver::end));
  CHECK(end->points() == 40);
  CHECK(end->left_over_um == 20'000);
  CHECK(end->first_um() == 20'000);
  CHECK(end->last_um() == 2'360'000);
  const Result<Run> split = solve_run(exact(rule, RunRule::LeftOver::split));
  CHECK(split->points() == 40);
  CHECK(split->first_um() == 30'000);
  CHECK(split->last_um() == 2'370'000);
}

TEST_CASE("an exact row with one point more ends on the kept clear line after a short gap of 20") {
  const Result<Run> more = solve_run(exact(rule_of(2'400, 20, 60), RunRule::LeftOver::extra_point));
  CHECK(more->points() == 41);
  CHECK(more->last_um() == 2'380'000);
  CHECK(more->station_um(40) - more->station_um(39) == 20'000);
  CHECK(more->left_over_um == 20'000);
  const Result<Run> none = solve_run(exact(rule_of(1'240, 20, 60), RunRule::LeftOver::extra_point));
  CHECK(none->points() == 21);
  CHECK(none->left_over_um == 0);
}

TEST_CASE("an exact row shorter than its spacing has one point and all of it left over") {
  const Result<Run> run = solve_run(exact(rule_of(60, 20, 60), RunRule::LeftOver::end));
  CHECK(run->points() == 1);
  CHECK(run->left_over_um == 20'000);
  CHECK(run->spacing_um() == 0);
  const Result<Run> split = solve_run(exact(rule_of(60, 20, 60), RunRule::LeftOver::split));
  CHECK(split->station_um(0) == 30'000);
  const Result<Run> more = solve_run(exact(rule_of(60, 20, 60), RunRule::LeftOver::extra_point));
  CHECK(more->points() == 2);
}

TEST_CASE("where the margins meet there is no point and a reason, one hair before there is one") {
  const Result<Run> none = solve_run(rule_of(35, 20, 60));
  CHECK(none.problem().code == row_too_short);
  CHECK(none.problem().found == "35 long, 20 + 20 kept clear");
  CHECK(problem_sentence(none.problem()).find("margins meet") != std::string::npos);
  const Result<Run> one = solve_run(rule_of(40, 20, 60));
  CHECK(one->points() == 1);
  CHECK(one->station_um(0) == 20'000);
  CHECK(one->spacing_um() == 0);
  RunRule hair = rule_of(40, 20, 60);
  hair.edge_length_um -= 1;
  CHECK(solve_run(hair).problem().code == row_too_short);
  hair.edge_length_um += 2;
  CHECK(solve_run(hair)->points() == 2);
}

TEST_CASE("an edge of no length takes no row, even with nothing kept clear") {
  CHECK(solve_run(rule_of(0, 0, 60)).problem().code == row_too_short);
  RunRule hair = rule_of(0, 0, 60);
  hair.edge_length_um = 1;
  CHECK(solve_run(hair)->points() == 2);
}

TEST_CASE("a spacing of nothing or less is refused") {
  RunRule rule = rule_of(2'400, 20, 60);
  for (const Um spacing : {Um{0}, Um{-1}, Um{-60'000}}) {
    rule.spacing_um = spacing;
    CHECK(solve_run(rule).problem().code == row_bad_spacing);
  }
  rule.spacing_um = 20'000;
  CHECK(solve_run(rule).is_ok());
}

TEST_CASE("a row may have 200,000 points and not one more, by either rule") {
  using enum RunRule::LeftOver;
  for (const bool is_exact : {false, true}) {
    for (const RunRule::LeftOver left_over : {end, split, extra_point}) {
      RunRule rule;
      rule.exact = is_exact;
      rule.left_over = left_over;
      rule.spacing_um = 10;
      rule.edge_length_um = 1'999'990;
      CHECK(solve_run(rule)->points() == 200'000);
      rule.edge_length_um = 2'000'000;
      const Result<Run> over = solve_run(rule);
      CHECK(over.problem().code == row_too_many_points);
      CHECK(over.problem().found == "200,001 points");
    }
  }
  RunRule between;
  between.spacing_um = 10;
  between.edge_length_um = 1'999'991;
  CHECK(solve_run(between).problem().code == row_too_many_points);
  between.exact = true;
  CHECK(solve_run(between)->points() == 200'000);
}

TEST_CASE("an empty run has no point at all") {
  const Run empty;
  CHECK(empty.points() == 0);
  CHECK(empty.spacing_um() == 0);
}
