#include "web/model/kept.h"

#include "engine/base/sha256.h"
#include "tests/support/jobs.h"
#include "web/model/bench.h"
#include "web/model/edits.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using web::Bench;
using web::History;
using web::Kept;

namespace {

/// Four actions, one of them undone.
History small_history() {
  History history;
  history.start("length 1800", "Started with one sleeve");
  history.keep("length 2000", "Length: 1800 to 2000");
  history.keep("another job", "Opened another", true);
  history.keep("another job of mine", "Named");
  history.keep("", "Emptied");
  history.undo();
  return history;
}

std::string small_record() {
  return web::record_of(small_history(),
                        {{2, -1}, 5, {"a.json", "26 Nov 14:02", "0123456789ab"}, "27 Nov 09:30"});
}

/// The record under another version, with the seal that belongs to it.
std::string of_version(std::string record, const std::string& version) {
  record.resize(record.size() - 16);
  record.replace(16, 4, version);
  return record + sha256_hex(record).substr(0, 16);
}

void change_length(Bench& bench, Um um) {
  bench.edit(web::with_measure(bench.now().job, bench.now().results, bench.place(),
                               web::Measure::length, um),
             "Length: to " + std::to_string(um / 1000));
}

}  // namespace

TEST_CASE("a record comes back as it was: job, list, what is undone, place, stage and file") {
  const std::string record = small_record();
  Kept kept = web::read_record(record);
  REQUIRE(kept.is_read());
  CHECK(kept.beside.place == web::Place{2, -1});
  CHECK(kept.beside.stage == 5);
  CHECK(kept.beside.when == "27 Nov 09:30");
  CHECK(kept.beside.in_file.name == "a.json");
  CHECK(kept.beside.in_file.when == "26 Nov 14:02");
  CHECK(kept.beside.in_file.checksum == "0123456789ab");
  CHECK(kept.history.text() == "another job of mine");
  CHECK(kept.history.at() == 3);
  CHECK(kept.history.beginning() == "Started with one sleeve");
  CHECK(web::record_of(kept.history, kept.beside) == record);
  History before = small_history();
  std::size_t compared = 0;
  for (std::size_t done = 0; done <= 4; ++done, ++compared) {
    CHECK(kept.history.go_to(done) == before.go_to(done));
    CHECK(kept.history.undo_words() == before.undo_words());
  }
  CHECK(compared == 5);
  CHECK(kept.history.meets_another_job(1));
}

TEST_CASE("a record that is cut at any byte, or has a byte too many, gives nothing") {
  const std::string record = small_record();
  std::size_t refused = 0;
  for (std::size_t size = 0; size < record.size(); ++size) {
    const Kept kept = web::read_record(std::string_view(record).substr(0, size));
    if (!kept.is_read() && kept.history.text().empty()) ++refused;
  }
  CHECK(refused == record.size());
  CHECK_FALSE(web::read_record(record + '\0').is_read());
  CHECK(web::read_record(record).is_read());
}

TEST_CASE("a record with any one bit turned gives nothing and says so") {
  const std::string record = small_record();
  std::size_t refused = 0;
  for (std::size_t bit = 0; bit < record.size() * 8; ++bit) {
    std::string damaged = record;
    damaged[bit / 8] = static_cast<char>(damaged[bit / 8] ^ (1 << (bit % 8)));
    const Kept kept = web::read_record(damaged);
    if (!kept.is_read() && kept.history.text().empty() && kept.history.steps().empty()) ++refused;
  }
  CHECK(refused == record.size() * 8);
}

TEST_CASE("a whole record of another version is refused with its own sentence") {
  CHECK(web::read_record(of_version(small_record(), "0001")).is_read());
  for (const char* version : {"0000", "0002"}) {
    const Kept kept = web::read_record(of_version(small_record(), version));
    CHECK(kept.refusal ==
          "What was kept in this browser comes from another version of the page, so nothing was "
          "brought back: open the job from your file.");
  }
}

TEST_CASE("a sealed record whose steps do not fit its text gives nothing") {
  const std::string record = small_record();
  std::size_t refused = 0;
  std::size_t changed = 0;
  // Every number of the record made huge in turn, under a true seal.
  for (std::size_t at = 20; at + 4 <= record.size() - 16; ++at) {
    std::string damaged = record;
    damaged.replace(at, 4, "\xFF\xFF\xFF\x7F");
    const Kept kept = web::read_record(of_version(std::move(damaged), "0001"));
    ++changed;
    if (kept.is_read()) continue;
    ++refused;
    CHECK(kept.history.text().empty());
  }
  CHECK(changed == record.size() - 39);
  CHECK(refused > 60);
}

