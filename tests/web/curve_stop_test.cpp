#include "web/model/curve_stop.h"

#include "engine/job/job_json.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <string>
#include <utility>

using namespace pouncemark;
using namespace pouncemark::web;
using pouncemark::tests::panel_job;

namespace {

/// A panel in a bay of 1000 over 150, its plies 1.5 apart; the slip comes to 0.5 at 302.777.
Solved hung(Um rise_um = 150'000) {
  job::Job job = panel_job(1059, 2000, "left");
  job.slip_distance_um = 1'500;
  job::Bay bay;
  bay.code = "B1";
  bay.chord_um = 1'000'000;
  bay.rise_um = rise_um;
  bay.face = "hollow";
  bay.holds = "P1";
  job.bays.push_back(std::move(bay));
  return solved(std::move(job));
}

Solved after(const Made& made) { return solved(made.job); }

Um last_of_top(const Solved& now) {
  for (const solve::Row& row : now.results.rows) {
    if (row.code == "P1 top" && row.kind == solve::RowKind::point) return row.run.last_um();
  }
  return -1;
}

}  // namespace

TEST_CASE("rows are offered to stop at or before where the slip comes to its limit") {
  const Solved now = hung();
  // source: limit × R / d = 0.5 × 908.333 / 1.5 = 302.778 along the curve; halves, never after.
  const StopLine line = stop_line(now, nullptr, 0);
  CHECK(line.is_there);
  CHECK_FALSE(line.is_entered);
  CHECK(line.shown == "run on");
  CHECK(line.button == "Stop at 302.5");
  CHECK(line.offers == 302'500);
  CHECK(last_of_top(now) > 900'000);
}

TEST_CASE("nothing is offered on a flat bay or for a section") {
  CHECK_FALSE(stop_line(hung(0), nullptr, 0).is_there);
  const Solved demo = solved(tests::demo_job("marsh-lights"));
  CHECK_FALSE(stop_line(demo, nullptr, 0).is_there);
  CHECK(with_rows_stop(demo, 0, 200'000).refused ==
        "No panel hangs in this bay, so it has no rows that could stop.");
  CHECK(stop_line(demo, nullptr, 1).is_there);
}

TEST_CASE("accepted, the rows stop there; taken away, the job is as it was") {
  const Solved now = hung();
  const Made made = with_rows_stop(now, 0, stop_line(now, nullptr, 0).offers);
  CHECK(made.action == "Rows of panel P1 stop 302.5 from the hinge side");
  const Solved stopped = after(made);
  CHECK(last_of_top(stopped) <= 302'500);
  CHECK(last_of_top(stopped) > 240'000);
  const StopLine line = stop_line(stopped, &now, 0);
  CHECK(line.is_entered);
  CHECK(line.shown == "302.5");
  CHECK(line.was == "run on");
  CHECK(line.button == "Let them run on");
  const Made back = with_rows_stop(stopped, 0, line.offers);
  CHECK(back.action == "Rows of panel P1 run on to the fly side");
  CHECK(job::save_job(back.job) == job::save_job(now.job));
}

TEST_CASE("a stop is typed like any length, or refused with the text kept") {
  const Solved now = hung();
  struct Case {
    const char* typed;
    Um um;
  };
  int ran = 0;
  for (const Case& one : {Case{"250", 250'000}, Case{"25cm", 250'000}, Case{"250,5", 250'500}}) {
    CAPTURE(one.typed);
    const Made made = with_rows_stop_typed(now, 0, one.typed);
    CHECK(made.refused.empty());
    CHECK(made.job.panels.front().rows_stop_um == one.um);
    ++ran;
  }
  CHECK(ran == 3);
  for (const char* typed : {"here", "0", "-5", ""}) {
    CAPTURE(typed);
    const Made made = with_rows_stop_typed(now, 0, typed);
    CHECK_FALSE(made.refused.empty());
    CHECK_FALSE(made.job.panels.front().rows_stop_um.has_value());
    ++ran;
  }
  CHECK(ran == 7);
}
