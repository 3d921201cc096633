#include "engine/solve/stack.h"

#include "engine/base/number_text.h"
#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "tests/support/rows.h"
#include "tests/support/stacks.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using namespace pouncemark;
using namespace pouncemark::solve;
using pouncemark::material::Field;
using pouncemark::tests::demo_job;
using pouncemark::tests::enter;
using pouncemark::tests::one_panel;
using pouncemark::tests::row_of;
using pouncemark::tests::two_sleeves;

TEST_CASE("a typed stack is one step from the first hole to the last and says that it was typed") {
  const job::Job job = demo_job("marsh-lights");
  const Results results = solve::solve(job);
  int seen = 0;
  for (const Row& row : results.rows) {
    if (row.kind != RowKind::stitch) {
      CHECK(row.stack_um == 0);
      CHECK(row.stitch_um == 0);
      continue;
    }
    const Um typed = row.place == RowPlace::panel ? 3'900
                     : row.place == RowPlace::lap ? 1'000
                                                  : 1'100;
    CHECK(row.stack_um == typed);
    CHECK(row.stack_is_typed);
    const Stack stack = stack_of(job, results, row);
    CHECK(stack.is_typed);
    CHECK(stack.is_known);
    REQUIRE(stack.steps.size() == 1);
    CHECK(stack.thickest_um() == typed);
    CHECK(stack.thinnest_um() == typed);
    CHECK(stack.at(0).from_um == row.run.first_um());
    CHECK(stack.at(0).to_um == row.run.last_um());
    CHECK(stack.at(0).plies.empty());
    CHECK(stack.rise_um == 0);
    ++seen;
  }
  CHECK(seen == 18 + 8 + 3);
}

namespace {

struct Solved {
  job::Job job;
  Results results;
  Row row;
  Stack stack;
};

Solved solved(const job::Job& job, const char* code) {
  Solved all{job, solve::solve(job), {}, {}};
  all.row = row_of(all.results, code, RowKind::stitch);
  REQUIRE(all.row.code == code);
  all.stack = stack_of(all.job, all.results, all.row);
  return all;
}

std::string names_of(const StackStep& step) {
  std::string names;
  for (const Ply& ply : step.plies) names += (names.empty() ? "" : ", ") + ply.name;
  return names;
}

/// "8-28:2600 28-1392:1800" in millimetres and micrometres.
std::string told(const Stack& stack) {
  std::string words;
  for (const StackStep& step : stack.steps) {
    if (!words.empty()) words += " ";
    words += exact_mm_text(step.from_um) + "-" + exact_mm_text(step.to_um) + ":" +
             std::to_string(step.thickness_um);
  }
  return words;
}

}  // namespace

