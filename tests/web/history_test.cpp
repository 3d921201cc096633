#include "web/model/history.h"

#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using web::History;

TEST_CASE("undo gives the job before the action, byte for byte, and redo the job after it") {
  History history;
  history.start("length 1800, lap 18", "Started");
  history.keep("length 2000, lap 18", "Length: 1800 to 2000");
  CHECK(history.undo_words() == "Length: 1800 to 2000");
  CHECK(history.undo() == "length 1800, lap 18");
  CHECK(history.redo_words() == "Length: 1800 to 2000");
  CHECK(history.redo() == "length 2000, lap 18");
}

TEST_CASE("with nothing to undo or redo the job stays as it stands") {
  History history;
  history.start("a");
  CHECK_FALSE(history.can_undo());
  CHECK_FALSE(history.can_redo());
  CHECK(history.undo() == "a");
  CHECK(history.redo() == "a");
  CHECK(history.go_to(7) == "a");
  CHECK(history.undo_words().empty());
  CHECK(history.redo_words().empty());
}

TEST_CASE("a new action after undo forgets what was undone") {
  History history;
  history.start("1000");
  history.keep("2000", "to 2000");
  history.undo();
  history.keep("3000", "to 3000");
  CHECK_FALSE(history.can_redo());
  CHECK(history.steps().size() == 1);
  CHECK(history.undo() == "1000");
}

TEST_CASE("a step holds what differs, whatever grows, shrinks, repeats or stays") {
  const std::vector<std::string> texts = {"",    "aaaa", "aa",   "aabaa", "aabaabaa", "b",
                                          "abc", "abc",  "xabc", "abcx",  "axbxc",    ""};
  History history;
  history.start(texts.front());
  for (std::size_t i = 1; i < texts.size(); ++i) history.keep(texts[i], "changed");
  std::size_t read = 0;
  for (std::size_t i = texts.size(); i-- > 0; ++read) {
    CHECK(history.text() == texts[i]);
    history.undo();
  }
  for (std::size_t i = 0; i < texts.size(); ++i, ++read) {
    CHECK(history.text() == texts[i]);
    history.redo();
  }
  CHECK(read == 2 * texts.size());
}

TEST_CASE("one press goes to just after any action, back or forward, and adds none") {
  History history;
  history.start("0", "Opened a.json");
  for (int i = 1; i <= 9; ++i) history.keep(std::to_string(i), "to " + std::to_string(i));
  int gone = 0;
  for (const std::size_t done : {3u, 8u, 0u, 9u, 9u, 1u}) {
    CHECK(history.go_to(done) == std::to_string(done));
    CHECK(history.at() == done);
    ++gone;
  }
  CHECK(gone == 6);
  CHECK(history.steps().size() == 9);
  CHECK(history.beginning() == "Opened a.json");
}

TEST_CASE("another job on the way is known, whichever way it lies") {
  History history;
  history.start("a");
  history.keep("b", "changed");
  history.keep("job two", "Opened two", true);
  history.keep("job 2", "changed");
  CHECK(history.meets_another_job(1));
  CHECK(history.meets_another_job(0));
  CHECK_FALSE(history.meets_another_job(2));
  history.go_to(1);
  CHECK(history.meets_another_job(3));
  CHECK_FALSE(history.meets_another_job(0));
}

TEST_CASE("ten thousand actions on the largest job take less than 1 MB beside the job itself") {
  const std::string job = tests::demo_text("orchard-year");
  const std::size_t at = job.size() / 2;
  History history;
  history.start(job);
  for (int i = 0; i < 10'000; ++i) {
    std::string changed = job;
    changed.replace(at, 4, std::to_string(1000 + i % 9000));
    history.keep(changed, "Length of 7: 1000 to 1001");
  }
  CHECK(history.steps().size() == 10'000);
  CHECK(history.forgotten() == 0);
  std::size_t bytes = 0;
  for (const History::Step& step : history.steps()) {
    bytes += step.action.size() + step.was.size() + step.is.size() + 32;
  }
  CHECK(bytes < 1'000'000);
  while (history.can_undo()) history.undo();
  CHECK(history.text() == job);
}

TEST_CASE("beyond 4 MB the oldest actions go first, and the list knows how many") {
  History history;
  history.start("", "Started");
  const std::string large(500'000, 'x');
  for (int i = 1; i <= 20; ++i) history.keep(i % 2 == 0 ? "" : large, "to " + std::to_string(i));
  CHECK(history.steps().size() == 7);
  CHECK(history.forgotten() == 13);
  CHECK(history.beginning() == "to 13");
  CHECK(history.go_to(0) == large);
  history.keep(std::string(5'000'000, 'y'), "one larger than all the room");
  CHECK(history.steps().size() == 1);
  CHECK(history.undo() == large);
}
