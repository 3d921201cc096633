#include "web/model/bench.h"

#include "tests/support/jobs.h"
#include "web/model/edits.h"
#include "web/model/words.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using web::Bench;
using web::Measure;

namespace {

job::Job with_ends(const Bench& bench, Um um) {
  return web::with_measure(bench.now().job, bench.now().results, bench.place(),
                           Measure::kept_clear_bottom, um);
}

std::string headline_of(const Bench& bench) {
  return web::plain_words(web::headline(bench.now(), bench.before(), bench.place()));
}

}  // namespace

TEST_CASE("the first sleeve reads 37 points, 49.00 apart, and at 25 kept clear 36 at 50.00") {
  Bench bench;
  bench.start_with_sleeve();
  CHECK(headline_of(bench) == "37 points in each staple row, 49.00 apart");
  CHECK(web::headline(bench.now(), nullptr, bench.place()).because ==
        "because 50 does not divide 1764, first point to last");
  bench.edit(with_ends(bench, 25'000), "moved");
  CHECK(headline_of(bench) == "36 points in each staple row, 50.00 apart");
}

TEST_CASE("undo gives back the same job, byte for byte") {
  Bench bench;
  bench.start_with_sleeve();
  const std::string bytes = bench.file_bytes();
  bench.edit(with_ends(bench, 25'000), "moved");
  CHECK(bench.file_bytes() != bytes);
  bench.undo();
  CHECK(bench.file_bytes() == bytes);
  CHECK(bench.last_action() == "Undone: moved");
  bench.redo();
  CHECK(headline_of(bench) == "36 points in each staple row, 50.00 apart");
}

TEST_CASE("what is tried out is one action when let go and none when put back") {
  Bench bench;
  bench.start_with_sleeve();
  const std::string bytes = bench.file_bytes();
  bench.try_out(with_ends(bench, 20'000), "moving");
  bench.try_out(with_ends(bench, 25'000), "moving");
  CHECK(bench.is_moving());
  bench.put_back();
  CHECK(bench.file_bytes() == bytes);
  CHECK_FALSE(bench.can_undo());
  bench.try_out(with_ends(bench, 25'000), "moving");
  bench.let_go();
  CHECK_FALSE(bench.is_moving());
  bench.undo();
  CHECK(bench.file_bytes() == bytes);
  CHECK_FALSE(bench.can_undo());
}

TEST_CASE("a failed open never touches the open job and says why") {
  Bench bench;
  bench.start_with_sleeve();
  bench.edit(with_ends(bench, 25'000), "moved");
  const std::string bytes = bench.file_bytes();
  CHECK_FALSE(bench.open("broken.json", "{\"format\":"));
  REQUIRE(bench.failed_open().has_value());
  CHECK(bench.failed_open()->file == "broken.json");
  CHECK_FALSE(bench.failed_open()->sentence.empty());
  CHECK(bench.file_bytes() == bytes);
  CHECK(bench.can_undo());
  bench.put_failure_away();
  CHECK_FALSE(bench.failed_open().has_value());
}

TEST_CASE("a saved job opens again with the same figures and the same bytes") {
  Bench bench;
  bench.start_with_sleeve();
  bench.edit(with_ends(bench, 25'000), "moved");
  const std::string bytes = bench.file_bytes();
  Bench other;
  REQUIRE(other.open("first-sleeve.json", bytes));
  CHECK(headline_of(other) == headline_of(bench));
  CHECK(other.file_bytes() == bytes);
}

TEST_CASE("opening another job does not lose the one on the bench: undo brings it back") {
  Bench bench;
  bench.start_with_sleeve();
  bench.edit(with_ends(bench, 25'000), "moved");
  const std::string bytes = bench.file_bytes();
  bench.start_with_sleeve();
  CHECK(headline_of(bench) == "37 points in each staple row, 49.00 apart");
  bench.undo();
  CHECK(bench.file_bytes() == bytes);
  CHECK(bench.before() == nullptr);
}

TEST_CASE("a job that comes from a file as it would be saved is in that file, any other is not") {
  Bench bench;
  bench.start_with_sleeve();
  bench.note_in_file("a.json", "something else", "26 Nov 14:02");
  CHECK(bench.kept_words() == "not kept");
  bench.note_in_file("a.json", bench.file_bytes(), "26 Nov 14:02");
  CHECK(bench.kept_words() == "in your file: 26 Nov 14:02");
}

TEST_CASE("the bar says in your file only while the job stands as it was saved") {
  Bench bench;
  bench.start_with_sleeve();
  CHECK(bench.kept_words() == "not kept");
  bench.note_saved("26 Nov 14:02");
  CHECK(bench.kept_words() == "in your file: 26 Nov 14:02");
  bench.edit(with_ends(bench, 25'000), "moved");
  CHECK(bench.kept_words() == "not kept");
  bench.undo();
  CHECK(bench.kept_words() == "in your file: 26 Nov 14:02");
}

TEST_CASE("margins that meet give a sentence with the figures and no row") {
  Bench bench;
  bench.start_with_sleeve();
  const auto short_job = web::with_measure(bench.now().job, bench.now().results, bench.place(),
                                           Measure::length, 35'000);
  bench.edit(short_job, "shorter");
  CHECK(headline_of(bench) == "No staple row");
  CHECK(web::headline(bench.now(), nullptr, bench.place()).because ==
        "35 long, 18 + 18 kept clear: no room for a row");
}

TEST_CASE("a sleeve marked missing leaves the bench for its neighbour; undo stays with that one") {
  web::Bench bench;
  CHECK(bench.open("a.json", tests::demo_text("marsh-lights")));
  const std::string bytes = bench.file_bytes();
  bench.go({0, 4});
  job::Job job = bench.now().job;
  job.sections[0].missing = {"1-05"};
  bench.edit(job, "marked");
  CHECK(web::sleeve_at(bench.now().results, bench.place())->code == "1-06");
  CHECK(bench.before() == nullptr);
  bench.go({0, -1});
  CHECK(bench.before() != nullptr);
  bench.go({0, 4});
  bench.undo();
  CHECK(bench.file_bytes() == bytes);
  CHECK(web::sleeve_at(bench.now().results, bench.place())->code == "1-06");
}
