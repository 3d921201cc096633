#include "web/model/sew_edits.h"

#include "engine/job/job_json.h"
#include "tests/support/jobs.h"
#include "web/model/sew_materials.h"
#include "web/model/sew_trials.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::web;
using material::Field;
using pouncemark::tests::demo_job;

namespace {

bool opens(const job::Job& job) {
  const Result<job::OpenedJob> opened = job::open_job(job::save_job(job));
  return opened && job::save_job(opened->job) == job::save_job(job);
}

job::Job lone() { return job::first_sleeve_job(); }

std::string line_shown(const job::Job& job, Field field) {
  for (const MaterialLine& line : material_lines(job, material::row_of(field).item)) {
    if (line.field == field) return line.shown + "|" + line.standing + "|" + line.source;
  }
  return "none";
}

}  // namespace

TEST_CASE("a needle system is no size, and a size out of range says the range and its source") {
  CHECK(read_needle_size("140").number == 140);
  CHECK(read_needle_size(" 110 ").sentence.empty());
  int ran = 0;
  for (const char* typed : {"135x17", "135 x 17", "135X16", "16×95", "134x35"}) {
    const SewNumber read = read_needle_size(typed);
    CHECK(read.sentence.find("That is a needle system, not a size.") != std::string::npos);
    ++ran;
  }
  for (const char* typed : {"0", "900", "19", "401"}) {
    const SewNumber read = read_needle_size(typed);
    CHECK(read.sentence.find("from 20 to 400. Usual is 60 to 250") != std::string::npos);
    ++ran;
  }
  for (const char* typed : {"", "size", "1.4", "140/22", "-140", "9999999999"}) {
    CHECK(read_needle_size(typed).sentence.find("no whole number") != std::string::npos);
    ++ran;
  }
  CHECK(ran == 15);
}

TEST_CASE("tex is a whole number, and a ticket number is not taken for it") {
  CHECK(read_thread_tex("tex 135").number == 135);
  CHECK(read_thread_tex("90").number == 90);
  CHECK(read_thread_tex("ticket 20").sentence.find("Weigh 10 m") != std::string::npos);
  CHECK(read_thread_tex("metric 20").sentence.find("Weigh 10 m") != std::string::npos);
  CHECK(!read_thread_tex("0").sentence.empty());
  CHECK(!read_thread_tex("2001").sentence.empty());
}

TEST_CASE("a figure typed into a box of the stage is one action in words") {
  struct Case {
    const char* job;
    Place place;
    const char* kind;
    SewBox box;
    const char* typed;
    std::string action;
    const char* refused;
  };
  const std::vector<Case> cases = {
      {"marsh-lights", {0, -1}, "side", SewBox::needle_size, "120", "Needle size 140 → 120", "12x"},
      {"marsh-lights", {0, -1}, "side", SewBox::thread_tex, "90", "Thread tex 135 → 90", "20 mt"},
      {"marsh-lights",
       {0, -1},
       "joining",
       SewBox::stitch,
       "6",
       "Stitch of the joining rows of section 1 5.5 → 6",
       "0.4"},
      {"marsh-lights",
       {0, 2},
       "side",
       SewBox::stitch,
       "6",
       "Stitch of the side rows of sleeve 1-03 5.5 → 6",
       "51"},
      {"marsh-lights",
       {1, -1},
       "top",
       SewBox::stitch,
       "6",
       "Stitch of the top row of panel P1 5.5 → 6",
       "x"},
      {"marsh-lights",
       {0, -1},
       "joining",
       SewBox::stack,
       "1,25",
       "Stack of the joining rows of section 1 1 → 1.25",
       "0"},
      {"marsh-lights",
       {1, -1},
       "hinge",
       SewBox::stack,
       "4",
       "Stack of the hinge side row of panel P1 3.9 → 4",
       "51"}};
  int ran = 0;
  for (const Case& one : cases) {
    const Solved now = solved(demo_job(one.job));
    for (const SewKind& kind : sew_kinds(now, one.place)) {
      if (kind.id != one.kind) continue;
      const Made made = with_sew_typed(now, one.place, kind, one.box, one.typed);
      CHECK(made.refused == "");
      CHECK(made.action == one.action);
      CHECK(opens(made.job));
      CHECK(job::save_job(made.job) != job::save_job(now.job));
      CHECK(!with_sew_typed(now, one.place, kind, one.box, one.refused).refused.empty());
      ++ran;
    }
  }
  CHECK(ran == 7);
}

