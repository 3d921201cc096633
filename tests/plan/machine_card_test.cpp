#include "engine/plan/machine_card.h"

#include "engine/solve/solve.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using material::Field;
using plan::MachineCard;

namespace {

MachineCard card_of(const job::Job& job) { return plan::machine_card(job, solve::solve(job)); }

void enter(job::Job& job, Field field, std::int64_t thousandths, const char* words = "") {
  job.materials.values[field] = {thousandths, words, material::Standing::typed, {}};
}

/// "label: figure, over, beside" of every cell.
std::vector<std::string> cells_of(const MachineCard& card) {
  std::vector<std::string> all;
  for (const plan::CardCell& cell : card.cells) {
    std::string words = cell.label + ": " + cell.figure;
    for (const std::string& more : {cell.over, cell.beside}) {
      if (!more.empty()) words += ", " + more;
    }
    all.push_back(std::move(words));
  }
  return all;
}

std::vector<std::string> arm_of(const MachineCard& card) {
  std::vector<std::string> all;
  for (const plan::ArmLine& line : card.arm) {
    all.push_back(line.what + "; " + line.order + "; " + line.at + "; " + line.side + "; " +
                  line.how);
  }
  return all;
}

}  // namespace

TEST_CASE("a machine no one measured says so, and what is known of thread and tables stands") {
  const MachineCard card = card_of(tests::demo_job("harbour-ledger"));
  // source: 22.5 of 25 m by 2.97 a row are 7; 27 + 13 as DEVELOPERS says; 2 x 2300 + 800.
  CHECK(cells_of(card) ==
        std::vector<std::string>{
            "throat, right of the needle: ?, not measured", "height under the arm: ?, not measured",
            "foot lifts: ?, stack 3.9, not measured",
            "stitches a minute: 400, at most, begin at 200", "needle size: 140, round point",
            "thread tex, top and bottom: 135, not weighed", "rows a bobbin: 7, 25 m, assumed",
            "bobbins to wind: 42, 27 side + 13 joining, + 2 panel",
            "free run of tables: 5400, 2 × 2300, + 800"});
  CHECK(card.name.empty());
  CHECK(card.band == "200 TO 400 STITCHES A MINUTE: PETG SOFTENS NEAR 81 °C");
  CHECK(card.lines[0] == "A bobbin less 10 % kept back sews 22.5 m; the longest row takes 2.97 m.");
  CHECK(card.findings.empty());
  int lines = 0;
  for (const plan::ArmLine& line : card.arm) {
    CHECK(line.how == "arm not measured");
    ++lines;
  }
  CHECK(lines == 6 + 2);
}

TEST_CASE("what was entered of the machine stands on its card") {
  job::Job job = tests::demo_job("marsh-lights");
  enter(job, Field::machine_name, 0, "long arm");
  enter(job, Field::machine_foot_lift, 12'000);
  enter(job, Field::machine_speed, 450'000);
  enter(job, Field::thread_weighed_tex, 131'500);
  enter(job, Field::thread_label, 0, "lot 7");
  enter(job, Field::leaf_softens, 79'000);
  const MachineCard card = card_of(job);
  CHECK(card.name == "long arm");
  CHECK(cells_of(card)[2] == "foot lifts: 12, stack 3.9, mm");
  CHECK(cells_of(card)[3] == "stitches a minute: 450, as entered, 400 at most");
  CHECK(cells_of(card)[5] == "thread tex, top and bottom: 135, weighed 131.5, lot 7");
  CHECK(card.band.ends_with("SOFTENS NEAR 79 °C"));
  REQUIRE(card.findings.size() >= 1);
  CHECK(card.findings[0].starts_with("WARN 450 stitches a minute"));
}

TEST_CASE("sections joined from the left: the widest smaller side, and how it goes under the arm") {
  job::Job job = tests::demo_job("marsh-lights");
  // source: 60 + 75 + 90 + 120 less three laps and 9 is 282 from the left; 150 - 9 at the right.
  const std::string section = "section 1; 9 sleeves from the left; 1-04+05; 141; ";
  struct Case {
    Um throat;
    Um high;  ///< 0: not measured
    const char* how;
    bool stops;
  };
  // source: R = 150 x 0.25 = 37.5; 2 sqrt(37.5² + 141 x 1.1 / pi) = 76.3, up to a half 76.5.
  const std::vector<Case> cases = {{141'000, 0, "fits flat", false},
                                   {140'900, 0, "height not measured", false},
                                   {140'900, 77'000, "rolled 76.5 across", false},
                                   {140'900, 76'000, "does not fit", true},
                                   {70'000, 200'000, "does not fit", true}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.how);
    enter(job, Field::machine_throat, one.throat);
    if (one.high > 0) enter(job, Field::machine_under_arm, one.high);
    const MachineCard card = card_of(job);
    CHECK(arm_of(card) == std::vector<std::string>{
                              section + one.how,
                              "side rows; each sleeve alone; 1-01 left; 16; fits flat",
                              "panel rows; edge turned to the right; P1 hinge; 16; fits flat"});
    CHECK((card.band == "STOP: SECTION 1 DOES NOT GO UNDER THE ARM") == one.stops);
    ++ran;
  }
  CHECK(ran == 5);
}

TEST_CASE("what does not fit stands first, then the widest") {
  job::Job job = tests::demo_job("harbour-ledger");
  job.sections[4].widths_um = {300'000};
  enter(job, Field::machine_throat, 150'000);
  enter(job, Field::machine_under_arm, 60'000);
  const MachineCard card = card_of(job);
  CHECK(card.arm[0].what == "section 5");
  CHECK(card.arm[0].side == "291");
  CHECK(card.arm[0].does_not_fit);
  CHECK(card.arm[1].what == "section 1");
  CHECK_FALSE(card.arm[1].does_not_fit);
}

TEST_CASE("dials have a line for each kind of row, and several stitches are told from to") {
  job::Job job = tests::demo_job("harbour-ledger");
  job.sections[1].side_rows.stitch.stitch_um = 5'500;
  const MachineCard card = card_of(job);
  REQUIRE(card.dials.size() == 3);
  CHECK(card.dials[0].kind == "side rows");
  CHECK(card.dials[0].stitch == "5.5 to 6");
  CHECK(card.dials[1].stitch == "6");
  CHECK(card_of(tests::section_job({110}, 0)).dials.size() == 1);
}

TEST_CASE("where a stack is not known no bobbin is counted") {
  job::Job job = tests::demo_job("marsh-lights");
  job.sections[0].side_rows.stack_from_plies = true;
  const MachineCard card = card_of(job);
  CHECK(cells_of(card)[7] == "bobbins to wind: ?, a stack is not known");
  CHECK(card.lines[0] == "A bobbin less 10 % kept back sews 22.5 m.");
  enter(job, Field::sleeve_cloth_thickness, 400);
  CHECK(card_of(job).cells[7].figure == "4");
}