TEST_CASE("500 actions on a job of 48 kB take less than 100 kB") {
  const std::string job = tests::demo_text("orchard-year");
  History history;
  history.start(job, "Opened Orchard Year");
  for (int i = 0; i < 500; ++i) {
    std::string changed = job;
    changed.replace(job.size() / 2, 3, std::to_string(100 + i));
    history.keep(changed, "Kept both ends of 3-07 clear by " + std::to_string(100 + i));
  }
  const std::string record = web::record_of(history, {});
  MESSAGE("500 actions on " << job.size() << " bytes: " << record.size() << " bytes");
  CHECK(job.size() > 48'000);
  CHECK(record.size() < 100'000);
}

TEST_CASE("another bench brings everything back, and undo goes on where it stood") {
  Bench bench;
  bench.start_with_sleeve();
  const std::string start = bench.file_bytes();
  change_length(bench, 1'900'000);
  change_length(bench, 2'000'000);
  bench.note_saved("26 Nov 14:02");
  const std::string saved = bench.file_bytes();
  change_length(bench, 2'100'000);
  bench.undo();
  Bench other;
  CHECK(other.bring_back(bench.record(5, "26 Nov 14:03"), "26 Nov 15:00") == 5);
  CHECK(other.file_bytes() == saved);
  CHECK(other.last_action() == "Brought back from this browser: 3 actions");
  CHECK(other.kept_words() == "kept in this browser 14:03, in your file: 26 Nov 14:02");
  other.redo();
  CHECK(other.now().job.sections.front().length_um == 2'100'000);
  other.go_to(0);
  CHECK(other.file_bytes() == start);
  CHECK(other.last_action() == "Back to just after: Started with one sleeve");
}

TEST_CASE("what cannot be read back leaves the bench as it is and says why") {
  Bench bench;
  CHECK_FALSE(bench.bring_back("nonsense", "26 Nov 15:00").has_value());
  CHECK_FALSE(bench.has_job());
  REQUIRE(bench.failed_open().has_value());
  CHECK(bench.failed_open()->sentence.substr(0, 29) == "What was kept in this browser");
  History history;
  history.start("no job at all");
  CHECK_FALSE(bench.bring_back(web::record_of(history, {}), "26 Nov 15:00").has_value());
  CHECK_FALSE(bench.has_job());
}

TEST_CASE("a browser that answers late loses neither what it had kept nor what was begun") {
  Bench first;
  first.start_with_sleeve();
  change_length(first, 1'900'000);
  const std::string kept = first.file_bytes();
  Bench late;
  REQUIRE(late.open("a.json", tests::demo_text("marsh-lights")));
  const std::string begun = late.file_bytes();
  CHECK_FALSE(late.bring_back(first.record(1, "26 Nov 14:02"), "26 Nov 14:03").has_value());
  CHECK(late.file_bytes() == begun);
  CHECK_FALSE(late.is_kept());
  late.undo();
  CHECK(late.file_bytes() == kept);
}

TEST_CASE("a job to look at only comes back to look at only") {
  std::string text = tests::demo_text("marsh-lights");
  const auto at = text.find("\"version\": 1");
  const auto plain = text.find("\"version\":1");
  text.replace(at != std::string::npos ? at : plain, 12, "\"version\":2,");
  if (at != std::string::npos) text.erase(at + 12, 1);
  Bench bench;
  REQUIRE(bench.open("newer.json", text));
  REQUIRE(bench.is_look_only());
  Bench other;
  CHECK(other.bring_back(bench.record(1, "26 Nov 14:02"), "26 Nov 14:03").has_value());
  CHECK(other.is_look_only());
}

TEST_CASE("kept is said of the newest edit only, and never while an end is being moved") {
  Bench bench;
  bench.start_with_sleeve();
  CHECK(bench.kept_words() == "not kept");
  CHECK(bench.must_keep_now());
  const auto first = bench.to_keep();
  bench.note_kept(first, "26 Nov 14:02", "26 Nov 14:02");
  CHECK(bench.kept_words() == "kept in this browser 14:02");
  CHECK_FALSE(bench.must_keep_now());
  change_length(bench, 1'900'000);
  CHECK(bench.to_keep() > first);
  CHECK(bench.kept_words() == "not kept");
  bench.note_kept(first, "26 Nov 14:02", "26 Nov 14:02");
  CHECK(bench.kept_words() == "not kept");
  bench.note_not_kept("no room is left in this browser");
  CHECK(bench.kept_words() == "not kept: no room is left in this browser");
  bench.note_kept(bench.to_keep(), "25 Nov 23:59", "26 Nov 00:00");
  CHECK(bench.kept_words() == "kept in this browser 25 Nov 23:59");
  bench.go({0, 0});
  CHECK(bench.is_kept());
  CHECK_FALSE(bench.must_keep_now());
  bench.try_out(bench.now().job, "moving");
  CHECK_FALSE(bench.is_kept());
  bench.put_back();
  CHECK(bench.is_kept());
}

TEST_CASE("an edit that would not open again is not done and says why") {
  Bench bench;
  bench.start_with_sleeve();
  const std::string bytes = bench.file_bytes();
  job::Job job = bench.now().job;
  job.sections.front().length_um = -5;
  bench.edit(job, "made it nothing");
  CHECK(bench.file_bytes() == bytes);
  CHECK(bench.last_action().substr(0, 10) == "Not done: ");
  CHECK_FALSE(bench.can_undo());
  bench.edit(bench.now().job, "the same again");
  CHECK_FALSE(bench.can_undo());
}