TEST_CASE("a lap is four leaves, a side row two leaves and the cloth between them") {
  job::Job job = two_sleeves();
  // source: 4 × 0.25 = 1.00; the cloth ends 12 in, the joining row stands 9 in from both edges.
  const Solved lap = solved(job, "1-01+02");
  CHECK(lap.row.stack_um == 1'000);
  CHECK_FALSE(lap.row.stack_is_typed);
  REQUIRE(lap.stack.steps.size() == 1);
  CHECK(names_of(lap.stack.at(0)) ==
        "left sleeve's front leaf, left sleeve's back leaf, right sleeve's front leaf, "
        "right sleeve's back leaf");
  job.sections[0].lies_over = job::Side::left;
  CHECK(names_of(solved(job, "1-01+02").stack.at(0)).rfind("right sleeve's front leaf", 0) == 0);

  // Nothing is made up for cloth whose thickness no one entered.
  const Solved unknown = solved(job, "1-02 left");
  CHECK_FALSE(unknown.stack.is_known);
  CHECK(unknown.stack.missing == "the thickness of the cloth in sleeves");
  CHECK(unknown.stack.steps.empty());
  CHECK(unknown.row.stack_um == 0);
  enter(&job, Field::sleeve_cloth_thickness, 600);
  const Solved side = solved(job, "1-02 left");
  CHECK(side.stack.is_known);
  CHECK(side.row.stack_um == 1'100);
  CHECK(names_of(side.stack.at(0)) == "front leaf, cloth, back leaf");
  CHECK_FALSE(side.stack.at(0).plies[0].gives);
  CHECK(side.stack.at(0).plies[1].gives);
  CHECK(side.stack.assumed_places.size() == 2);
}

TEST_CASE("cloth that reaches into a lap is met there, once or twice") {
  struct Case {
    Um cloth_in_um;
    Um lap_um;
    Um stack_um;
    bool along;
  };
  // The joining row stands half a lap in from the edge of either sleeve.
  const Case cases[] = {
      {12'000, 18'000, 1'000, false}, {9'701, 18'000, 1'000, false}, {9'699, 18'000, 2'200, false},
      {9'000, 18'000, 2'200, true},   {8'000, 18'000, 2'200, false}, {12'000, 30'000, 2'200, false},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.cloth_in_um);
    job::Job job = two_sleeves();
    enter(&job, Field::sleeve_cloth_thickness, 600);
    job.sections[0].lap_um = one.lap_um;
    job.sections[0].cloth.emplace().in_from_edge_um = one.cloth_in_um;
    const Solved lap = solved(job, "1-01+02");
    // Half a blade of needle 140 is 0.7: cloth as near as that is under the blade. Both sleeves'
    // cloth ends so far in, on either side of the row: the blade's sides meet one each.
    const bool one_each = one.cloth_in_um == 9'699 || one.along;
    CHECK(lap.row.stack_um == (one_each ? 1'600 : one.stack_um));
    CHECK(lap.stack.runs_along_an_edge == one.along);
    ++seen;
  }
  CHECK(seen == 6);
}

TEST_CASE("a panel's stack is backing and cloth, doubled over its hem") {
  job::Job job = one_panel();
  // source: 1.0 + 0.8 turned double = 2.6; the row stands 16 in, the hem lies from 8 to 28.
  const Solved hinge = solved(job, "P1 hinge");
  CHECK(hinge.row.stack_um == 2'600);
  CHECK(told(hinge.stack) == "16-1404:2600");
  CHECK(names_of(hinge.stack.at(0)) == "cloth, hem, backing");

  job.panels[0].cloth.emplace().hem_um = 6'000;  // from 8 to 14: the row is beyond it
  CHECK(told(solved(job, "P1 hinge").stack) == "16-1404:1800");
  // Towards the fly side the top row leaves the cloth's hem, its last hole 16 from the edge.
  job.panels[0].cloth->hem_um = 20'000;
  job.panels[0].cloth->in_from_fly_side_um = 40'000;
  const Solved top = solved(job, "P1 top");
  CHECK(told(top.stack) == "16-650:2600 650-674:1000");
  CHECK(top.stack.thickest_um() == 2'600);
  CHECK(top.stack.thinnest_um() == 1'000);
  CHECK(top.stack.rise_um == 0);
  CHECK(top.stack.fall_um == 1'600);
  CHECK(top.stack.fall_at_um == 650'000);
}

TEST_CASE("interlining and adhesive count where the job says anything of them") {
  job::Job job = one_panel();
  enter(&job, Field::panel_cloth_thickness, 900);
  CHECK(solved(job, "P1 hinge").row.stack_um == 2'800);
  enter(&job, Field::interlining_thickness, 1'100);
  const Solved lined = solved(job, "P1 hinge");
  CHECK(lined.row.stack_um == 3'900);
  CHECK(names_of(lined.stack.at(0)) == "cloth, hem, interlining, backing");
  enter(&job, Field::adhesive_thickness, 100);
  CHECK(solved(job, "P1 hinge").row.stack_um == 4'000);
  // A band as wide as 15 ends beside a row 16 in; a hair of the blade is no hair of the band.
  job.panels[0].cloth.emplace().adhesive_band_um = 15'000;
  CHECK(solved(job, "P1 hinge").row.stack_um == 3'900);
  job.panels[0].cloth->adhesive_band_um = 15'301;
  CHECK(solved(job, "P1 hinge").row.stack_um == 4'000);
  // Said to be there, and of no known thickness.
  job.materials.values.erase(Field::adhesive_thickness);
  const Solved unknown = solved(job, "P1 hinge");
  CHECK_FALSE(unknown.stack.is_known);
  CHECK(unknown.stack.missing == "the thickness of the adhesive");
}

TEST_CASE("film left on adds its thickness for each face and is said to be there") {
  job::Job job = two_sleeves();
  enter(&job, Field::sleeve_cloth_thickness, 600);
  enter(&job, Field::film_left_on, 1);
  const Solved side = solved(job, "1-01 left");
  CHECK(side.row.stack_um == 1'100 + 4 * 60);
  int films = 0;
  for (const Ply& ply : side.stack.at(0).plies) {
    if (!ply.is_left_on) continue;
    CHECK(ply.item == material::Item::film);
    CHECK(ply.is_assumed);
    ++films;
  }
  CHECK(films == 4);
  CHECK(solved(job, "1-01+02").row.stack_um == 1'000 + 8 * 60);
  enter(&job, Field::film_thickness, 50);
  CHECK(solved(job, "1-01+02").row.stack_um == 1'000 + 8 * 50);
  enter(&job, Field::film_left_on, 0);
  CHECK(solved(job, "1-01+02").row.stack_um == 1'000);
  job::Job panel = one_panel();
  enter(&panel, Field::film_left_on, 1);
  CHECK(solved(panel, "P1 hinge").row.stack_um == 2'600 + 2 * 60);
}

TEST_CASE("cloth gives under the foot where that was measured, sheet does not") {
  job::Job job = one_panel();
  CHECK(solved(job, "P1 hinge").stack.at(0).pressed_um == 2'600);
  enter(&job, Field::panel_cloth_pressed, 500);
  const Solved hinge = solved(job, "P1 hinge");
  CHECK(hinge.stack.at(0).thickness_um == 2'600);
  CHECK(hinge.stack.at(0).pressed_um == 1'000 + 2 * 500);
  enter(&job, Field::panel_cloth_pressed, 900);  // thicker than it is: as it is
  CHECK(solved(job, "P1 hinge").stack.at(0).pressed_um == 2'600);
}

TEST_CASE("the foot climbs where the cloth of a sleeve begins") {
  job::Job job = two_sleeves();
  enter(&job, Field::sleeve_cloth_thickness, 600);
  job.sections[0].length_um = 1'000'000;
  job.sections[0].cloth.emplace().in_from_end_um = 50'000;
  const Solved side = solved(job, "1-01 right");
  CHECK(told(side.stack) == "18-50:500 50-950:1100 950-982:500");
  CHECK(side.stack.rise_um == 600);
  CHECK(side.stack.rise_at_um == 50'000);
  CHECK(side.stack.fall_um == 600);
  CHECK(side.stack.fall_at_um == 950'000);
  CHECK(side.stack.thickest == 1);
  CHECK(side.stack.thinnest == 0);
  // A row of one hole stands where it stands.
  job.sections[0].side_rows.stitch.kept_clear_um = {500'000, 500'000};
  const Solved hole = solved(job, "1-01 right");
  CHECK(hole.row.run.points() == 1);
  CHECK(told(hole.stack) == "500-500:1100");
}

TEST_CASE("one sheet folded and a round sleeve's flange are two leaves thick") {
  job::Job job = two_sleeves();
  enter(&job, Field::sleeve_cloth_thickness, 600);
  job::Section& section = job.sections[0];
  section.sewn_side = job::Side::left;
  section.fold_radius_um = 500;
  section.flange_um = 30'000;
  section.make = job::Make::folded;
  CHECK(solved(job, "1-01 left").row.stack_um == 1'100);
  section.make = job::Make::round;
  // The cloth lies in the tube, unless it is said to reach into the flange.
  CHECK(solved(job, "1-01 left").row.stack_um == 500);
  section.cloth.emplace().in_from_edge_um = 10'000;
  CHECK(solved(job, "1-01 left").row.stack_um == 1'100);
}

TEST_CASE("the stack of a row with a typed one can be laid beside the plies") {
  job::Job job = one_panel();
  job.panels[0].stack_from_plies = false;
  const Solved hinge = solved(job, "P1 hinge");
  CHECK(hinge.row.stack_um == 3'900);
  const Stack plies = stack_from_plies(hinge.job, hinge.results, hinge.row);
  CHECK_FALSE(plies.is_typed);
  CHECK(plies.thickest_um() == 2'600);
}

TEST_CASE("every row's figure is that of its own profile, alike as the rows may be") {
  int looked = 0;
  int known = 0;
  for (std::uint32_t seed = 1; seed <= 120; ++seed) {
    tests::Dice dice(seed);
    INFO(dice.words());
    const job::Job job = tests::random_job(dice);
    const Results results = solve::solve(job);
    for (const Row& row : results.rows) {
      if (row.kind != RowKind::stitch || row.stack_is_typed) continue;
      const Stack stack = stack_of(job, results, row);
      CHECK(row.stack_um == stack.thickest_um());
      CHECK(stack.is_known == (row.stack_um > 0));
      CHECK(row.climb_um == std::max(stack.rise_um, stack.fall_um));
      CHECK(row.along_a_ply == stack.runs_along_an_edge);
      Um at = row.run.first_um();
      for (const StackStep& step : stack.steps) {
        CHECK(step.from_um == at);
        at = step.to_um;
        Um sum = 0;
        for (const Ply& ply : step.plies) sum += ply.thickness_um;
        CHECK(sum == step.thickness_um);
        CHECK(step.pressed_um <= step.thickness_um);
        CHECK(std::max(step.left_um, step.right_um) <= step.thickness_um);
      }
      if (stack.is_known) CHECK(at == row.run.last_um());
      ++looked;
      known += stack.is_known ? 1 : 0;
    }
  }
  CHECK(looked > 300);
  CHECK(known > 100);
}