TEST_CASE("a material's value keeps its standing and its source, and goes back to how it began") {
  job::Job job = lone();
  CHECK(line_shown(job, Field::leaf_density) == "1.27|supplier|suppliers' data sheets");
  Made made = with_material(job, Field::leaf_density, "1,3");
  CHECK(made.action == "Leaves, density 1.27 → 1.3");
  CHECK(line_shown(made.job, Field::leaf_density) == "1.3|typed|");
  made = with_standing(made.job, Field::leaf_density, material::Standing::measured_here);
  made = with_source(made.job, Field::leaf_density, "weighed, lot 7");
  CHECK(line_shown(made.job, Field::leaf_density) == "1.3|measured here|weighed, lot 7");
  CHECK(opens(made.job));
  made = without_material(made.job, Field::leaf_density);
  CHECK(job::save_job(made.job) == job::save_job(job));
}

TEST_CASE("another kind of sheet brings its own values") {
  const Made made = with_material_choice(lone(), Field::leaf_sheet, 1);
  CHECK(made.action == "Leaves, sheet PETG → polyester film");
  CHECK(line_shown(made.job, Field::leaf_modulus).rfind("4500|", 0) == 0);
  CHECK(opens(made.job));
}

TEST_CASE("a value that cannot be is refused with its range, and what is usual and why") {
  struct Case {
    Field field;
    const char* refused;
    const char* taken;
  };
  const std::vector<Case> cases = {
      {Field::leaf_density, "0", "0.001"},       {Field::leaf_poisson, "0.5", "0.499"},
      {Field::leaf_modulus, "100001", "100000"}, {Field::sleeve_cloth_thickness, "20.001", "20"},
      {Field::thread_strength, "many", "92.5"},  {Field::thread_packing, "1.5", "0.65"},
      {Field::machine_throat, "", "265"}};
  int ran = 0;
  for (const Case& one : cases) {
    const Made no = with_material(lone(), one.field, one.refused);
    CHECK(no.refused.find(": give ") != std::string::npos);
    const Made made = with_material(lone(), one.field, one.taken);
    CHECK(made.refused == "");
    CHECK(opens(made.job));
    ++ran;
  }
  CHECK(ran == 7);
  CHECK(with_material(lone(), Field::leaf_density, "26").refused ==
        "26 is out of range. Leaves, density: give 0.001 to 25 g/cm³. Usual is 0.8 to 2.3 "
        "(plastics handbooks: sheet plastics are 0.9 to 2.2, from memory).");
}

TEST_CASE("10 m that weigh 1.35 g are tex 135") {
  const Made made = with_weighing(lone(), "1.35 g");
  CHECK(made.action == "Thread, weighed not known → 135");
  CHECK(line_shown(made.job, Field::thread_weighed_tex) == "135|measured here|10 m weigh 1.35 g");
  CHECK(opens(made.job));
  CHECK(!with_weighing(lone(), "0").refused.empty());
  CHECK(!with_weighing(lone(), "heavy").refused.empty());
}

