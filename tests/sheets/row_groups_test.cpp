#include "engine/sheets/row_groups.h"

#include "engine/solve/solve.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::sheets;

namespace {

/// What one list each says it serves.
std::vector<std::string> names_in(const job::Job& job) {
  const solve::Results results = solve::solve(job);
  const solve::Piece& piece = results.pieces[0];
  const Rows all = guide_point_rows(results, piece);
  std::vector<std::string> names;
  for (const Rows& group : groups_of_equal_rows(piece, all)) names.push_back(row_names(group, all));
  return names;
}

job::StapleChange kept_clear(Um bottom, Um top) {
  job::StapleChange change;
  change.kept_clear_um = std::array<Um, 2>{bottom, top};
  return change;
}

/// Five sleeves whose laps keep other ends clear than their sides.
job::Job five_sleeves() {
  job::Job job = tests::section_job({110, 90, 80, 90, 110}, 18);
  job.sections[0].lap_rows->staple.kept_clear_um = {30'000, 30'000};
  return job;
}

}  // namespace

TEST_CASE("rows with the same figures share a list, and its name says every row it serves") {
  job::Job one_differs = five_sleeves();
  one_differs.sections[0].changes["1-03"].staple = kept_clear(40'000, 18'000);
  job::Job turned_round = five_sleeves();
  turned_round.sections[0].changes["1-03"].staple = kept_clear(18'000, 40'000);
  job::Job edge_differs = five_sleeves();
  edge_differs.sections[0].changes["1-05"].staple = kept_clear(40'000, 18'000);
  job::Job laps_alike = tests::section_job({110, 90, 80, 90, 110}, 18);
  struct Case {
    const char* name;
    job::Job job;
    std::vector<std::string> names;
  };
  const std::string laps = "1-01+02 to 1-04+05";
  const std::string but_three = "1-01 left to 1-02 right, 1-04 left to 1-05 right";
  const Case table[] = {
      {"all alike", laps_alike, {"1-01 left to 1-05 right, " + laps}},
      {"laps differ", five_sleeves(), {"1-01 left to 1-05 right", laps}},
      {"a sleeve differs", one_differs, {but_three, "1-03 left, 1-03 right", laps}},
      {"its neighbour, turned round", turned_round, {but_three, "1-03 left, 1-03 right", laps}},
      {"the last differs",
       edge_differs,
       {"1-01 left to 1-04 right", "1-05 left, 1-05 right", laps}},
      {"a sleeve on its own", tests::section_job({110}, 0), {"1-01 left, 1-01 right"}},
      {"a panel", tests::panel_job(690, 1420, "left"), {"P1 hinge", "P1 top, P1 bottom"}}};
  int count = 0;
  for (const Case& one : table) {
    CAPTURE(std::string(one.name));
    CHECK(names_in(one.job) == one.names);
    ++count;
  }
  CHECK(count == 7);
}

TEST_CASE("rows of one run but another datum do not share a list") {
  // A square panel: its hinge row and its top are equally long.
  job::Job job = tests::panel_job(700, 700, "right");
  CHECK(names_in(job) == std::vector<std::string>{"P1 hinge", "P1 top, P1 bottom"});
  job.panels[0].rows_on = {{"hinge_side", "bottom"}};
  CHECK(names_in(job) == std::vector<std::string>{"P1 hinge", "P1 bottom"});
}

TEST_CASE("a row says where its distances begin") {
  job::Job job = tests::panel_job(690, 1420, "left");
  const auto datum_of = [](const job::Job& of, std::size_t row) {
    const solve::Results results = solve::solve(of);
    return datum_words(results.pieces[0], results.rows[row]);
  };
  CHECK(datum_of(job, 0) == "from BOTTOM");
  CHECK(datum_of(job, 2) == "from the hinge side, along the row");
  CHECK(datum_of(tests::section_job({110}, 0), 0) == "from BOTTOM");
  job.panels[0].outline = {{"hinge_side", {0, 900'000}, 0, {}},
                           {"bottom", {0, 0}, 0, {}},
                           {"fly_side", {500'000, 0}, 0, {}},
                           {"top", {500'000, 900'000}, 80'000, {}}};
  CHECK(datum_of(job, 2) == "from its hinge end, along the row's own line");
  job.panels[0].outline[1].from_um = {20'000, 0};
  CHECK(datum_of(job, 0) == "from its lower end, along the row");
}

TEST_CASE("stitch rows and guide points are told apart, none is lost") {
  const solve::Results results = solve::solve(tests::demo_job("marsh-lights"));
  std::size_t rows = 0;
  for (const solve::Piece& piece : results.pieces) {
    rows += guide_point_rows(results, piece).size() + stitch_rows(results, piece).size();
    for (const solve::Row* row : stitch_rows(results, piece)) {
      CHECK(row->kind == solve::RowKind::stitch);
    }
  }
  CHECK(rows == results.rows.size());
}
