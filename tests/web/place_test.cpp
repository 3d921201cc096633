#include "web/model/place.h"

#include "engine/solve/solve.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using web::Place;

namespace {

solve::Results three_sleeves() {
  job::Job job = job::first_sleeve_job();
  job.sections.front().count = 3;
  job.sections.front().lap_um = 18'000;
  job.sections.front().lap_rows = job.sections.front().side_rows;
  return solve::solve(job);
}

}  // namespace

TEST_CASE("a section of one sleeve is looked at as that sleeve, of several as a whole") {
  CHECK(web::first_look(solve::solve(job::first_sleeve_job()), 0) == Place{0, 0});
  CHECK(web::first_look(three_sleeves(), 0) == Place{0, -1});
  CHECK(web::all_places(three_sleeves()).size() == 4);
}

TEST_CASE("a place that is gone becomes the nearest that is there") {
  CHECK(web::held_within(three_sleeves(), Place{4, 9}) == Place{0, 2});
  CHECK(web::held_within(three_sleeves(), Place{0, 1}) == Place{0, 1});
  CHECK(web::held_within(solve::Results{}, Place{4, 9}) == Place{});
}

TEST_CASE("a sleeve's rows are its own two side rows, a section's are all of them") {
  const solve::Results results = three_sleeves();
  CHECK(web::rows_at(results, Place{0, 1}, solve::RowKind::staple).size() == 2);
  CHECK(web::rows_at(results, Place{0, -1}, solve::RowKind::staple).size() == 8);
}
