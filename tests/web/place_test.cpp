#include "web/model/place.h"

#include "engine/solve/solve.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <string>
#include <utility>
#include <vector>

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

/// Five sleeves, those named missing.
solve::Results without(std::vector<std::string> missing) {
  job::Job job = tests::section_job({100, 110, 120, 130, 140}, 20);
  job.sections.front().missing = std::move(missing);
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

TEST_CASE("places count the sleeves that are there, numbers go on counting the missing ones") {
  const solve::Results results = without({"1-02"});
  CHECK(web::all_places(results).size() == 5);
  CHECK(web::number_at(results, {0, 0}) == 0);
  CHECK(web::number_at(results, {0, 1}) == 2);
  CHECK(web::sleeve_at(results, {0, 1})->code == "1-03");
  CHECK(web::number_at(results, {0, -1}) == -1);
  CHECK(web::number_at(results, {0, 4}) == -1);
  CHECK(web::sleeve_at(results, {0, 4}) == nullptr);
}

TEST_CASE("the bench stays with its sleeve when another is marked missing or put back") {
  const solve::Results all = without({});
  const solve::Results gone = without({"1-02"});
  CHECK(web::followed(all, gone, {0, 3}) == Place{0, 2});
  CHECK(web::followed(gone, all, {0, 2}) == Place{0, 3});
  CHECK(web::followed(all, gone, {0, 0}) == Place{0, 0});
  CHECK(web::followed(all, gone, {0, -1}) == Place{0, -1});
}

TEST_CASE("a sleeve that is marked missing gives its place to its right neighbour, else the left") {
  const solve::Results all = without({});
  CHECK(web::sleeve_at(without({"1-02"}), web::followed(all, without({"1-02"}), {0, 1}))->code ==
        "1-03");
  CHECK(web::sleeve_at(without({"1-05"}), web::followed(all, without({"1-05"}), {0, 4}))->code ==
        "1-04");
}

TEST_CASE("figures of two sleeves that have the same place are not before and after") {
  const solve::Results all = without({});
  const solve::Results gone = without({"1-02"});
  CHECK(web::is_same_thing(all, gone, {0, 0}));
  CHECK_FALSE(web::is_same_thing(all, gone, {0, 1}));
  CHECK(web::is_same_thing(all, gone, {0, -1}));
  CHECK_FALSE(web::is_same_thing(gone, all, {0, 4}));
}

TEST_CASE("the whole hanging is the first station of a job of several pieces, and of no other") {
  const solve::Results ledger = solve::solve(tests::demo_job("harbour-ledger"));
  CHECK(web::all_places(ledger).front() == web::kWholeHanging);
  CHECK(web::held_within(ledger, web::kWholeHanging) == web::kWholeHanging);
  CHECK(web::held_within(three_sleeves(), web::kWholeHanging) == Place{0, -1});
  CHECK(web::section_at(tests::demo_job("harbour-ledger"), ledger, web::kWholeHanging) == nullptr);
  CHECK(web::rows_at(ledger, web::kWholeHanging, solve::RowKind::staple).empty());
}

TEST_CASE("the bench stays with its piece when pieces are moved or taken away") {
  job::Job job = tests::demo_job("harbour-ledger");
  const solve::Results was = solve::solve(job);
  std::swap(job.sections[0], job.sections[1]);
  const solve::Results moved = solve::solve(job);
  CHECK(web::followed(was, moved, {0, 3}) == Place{1, 3});
  CHECK_FALSE(web::is_same_thing(was, moved, {0, -1}));
  CHECK(web::is_same_thing(was, moved, {2, -1}));
  job.sections.erase(job.sections.begin());
  CHECK(web::followed(moved, solve::solve(job), {1, 3}) == Place{0, 3});
}