TEST_CASE("a droop test gives the stiffness of the sheet") {
  // source: derived: 1.5 × 1270 × 9.80665 × 0.25⁴ ÷ (0.0348 × 0.001²) = 2.097 GPa
  const Made petg = with_droop(lone(), Field::leaf_modulus, {250'000, 34'800, 1'000});
  CHECK(line_shown(petg.job, Field::leaf_modulus) ==
        "2097|measured here|droop test: 250 out, 34.8 down, 1 thick");
  const job::Job film = with_material_choice(lone(), Field::leaf_sheet, 1).job;
  const Made stiff = with_droop(film, Field::leaf_modulus, {250'000, 17'700, 1'000});
  CHECK(line_shown(stiff.job, Field::leaf_modulus).rfind("4512|", 0) == 0);
  CHECK(!with_droop(lone(), Field::leaf_modulus, {250'000, 0, 1'000}).refused.empty());
  CHECK(!with_droop(lone(), Field::leaf_modulus, {250'000, 50'001, 1'000}).refused.empty());
}

TEST_CASE("a trial seam is filled in box by box, each one action") {
  Made made = with_trial(lone(), job::RowsOf::side_rows, 6'000);
  CHECK(made.action == "Added trial 1: needle size 140, tex 135, stitch 6, for side rows");
  struct Case {
    TrialBox box;
    const char* typed;
    std::string action;
    const char* refused;
  };
  const std::vector<Case> cases = {
      {TrialBox::needle_size, "120", "Trial 1, needle size: 140 → 120", "135x17"},
      {TrialBox::thread_tex, "90", "Trial 1, thread tex: 135 → 90", "ticket 20"},
      {TrialBox::stitch, "5,5", "Trial 1, stitch, as set: 6 → 5.5", "0.2"},
      {TrialBox::ten_stitches, "58", "Trial 1, ten stitches: empty → 58", "0"},
      {TrialBox::marks, "498.5", "Trial 1, marks 500 apart: empty → 498.5", "99"},
      {TrialBox::pull, "310", "Trial 1, pull on 50 wide, N: empty → 310", "hard"}};
  int ran = 0;
  for (const Case& one : cases) {
    CHECK(!with_trial_box(made.job, 0, one.box, one.refused).refused.empty());
    made = with_trial_box(made.job, 0, one.box, one.typed);
    CHECK(made.refused == "");
    CHECK(made.action == one.action);
    CHECK(opens(made.job));
    ++ran;
  }
  CHECK(ran == 6);
  made = with_trial_box(made.job, 0, TrialBox::marks, "");
  CHECK(!made.job.trials[0].marks_um);
  made = without_trial(made.job, 0);
  CHECK(job::save_job(made.job) == job::save_job(lone()));
}

TEST_CASE("only one trial is chosen for the same rows") {
  job::Job job = lone();
  for (const job::RowsOf of :
       {job::RowsOf::side_rows, job::RowsOf::side_rows, job::RowsOf::lap_rows}) {
    job = with_trial(job, of, 6'000).job;
  }
  for (std::size_t i = 0; i < 3; ++i) job = with_trial_chosen(job, i, true).job;
  CHECK(!job.trials[0].is_chosen);
  CHECK(job.trials[1].is_chosen);
  CHECK(job.trials[2].is_chosen);
  CHECK(opens(job));
  job = with_trial_rows(job, 1, std::nullopt).job;
  CHECK(job.trials[1].is_chosen);
  CHECK(!job.trials[2].is_chosen);
  CHECK(opens(job));
}

TEST_CASE("the take-up of a row follows from the marks") {
  job::Trial trial;
  CHECK(take_up_sum(trial, 2'360'000).figure.empty());
  trial.marks_um = 498'500;
  const solve::Sum sum = take_up_sum(trial, 2'360'000);
  // source: trade rule: 500 → 498.5 is 0.30 %, 7.1 over 2360
  CHECK(sum.figure == "7.1");
  CHECK(sum.numbers[0] == "500 − 498.5 = 1.5 on 500: 0.30 %");
  trial.ten_stitches_um = 58'000;
  CHECK(real_stitch_sum(trial).figure == "5.80");
}
