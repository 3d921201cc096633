#include "web/model/curve_fixings.h"

#include "tests/support/jobs.h"
#include "web/model/curve_force.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::web;
using pouncemark::tests::demo_job;

TEST_CASE("a row of fixings begins along an edge that has none, one of them tight") {
  Solved now = solved(demo_job("harbour-ledger"));
  std::vector<std::string> edges;
  for (int i = 0; i < 4; ++i) {
    const Made made = with_fixing_row(now, 1);
    CHECK(made.refused.empty());
    const job::FixingRow& row = made.job.bays[1].fixings.back();
    edges.push_back(row.edge);
    CHECK((row.tight == job::Tight::middle) == (i == 0));
    now = solved(made.job);
  }
  CHECK(edges == std::vector<std::string>{"hinge_side", "fly_side", "top", "bottom"});
  CHECK(with_fixing_row(now, 0).job.bays[0].fixings.back().edge == "left");
  CHECK(fixings_view(now, 1, 9).chosen == 3);
  CHECK(fixings_view(now, 0, 0).chosen == -1);
}

TEST_CASE("what is typed of a row of fixings is one action, or a sentence") {
  const Solved now = solved(demo_job("harbour-ledger"));
  const job::Job job = with_fixing_row(now, 1).job;
  const auto typed = [&](FixingBox box, const char* words) {
    return with_fixing_typed(job, 1, 0, box, words);
  };
  CHECK(typed(FixingBox::in_from_edge, "12.5").action ==
        "Fixings of bay B2, hinge side: in from the edge 10 → 12.5");
  CHECK(typed(FixingBox::clear_first, "4cm").job.bays[1].fixings[0].kept_clear_um[0] == 40'000);
  CHECK(typed(FixingBox::clear_last, "0").job.bays[1].fixings[0].kept_clear_um[1] == 0);
  CHECK(typed(FixingBox::spacing, "250").job.bays[1].fixings[0].spacing_um == 250'000);
  int refused = 0;
  for (const char* bad : {"-3", "wide", "0", ""}) {
    if (!typed(FixingBox::spacing, bad).refused.empty()) ++refused;
  }
  CHECK(refused == 4);
  CHECK(with_tight(job, 1, 0, job::Tight::last).action ==
        "Fixings of bay B2, hinge side: the last is tight");
  CHECK(with_timber(job, 1, 0, true).job.bays[1].fixings[0].timber_is_said);
  CHECK(with_fixing_edge(job, 1, 0, "top").action == "Fixings of bay B2, hinge side → top");
  CHECK(without_fixing_row(job, 1, 0).job.bays[1].fixings.empty());
}

TEST_CASE("only a panel has a facing, and an empty box takes it away") {
  Solved now = solved(demo_job("harbour-ledger"));
  CHECK(!with_facing(now, 0, "2").refused.empty());
  const Made made = with_facing(now, 1, "2");
  CHECK(made.action == "Facing of panel P1: 2 thick");
  CHECK(force_view(solved(made.job), 1).facing == "2");
  CHECK(!with_facing(solved(made.job), 1, "").job.panels[0].facing_thickness_um.has_value());
  CHECK(!with_facing(now, 1, "0.05").refused.empty());
  CHECK(with_facing(now, 1, "0.1").refused.empty());
}
