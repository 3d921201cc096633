#include "web/model/history.h"

#include "engine/job/job_json.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using web::History;

namespace {

job::Job sleeve_of(Um length_um) {
  job::Job job = job::first_sleeve_job();
  job.sections.front().length_um = length_um;
  return job;
}

}  // namespace

TEST_CASE("undo gives the job before the action, byte for byte, and redo the job after it") {
  History history;
  const std::string before = job::save_job(sleeve_of(1'800'000));
  const std::string after = job::save_job(sleeve_of(2'000'000));
  history.start(sleeve_of(1'800'000));
  history.keep(sleeve_of(2'000'000), "Length: 1800 to 2000");
  CHECK(history.undo_words() == "Length: 1800 to 2000");
  CHECK(job::save_job(history.undo()) == before);
  CHECK(history.redo_words() == "Length: 1800 to 2000");
  CHECK(job::save_job(history.redo()) == after);
}

TEST_CASE("with nothing to undo or redo the job stays as it stands") {
  History history;
  history.start(sleeve_of(1'800'000));
  CHECK_FALSE(history.can_undo());
  CHECK_FALSE(history.can_redo());
  CHECK(history.undo().sections.front().length_um == 1'800'000);
  CHECK(history.redo().sections.front().length_um == 1'800'000);
  CHECK(history.undo_words().empty());
}

TEST_CASE("a new action after undo forgets what was undone") {
  History history;
  history.start(sleeve_of(1'000'000));
  history.keep(sleeve_of(2'000'000), "to 2000");
  history.undo();
  history.keep(sleeve_of(3'000'000), "to 3000");
  CHECK_FALSE(history.can_redo());
  CHECK(history.undo().sections.front().length_um == 1'000'000);
}

TEST_CASE("five hundred actions are remembered and the oldest are forgotten first") {
  History history;
  history.start(sleeve_of(1'000'000));
  for (int i = 1; i <= 600; ++i) history.keep(sleeve_of(1'000'000 + i * 1000), "longer");
  int steps = 0;
  while (history.can_undo()) {
    history.undo();
    ++steps;
  }
  CHECK(steps == 499);
  CHECK(history.job().sections.front().length_um == 1'101'000);
}
